/** The rules by which an entry may join the log, written once for every store. */
import type { Envelope } from '@gudgeon/core/record';
import type { AppendFault } from './append-fault.js';

/** What a store must be able to look up while it adds a batch, including the entries added just before. */
export interface Ledger {
  readonly entryWithId: (id: string) => HeldEntry | undefined;
  /** The device's latest entry in the job. */
  readonly tip: (job: string, device: string) => ChainTip | undefined;
  readonly idAtCounter: (job: string, device: string, counter: number) => string | undefined;
}
export interface HeldEntry {
  readonly sequence: number;
  readonly receivedAt: string;
  readonly hash: string;
}
export interface ChainTip {
  readonly counter: number;
  readonly hash: string;
}
export type Admission =
  | { readonly kind: 'new' }
  | { readonly kind: 'duplicate'; readonly held: HeldEntry }
  | { readonly kind: 'refused'; readonly fault: AppendFault };

/** `previous` of a device's first entry in a job. */
export const START_OF_CHAIN = '0'.repeat(64);

/** Decides whether an entry is new, held already, or refused. */
export function admit(entry: Envelope, index: number, ledger: Ledger): Admission {
  const held = ledger.entryWithId(entry.id);
  if (held?.hash === entry.hash) return { kind: 'duplicate', held };
  const fault = held ? reused(entry, index, held) : chainFault(entry, index, ledger);
  return fault ? { kind: 'refused', fault } : { kind: 'new' };
}

const place = (entry: Envelope, index: number) => ({ index, id: entry.id, job: entry.job, device: entry.device });

function reused(entry: Envelope, index: number, held: HeldEntry): AppendFault {
  return { code: 'id-reused', ...place(entry, index), heldHash: held.hash, givenHash: entry.hash };
}

function chainFault(entry: Envelope, index: number, ledger: Ledger): AppendFault | undefined {
  const tip = ledger.tip(entry.job, entry.device);
  const expected = (tip?.counter ?? 0) + 1;
  const previous = tip?.hash ?? START_OF_CHAIN;
  const at = place(entry, index);
  if (entry.counter !== expected) {
    const heldBy = ledger.idAtCounter(entry.job, entry.device, entry.counter);
    if (heldBy !== undefined) return { code: 'counter-taken', ...at, given: entry.counter, expected, heldBy };
    return { code: 'counter-gap', ...at, expected, given: entry.counter };
  }
  if (entry.previous === previous) return undefined;
  return { code: 'chain-broken', ...at, counter: expected, expected: previous, given: entry.previous };
}
