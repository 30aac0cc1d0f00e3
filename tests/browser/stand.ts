/** An engine on a stand, put there by one request; what a person does for it stands in new-engine.test.ts. */
import { randomUUID } from 'node:crypto';
import { NO_PREVIOUS, sealEntry } from '@gudgeon/core/record';
import type { SheetReply, SheetsReply } from '@gudgeon/server/api';
import type { Page } from 'playwright-core';

export const engines = {
  v8: 'Quernside 51, pushrod V8',
  six: 'Tollbarrow 6W, wet-liner diesel six',
  four: 'Pellgarth T4, twin-cam four',
} as const;

/** Begins a job with this sheet and returns the address of its page. The page itself is not touched. */
export async function stand(page: Page, text: string): Promise<string> {
  const job = randomUUID();
  const name = /^name: (.*)$/m.exec(text)?.[1] ?? 'no name';
  const adopted = sealEntry(
    {
      id: timedId(),
      job,
      device: 'stand',
      counter: 1,
      at: new Date().toISOString().replace('Z', '+00:00'),
      person: 'Ada',
      version: 1,
      kind: 'sheet-adopted',
      data: { name, text, reason: 'first sheet of this engine' },
    },
    NO_PREVIOUS,
  );
  const reply = await page.request.post(`/api/jobs/${job}/entries`, { data: { entries: [adopted] } });
  if (!reply.ok()) throw new Error(`The sheet was not taken: ${await reply.text()}`);
  return `/engine/${job}`;
}

/** UUID of version 7: the time first, then chance. */
function timedId(): string {
  const time = Date.now().toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${randomUUID().slice(15)}`;
}

/** Stands an engine of the library. */
export async function standSheet(page: Page, name: string): Promise<string> {
  const { sheets } = (await (await page.request.get('/api/sheets')).json()) as SheetsReply;
  const wanted = sheets.find((sheet) => sheet.name === name);
  if (wanted === undefined) throw new Error(`The library has no sheet "${name}".`);
  const { text } = (await (await page.request.get(`/api/sheets/${wanted.id}`)).json()) as SheetReply;
  return stand(page, text);
}

/** Stands an engine of the library as a person does; for an address that only the browser can reach. */
export async function standByHand(page: Page, name: string): Promise<string> {
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
