/** The invented single on a stand, and what has to be true once it is signed. */
import { readFileSync } from 'node:fs';
import { valveKey } from '@gudgeon/core/engine';
import { NO_PREVIOUS, sealEntry } from '@gudgeon/core/record';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { engineOf, SHEETS } from '../../../packages/core/src/workbench/bench.suite.js';
import { sendEntries } from '../../send.js';
import { SIGNATURE } from './at-the-bench.js';
import { Book } from './book.js';
import { JOB, type Site } from './site.js';
import { READ } from './worksheets.js';

/** Only the sheet is put there by a request; all else goes through the screens. */
export async function standTheSingle(address: string): Promise<Book> {
  const text = readFileSync(new URL(`../../../sheets/${SHEETS.single}.yaml`, import.meta.url), 'utf8');
  const adopted = sealEntry(
    {
      id: '01900000-0000-7000-8000-000000000001',
      job: 'job',
      device: 'stand',
      counter: 1,
      at: new Date().toISOString().replace('Z', '+00:00'),
      person: 'Ada',
      version: 1,
      kind: 'sheet-adopted',
      data: { name: 'skelbeck', text, reason: 'put on the stand' },
    },
    NO_PREVIOUS,
  );
  await sendEntries(address, [adopted]);
  const book = new Book(address, engineOf(SHEETS.single));
  await book.read();
  return book;
}

/** A picture as a phone's camera hands it over. */
export async function somePicture(page: Page): Promise<Buffer> {
  const jpeg = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 64;
    canvas.height = 48;
    canvas.getContext('2d')?.fillRect(8, 8, 40, 20);
    return canvas.toDataURL('image/jpeg').split(',')[1] ?? '';
  });
  return Buffer.from(jpeg, 'base64');
}

/** Every act is done or left out with a reason, every joint, valve and sheet by its own screen, and the log holds. */
export async function expectWhole(site: Site, address: string): Promise<void> {
  const { book, hand } = site;
  const { engine, standing } = book;
  await book.expectKept();
  expect(standing.waiting).toEqual([]);
  expect(standing.looksOwed).toEqual([]);
  for (const { act, state } of standing.stands.values())
    if (state !== 'done') expect([act.id, state, act.subject?.kind]).toEqual([act.id, 'skipped', 'worksheet']);

  const walked = book.data<{ joint: string; stage: number; hole: string }>('act-done');
  for (const { id, holes, stages } of engine.joints) {
    const own = new Set(walked.filter(({ joint }) => joint === id).map(({ stage, hole }) => `${stage}/${hole}`));
    expect(own.size, id).toBe(holes.length * stages.length);
  }
  const valves = engine.heads.flatMap((head) => head.valves).length;
  for (const kind of ['valve-set', 'valve-rechecked', 'oil-seen'])
    expect(
      new Set(book.data<{ valve: Parameters<typeof valveKey>[0] }>(kind).map(({ valve }) => valveKey(valve))).size,
    ).toBe(valves);
  const sheets = book.data<{ slot: string }>('measured').map(({ slot }) => slot.split('/')[0]);
  expect(new Set(sheets)).toEqual(new Set(Object.keys(READ)));
  const answered = book.data<{ act: string }>('work-act-done').map(({ act }) => act);
  expect(answered.filter((act) => book.answeredBy(act) !== undefined)).toEqual([]);
  expect(book.entries.filter(({ device }) => device === 'stand')).toHaveLength(1);

  await hand.page.goto(`${JOB}/record`);
  await hand.page.getByText(SIGNATURE).first().waitFor();
  const verified = await fetch(`${address}/api/jobs/job/verify`);
  expect(await verified.json()).toMatchObject({ sound: true, problems: [] });
}
