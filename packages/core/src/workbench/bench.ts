/** Engine and log together: what every view is computed from. */
import type { Engine } from '../engine/index.js';
import type { Fact } from '../plan/index.js';
import { foldEntries, type LogEntry, type RecordState, refold } from '../record/index.js';
import type { Given } from './views.js';

export interface Bench {
  readonly engine: Engine;
  readonly state: RecordState;
  readonly facts: readonly Fact[];
  readonly entries: ReadonlyMap<string, LogEntry>;
}

/**
 * Folds the log once; every view of one moment shares the result. With the bench of a moment ago only what is new is read, and where
 * nothing is, as when a server has confirmed what was written, that bench is the answer.
 */
export function openBench(engine: Engine, entries: readonly LogEntry[], before?: Bench): Bench {
  const state = before ? refold(before.state, entries, engine) : foldEntries(entries, engine);
  const goesOn = before !== undefined && before.engine === engine && saysTheSame(before.state, state);
  if (goesOn && state.entries.length === before.state.entries.length) return before;
  return { engine, state, facts: state.facts, entries: goesOn ? withNew(before, state) : byId(entries) };
}
const byId = (entries: readonly LogEntry[]) => new Map(entries.map((entry) => [entry.id, entry]));
function withNew({ entries, state }: Bench, after: RecordState): Bench['entries'] {
  const all = new Map(entries);
  for (const { entry } of after.entries.slice(state.entries.length)) all.set(entry.id, entry);
  return all;
}

/** Whether everything that was read before still stands as it stood. */
const saysTheSame = ({ entries }: RecordState, after: RecordState): boolean =>
  entries.length <= after.entries.length &&
  entries.every((one, at) => {
    const other = after.entries[at]!;
    return one === other || (one.reading === other.reading && one.struck === other.struck);
  });

/** "2026-11-25 10:04": the local time of the device that wrote the entry, without its offset. */
export const shownTime = (at: string): string => at.slice(0, 16).replace('T', ' ');

/** Who and when of an entry; undefined for a fact without one. */
export function givenBy(bench: Bench, entry: string | undefined): Given | undefined {
  const envelope = entry === undefined ? undefined : bench.entries.get(entry);
  return envelope && { by: envelope.person, at: shownTime(envelope.at), entry: envelope.id };
}
