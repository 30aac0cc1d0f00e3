import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  accessibilityFaults,
  type Bench,
  benchControls,
  expectFits,
  expectQuiet,
  laptop,
  openBench,
  phone,
  picture,
} from './harness.js';
import { engines, standSheet } from './stand.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

/** A bounce of the hand is refused for 400 ms. */
const BETWEEN = 420;
const sizes = [
  ['phone', phone],
  ['laptop', laptop],
] as const;

/** Keys a number into the armed field and records it by Enter, as a person or a gauge that types does. */
async function key(page: Page, number: string): Promise<void> {
  await page.locator('[data-armed]').waitFor();
  await page.waitForTimeout(BETWEEN);
  await page.keyboard.type(number);
  await page.keyboard.press('Enter');
}
const asked = (page: Page, name: string) => page.locator(`[data-asked="${name}"]`).waitFor();

/** Lobe of the invented V8 (lift 7.35 mm, 256° from seat to seat) by the curve of Stoddart's class with exponents 6, 8, 10. */
function lobeLift(fromMiddle: number): number {
  const x = Math.min(1, Math.abs(fromMiddle) / 128);
  return 7.35 * (1 - 2.5 * x ** 2 + 5 * x ** 6 - 5 * x ** 8 + 1.5 * x ** 10);
}
/** The wheel reads 4° at the true top; the intake lobe stands 3.5° later than the 110° of its card. */
const TOP = 4;
const MIDDLE = 113.5;
const PLACES = [-70, -50, -30, -10, 10, 30, 50, 70];

async function keyStop(page: Page): Promise<void> {
  await asked(page, 'first side');
  await key(page, `${TOP - 36}`);
  await asked(page, 'second side');
  await key(page, `${TOP + 36}`);
  await asked(page, 'wheel');
}
async function keyPlace(page: Page, fromMiddle: number, lift = lobeLift(fromMiddle)): Promise<void> {
  await key(page, `${MIDDLE + TOP + fromMiddle}`);
  await asked(page, 'lift');
  await key(page, lift.toFixed(2));
  await asked(page, 'wheel');
}

describe('degreeing a cam', () => {
  it.each(sizes)(
    'begins with the cautions and the stop, then grows the lobe place by place, on a %s',
    async (name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      const engine = await standSheet(page, engines.v8);
      await page.goto(`${engine}/combination/degreeing`);
      await page.getByRole('heading', { name: 'Before you begin' }).waitFor();
      expect(await accessibilityFaults(page)).toEqual([]);
      await picture(page, `turning-begin-${name}`);
      await page.keyboard.press('Enter');
      await asked(page, 'first side');
      await picture(page, `turning-stop-${name}`);
      await keyStop(page);
      await picture(page, `turning-first-${name}`);
      // In any order: from the end of the lobe to its beginning.
      for (const place of [...PLACES].reverse()) await keyPlace(page, place);
      const words = page.locator('[data-lobe-words]');
      await expect
        .poll(() => words.innerText())
        .toMatch(/^8 readings\. Middle 113\.[3-7]° after top ±0\.\d+°, 3\.[3-7]° later/);
      const later = page.locator('[data-answer="later-than-card@1-intake-1"]');
      expect(await later.innerText()).toMatch(/3\.[3-7] deg.*OUT/s);
      await picture(page, `turning-grown-${name}`);
      await picture(page, `turning-grown-whole-${name}`, true);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      expectQuiet(device);
    },
    120_000,
  );
});
