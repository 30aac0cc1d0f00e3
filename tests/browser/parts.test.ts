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
import { pedal } from './small-engine.js';
import { engines, openBegun, standSheet } from './stand.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

type Page = import('playwright-core').Page;
const demo = '/engine/invented-demonstration/parts';
const sizes = [
  ['phone', phone],
  ['laptop', laptop],
] as const;
const placeNow = (page: Page) => page.locator('[data-place]').getAttribute('data-place');

async function look(page: Page, name: string): Promise<void> {
  await picture(page, name, true);
  expect(await accessibilityFaults(page)).toEqual([]);
  await expectFits(page);
}

// Used parts return to their own place, end and face: common practice, no source.
// Accessibility: WCAG 2.2 as checked by axe-core, with the 7:1 contrast of 1.4.6; sizes of controls: bench ergonomics section 1.
describe('parts back to their places', () => {
  it.each(sizes)('opens on the first place that waits, and shows its tag and its tray on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    await page.goto(demo);
    await page.getByText('11 of 16 lifters fitted').waitFor();
    expect(await placeNow(page)).toMatch(/^cylinder \d (intake|exhaust)$/);
    await page.getByText('Tagged: used, good.').waitFor();
    await look(page, `parts-fit-${name}`);
    for (const control of await benchControls(page))
      expect(Math.min(control.width, control.height), control.name).toBeGreaterThanOrEqual(96);
    const figure = page.locator('[data-current-number]');
    expect(await figure.textContent()).toMatch(/^\d [IE]$/);
    const height = await figure.evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
    expect(height).toBeGreaterThanOrEqual(name === 'phone' ? 78 : 50);
    expectQuiet(device);
  });

  it('shows the place and the usual answer together on a phone', async () => {
    const { page } = await bench.device(phone);
    await page.goto(demo);
    await page.locator('[data-place]').waitFor();
    const own = (await benchControls(page)).find((control) => control.name === 'own');
    expect(own?.bottom ?? 999).toBeLessThanOrEqual(phone.height);
  });

  it.each(sizes)('refuses a used part from another place in one line on a %s', async (name, size) => {
    const { page } = await bench.device(size);
    await page.goto(demo);
    const here = await placeNow(page);
    await page.locator('summary', { hasText: 'from another place' }).click();
    await page.getByLabel('It was tagged at').selectOption({ label: 'cylinder 1 intake' });
    await page.locator('[data-bench-control="elsewhere"]').click();
    expect(await page.locator('[data-said]').textContent()).toBe(
      `This used lifter ran at cylinder 1 intake: it goes back there, or a new one goes to ${here}.`,
    );
    await look(page, `parts-refused-${name}`);
    await page.getByText('11 of 16 lifters fitted').waitFor();
  });

  it.each(sizes)('keeps the register of every place on a %s', async (name, size) => {
    const { page } = await bench.device(size);
    await page.goto(demo);
    await page.locator('summary', { hasText: 'Register of all 16 lifters' }).click();
    await page.getByText('A new cam takes new flat followers').waitFor();
    await look(page, `parts-register-${name}`);
    await page
      .getByRole('button', { name: /^cylinder 1 intake/ })
      .last()
      .click();
    expect(await placeNow(page)).toBe('cylinder 1 intake');
    await page.getByRole('button', { name: /^Strike out: In: its own part/ }).waitFor();
  });

  it('tags every part as found and fits it again, by pedal alone', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    const engine = await standSheet(page, engines.six);
    await openBegun(page, `${engine}/parts`);
    await pastBounce(page);
    await page.getByText('0 of 12 lifters tagged as found').waitFor();
    await look(page, 'parts-tag-laptop');
    await pedal(page, 12);
    await page.getByText('Every lifter is tagged').waitFor();
    await look(page, 'parts-kind-done-laptop');
    await pedal(page, 13);
    await page.getByText('Every pushrod is tagged').waitFor();
    await pedal(page, 13);
    await page.getByText('Every part is tagged').waitFor();
    await pedal(page, 1);
    await page.getByText('0 of 12 lifters fitted').waitFor();
    await pedal(page, 13);
    await page.locator('.tag-words', { hasText: 'this end up: rocker end marked with paint' }).waitFor();
    await pedal(page, 13);
    await pedal(page, 12);
    await page.getByText('Every part is in its place').waitFor();
    await page.getByText('All entries saved').waitFor();
    expectQuiet(device);
  }, 180_000);

  it('tags and fits by touch alone; a part that is worn out is replaced by a new one only', async () => {
    const device = await bench.device(phone, { touch: true });
    const { page } = device;
    const engine = await standSheet(page, engines.v8);
    await page.goto(`${engine}/parts`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await look(page, 'parts-tag-phone');
    await page.getByRole('button', { name: 'paint mark to the front' }).tap();
    await page.locator('[data-bench-control="used"]').tap();
    await pastBounce(page);
    expect(await placeNow(page)).toBe('cylinder 1 exhaust');
    await page.locator('[data-bench-control="not-again"]').tap();
    await pastBounce(page);
    await page.getByRole('button', { name: 'Fit', exact: true }).tap();
    await page.locator('.tag-words', { hasText: 'this face to the front: paint mark' }).waitFor();
    await page.getByRole('button', { name: 'engine oil' }).tap();
    await page.locator('[data-bench-control="own"]').tap();
    await pastBounce(page);
    await page.locator('.tag-words', { hasText: 'the old one is not to be used again' }).waitFor();
    expect(await page.locator('[data-bench-control="own"]').count()).toBe(0);
    await look(page, 'parts-new-only-phone');
    await page.locator('[data-bench-control="new"]').tap();
    await page.getByText('lifter of cylinder 1 exhaust: a new one in').waitFor();
    await page.goto(`${engine}/record`);
    await page.getByText('lifter to cylinder 1 intake').first().waitFor();
    expectQuiet(device);
  });

  it('keeps the shims and buckets of a shim engine apart too', async () => {
    const { page } = await bench.device(phone);
    const engine = await standSheet(page, engines.four);
    await openBegun(page, `${engine}/parts`);
    await page.getByRole('button', { name: 'shims', exact: true }).click();
    await page.getByText('0 of 16 shims tagged as found').waitFor();
    await look(page, 'parts-shims-phone');
  });
});
