import type { Engine } from '@gudgeon/core/engine';
import type { Envelope, StoredEnvelope } from '@gudgeon/core/record';
import type { Accepted, JobReply } from '@gudgeon/server/api';

export interface JobState {
  readonly status: 'loading' | 'ready' | 'no-server' | 'no-sheet';
  readonly engine?: Engine;
  readonly sheetText?: string;
  readonly sheetFaults: JobReply['sheetFaults'];
  /** Confirmed by the server, in its order. */
  readonly entries: readonly StoredEnvelope[];
  /** On this device only, in the order in which they were made. */
  readonly waiting: readonly Envelope[];
  /** One line when something is wrong with the copying. */
  readonly trouble?: string;
}
export const emptyJob: JobState = { status: 'loading', sheetFaults: [], entries: [], waiting: [] };

/** Adds entries that the server has confirmed; each id stands once, and none of them waits any longer. */
export function withConfirmed(state: JobState, confirmed: readonly StoredEnvelope[]): JobState {
  const last = state.entries.at(-1)?.sequence ?? 0;
  const behind = confirmed.every((e) => e.sequence > last);
  const known = behind ? undefined : new Set(state.entries.map((e) => e.id));
  const fresh = confirmed.filter((e) => !known?.has(e.id));
  if (fresh.length === 0) return state;
  const ids = new Set(fresh.map((e) => e.id));
  return {
    ...state,
    entries: [...state.entries, ...fresh].sort((a, b) => a.sequence - b.sequence),
    waiting: state.waiting.filter((e) => !ids.has(e.id)),
  };
}

/** Waiting entries that the server has just taken, as they now stand in its log. */
export function confirmedFrom(waiting: readonly Envelope[], accepted: readonly Accepted[]): readonly StoredEnvelope[] {
  return accepted.flatMap(({ id, sequence, receivedAt }) => {
    const entry = waiting.find((e) => e.id === id);
    return entry ? [{ ...entry, sequence, receivedAt }] : [];
  });
}

/** All entries in the order in which they count: confirmed ones first, then those that wait, as if they came next. */
export function allEntries(state: JobState): readonly StoredEnvelope[] {
  const last = state.entries.at(-1)?.sequence ?? 0;
  return [...state.entries, ...state.waiting.map((e, i) => ({ ...e, sequence: last + 1 + i, receivedAt: e.at }))];
}

/** Where a device's chain ends: its highest counter and that entry's hash. */
export interface ChainEnd {
  readonly counter: number;
  readonly hash: string;
}
export function chainEnd(state: JobState, device: string): ChainEnd {
  const start: ChainEnd = { counter: 0, hash: '0'.repeat(64) };
  let end = start;
  for (const log of [state.entries, state.waiting])
    for (const { device: by, counter, hash } of log)
      if (by === device && counter > end.counter) end = { counter, hash };
  return end;
}
