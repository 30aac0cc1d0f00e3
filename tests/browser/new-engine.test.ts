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

// Accessibility: WCAG 2.2 as checked by axe-core, with the 7:1 contrast of 1.4.6.
describe('putting an engine on a stand', () => {
  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])('starts from a copied sheet and ends at the engine on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    await page.goto('/new');
    await page.getByRole('button', { name: 'Copy this sheet: Quernside 51, pushrod V8' }).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Copy this sheet: Quernside 51, pushrod V8' }).click();
    await page.getByLabel('Name of this engine').fill(`Stand ${name}`);
    await page.keyboard.press('Tab');
    await page.getByRole('heading', { name: 'The sheet can be read' }).waitFor();
    expect(await page.getByLabel('Text of the sheet').inputValue()).toContain(`name: Stand ${name}`);
    await picture(page, `new-engine-${name}`, true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    await page.getByRole('button', { name: 'Put this engine on a stand' }).click();
    await page.waitForURL(/\/engine\/[0-9a-f-]{36}$/);
    await page.getByRole('heading', { name: `Stand ${name}`, level: 1 }).waitFor();
    await page.getByText('All entries saved').waitFor();
    expectQuiet(device);
  });

  it('names the line and the reason of a fault while the sheet is typed, and goes there', async () => {
    const { page } = await bench.device(laptop);
    await page.goto('/new');
    await page.getByRole('button', { name: 'Copy this sheet: Quernside 51, pushrod V8' }).click();
    const text = page.getByLabel('Text of the sheet');
    const sheet = await text.inputValue();
    const spoilt = sheet.replace(/^( *bore:.*?)(\d[\d.]*) mm/m, '$1$2');
    expect(spoilt).not.toBe(sheet);
    const line = sheet.split('\n').findIndex((each, at) => each !== spoilt.split('\n')[at]) + 1;
    await text.fill(spoilt);
    const fault = page.locator('.fault-line').first();
    await page.getByRole('heading', { name: /to mend before/ }).waitFor();
    expect(await fault.textContent()).toMatch(new RegExp(`^Line ${line}\\b`));
    await picture(page, 'new-engine-fault');
    expect(await accessibilityFaults(page)).toEqual([]);
    await fault.click();
    const selected = await text.evaluate((area: HTMLTextAreaElement) =>
      area.value.slice(area.selectionStart, area.selectionEnd),
    );
    expect(selected).toBe(spoilt.split('\n')[line - 1]);
    await page.getByRole('button', { name: 'Put this engine on a stand' }).click({ force: true });
    expect(new URL(page.url()).pathname).toBe('/new');
    await page.getByText('to mend first').waitFor();
  });

  it('opens a sheet file from the device', async () => {
    const { page } = await bench.device(phone);
    await page.goto('/new');
    await page.getByLabel('A sheet file (YAML) from this device').setInputFiles({
      name: 'own.yaml',
      mimeType: 'text/yaml',
      buffer: Buffer.from(
        'gudgeon: 1\nname: Own single\ninvented: true\nlayout: { form: inline, cylinders: [1], firingOrder: [1] }\n',
      ),
    });
    await page.getByRole('heading', { name: 'The sheet can be read' }).waitFor();
    await page.getByRole('button', { name: 'Put this engine on a stand' }).click();
    await page.getByRole('heading', { name: 'Own single', level: 1 }).waitFor();
  });

  it('marks a changed figure with its new origin, because the printed one belonged to the old figure', async () => {
    const { page } = await bench.device(laptop);
    await page.goto('/new');
    await page.getByRole('button', { name: 'Copy this sheet: Quernside 51, pushrod V8' }).click();
    await page.getByLabel('Bore', { exact: true }).fill('102.50 mm');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'The sheet can be read' }).waitFor();
    expect(await page.getByLabel('Text of the sheet').inputValue()).toMatch(/bore:.*102\.50 mm.*from: measured/);
  });

  it('records nothing before a person has given a name', async () => {
    const { page } = await bench.device(phone, { person: '' });
    await page.goto('/new');
    await page.getByRole('button', { name: 'Copy this sheet: Quernside 51, pushrod V8' }).click();
    await page.getByRole('heading', { name: 'The sheet can be read' }).waitFor();
    await page.getByRole('button', { name: 'Put this engine on a stand' }).click({ force: true });
    await page.getByText('First say who works at this device').waitFor();
    expect(new URL(page.url()).pathname).toBe('/new');
  });
});
