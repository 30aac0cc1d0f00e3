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
import { beginAt, pedal, placeHeadBolts, standSmallEngine } from './small-engine.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

const keyIn = async (page: import('playwright-core').Page, digits: string) => {
  const names: Record<string, string> = { '.': 'decimal point' };
  for (const digit of digits) await page.locator(`[data-key="${names[digit] ?? digit}"]`).tap();
};

// Key sizes: 15 mm (96 px) keys with 3 mm (19 px) gaps on a 360 px phone, Journal of Human Ergology 25, 1996, as the project's
// bench ergonomics section 1 gives them. Number size 78 px: readable from 1.5 m at 20 minutes of arc, ISO 9241-3 as quoted there.
describe('which fastener goes where', () => {
  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])('lays out, then goes hole by hole with one press each on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    const engine = await standSmallEngine(page);
    await beginAt(page, `${engine}/fasteners/head`);
    await page.getByRole('heading', { name: 'Lay these out' }).waitFor();
    await picture(page, `fasteners-lay-out-${name}`);
    expect(await accessibilityFaults(page)).toEqual([]);
    await pedal(page, 1);
    await page.locator('[data-hole="1"]').waitFor();
    await picture(page, `fasteners-hole-${name}`, true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    await pedal(page, 4);
    await page.getByText('Every hole has its fastener').waitFor();
    await page.getByText('All entries saved').waitFor();
    expectQuiet(device);
  });

  it('refuses a bolt that is too long before it goes in, and says by how much', async () => {
    const { page } = await bench.device(phone, { touch: true });
    const engine = await standSmallEngine(page);
    await page.goto(`${engine}/fasteners/head`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await page.getByRole('button', { name: 'All laid out' }).tap();
    await page.locator('[data-part="3"]').click();
    await page.locator('[data-hole="3"]').waitFor();
    await page.getByRole('button', { name: 'Measure the one in hand' }).tap();
    await keyIn(page, '100');
    await page.locator('[data-bench-control="record"]').tap();
    await page.getByRole('button', { name: 'Used one, 100 mm' }).tap();
    expect(await page.locator('[data-said]').textContent()).toMatch(/Hole 3: too long by 15\.0 mm/);
    await page.getByText(/^0 of 4 in place$/).waitFor();
  });

  it('has keys for gloves and the number for the far side of the block on a phone', async () => {
    const { page } = await bench.device(phone, { touch: true });
    const engine = await standSmallEngine(page);
    await page.goto(`${engine}/fasteners/head`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await page.getByRole('button', { name: 'All laid out' }).tap();
    const size = await page
      .locator('[data-current-number]')
      .first()
      .evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
    expect(size).toBeGreaterThanOrEqual(78);
    await page.getByRole('button', { name: 'Measure the one in hand' }).tap();
    await picture(page, 'number-entry-phone', true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    const controls = await benchControls(page);
    for (const { name, width, height } of controls)
      expect(Math.min(width, height), name).toBeGreaterThanOrEqual(name.startsWith('key ') ? 96 : 126);
    const at = (name: string) => controls.find((control) => control.name === name);
    expect((at('key 8')?.left ?? 0) - (at('key 7')?.right ?? 0)).toBeGreaterThanOrEqual(19);
    expect((at('key 4')?.top ?? 0) - (at('key 7')?.bottom ?? 0)).toBeGreaterThanOrEqual(19);
    expect((at('clear')?.top ?? 0) - (at('record')?.bottom ?? 0)).toBeGreaterThanOrEqual(82);
    // Reflow at 320 px and at 200 % of a laptop: WCAG 1.4.10 and 1.4.4.
    for (const narrow of [
      { width: 320, height: 640 },
      { width: 640, height: 360 },
    ]) {
      await page.setViewportSize(narrow);
      await expectFits(page);
    }
  });

  it('refuses a second decimal mark where everybody sees it, and asks about 1,250', async () => {
    const { page } = await bench.device(phone, { touch: true });
    const engine = await standSmallEngine(page);
    await page.goto(`${engine}/fasteners/head`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await page.getByRole('button', { name: 'All laid out' }).tap();
    await page.getByRole('button', { name: 'Measure the one in hand' }).tap();
    await keyIn(page, '10.0.');
    await page.getByText('There is a decimal point already').waitFor();
    expect(await page.locator('[data-armed]').inputValue()).toBe('10.0');
    await page.locator('[data-bench-control="clear"]').tap();
    await page.locator('[data-armed]').focus();
    await page.keyboard.type('1,250');
    await page.keyboard.press('Enter');
    await page.getByRole('alertdialog').getByText('Is 1,250 meant as 1.250?', { exact: false }).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it('strikes out a wrong entry with a reason and asks for that hole again', async () => {
    const { page } = await bench.device(laptop);
    const engine = await standSmallEngine(page);
    await placeHeadBolts(page, engine);
    await page.locator('[data-part="2"]').click();
    await page.getByRole('button', { name: 'Strike out: Hole 2: fastener in' }).click();
    await page.getByRole('button', { name: 'wrong fastener' }).click();
    await page.getByText(/^3 of 4 in place$/).waitFor();
    await page.locator('[data-hole="2"] [data-bench-control="new"]').waitFor();
  });

  it('works for a joint that has no drawing', async () => {
    const { page } = await bench.device(phone);
    const engine = await standSmallEngine(page);
    await beginAt(page, `${engine}/fasteners/caps`);
    await pedal(page, 1);
    await page.locator('[data-hole="1"]').waitFor();
    await page.keyboard.press('u');
    await page.locator('[data-hole="2"]').waitFor();
    await page.getByText('Hole 1: used one in').waitFor();
  });
});
