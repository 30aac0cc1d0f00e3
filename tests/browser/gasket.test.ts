import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  accessibilityFaults,
  type Bench,
  benchControls,
  expectFits,
  expectQuiet,
  laptop,
  openBench,
  pastBounce,
  phone,
  picture,
} from './harness.js';
import { beginAt, pedal, standSmallEngine } from './small-engine.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

// Sizes: bench controls of 20 mm, 126 px on a phone (Colle and Hiszem, Ergonomics 47(13), 2004); gap between unlike actions
// 13 mm, 82 px (MIL-STD-1472E, table VII), both as the project's bench ergonomics section 1 gives them.
describe('checking a gasket', () => {
  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])('goes through every check by pedal alone on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    const engine = await standSmallEngine(page);
    await page.goto(`${engine}/gasket/only`);
    await page.getByRole('heading', { name: 'Before you begin' }).waitFor();
    await picture(page, `gasket-before-${name}`, true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await pedal(page, 1);
    await page.getByText(/^0 of \d+ checked$/).waitFor();
    await picture(page, `gasket-step-${name}`, true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    const of = Number((await page.getByText(/^0 of \d+ checked$/).textContent())?.match(/of (\d+)/)?.[1]);
    await pedal(page, of);
    await page.getByText('Gasket checked, every opening').waitFor();
    await page.getByText('All entries saved').waitFor();
    await picture(page, `gasket-done-${name}`);
    expectQuiet(device);
  });

  it('keeps the usual answer and "something is wrong" a thumb apart on a phone', async () => {
    const { page } = await bench.device(phone, { touch: true });
    const engine = await standSmallEngine(page);
    await page.goto(`${engine}/gasket/only`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    const good = page.locator('[data-bench-control="good"]');
    await good.waitFor();
    const controls = await benchControls(page);
    for (const control of controls)
      expect(Math.min(control.width, control.height), control.name).toBeGreaterThanOrEqual(126);
    const at = (name: string) => controls.find((control) => control.name === name);
    expect((at('bad')?.top ?? 0) - (at('good')?.bottom ?? 0)).toBeGreaterThanOrEqual(82);
  });

  it('shows a bad opening as bad, hinders tightening, and takes the better answer later', async () => {
    const { page } = await bench.device(phone, { touch: true });
    const engine = await standSmallEngine(page);
    await page.goto(`${engine}/gasket/only`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await page.locator('summary', { hasText: /All \d+ checks/ }).tap();
    await page.getByRole('button', { name: 'water port water-1' }).tap();
    await page.getByRole('heading', { name: 'water port water-1' }).waitFor();
    await page.locator('[data-bench-control="bad"]').tap();
    await pastBounce(page);
    await page.getByRole('button', { name: /water-1.*Covered or overhanging/ }).waitFor();
    await page.goto(`${engine}/tighten/head`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await page.getByText(/water-1 was found bad/).waitFor();
  });

  it('takes one answer when the button is hit twice in haste', async () => {
    const { page } = await bench.device(phone);
    const engine = await standSmallEngine(page);
    await beginAt(page, `${engine}/gasket/only`);
    await page.locator('[data-bench-control="good"]').dblclick();
    await page.getByText(/^1 of \d+ checked$/).waitFor();
  });
});
