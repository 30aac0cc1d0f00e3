/** An engine of the library on a stand, as a person puts it there. */
import type { Page } from 'playwright-core';

export const engines = {
  v8: 'Quernside 51, pushrod V8',
  six: 'Tollbarrow 6W, wet-liner diesel six',
  four: 'Pellgarth T4, twin-cam four',
} as const;

/** Copies a sheet, begins the job and returns its address. */
export async function standSheet(page: Page, name: string): Promise<string> {
  await page.goto('/new');
  await page.getByRole('button', { name: `Copy this sheet: ${name}` }).click();
  await page.getByRole('heading', { name: 'The sheet can be read' }).waitFor();
  await page.getByRole('button', { name: 'Put this engine on a stand' }).click();
  await page.waitForURL(/\/engine\/[0-9a-f-]{36}$/);
  return new URL(page.url()).pathname;
}

/** Opens a screen of the job and reads its cautions, where it shows any. */
export async function openBegun(page: Page, address: string): Promise<void> {
  await page.goto(address);
  const begin = page.getByRole('button', { name: 'Read. Begin' });
  await begin.click();
}
