import { readFileSync } from 'node:fs';
import { valvesOf } from '@gudgeon/core/engine';
import type { StoredEnvelope } from '@gudgeon/core/record';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { engineOf, SHEETS } from '../../packages/core/src/workbench/bench.suite.js';
import { Builder } from '../../packages/core/src/workbench/work/work.suite.js';
import { sendEntries } from '../send.js';
import {
  accessibilityFaults,
  type Bench,
  benchControls,
  type Device,
  expectFits,
  expectQuiet,
  laptop,
  openBench,
  pastBounce,
  phone,
  picture,
} from './harness.js';

let bench: Bench;
let person: Builder;
let onPhone: Device;
let onLaptop: Device;
const engine = '/engine/job';
const ANSWERED = [
  'oil-filled',
  'filter-filled',
  'primed',
  'firing-centre',
  'leads-placed',
  'spark-set',
  'fuel-joints-closed',
  'coolant-filled',
  'throttle-returns',
  'roles-told',
  'extinguisher-held',
  'stop-rule-told',
] as const;

/** The invented V8, primed but for two valves; all of the list is answered but the last line. */
beforeAll(async () => {
  const v8 = engineOf(SHEETS.v8);
  person = new Builder(v8);
  const text = readFileSync(new URL(`../../sheets/${SHEETS.v8}.yaml`, import.meta.url), 'utf8');
  person.append({ kind: 'sheet-adopted', data: { name: 'quernside', text, reason: 'put on the stand' } });
  for (const valve of valvesOf(v8).slice(2)) person.append({ kind: 'oil-seen', data: { valve, how: 'it runs' } });
  for (const act of ANSWERED) person.append(answered(act));
  bench = await openBench();
  await sendNew();
  onPhone = await bench.device(phone, { touch: true });
  onLaptop = await bench.device(laptop);
  // Minutes of a run-in are not sat out; between the jumps the clock of the page runs as it does.
  for (const { page } of [onPhone, onLaptop]) await page.clock.install();
});
afterAll(() => bench.close());

const answered = (act: string) =>
  ({
    kind: 'work-act-done',
    data: { act, answer: { kind: 'felt-or-seen', words: 'Ben, charge seen', result: 'good' }, method: 'by hand' },
  }) as const;
let sentBefore = 0;
/** What was written since the last time, as another device sends it. */
async function sendNew(): Promise<void> {
  const fresh = person.entries.slice(sentBefore);
  sentBefore = person.entries.length;
  await sendEntries(bench.address, fresh);
}
async function recorded(page: Page, kind: string): Promise<readonly unknown[]> {
  await page.getByText('All entries saved').waitFor();
  const answer = await fetch(`${bench.address}/api/jobs/job/entries`);
  const { entries } = (await answer.json()) as { entries: readonly StoredEnvelope[] };
  return entries.filter((entry) => entry.kind === kind).map(({ data }) => data);
}
/** A pedal or a key; the next press is no bounce. */
async function press(page: Page, key: string): Promise<void> {
  await page.keyboard.press(key);
  await pastBounce(page);
}
async function key(page: Page, digits: string): Promise<void> {
  await page.locator('[data-armed]').waitFor();
  await page.keyboard.type(digits);
  await press(page, 'Enter');
}
async function look(page: Page, name: string): Promise<void> {
  await picture(page, `running-${name}`, true);
  expect(await accessibilityFaults(page), name).toEqual([]);
  await expectFits(page);
  for (const control of await benchControls(page))
    expect(Math.min(control.width, control.height), `${name}: ${control.name}`).toBeGreaterThanOrEqual(96);
}
/** Neither key is to be looked for while the seconds run, and none moves when they are over. */
async function expectBothKeysInSight(page: Page): Promise<void> {
  for (const control of await benchControls(page))
    expect(control.bottom, control.name).toBeLessThanOrEqual(phone.height);
}
const go = (page: Page, phase: string) => page.locator(`[data-go="${phase}"]`).waitFor();
async function sayTheLines(page: Page): Promise<void> {
  for (const line of ['second-person', 'extinguisher', 'throttle', 'stop-rule', 'clamp']) {
    await page.locator(`[data-line="${line}"]`).waitFor();
    await press(page, 'Enter');
  }
  await go(page, 'clear');
}

// What a list may ask, and that a response is what was seen: bench ergonomics section 7. Sizes: its section 1.
describe('the first start', () => {
  it('sees oil at each valve by pedal and by touch, then everything else as the record has it', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/start/oil`);
    await page.getByText('14 of 16 seen').waitFor();
    await look(page, 'oil-phone');
    await press(page, 'PageDown');
    await page.getByText('15 of 16 seen').waitFor();
    await page.locator('[data-seen="false"]').tap();
    await page.getByText('Oil came at every valve').waitFor();
    await page.goto(`${engine}/start`);
    await page.locator('[data-ready="clamp"] [data-state="open"]').waitFor();
    await page.locator('[data-ready="extinguisher"]').getByText('Ben, charge seen').waitFor();
    expect(await page.locator('input[type="checkbox"]').count()).toBe(0);
    await look(page, 'ready-phone');
    await page.goto(`${engine}/start/ignition`);
    await page.getByRole('img', { name: /cap/i }).waitFor();
    await page.getByText('Set on the overlap, the rotor points half a turn wrong').waitFor();
    await look(page, 'ignition-phone');
    expect(await recorded(page, 'oil-seen')).toHaveLength(16);
  });

  it('is not begun past an open line without a reason, and says STOP when the agreed seconds are over, also after a reload', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/start/go`);
    await page.getByRole('heading', { name: 'Not ready yet' }).waitFor();
    await look(page, 'not-ready-phone');
    await page.getByText('Start it all the same').click();
    await page.getByLabel('Reason').fill('clamp seen by Ben');
    await page.getByRole('button', { name: 'Start with these open' }).click();
    await sayTheLines(page);
    await look(page, 'clear-phone');
    await press(page, 'PageDown');
    await go(page, 'cranking');
    await page.clock.fastForward(3000);
    await press(page, 'PageDown');
    await go(page, 'dry');
    expect(await page.locator('[data-stop-now]').count()).toBe(0);
    const before = await benchControls(page);
    await page.clock.fastForward(5000);
    await page.reload();
    await go(page, 'dry');
    expect(await page.locator('[data-stop-now]').count()).toBe(0);
    await page.clock.fastForward(4000);
    await page.locator('[data-stop-now]').getByText('8 s without oil pressure').waitFor();
    await expectBothKeysInSight(page);
    expect((await benchControls(page)).map(({ name, top }) => [name, top])).toEqual(
      before.map(({ name, top }) => [name, top]),
    );
    await look(page, 'stop-phone');
    await page.locator('[data-bench-control="stop"]').tap();
    await go(page, 'stopped');
    await look(page, 'stopped-phone');
    await pastBounce(page);
    await press(page, 'Enter');
    await page.locator('[data-try="out"]').waitFor();
    await look(page, 'try-out-phone');
    expect(await recorded(page, 'start-tried')).toMatchObject([
      { outcome: 'stopped', pressure: { text: '0 bar', value: 0 } },
    ]);
  });

  it('runs with pressure in time: cranking, the seconds and the figure stand in one entry', async () => {
    const { page } = onLaptop;
    person.append(answered('timing-nipped'));
    await sendNew();
    await page.goto(`${engine}/start/go`);
    await page.locator('[data-try="out"]').waitFor();
    await press(page, 'a');
    await sayTheLines(page);
    await press(page, 'Enter');
    await page.clock.fastForward(4000);
    await press(page, 'Enter');
    await go(page, 'dry');
    await page.clock.fastForward(2000);
    await press(page, 'Enter');
    await go(page, 'pressure');
    await look(page, 'pressure-laptop');
    await key(page, '3.1');
    await page.locator('[data-try="in"]').waitFor();
    await look(page, 'try-in-laptop');
    const [, good] = (await recorded(page, 'start-tried')) as readonly Record<string, number>[];
    expect(good).toMatchObject({ outcome: 'runs', pressure: { text: '3.1 bar', value: 310_000 } });
    expect(good?.crankedSeconds).toBeGreaterThanOrEqual(4);
    expect(good?.pressureAfterSeconds).toBeGreaterThanOrEqual(2);
    expect(good?.pressureAfterSeconds).toBeLessThan(8);
  });
});

describe('the run-in', () => {
  it('goes on by the clock through a reload and on another device; a gauge over its limit stops it', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/run-in`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await look(page, 'run-in-first-phone');
    await pastBounce(page);
    await press(page, 'Enter');
    await page.locator('[data-clock="running"][data-step="1"]').waitFor();
    await page.clock.fastForward('05:00');
    await page.locator('[data-call]').getByText('Go on with step 2').waitFor();
    await look(page, 'run-in-call-phone');
    await press(page, 'PageDown');
    await page.locator('[data-clock="running"][data-step="2"]').waitFor();
    await page.clock.fastForward('04:00');
    await page.reload();
    await page.locator('[data-clock="running"][data-step="2"]').waitFor();
    expect(await page.locator('.clock-left').textContent()).toMatch(/^1[56]:\d\d/);
    await look(page, 'run-in-running-phone');

    await press(page, 'Enter');
    await page.locator('[data-gauge="speed"]').waitFor();
    await look(page, 'run-in-gauge-phone');
    await key(page, '2000');
    await page.locator('[data-told="speed"] [data-verdict="in"]').waitFor();
    await key(page, '88');
    await page.locator('[data-gauge="oil-pressure"]').waitFor();
    await key(page, '2.9');
    await page.locator('[data-told="oil-pressure"] [data-verdict="near"]').waitFor();
    await key(page, '105');
    await page.locator('[data-stop-now]').getByText('coolant temperature').waitFor();
    await look(page, 'run-in-stop-phone');

    const other = onLaptop.page;
    // The other device was left standing while this clock was put forward.
    await other.clock.fastForward('09:00');
    await other.goto(`${engine}/run-in`);
    await other.locator('[data-clock="running"][data-step="2"]').waitFor();
    await other.locator('[data-stop-now]').waitFor();
    await look(other, 'run-in-laptop');

    await press(page, 'Escape');
    await look(page, 'run-in-why-phone');
    await page.locator('[data-bench-control="stop hot"]').tap();
    await page.locator('[data-stopped]').getByText('New flat lobes are not bedded yet').waitFor();
    await look(page, 'run-in-stopped-phone');
    expect(await recorded(page, 'run-in-begun')).toEqual([{ step: 1 }, { step: 2 }]);
    expect(await recorded(page, 'run-in-stopped')).toEqual([{ why: 'too hot' }]);
    expect(await recorded(page, 'running-read')).toHaveLength(4);
  });
});

describe('compression and leakage', () => {
  it('are keyed cylinder by cylinder, the low one wet as well, and read by the rule of the sheet', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/tests`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    const cylinders = engineOf(SHEETS.v8).layout.cylinders.length;
    for (let read = 0; read < cylinders; read++) await key(page, read === 2 ? '7.2' : '10.4');
    await page.getByText('Low: a wet test tells rings from valves').waitFor();
    await look(page, 'compression-wet-phone');
    await key(page, '9.6');
    await page.getByText('Oil sealed it: rings, piston or bore.').waitFor();
    await look(page, 'compression-phone');
    expect(await recorded(page, 'compression-read')).toHaveLength(cylinders + 1);

    const { page: wide } = onLaptop;
    await wide.goto(`${engine}/tests`);
    await wide.locator('[data-verdict="out"]').first().waitFor();
    await look(wide, 'compression-laptop');
    await wide.getByRole('button', { name: 'Leakage', exact: true }).click();
    await key(wide, '6.9');
    await key(wide, '6.4');
    await look(wide, 'leakage-heard-laptop');
    await press(wide, '3');
    await wide
      .locator('[data-cylinder] .mark[data-verdict="in"], [data-cylinder] .mark[data-verdict="near"]')
      .first()
      .waitFor();
    await look(wide, 'leakage-laptop');
    expect(await recorded(wide, 'leakage-read')).toMatchObject([{ heard: 'crankcase', supply: { text: '6.9 bar' } }]);
  });
});

describe('service', () => {
  it('is due by the hours that were noted, until it is done', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/service`);
    await page.locator('[data-reminder="oil and filter"] [data-state="no data"]').waitFor();
    await page.getByLabel('Running hours now').fill('10,4');
    await press(page, 'Enter');
    await page.locator('[data-reminder="oil and filter"] [data-state="overdue"]').waitFor();
    await look(page, 'service-phone');
    await page.getByText('It is done', { exact: true }).first().tap();
    await page.getByRole('button', { name: 'Record it as done: oil and filter' }).tap();
    await page.getByText('Plan something').tap();
    await page.getByLabel('What is to be done').fill('look at the plugs');
    await page.getByLabel('At running hours').fill('60');
    await page.getByLabel('Who asks for it').fill('Ada');
    await page.getByRole('button', { name: 'Plan it' }).tap();
    await page.locator('[data-reminder="look at the plugs"] [data-state="coming"]').waitFor();
    expect(await recorded(page, 'service-done')).toEqual([{ what: 'oil and filter', hours: 10.4 }]);
    await onLaptop.page.goto(`${engine}/service`);
    await onLaptop.page.locator('[data-reminder="look at the plugs"]').waitFor();
    await look(onLaptop.page, 'service-laptop');
    await onLaptop.page.goto(engine);
    await onLaptop.page.getByRole('link', { name: 'Run-in by the clock' }).waitFor();
    expectQuiet(onPhone);
    expectQuiet(onLaptop);
  });
});
