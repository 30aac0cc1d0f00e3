import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  accessibilityFaults,
  type Bench,
  expectFits,
  expectQuiet,
  laptop,
  openBench,
  phone,
  picture,
} from './harness.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());
const engine = '/engine/invented-demonstration';
const sizes = [
  ['phone', phone],
  ['laptop', laptop],
] as const;
const shownKeys = (page: import('playwright-core').Page) =>
  page
    .locator('[data-finding-verdict]')
    .evaluateAll((all) => all.map((e) => (e as HTMLElement).dataset.findingVerdict));

// Accessibility: WCAG 2.2 as checked by axe-core, with the 7:1 contrast of 1.4.6. Sizes: bench ergonomics, sections 1, 2 and 4.
describe('fit', () => {
  it.each(sizes)('shows what is not in, with value, doubt, limit, origin and distance, on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    await page.goto(`${engine}/fit`);
    const row = page.locator('[data-finding="piston.clearance@7"] summary');
    await row.scrollIntoViewIfNeeded();
    const text = await row.textContent();
    expect(text).toMatch(/OUT/);
    expect(text).toMatch(/0\.1[23]\d mm ±0\.00\d mm/);
    expect(text).toMatch(/new 0\.036 to 0\.054 mm; wear limit at most 0\.120 mm/);
    expect(text).toMatch(/above the wear limit/);
    expect(text).toMatch(/Quernside Works book 51/);
    expect(text).toMatch(/Every part is within its own wear limit, the clearance is not/);
    // The verdict is a block of 20 mm: 126 px on a phone, 80 px on a laptop touch screen.
    const block = await row.locator('.verdict-block').boundingBox();
    expect(Math.min(block?.width ?? 0, block?.height ?? 0)).toBeGreaterThanOrEqual(size === phone ? 126 : 80);
    await picture(page, `fit-row-${name}`);
    await page.locator('[data-decision]').first().waitFor();
    await page.evaluate(() => window.scrollTo(0, 0));
    await picture(page, `fit-${name}`);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    expectQuiet(device);
  });

  it('opens the working of a number with each reading, the formula and the standing of its sources, by keyboard alone', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await page.goto(`${engine}/fit`);
    const row = page.locator('[data-finding="piston.clearance@7"]');
    await row.locator('summary').focus();
    await page.keyboard.press('Enter');
    const working = row.getByRole('region', { name: 'Working' });
    await working.getByText(/bore at its smallest less piston/).waitFor();
    expect(await working.getByRole('listitem').filter({ hasText: 'bore of cylinder 7' }).count()).toBe(6);
    // The catalogue comes with the first number that is opened: its formula and what it rests on.
    await row
      .getByRole('region', { name: 'Sources' })
      .getByText(/\((read|recalled|derived|shop practice)/)
      .first()
      .waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await picture(page, 'fit-working-laptop', true);
    await row.getByRole('link', { name: 'To its readings' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/measure\/cylinder-bore\?slot=cylinder-bore/);
    expectQuiet(device);
  });

  it('is filtered by keys, and what has no data never stands among what is in', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await page.goto(`${engine}/fit`);
    await page.getByRole('heading', { name: 'Sizes and clearances' }).waitFor();
    expect(new Set(await shownKeys(page))).toEqual(new Set(['out', 'near']));
    await page.keyboard.press('2');
    expect(new Set(await shownKeys(page))).toEqual(new Set(['near']));
    await page.keyboard.press('3');
    expect(new Set(await shownKeys(page))).toEqual(new Set(['no data']));
    expect(await page.locator('[data-filter="no-data"]').getAttribute('aria-pressed')).toBe('true');
    await picture(page, 'fit-no-data-laptop');
    await page.keyboard.press('4');
    const all = await shownKeys(page);
    expect(new Set(all)).toEqual(new Set(['out', 'near', 'no data', 'in']));
    expect(await accessibilityFaults(page)).toEqual([]);
    expectQuiet(device);
  });

  it('is filtered by touch, and says how many more there are before it shows hundreds', async () => {
    const device = await bench.device(phone, { touch: true });
    const { page } = device;
    await page.goto(`${engine}/fit`);
    await page.locator('[data-filter="all"]').tap();
    const block = page.getByRole('region', { name: /^Block/ });
    expect(await block.locator('[data-finding]').count()).toBe(6);
    await block.getByRole('button', { name: /\d+ more: block/ }).tap();
    expect(await block.locator('[data-finding]').count()).toBeGreaterThan(100);
    await page.locator('[data-finding="main-bearing.clearance@main-4"] summary').tap();
    await page.getByText(/Measure this again first: main journal of main 4/).waitFor();
    await expectFits(page);
    expectQuiet(device);
  });

  it('names the reading to take again first, and leads to its place in the worksheet', async () => {
    const { page } = await bench.device(phone, { touch: true });
    await page.goto(`${engine}/fit`);
    const again = page.getByRole('region', { name: 'Measure this again first' });
    await again.getByRole('link', { name: /main journal of main 4/ }).tap();
    await page.waitForURL(/\/measure\/main-journal\?slot=main-journal%2Fmain-4/);
  });

  it('is reached from the engine, with what is out in few words', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(engine);
    const way = page.getByRole('link', { name: /Sizes and decisions/ });
    expect(await way.textContent()).toMatch(/2 out, 2 near or to check again, \d+ without data/);
    await way.click();
    await page.getByRole('heading', { name: 'Fit: Quernside 51, pushrod V8' }).waitFor();
  });

  it('keeps every verdict without colour: shape and word are there', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(`${engine}/fit`);
    await page.getByRole('heading', { name: 'Sizes and clearances' }).waitFor();
    await page.keyboard.press('4');
    for (const [verdict, word, shape] of [
      ['out', 'OUT', 'out'],
      ['near', 'NEAR', 'near'],
      ['in', 'IN', 'in'],
      ['no data', 'NO DATA', 'no-data'],
    ] as const) {
      const row = page.locator(`[data-finding-verdict="${verdict}"]`).first();
      await row.scrollIntoViewIfNeeded();
      expect(await row.locator('.verdict-block span').textContent()).toBe(word);
      expect(await row.locator(`[data-shape="${shape}"]`).count()).toBe(1);
    }
  });
});
