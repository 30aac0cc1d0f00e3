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
const record = '/engine/invented-demonstration/record';

describe('the record', () => {
  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])(
    'shows value, limit, source, who and when of every act on a %s',
    async (name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      await page.goto(record);
      await page.getByRole('heading', { name: 'Tightening, act by act' }).waitFor();
      const row = page.getByRole('row', { name: /left head.*hole 1, stage 1/ }).first();
      const cells = await row.getByRole('cell').allTextContents();
      expect(cells).toHaveLength(6);
      expect(cells[1]).toMatch(/reached/);
      expect(cells[2]).toMatch(/24 N·m/);
      expect(cells[3]).toMatch(/Quernside Works book 51/);
      expect(cells[4]).not.toBe('');
      expect(cells[5]).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d/);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      await picture(page, `record-${name}`);
      await picture(page, `record-whole-${name}`, true);
      expectQuiet(device);
    },
    180_000,
  );

  it('never looks more complete than it is: open work stands in its section', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(record);
    const valves = page.getByRole('region', { name: 'Valves, as set' });
    await valves.getByText('0 of 16 valves set').waitFor();
  });

  it('keeps a struck line readable with its reason, by keyboard alone', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await page.goto(record);
    const strike = page.getByRole('button', { name: /^Strike out: .*right head.*hole 1, stage 1/ });
    await strike.focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('Why is this line wrong?').focus();
    await page.keyboard.press('Enter');
    await page.getByText('Say why; a reason is needed here.').waitFor();
    await page.keyboard.type('wrench was set to the wrong unit');
    await page.keyboard.press('Enter');
    await page.getByText('struck out: wrench was set to the wrong unit').waitFor();
    await page.reload();
    await page.getByText('struck out: wrench was set to the wrong unit').waitFor();
    expect(await page.locator('del', { hasText: 'hole 1, stage 1' }).count()).toBeGreaterThan(0);
    expectQuiet(device);
  });

  it('prints black on white, without bars and buttons', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(record);
    await page.getByRole('heading', { name: 'Tightening, act by act' }).waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    expect(await page.locator('.shell-bar').isVisible()).toBe(false);
    await page.setViewportSize({ width: 794, height: 1123 });
    await picture(page, 'record-print');
    const [ink, ground] = await page
      .locator('.record-table td')
      .first()
      .evaluate((e) => [getComputedStyle(e).color, getComputedStyle(document.documentElement).backgroundColor]);
    expect([ink, ground]).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    expect(await page.locator('button:visible, textarea:visible, input:visible').count()).toBe(0);
  });

  // CSS 2.2, section 17.2: a header group is repeated by a printing browser at the top of each page that the table spans.
  it('repeats the head of a table on every page, and never breaks a row', async () => {
    const { page } = await bench.device(phone);
    await page.goto(record);
    await page.getByRole('heading', { name: 'Tightening, act by act' }).waitFor();
    await page.emulateMedia({ media: 'print' });
    const [head, row, cell] = await page.evaluate(() => {
      const style = (selector: string) => getComputedStyle(document.querySelector(selector) as Element);
      return [
        style('.record-table thead').display,
        style('.record-table tbody tr').breakInside,
        style('.record-table td').display,
      ];
    });
    expect([head, row, cell]).toEqual(['table-header-group', 'avoid', 'table-cell']);
    const pdf = await page.pdf({ format: 'A4' });
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(2);
  });

  it('prints black on white even where the screen is dark', async () => {
    const { page, context } = await bench.device(laptop);
    await context.addInitScript(() => localStorage.setItem('gudgeon.settings', JSON.stringify({ theme: 'black' })));
    await page.goto(record);
    await page.getByRole('heading', { name: 'Tightening, act by act' }).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ media: 'print' });
    const [ink, ground] = await page
      .locator('.record-table td')
      .first()
      .evaluate((e) => [getComputedStyle(e).color, getComputedStyle(document.documentElement).backgroundColor]);
    expect([ink, ground]).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  });

  it('strikes a line by touch alone, the reason well apart from the way back', async () => {
    const device = await bench.device(phone, { touch: true });
    const { page } = device;
    await page.goto(record);
    await page.getByRole('button', { name: /^Strike out: pushrod of cylinder 8 exhaust, tagged/ }).tap();
    await picture(page, 'record-strike-phone');
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'pressed by mistake' }).tap();
    await page.getByRole('button', { name: 'Strike it out' }).tap();
    await page.getByText('struck out: pressed by mistake').waitFor();
    expectQuiet(device);
  });

  it('can be saved as one file that stands by itself', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(record);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as one file' }).click(),
    ]);
    const html = readFileSync(await download.path(), 'utf8');
    expect(html).toContain('Record of Quernside 51');
    expect(html).toContain('24 N·m');
    expect(html).not.toMatch(/<script|https?:\/\//);
  });

  it('shows a changed head code after any new entry', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(record);
    const code = page.locator('.record-code');
    const before = await code.textContent();
    expect(before).toMatch(/^[0-9A-Z]{4}(-[0-9A-Z]{4}){3}$/);
    await page.getByLabel('Add a note').fill('dowel of the right head replaced');
    await page.getByRole('button', { name: 'Keep the note' }).click();
    await page.getByText('dowel of the right head replaced').waitFor();
    expect(await code.textContent()).not.toBe(before);
  });
});
