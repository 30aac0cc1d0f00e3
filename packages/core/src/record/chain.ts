/** Can the log be believed? Every device's entries form a chain; a changed or missing entry breaks it. */
import { done, type Outcome, refused } from '../quantity/outcome.js';
import type { Envelope } from './entry.js';
import { entryHash, hashOfText, NO_PREVIOUS } from './seal.js';

export interface ChainBreak {
  /**
   * `altered`: the entry does not give its own hash. `gap`: an entry before it is missing. `twice`: two different entries
   * have this place. `link`: it does not follow from the entry before it.
   */
  readonly code: 'altered' | 'gap' | 'twice' | 'link';
  readonly job: string;
  readonly device: string;
  readonly counter: number;
  readonly entry: string;
}
export interface ChainsHeld {
  readonly devices: number;
  readonly entries: number;
}

/**
 * Checks the chain of every device in every job and refuses with the first break of each. Entries may come in any order;
 * the same entry given twice counts once. Fields that a store adds (`sequence`, `receivedAt`) are not part of the chain.
 */
export function verifyChain(entries: readonly Envelope[]): Outcome<ChainsHeld, readonly ChainBreak[]> {
  const chains = chainsOf(entries);
  const breaks = chains.flatMap((chain) => firstBreak(chain) ?? []);
  if (breaks.length > 0) return refused(breaks);
  return done({ devices: chains.length, entries: chains.reduce((sum, chain) => sum + chain.length, 0) });
}

/** Entries by job and device, each chain in the order of its counter; chains in the order of job and device. */
function chainsOf(entries: readonly Envelope[]): readonly (readonly Envelope[])[] {
  const chains = new Map<string, Map<string, Envelope>>();
  for (const entry of entries) {
    const name = JSON.stringify([entry.job, entry.device]);
    const chain = chains.get(name) ?? new Map<string, Envelope>();
    chains.set(name, chain.set(`${entry.id} ${entry.hash} ${entry.counter}`, entry));
  }
  return [...chains.keys()].sort().map((name) => byCounter([...(chains.get(name)?.values() ?? [])]));
}

const byCounter = (chain: readonly Envelope[]): readonly Envelope[] =>
  chain.toSorted((a, b) => a.counter - b.counter || (a.id < b.id ? -1 : 1));

function firstBreak(chain: readonly Envelope[]): ChainBreak | undefined {
  let previous = { counter: 0, hash: NO_PREVIOUS };
  for (const entry of chain) {
    const code = breakAt(entry, previous);
    if (code !== undefined) {
      return { code, job: entry.job, device: entry.device, counter: entry.counter, entry: entry.id };
    }
    previous = entry;
  }
  return undefined;
}

function breakAt(entry: Envelope, previous: Pick<Envelope, 'counter' | 'hash'>): ChainBreak['code'] | undefined {
  if (entry.counter === previous.counter) return 'twice';
  if (entry.counter !== previous.counter + 1) return 'gap';
  if (!givesItsHash(entry)) return 'altered';
  return entry.previous === previous.hash ? undefined : 'link';
}

/** Data that cannot be written canonically cannot have been sealed here. */
function givesItsHash(entry: Envelope): boolean {
  try {
    return entryHash(entry) === entry.hash;
  } catch {
    return false;
  }
}

/** Thirty-two signs without I, L, O and U, which are misread or make words. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const GROUPS = 4;
const GROUP_SIGNS = 4;

/**
 * The short code of a whole record, printed on it: four groups of four signs, the first 80 bits of a SHA-256 over the
 * last hash of every device. Any change to any entry changes it. Empty for a record without entries.
 */
export function headCode(entries: readonly Envelope[]): string {
  if (entries.length === 0) return '';
  const heads = chainsOf(entries).flatMap((chain) => chain.at(-1) ?? []);
  const digest = hashOfText(
    JSON.stringify(heads.map(({ job, device, counter, hash }) => [job, device, counter, hash])),
  );
  const signs = Array.from({ length: GROUPS * GROUP_SIGNS }, (_, place) => signAt(digest, place));
  return signs.join('').replace(/(.{4})(?=.)/g, '$1-');
}

/** The five bits of a hexadecimal digest at a place counted in signs. */
function signAt(digest: string, place: number): string {
  const bits = BigInt(`0x${digest}`) >> BigInt(256 - 5 * (place + 1));
  return SIGNS[Number(bits & 31n)] ?? '';
}
