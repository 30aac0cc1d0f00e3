import type { WorkFact, WorkFactKind } from '../../plan/index.js';
import type { ReadEntry } from '../../record/index.js';
import type { Bench } from '../bench.js';

/** The kinds of the log that are facts of the work as they stand. */
const RECORDED: ReadonlySet<string> = new Set<WorkFactKind>([
  'work-act-done',
  'work-act-skipped',
  'work-reopened',
  'second-look',
  'mock-up-aid-out',
  'mock-up-aid-returned',
  'work-begun',
  'work-act-added',
  'work-act-critical',
  'work-left',
  'work-resumed',
  'work-signed-off',
]);

/** An entry about the work as the plan reads it; undefined for any other, and for one that is struck out. */
export function recordedFact({ entry, reading, struck }: ReadEntry): WorkFact | undefined {
  if (struck !== undefined || !reading.understood || !RECORDED.has(reading.known.kind)) return undefined;
  return { ...reading.known, at: entry.at, by: entry.person, entry: entry.id } as WorkFact;
}

/** What the person made of the plan: acts put in, acts held for critical. */
export const ownFacts = ({ state }: Bench): readonly WorkFact[] =>
  state.entries.flatMap((one) => {
    if (!one.reading.understood) return [];
    const { kind } = one.reading.known;
    if (kind !== 'work-act-added' && kind !== 'work-act-critical') return [];
    const fact = recordedFact(one);
    return fact === undefined ? [] : [fact];
  });
