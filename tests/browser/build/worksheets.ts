/** Worksheets: a few are read, and the others of an operation are left out at once, with one reason. */
import type { Locator } from 'playwright-core';
import { type Site, toTheStep } from './site.js';

/** What the gauge shows, by feature; the others are not read on this engine. */
export const READ: Readonly<Record<string, string>> = {
  'crank-end-float': '0.20',
  'cylinder-bore': '80.011',
  'piston-skirt': '79.950',
  'ring-gap-top': '0.30',
  'ring-gap-second': '0.31',
};
export const REASON = 'not measured on this engine';

/** One figure after the other until the sheet is read. */
export async function fillWorksheet(site: Site, feature: string): Promise<void> {
  const { page } = site.hand;
  await toTheStep(site, '[data-slot], .finished');
  while ((await page.locator('.finished').count()) === 0) {
    const slot = await page.locator('[data-slot]').getAttribute('data-slot');
    await site.hand.figure(READ[feature] ?? '');
    await page.waitForFunction(
      (was) =>
        document.querySelector('.finished, [role="alertdialog"]') !== null ||
        document.querySelector<HTMLElement>('[data-slot]')?.dataset.slot !== was,
      slot,
    );
  }
}

/** From the bench to its operation; there, to a sheet that is read, else all that are still open are left out. Returns what was left out, or nothing. */
export async function leaveOutSheets(site: Site, operation: string): Promise<void> {
  const { hand, book } = site;
  const { page } = hand;
  await hand.press(page.getByRole('link', { name: 'All of this operation' }));
  await page.waitForURL(new RegExp(`/work/${operation}$`));
  const wanted = book.standing.ready.find(
    ({ act }) => act.operation === operation && act.subject?.kind === 'worksheet' && act.subject.feature in READ,
  );
  if (wanted !== undefined) {
    const row = page.locator(`details[data-act="${wanted.act.id}"]`);
    await hand.press(row.locator('summary').first());
    await hand.press(row.getByRole('link', { name: 'To the bench' }));
    await page.waitForURL(/\/bench\//);
    return;
  }
  const many = page.locator('details', { hasText: /^Leave out all \d+ worksheets/ });
  await hand.press(many.locator('summary'));
  await reason(site, many);
  await many.waitFor({ state: 'detached' });
  await hand.press(page.getByRole('link', { name: 'The whole work' }).first());
  await page.locator('[data-begin]').waitFor();
  await hand.press(page.locator('[data-begin]'));
  await page.waitForURL(/\/bench\//);
}

/** A single one is left out at the bench. */
export async function leaveOutOne(site: Site): Promise<void> {
  const { hand } = site;
  const one = hand.page.locator('details', { hasText: 'Leave this one out' });
  await hand.press(one.locator('summary'));
  await hand.press(one.getByRole('button', { name: 'does not apply here' }));
  await hand.press(one.getByRole('button', { name: 'Leave it out' }));
}

async function reason({ hand }: Site, form: Locator): Promise<void> {
  await hand.press(form.getByRole('button', { name: REASON }));
  await hand.press(form.getByRole('button', { name: /^Leave out these \d+$/ }));
}
