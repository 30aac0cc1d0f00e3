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

// Accessibility: WCAG 2.2 as checked by axe-core, with the 7:1 contrast of 1.4.6; reflow at the width: WCAG 1.4.10.
describe('the engines on their stands', () => {
  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])('shows each engine with its next action on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    await page.goto('/');
    await page.getByRole('heading', { name: 'Engines on their stands' }).waitFor();
    const next = page.locator('.next-link').first();
    await next.waitFor();
    expect(await next.textContent()).toMatch(/^Next.+/);
    await picture(page, `home-${name}`);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    await next.click();
    await page.waitForURL(/\/engine\/[^/]+\/[a-z]+/);
    expectQuiet(device);
  });

  it('says which engines are invented', async () => {
    const { page } = await bench.device(phone);
    await page.goto('/');
    await page.getByText('invented example').first().waitFor();
  });

  it('says plainly when the server does not answer, and finds the engines again after', async () => {
    const { page } = await bench.device(phone);
    await page.goto('/device');
    await page.getByRole('heading', { name: 'This device' }).waitFor();
    await bench.stopServer();
    await page.getByRole('link', { name: 'Gudgeon, all engines' }).click();
    await page.getByText('does not answer').waitFor();
    await bench.startServer();
    await page.reload();
    await page.locator('.next-link').first().waitFor();
  });
});

describe('this device', () => {
  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])('asks for the person by name before anything else on a %s', async (name, size) => {
    const device = await bench.device(size, { person: '' });
    const { page } = device;
    await page.goto('/device');
    await page.getByRole('button', { name: 'Use this name' }).click();
    await page.getByText('Give a name or initials').waitFor();
    await page.getByLabel('Who works at this device?').fill('Grace');
    await page.keyboard.press('Enter');
    await page.getByRole('link', { name: 'Grace' }).waitFor();
    await picture(page, `device-${name}`);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    expectQuiet(device);
  });

  it('keeps the dark screen as a choice, and it is as readable', async () => {
    const { page } = await bench.device(phone);
    await page.goto('/device');
    await page.getByText('Dark screen').click();
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe('rgb(0, 0, 0)');
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.goto('/');
    await page.locator('.next-link').first().waitFor();
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe('rgb(0, 0, 0)');
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});
