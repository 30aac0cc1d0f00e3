/** What a record tells about the running engine, as facts with the time and the hand of their entries. */
import { RUNNING_FACT_KINDS, type RunningFact } from '../plan/running/facts.js';
import type { RecordState } from './state.js';

const KINDS: ReadonlySet<string> = new Set(RUNNING_FACT_KINDS);
const kept = new WeakMap<RecordState, readonly RunningFact[]>();

/** In the order of the log; what was struck out or is not understood counts for nothing. A state never changes, so its answer is kept. */
export function runningFacts(state: RecordState): readonly RunningFact[] {
  const known = kept.get(state);
  if (known !== undefined) return known;
  const facts = state.entries.flatMap(({ entry, reading, struck }): readonly RunningFact[] => {
    if (!reading.understood || struck !== undefined || !KINDS.has(reading.known.kind)) return [];
    return [{ ...reading.known, at: entry.at, by: entry.person, entry: entry.id } as RunningFact];
  });
  kept.set(state, facts);
  return facts;
}
