/** Fills an empty log with one invented job, so that a person who starts the program for the first time sees it at work. */
import type { Engine } from '@gudgeon/core/engine';
import { loadSheet } from '@gudgeon/core/engine/load';
import type { Envelope } from '@gudgeon/core/record';
import { decisionsAt, openBench, proposeDecided } from '@gudgeon/core/workbench';
import { describeAppendFault, type Store } from '@gudgeon/store';
import type { SheetLibrary } from '../sheets/library.js';
import { sayAnswered } from './answered.js';
import { measuredStory } from './measured.js';
import { type Said, Sealer } from './sealer.js';
import { topEndHalfWay } from './story.js';

export { DEMONSTRATION_JOB } from './sealer.js';

const SHEET = 'quernside-51-v8';
/** The one decision that was taken; the others wait for the person who tries the program. */
const DECIDED = { decision: 'bore-oversize', scope: 'all', reason: 'as recommended; the owner agrees' };

/**
 * Does nothing when the log holds any job already, or when the sheet is not among those given. A demonstration that cannot be made is
 * told to `tell` in one line and left out whole: nobody is kept from their own work by it.
 */
export async function writeDemonstration(
  store: Store,
  sheets: SheetLibrary,
  tell: (line: string) => void,
  make = demonstrationEntries,
): Promise<void> {
  const text = sheets.textOf(SHEET);
  if (text === undefined || (await store.jobs()).length > 0) return;
  const entries = madeOrTold(() => make(text), tell);
  if (entries === undefined) return;
  const result = await store.append(entries);
  if (!result.ok) tell(leftOut(describeAppendFault(result.fault)));
}

const leftOut = (why: string): string => `The invented demonstration is left out: ${why}`;

function madeOrTold(make: () => readonly Envelope[], tell: (line: string) => void): readonly Envelope[] | undefined {
  try {
    return make();
  } catch (error) {
    const [first = ''] = (error instanceof Error ? error.message : String(error)).split('\n');
    tell(leftOut(first));
    return undefined;
  }
}

/** The sealed entries of the demonstration, the same on every call. Empty when the sheet has faults. */
export function demonstrationEntries(sheetText: string): readonly Envelope[] {
  const loaded = loadSheet(sheetText);
  if (!loaded.ok) return [];
  const { name } = loaded.value;
  const sealer = new Sealer();
  sealer.say([
    { kind: 'sheet-adopted', data: { name, text: sheetText, reason: 'Invented demonstration: try anything on it.' } },
    { kind: 'note', data: { about: 'job', text: 'Everything in this job is invented: engine, person and work.' } },
  ]);
  sayAnswered(loaded.value, sealer, measuredStory(loaded.value, sealer.chance));
  sealer.say(decidedStory(loaded.value, sealer.entries));
  sealer.sleep(1);
  sealer.say(topEndHalfWay(loaded.value));
  return sealer.entries;
}

/** The decision as a person takes it from the screen: with the figures that the readings give. */
function decidedStory(engine: Engine, entries: readonly Envelope[]): readonly Said[] {
  const bench = openBench(engine, entries);
  const shown = decisionsAt(bench, { length: 'mm' });
  const recommended = shown.find((one) => one.id === DECIDED.decision && one.scope === DECIDED.scope)?.recommended;
  if (recommended === undefined) return [];
  const proposal = proposeDecided(bench, shown, { ...DECIDED, alternative: recommended });
  if (!proposal.ok) throw new Error(`The demonstration decides what is not offered: ${proposal.fault}`);
  return proposal.value;
}
