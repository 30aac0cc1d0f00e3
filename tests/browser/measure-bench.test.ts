import { inflateSync } from 'node:zlib';
import type { StoredEnvelope } from '@gudgeon/core/record';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  accessibilityFaults,
  afterBounce,
  type Bench,
  expectFits,
  expectQuiet,
  laptop,
  openBench,
  phone,
  picture,
} from './harness.js';
import { openGateway } from './plain-http.js';
import { engines, standByHand, standSheet } from './stand.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

const STATIONS = ['top-thrust', 'top-axial', 'middle-thrust', 'middle-axial', 'bottom-thrust', 'bottom-axial'];
const measuredOf = async (engine: string) => {
  const answer = await fetch(`${bench.address}/api/jobs/${engine.split('/').at(-1)}/entries`);
  const { entries } = (await answer.json()) as { entries: readonly StoredEnvelope[] };
  return entries.filter((entry) => entry.kind === 'measured');
};

describe('a worksheet at the bench', () => {
  it('works on a phone over plain http, where the browser has no hashing and makes no ids', async () => {
    const gateway = await openGateway(bench.address);
    const device = await bench.device(phone, { address: gateway.address });
    const { page } = device;
    const engine = await standByHand(page, engines.v8);
    expect(await page.evaluate(() => [window.isSecureContext, typeof crypto.subtle, typeof crypto.randomUUID])).toEqual(
      [false, 'undefined', 'undefined'],
    );
    await page.goto(`${engine}/measure/cylinder-bore`);
    await page.getByRole('button', { name: 'Read. Begin' }).click();
    for (const station of STATIONS) {
      await page.locator(`[data-slot="cylinder-bore/1/${station}"]`).waitFor();
      await page.keyboard.type('98.611');
      await page.keyboard.press('Enter');
    }
    await page.locator('[data-slot^="cylinder-bore/"]:not([data-slot^="cylinder-bore/1/"])').waitFor();
    await page.getByText('All entries saved').waitFor();
    const kept = await measuredOf(engine);
    expect(kept.map((entry) => entry.raw)).toEqual(STATIONS.map(() => '98.611'));
    // The server has checked each hash on taking it; all chains hold.
    const verified = await fetch(`${bench.address}/api/jobs/${engine.split('/').at(-1)}/verify`);
    expect(await verified.json()).toMatchObject({ sound: true, problems: [] });
    await page.reload();
    await page.getByText('6 of 48 read').waitFor();
    // The browser says of one header, which guards against other windows, that it counts on trusted addresses only.
    expect(device.complaints.filter((line) => !line.startsWith('The Cross-Origin-Opener-Policy header'))).toEqual([]);
    await device.context.close();
    await gateway.close();
  });

  it.each([
    ['white', laptop],
    ['black', laptop],
    ['black', phone],
  ] as const)('tells verdicts apart by word and shape without any colour, on %s', async (theme, size) => {
    const device = await bench.device(size, { settings: { theme } });
    const { page } = device;
    const engine = await standSheet(page, engines.v8);
    await page.goto(`${engine}/measure/cylinder-bore`);
    await page.getByRole('button', { name: 'Read. Begin' }).click();
    // Printed: 98.600 to 98.618 mm new, 98.768 mm worn. Cylinder 2 is within the doubt of a bore gauge from that.
    await load(page, { '1': '98.610', '2': '98.767', '3': '98.800', '5': '98.612' });
    await page.getByText('24 of 48 read').waitFor();
    await page.locator('[data-cell="cylinder-bore/5/top-thrust"]').focus();
    await page.keyboard.press('Enter');
    await page.locator('[data-read="cylinder-bore/5/top-thrust"]').waitFor();
    await page.keyboard.press('a');
    await page.getByText('again, the first is hidden').first().waitFor();
    await page.keyboard.type('98.690');
    await page.keyboard.press('Enter');
    await page.getByText('The other places').click();
    const marks = page.locator('[data-finding="cylinder-bore.diameter"] [data-verdict]');
    await page.locator('[data-finding="cylinder-bore.diameter"] [data-verdict="again"]').first().waitFor();
    await page.evaluate(() => document.documentElement.style.setProperty('filter', 'grayscale(1)'));
    const told = new Map<string, { readonly words: string; readonly seen: readonly boolean[] }>();
    for (const mark of await marks.all()) {
      const state = (await mark.getAttribute('data-verdict')) ?? '';
      if (!told.has(state))
        told.set(state, { words: (await mark.textContent()) ?? '', seen: await shapeSeen(mark.locator('svg')) });
    }
    expect([...told].map(([state, { words }]) => [state, words]).toSorted()).toEqual([
      ['again', 'CHECK AGAIN'],
      ['in', 'IN'],
      ['near', 'NEAR'],
      ['no-data', 'NO DATA'],
      ['out', 'OUT'],
    ]);
    const all = [...told];
    for (const [at, [state, { seen }]] of all.entries())
      for (const [other, { seen: beside }] of all.slice(at + 1))
        expect(unlike(seen, beside), `${state} and ${other}`).toBeGreaterThan(0.08);
    await picture(page, `worksheet-grey-${theme}-${size.width}`, true);
    await page.evaluate(() => document.documentElement.style.removeProperty('filter'));
    await picture(page, `worksheet-${theme}-${size.width}`, true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    expectQuiet(device);
  });

  it('stores what was keyed and nothing else when gloves hit wrong keys, and says so of all that it does not store', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    const engine = await standSheet(page, engines.v8);
    await page.goto(`${engine}/measure/valve-guide`);
    const armed = page.locator('[data-slot]');
    await page.locator('[data-slot], [data-bench-control="begin"]').first().waitFor();
    if ((await armed.count()) === 0) await page.keyboard.press('Enter');
    await armed.waitFor();
    const field = page.locator('[data-armed]');
    const slotNow = () => armed.getAttribute('data-slot', { timeout: 5000 });
    const noted: (readonly [string, string])[] = [];
    let complaints = 0;
    for (const burst of bursts(60)) {
      if ((await armed.count()) === 0) break;
      const slot = (await slotNow()) ?? '';
      for (const key of burst) {
        const before = await field.inputValue();
        await page.keyboard.press(key);
        const after = await field.inputValue();
        // Each key shows at once, or the field says why not.
        if (after === before) {
          complaints += 1;
          expect(await page.locator('.entry-complaint').count(), `${key} after ${before}`).toBe(1);
        }
      }
      const keyed = await field.inputValue();
      await page.keyboard.press('Enter');
      await page.waitForFunction(
        (was) =>
          document.querySelector('[role="alertdialog"], .entry-complaint, .finished') !== null ||
          document.querySelector('[data-slot]')?.getAttribute('data-slot') !== was,
        slot,
      );
      if ((await page.locator('[role="alertdialog"], .entry-complaint').count()) === 0) {
        noted.push([slot, keyed]);
        continue;
      }
      complaints += 1;
      expect(await slotNow()).toBe(slot);
      expect(await field.inputValue()).toBe(keyed);
      while ((await field.inputValue()) !== '') await page.keyboard.press('Backspace');
      // By the real clock, here and in this place alone: longer than a bounce of the hand.
      await page.waitForTimeout(afterBounce);
    }
    expect(noted.length).toBeGreaterThan(12);
    expect(complaints).toBeGreaterThan(10);
    await page.getByText('All entries saved').waitFor();
    const kept = await measuredOf(engine);
    expect(kept.map(({ data }) => data)).toMatchObject(
      noted.map(([slot, keyed]) => ({ slot, reading: { text: `${keyed.replace(/[a-z]+$/, '')} mm` } })),
    );
    expectQuiet(device);
  });
});

/** Readings of a guide, some with a second point, a doubled digit, a letter, two readings without Enter between: the same each time. */
function* bursts(count: number): Generator<readonly string[]> {
  let word = 99;
  const chance = () => {
    word = (Math.imul(word, 1664525) + 1013904223) >>> 0;
    return word / 2 ** 32;
  };
  const reading = () => (8.004 + Math.floor(chance() * 8) / 1000).toFixed(3);
  for (let n = 0; n < count; n += 1) {
    const keys = [...reading()];
    const kind = Math.floor(chance() * 10);
    const at = Math.floor(chance() * keys.length);
    if (kind === 0) keys.splice(at, 0, '.');
    if (kind === 1) keys.splice(at, 0, keys[at] ?? '0');
    if (kind === 2) keys.splice(at, 0, 'x');
    if (kind === 3) keys.push(...reading());
    if (kind === 4) keys.splice(at, 1);
    yield keys;
  }
}

/** Loads readings that are alike at every station of each cylinder named. */
async function load(page: Page, bores: Readonly<Record<string, string>>): Promise<void> {
  const rows = Object.entries(bores).flatMap(([cylinder, figure]) =>
    STATIONS.map((station) => `cylinder-bore,${cylinder},${station},${figure},mm`),
  );
  await page.getByText('As a table (CSV)').click();
  const buffer = Buffer.from(['feature,place,reading,value,unit', ...rows].join('\r\n'));
  await page.getByLabel('Load a filled CSV').setInputFiles({ name: 'bores.csv', mimeType: 'text/csv', buffer });
  const all = page.getByRole('button', { name: /^They are right: take all/ });
  await all.or(page.getByText('24 of 48 read')).first().waitFor();
  if ((await all.count()) > 0) await all.click();
}

const GRID = 24;
/** Which parts of a picture stand out against its own edge, on a grid of 24 by 24: what is left of it without colour. */
async function shapeSeen(shape: Locator): Promise<readonly boolean[]> {
  const { width, height, grey } = greyOf(await shape.screenshot());
  const sorted = [...grey].toSorted((a, b) => a - b);
  const middle =
    ((sorted[Math.floor(sorted.length * 0.02)] ?? 0) + (sorted[Math.floor(sorted.length * 0.98)] ?? 0)) / 2;
  const at = (x: number, y: number) =>
    grey[Math.floor((y * height) / GRID) * width + Math.floor((x * width) / GRID)] ?? 0;
  const ground = at(0, 0) > middle;
  return Array.from({ length: GRID * GRID }, (_, i) => at(i % GRID, Math.floor(i / GRID)) > middle !== ground);
}
const unlike = (one: readonly boolean[], other: readonly boolean[]): number =>
  one.filter((dark, i) => dark !== other[i]).length / one.length;

/** Brightness of each dot of a PNG of eight bits with or without alpha. Source: PNG specification (ISO/IEC 15948), filters 0 to 4. */
function greyOf(png: Buffer): { readonly width: number; readonly height: number; readonly grey: readonly number[] } {
  const [width, height, kind] = [png.readUInt32BE(16), png.readUInt32BE(20), png[25]];
  const size = kind === 6 ? 4 : 3;
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at))
    if (png.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(png.subarray(at + 8, at + 8 + png.readUInt32BE(at)));
  const packed = inflateSync(Buffer.concat(parts));
  const row = width * size;
  const dots = Buffer.alloc(row * height);
  for (let y = 0; y < height; y += 1) {
    const filter = packed[y * (row + 1)];
    for (let x = 0; x < row; x += 1) {
      const left = x >= size ? (dots[y * row + x - size] ?? 0) : 0;
      const up = y > 0 ? (dots[(y - 1) * row + x] ?? 0) : 0;
      const corner = x >= size && y > 0 ? (dots[(y - 1) * row + x - size] ?? 0) : 0;
      const guess = [0, left, up, (left + up) >> 1, nearest(left, up, corner)][filter ?? 0] ?? 0;
      dots[y * row + x] = ((packed[y * (row + 1) + 1 + x] ?? 0) + guess) & 255;
    }
  }
  const grey = Array.from({ length: width * height }, (_, i) => dots[i * size] ?? 0);
  return { width, height, grey };
}
function nearest(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  if (a <= b && a <= c) return left;
  return b <= c ? up : corner;
}
