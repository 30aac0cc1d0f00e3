/** The one order of a log, whatever order its entries arrived in. */
import type { Envelope } from './entry.js';

/** An entry as it is at hand: with its sequence once a server has accepted it, without before. */
export type LogEntry = Envelope & { readonly sequence?: number; readonly receivedAt?: string };

/**
 * Entries of one job in the record's order; the same id counts once.
 *
 * Across devices the server's sequence decides, and entries that no server has yet come last, by device. Within a device
 * its counter decides: where the two disagree, the device's entries share the places that its sequences give.
 */
export function inOrder(entries: readonly LogEntry[]): readonly LogEntry[] {
  const once = new Map<string, LogEntry>();
  for (const entry of entries) if (better(entry, once.get(entry.id))) once.set(entry.id, entry);
  const bySequence = [...once.values()].sort(compare);
  const queues = new Map<string, LogEntry[]>();
  for (const { device } of bySequence) queues.set(device, []);
  for (const entry of bySequence) queues.get(entry.device)?.push(entry);
  for (const queue of queues.values()) queue.sort((a, b) => a.counter - b.counter || before(a.id, b.id));
  const taken = new Map<string, number>();
  return bySequence.map((place) => {
    const next = taken.get(place.device) ?? 0;
    taken.set(place.device, next + 1);
    return queues.get(place.device)?.[next] ?? place;
  });
}

/** The copy that a server has accepted is kept rather than the one still waiting. */
const better = (entry: LogEntry, kept: LogEntry | undefined): boolean =>
  kept === undefined || (kept.sequence === undefined && entry.sequence !== undefined);

const before = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const compare = (a: LogEntry, b: LogEntry): number =>
  (a.sequence ?? Number.MAX_VALUE) - (b.sequence ?? Number.MAX_VALUE) ||
  before(a.device, b.device) ||
  a.counter - b.counter ||
  before(a.id, b.id);
