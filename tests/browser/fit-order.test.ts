import { readFileSync } from 'node:fs';
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
const order = '/engine/invented-demonstration/order';
const sizes = [
  ['phone', phone],
  ['laptop', laptop],
] as const;

describe('the order to the machine shop', () => {
  it.each(sizes)(
    'shows operation, target of each place, finish, what must be on and who decided, on a %s',
    async (name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      await page.goto(order);
      const line = page.locator('[data-order="bore/all"]');
      await line.waitFor();
      const text = await line.textContent();
      expect(text).toMatch(/1\. Bore and hone to \+0\.250 mm: cylinder block/);
      expect(text).toMatch(/cylinder 7[\s\S]*98\.858 to 98\.867 mm/);
      expect(text).toMatch(/plateau honed/);
      expect(text).toMatch(/40 mm iron plate/);
      expect(text).toMatch(/Decided by Invented Person, 2026-03-14 .*: as recommended/);
      expect(text).toMatch(/NO DATA[\s\S]*Not back yet/);
      await page.getByText(/\d+ decisions are still open/).waitFor();
      await page.getByRole('table', { name: 'Parts to buy' }).getByText('Q51-310A-25').waitFor();
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      await picture(page, `order-${name}`, true);
      expectQuiet(device);
    },
  );

  it('can be saved as one file that stands by itself', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(order);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as one file' }).click(),
    ]);
    const html = readFileSync(await download.path(), 'utf8');
    expect(html).toContain('Machine-shop order for Quernside 51');
    expect(html).toContain('98.858 to 98.867 mm');
    expect(html).not.toMatch(/<script|https?:\/\//);
  });

  it('prints black on white without buttons', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(order);
    await page.locator('[data-order="bore/all"]').waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('button:visible, input:visible').count()).toBe(0);
    expect(await page.locator('.shell-bar').isVisible()).toBe(false);
    await page.setViewportSize({ width: 794, height: 1123 });
    await picture(page, 'order-print');
  });

  it('takes the work back by touch: a new occasion, and the worksheet opens where it is measured again', async () => {
    const device = await bench.device(phone, { touch: true });
    const { page } = device;
    await page.goto(order);
    const line = page.locator('[data-order="bore/all"]');
    await line.getByText('The work came back: measure it again').tap();
    await line.getByRole('button', { name: 'back from the machine shop' }).tap();
    await line.getByRole('button', { name: 'It is back: measure again' }).tap();
    await page.waitForURL(/\/measure\/cylinder-bore\?slot=cylinder-bore%2F1%2Ftop-thrust/);
    await page.goto(order);
    await line
      .getByText(/back, 0 of 6 read again/)
      .first()
      .waitFor();
    await line.getByRole('link', { name: /^Go on measuring: Cylinder bores/ }).waitFor();
    await picture(page, 'order-back-phone', true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    await page.goto('/engine/invented-demonstration/fit/bore-oversize/all');
    await page.getByText('What it ordered has come back').waitFor();
    expect(await page.getByRole('note', { name: 'Differs from when it was decided' }).count()).toBe(0);
    expectQuiet(device);
  });
});
