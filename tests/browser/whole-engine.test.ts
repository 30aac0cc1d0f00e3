import { readFileSync } from 'node:fs';
import { inspectionPlan, type Measured } from '@gudgeon/core/assess';
import { loadSheet } from '@gudgeon/core/engine/load';
import type { StoredEnvelope } from '@gudgeon/core/record';
import type { CDPSession } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, expectQuiet, laptop, openBench, picture } from './harness.js';
import { engines, standSheet } from './stand.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

/** Factor from SI and places, as a fitter keys each kind of figure in metric units. */
const WAYS: Readonly<Record<Measured, { readonly factor: number; readonly places: number }>> = {
  length: { factor: 1e3, places: 3 },
  volume: { factor: 1e6, places: 1 },
  mass: { factor: 1e3, places: 1 },
  force: { factor: 1, places: 0 },
  angle: { factor: 180 / Math.PI, places: 1 },
  torque: { factor: 1, places: 1 },
};

interface Sheet {
  readonly feature: string;
  readonly optional: boolean;
  readonly readings: readonly { readonly slot: string; readonly digits: string }[];
}
/** Every worksheet of the invented V8 with the size that its sheet expects at each slot, walked as the plan walks. */
function sheetsOf(): readonly Sheet[] {
  const text = readFileSync(new URL('../../sheets/quernside-51-v8.yaml', import.meta.url), 'utf8');
  const loaded = loadSheet(text);
  if (!loaded.ok) throw new Error(loaded.fault[0]?.message);
  return inspectionPlan(loaded.value).features.map(({ kind, places }) => ({
    feature: kind.id,
    optional: kind.optional ?? false,
    readings: places.flatMap(({ id, stations, expected }) =>
      stations.map((station) => {
        const { factor, places: decimals } = WAYS[kind.measured];
        return {
          slot: `${kind.id}/${id}/${station.id}`,
          digits: ((expected?.nominal ?? 0) * factor).toFixed(decimals),
        };
      }),
    ),
  }));
}

/** The same act again within 400 ms is a bounce. */
const BOUNCE = 420;
const CODES: Readonly<Record<string, number>> = { Enter: 13, '.': 190 };
/** Keys pressed one after the other on the keyboard, as fast as the browser takes them. */
async function keys(keyboard: CDPSession, pressed: readonly string[]): Promise<void> {
  await Promise.all(
    pressed.flatMap((key) => {
      const text = key === 'Enter' ? '\r' : key;
      const event = { key, windowsVirtualKeyCode: CODES[key] ?? key.charCodeAt(0) };
      return [
        keyboard.send('Input.dispatchKeyEvent', { ...event, type: 'keyDown', text }),
        keyboard.send('Input.dispatchKeyEvent', { ...event, type: 'keyUp' }),
      ];
    }),
  );
}

describe('a whole engine', () => {
  it('is measured by keyboard alone: some 1,500 readings of a V8, sheet after sheet, none missing', async () => {
    const sheets = sheetsOf();
    // Cross-checks come last, beginning behind the last sheet that is needed.
    const needed = sheets.filter((one) => !one.optional);
    const from = sheets.indexOf(needed.at(-1) as Sheet);
    const checks = [...sheets.slice(from), ...sheets.slice(0, from)].filter((one) => one.optional);
    const walk = [...needed, ...checks];
    const all = walk.flatMap((one) => one.readings);
    expect(all.length).toBeGreaterThan(1450);
    const device = await bench.device(laptop);
    const { page } = device;
    const engine = await standSheet(page, engines.v8);
    const keyboard = await device.context.newCDPSession(page);
    await page.goto(`${engine}/measure`);
    await page.locator('.next-link').waitFor();
    // From the heading, past nothing else, to the link to the next sheet.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');

    const started = performance.now();
    let ledOn = started;
    for (const { feature, readings } of walk) {
      const [first] = readings;
      await page.waitForURL(`**/measure/${feature}`);
      const armed = page.locator(`[data-slot="${first?.slot}"]`);
      const cautions = page.getByRole('heading', { name: 'Before you begin' });
      await armed.or(cautions).first().waitFor();
      if ((await cautions.count()) > 0) await page.keyboard.press('Enter');
      await armed.waitFor();
      for (const { digits } of readings) await keys(keyboard, [...digits, 'Enter']);
      await page.locator('.finished').waitFor();
      const shown = await page
        .locator('[data-cell]')
        .evaluateAll((cells) => cells.map((one) => [one.getAttribute('data-cell'), one.textContent]));
      expect(shown).toEqual(readings.map(({ slot, digits }) => [slot, digits]));
      // Space, because an Enter this soon after the last one is taken for a bounce of the hand; so is Space after Space.
      await page.waitForTimeout(Math.max(0, ledOn + BOUNCE - performance.now()));
      await page.keyboard.press(' ');
      ledOn = performance.now();
    }
    const seconds = (performance.now() - started) / 1000;
    console.log(
      `${all.length} readings in ${seconds.toFixed(1)} s, ${((seconds * 1000) / all.length).toFixed(1)} ms each`,
    );

    await page
      .getByText(/nothing else is left|Before a reading counts/)
      .first()
      .waitFor();
    await page
      .getByText(/^(\d+) of \1 readings taken$/)
      .first()
      .waitFor();
    await page.getByText('All entries saved').waitFor();
    await picture(page, 'measure-whole-engine-laptop', true);
    const job = engine.split('/').at(-1);
    const answer = await fetch(`${bench.address}/api/jobs/${job}/entries`);
    const { entries } = (await answer.json()) as { entries: readonly StoredEnvelope[] };
    const kept = entries
      .filter((entry) => entry.kind === 'measured')
      .map(({ data, raw }) => {
        const { slot, answered } = data as { slot: string; answered?: readonly string[] };
        return [slot, raw, answered];
      });
    expect(kept).toEqual(all.map(({ slot, digits }) => [slot, digits, undefined]));
    expectQuiet(device);
  });
});
