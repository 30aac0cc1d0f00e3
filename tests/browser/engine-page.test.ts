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

// Accessibility: WCAG 2.2 as checked by axe-core, with the 7:1 contrast of 1.4.6. Motion: WCAG 2.3.3.
describe('one engine', () => {
  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])('shows its drawings and its ways of work on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    await page.goto(engine);
    for (const [view, file] of [
      ['From the front', 'front'],
      ['left head from above', 'head'],
      ['Valve gear', 'gear'],
    ] as const) {
      await page.getByRole('button', { name: view }).click();
      await page.locator('.drawing-svg').waitFor();
      await picture(page, `engine-${file}-${name}`, true);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
    }
    for (const way of ['Assemble', 'Set valves', 'Record', 'Measure'])
      await page.getByRole('heading', { name: way, level: 2 }).waitFor();
    expectQuiet(device);
  });

  it('turns the drawn crank by keyboard alone', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(engine);
    const slider = page.getByRole('slider', { name: 'Crank angle' });
    await slider.focus();
    const drawn = () => page.locator('.drawing-svg').innerHTML();
    const before = await drawn();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    expect(await slider.getAttribute('aria-valuetext')).toMatch(/^5° after firing top dead centre of cylinder \d/);
    expect(await drawn()).not.toBe(before);
  });

  it('comes back to the same drawing after a whole cycle of 720 degrees', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(engine);
    const drawn = () => page.locator('.drawing-svg').innerHTML();
    await page.getByRole('button', { name: '+90°' }).click();
    const before = await drawn();
    for (let i = 0; i < 7; i++) await page.getByRole('button', { name: '+90°' }).click();
    expect(await drawn()).not.toBe(before);
    await page.getByRole('button', { name: '+90°' }).click();
    expect(await drawn()).toBe(before);
  });

  it('turns slowly by itself where motion is welcome, and not where the device asks for stillness', async () => {
    const moving = await bench.device(laptop);
    await moving.page.goto(engine);
    await moving.page.getByRole('button', { name: 'Turn slowly' }).click();
    const words = () => moving.page.locator('output').textContent();
    const before = await words();
    await moving.page.waitForTimeout(400);
    expect(await words()).not.toBe(before);
    const still = await bench.device(laptop, { stillness: true });
    await still.page.goto(engine);
    await still.page.getByText('asks for no motion').waitFor();
    expect(await still.page.getByRole('button', { name: 'Turn slowly' }).count()).toBe(0);
  });

  it('says where there is no such engine', async () => {
    const { page } = await bench.device(phone);
    await page.goto('/engine/never-made');
    await page.getByRole('heading', { name: 'There is no readable sheet for this engine.' }).waitFor();
    await page.getByRole('link', { name: 'All engines', exact: true }).click();
    await page.getByRole('heading', { name: 'Engines on their stands' }).waitFor();
  });
});
