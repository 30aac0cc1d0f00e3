import type { Outcome } from '@gudgeon/core/quantity';
import type { Envelope, StoredEnvelope } from '@gudgeon/core/record';
import type { AppendReply, JobReply } from '@gudgeon/server/api';
import type { ApiFault } from '../api/index.js';
import { type ChainEnd, chainEnd, confirmedFrom, emptyJob, type JobState, withConfirmed } from './job-state.js';

/** Everything of the outside world that a job's log on this device touches. */
export interface Wires {
  readonly read: (job: string) => Promise<Outcome<JobReply, ApiFault>>;
  readonly append: (job: string, entries: readonly Envelope[]) => Promise<Outcome<AppendReply, ApiFault>>;
  /** Opens the live stream; returns what closes it. */
  readonly live: (job: string, after: number, on: (entry: StoredEnvelope) => void) => () => void;
  readonly readOutbox: (job: string) => readonly Envelope[];
  readonly keepInOutbox: (job: string, entry: Envelope) => boolean;
  readonly dropFromOutbox: (job: string, ids: Iterable<string>) => void;
  /** End of this device's chain, shared by all pages of this browser. */
  readonly readEnd: (job: string) => ChainEnd | undefined;
  readonly writeEnd: (job: string, end: ChainEnd) => void;
  readonly later: (milliseconds: number, run: () => void) => void;
  /** Runs something after what was just written stands on the screen. */
  readonly afterFrame: (run: () => void) => void;
  readonly device: () => string;
  /** Completes an entry with id, time, person and hash. */
  readonly seal: (draft: Draft & { job: string; device: string; counter: number; previous: string }) => Envelope;
}
export interface Draft {
  readonly kind: string;
  readonly data: unknown;
  readonly raw?: string;
  readonly instrument?: string;
}
export interface JobStore {
  readonly get: () => JobState;
  readonly subscribe: (tell: () => void) => () => void;
  readonly write: (draft: Draft) => Outcome<Envelope, string>;
  readonly reload: () => void;
}
/** Entries sent at once: a whole engine measured without a server goes in several loads, each well under what a server takes. */
const AT_ONCE = 200;
const waits = [1000, 2000, 5000, 10_000, 30_000];

/** The log of one job as this device sees it: what the server has, what only this device has, and the copying between. */
export function jobStore(job: string, wires: Wires): JobStore {
  let state: JobState = { ...emptyJob, waiting: wires.readOutbox(job) };
  let sending = false;
  let tries = 0;
  let closeLive = () => {};
  const listeners = new Set<() => void>();

  const set = (next: JobState) => {
    if (next === state) return;
    state = next;
    for (const tell of listeners) tell();
  };
  const confirm = (confirmed: readonly StoredEnvelope[]) => {
    // Only these leave the outbox: another page of this browser may have put more into it.
    wires.dropFromOutbox(
      job,
      confirmed.map((e) => e.id),
    );
    set(withConfirmed(state, confirmed));
  };
  const withoutTrouble = ({ trouble: _, ...rest }: JobState): JobState => rest;

  const send = async () => {
    if (sending || state.waiting.length === 0) return;
    sending = true;
    const batch = state.waiting.slice(0, AT_ONCE);
    const answer = await wires.append(job, batch);
    sending = false;
    if (answer.ok) {
      tries = 0;
      confirm(confirmedFrom(batch, answer.value.accepted));
      set(withoutTrouble(state));
      if (batch.some(changesSheet)) await load();
      void send();
      return;
    }
    set({ ...state, trouble: answer.fault.words });
    // A refusal by the server stays a refusal; only silence is worth asking again by itself.
    if (answer.fault.code === 'no-server')
      wires.later(waits[Math.min(tries++, waits.length - 1)] ?? 30_000, () => void send());
  };

  const onLive = (entry: StoredEnvelope) => {
    confirm([entry]);
    if (changesSheet(entry)) void load();
  };
  const load = async () => {
    const answer = await wires.read(job);
    if (!answer.ok) {
      const unknown = answer.fault.code === 'no-such-job';
      set({
        ...state,
        status: state.engine ? 'ready' : unknown ? 'no-sheet' : 'no-server',
        trouble: answer.fault.words,
      });
      return;
    }
    const { engine, sheetText, sheetFaults, entries } = answer.value;
    confirm(entries);
    const { engine: _, sheetText: __, ...rest } = withoutTrouble(state);
    set({
      ...rest,
      status: engine ? 'ready' : 'no-sheet',
      sheetFaults,
      ...(engine ? { engine } : {}),
      ...(sheetText === undefined ? {} : { sheetText }),
    });
    listen();
    void send();
  };
  /** The live stream is open only while a screen looks: a browser allows few open streams to one server. */
  const listen = () => {
    closeLive();
    closeLive = () => {};
    if (listeners.size > 0 && state.status !== 'loading')
      closeLive = wires.live(job, state.entries.at(-1)?.sequence ?? 0, onLive);
  };

  const write = (draft: Draft): Outcome<Envelope, string> => {
    const device = wires.device();
    // Another page of this browser may have added to the outbox since.
    const waiting = mergeById(state.waiting, wires.readOutbox(job));
    const end = furthest(chainEnd({ ...state, waiting }, device), wires.readEnd(job));
    const entry = wires.seal({ ...draft, job, device, counter: end.counter + 1, previous: end.hash });
    // A server takes no entry that names nobody, and all those behind it would wait for ever.
    if (entry.person.trim() === '')
      return {
        ok: false,
        fault: 'Nobody is named at this device yet, so nothing was recorded. Say who works here first.',
      };
    if (!wires.keepInOutbox(job, entry))
      return {
        ok: false,
        fault:
          'This device has no room left to keep the entry. Nothing was recorded. Free some storage, then record again.',
      };
    wires.writeEnd(job, { counter: entry.counter, hash: entry.hash });
    set({ ...state, waiting: [...waiting, entry] });
    wires.afterFrame(() => void send());
    return { ok: true, value: entry };
  };

  return {
    get: () => state,
    subscribe: (tell) => {
      listeners.add(tell);
      if (listeners.size === 1) listen();
      return () => {
        listeners.delete(tell);
        if (listeners.size === 0) listen();
      };
    },
    write,
    reload: () => void load(),
  };
}

/** The server reads the engine from the sheet that counts, so these entries ask for it anew. */
const changesSheet = (entry: Envelope): boolean => entry.kind === 'sheet-adopted' || entry.kind === 'struck-out';

const furthest = (one: ChainEnd, other: ChainEnd | undefined): ChainEnd =>
  other && other.counter > one.counter ? other : one;

function mergeById(ours: readonly Envelope[], theirs: readonly Envelope[]): readonly Envelope[] {
  const known = new Set(ours.map((e) => e.id));
  return [...ours, ...theirs.filter((e) => !known.has(e.id))].sort((a, b) => a.counter - b.counter);
}
