/** Fills an empty log with one invented job, so that a person who starts the program for the first time sees it at work. */
import { loadSheet } from '@gudgeon/core/engine/load';
import { type Envelope, NO_PREVIOUS, sealEntry } from '@gudgeon/core/record';
import { describeAppendFault, type Store } from '@gudgeon/store';
import type { SheetLibrary } from '../sheets/library.js';
import { localTime, seeded, uuidV7 } from './seeded.js';
import { topEndHalfWay } from './story.js';

export const DEMONSTRATION_JOB = 'invented-demonstration';
const SHEET = 'quernside-51-v8';
const SEED = 5341;
/** A Saturday morning in an invented shop, at UTC+1. */
const BEGIN = Date.UTC(2026, 2, 14, 7, 40);
const OFFSET_HOURS = 1;
const PERSON = 'Invented Person';
const WRENCH = 'torque wrench TW-1 (invented)';

/** Does nothing when the log holds any job already, or when the sheet is not among those given. */
export async function writeDemonstration(store: Store, sheets: SheetLibrary): Promise<void> {
  const text = sheets.textOf(SHEET);
  if (text === undefined || (await store.jobs()).length > 0) return;
  const result = await store.append(demonstrationEntries(text));
  if (!result.ok) throw new Error(describeAppendFault(result.fault));
}

/** The sealed entries of the demonstration, the same on every call. Empty when the sheet has faults. */
export function demonstrationEntries(sheetText: string): readonly Envelope[] {
  const loaded = loadSheet(sheetText);
  if (!loaded.ok) return [];
  const { name } = loaded.value;
  const facts = [
    { kind: 'sheet-adopted', data: { name, text: sheetText, reason: 'Invented demonstration: try anything on it.' } },
    { kind: 'note', data: { about: 'job', text: 'Everything in this job is invented: engine, person and work.' } },
    ...topEndHalfWay(loaded.value),
  ];
  return sealAll(facts);
}

interface Said {
  readonly kind: string;
  readonly data: unknown;
}

function sealAll(facts: readonly Said[]): Envelope[] {
  const chance = seeded(SEED);
  const sealed: Envelope[] = [];
  let clock = BEGIN;
  for (const [index, { kind, data }] of facts.entries()) {
    clock += Math.round((8 + 20 * chance()) * 1000);
    const draft = {
      id: uuidV7(clock, chance),
      job: DEMONSTRATION_JOB,
      device: 'invented-bench',
      counter: index + 1,
      at: localTime(clock, OFFSET_HOURS),
      person: PERSON,
      ...(kind === 'act-done' && { instrument: WRENCH }),
      kind,
      version: 1,
      data,
    };
    sealed.push(sealEntry(draft, sealed.at(-1)?.hash ?? NO_PREVIOUS));
  }
  return sealed;
}
