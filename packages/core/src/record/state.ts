/** The state of a record: its entries in order, which of them are struck out, and the facts that remain. */
import type { Engine } from '../engine/model.js';
import type { Fact, FactKind } from '../plan/index.js';
import { inOrder, type LogEntry } from './order.js';
import { type KnownData, type Understanding, upcast } from './upcast.js';

export interface Strike {
  /** Id of the entry that strikes out. */
  readonly by: string;
  readonly reason: string;
}
export interface ReadEntry {
  readonly entry: LogEntry;
  readonly reading: Understanding;
  readonly struck?: Strike;
}
export interface RecordState {
  /** The engine of the adopted sheet, once somebody has loaded it; rules of joints and valves need it. */
  readonly engine?: Engine;
  readonly entries: readonly ReadEntry[];
  /** What plans are folded from: understood, not struck out, in order. */
  readonly facts: readonly Fact[];
  /** The last sheet that was adopted. */
  readonly sheet?: { readonly name: string; readonly text: string; readonly entry: string };
}

/** A record without entries; with the engine of a loaded sheet where one is at hand. */
export const emptyRecord = (engine?: Engine): RecordState => ({
  ...(engine && { engine }),
  entries: [],
  facts: [],
});

/** Folds a whole log. The answer does not depend on the order in which the entries are given. */
export function foldEntries(entries: readonly LogEntry[], engine?: Engine): RecordState {
  return stateOf(
    inOrder(entries).map((entry) => ({ entry, reading: upcast(entry) })),
    engine,
  );
}

/**
 * Folds a log of which most is folded already: what was read once is not read again. The same answer as `foldEntries`, in less time.
 */
export function refold(before: RecordState, entries: readonly LogEntry[], engine?: Engine): RecordState {
  return grown(before, entries, engine) ?? refoldWhole(before, entries, engine);
}

function refoldWhole(before: RecordState, entries: readonly LogEntry[], engine: Engine | undefined): RecordState {
  const known = new Map(before.entries.map((one) => [one.entry.id, one]));
  const readingOf = (entry: LogEntry): Understanding => {
    const same = known.get(entry.id);
    return same?.entry.hash === entry.hash ? same.reading : upcast(entry);
  };
  return stateOf(
    inOrder(entries).map((entry) => ({ entry, reading: readingOf(entry) })),
    engine,
  );
}

/**
 * The usual case, a log that has only grown at its end: nothing of what stands there is looked at again. Undefined where the order could
 * be another, or where an entry has come that reaches back.
 */
function grown(before: RecordState, entries: readonly LogEntry[], engine: Engine | undefined): RecordState | undefined {
  const count = before.entries.length;
  if (!growsAtItsEnd(before.entries, entries)) return undefined;
  const added = entries.slice(count).map((entry): ReadEntry => ({ entry, reading: upcast(entry) }));
  if (added.some(({ reading }) => reading.understood && REACHES_BACK.has(reading.known.kind))) return undefined;
  if (added.length > 0 && before.entries.some((one) => waitsFor(one, added))) return undefined;
  // An entry that a server has confirmed since is the same entry with its place in the server's order.
  const kept = before.entries.every((one, at) => one.entry === entries[at])
    ? before.entries
    : before.entries.map((one, at) => (one.entry === entries[at] ? one : { ...one, entry: entries[at]! }));
  const byId = new Map(added.map((one) => [one.entry.id, one]));
  return {
    ...(engine && { engine }),
    entries: [...kept, ...added],
    facts: added.length === 0 ? before.facts : [...before.facts, ...added.flatMap((one) => factOf(one, byId))],
    ...(before.sheet && { sheet: before.sheet }),
  };
}
const REACHES_BACK: ReadonlySet<string> = new Set(['struck-out', 'sheet-adopted']);

/** A strike can stand in the log before what it strikes out, where another device wrote that. */
function waitsFor({ reading }: ReadEntry, added: readonly ReadEntry[]): boolean {
  if (!reading.understood || reading.known.kind !== 'struck-out') return false;
  const target = reading.known.data.entry;
  return added.some(({ entry }) => entry.id === target);
}

/** Whether these entries are the known ones with others behind them, in an order about which sequence and counters agree. */
function growsAtItsEnd(known: readonly ReadEntry[], entries: readonly LogEntry[]): boolean {
  if (known.length === 0 || entries.length < known.length) return false;
  let sequence = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < entries.length; at += 1) {
    const entry = entries[at]!;
    if (entry.sequence === undefined || entry.sequence <= sequence) return false;
    sequence = entry.sequence;
    const same = known[at]?.entry;
    if (same !== undefined && same !== entry && (same.id !== entry.id || same.hash !== entry.hash)) return false;
  }
  for (let at = known.length; at < entries.length; at += 1) {
    const { device, counter } = entries[at]!;
    for (let earlier = at - 1; earlier >= 0; earlier -= 1) {
      if (entries[earlier]!.device !== device) continue;
      if (entries[earlier]!.counter >= counter) return false;
      break;
    }
  }
  return true;
}

/** Takes one more entry into the state; an entry that is already there changes nothing. */
export const evolve = (state: RecordState, entry: LogEntry): RecordState =>
  refold(state, [...state.entries.map((one) => one.entry), entry], state.engine);

/** The same record, judged with a loaded engine. */
export const withEngine = (state: RecordState, engine: Engine): RecordState => ({ ...state, engine });

type Unstruck = Omit<ReadEntry, 'struck'>;

function stateOf(read: readonly Unstruck[], engine: Engine | undefined): RecordState {
  const strikes = strikesOf(read);
  const entries = read.map((one): ReadEntry => {
    const struck = strikes.get(one.entry.id);
    return struck === undefined ? one : { ...one, struck };
  });
  const sheet = sheetOf(entries);
  return { ...(engine && { engine }), entries, facts: factsOf(entries), ...(sheet && { sheet }) };
}

/** The strike that holds for each entry. A strike that is itself struck out does not hold. */
function strikesOf(read: readonly Unstruck[]): ReadonlyMap<string, Strike> {
  const strikes = new Map<string, Strike[]>();
  for (const { entry, reading } of read) {
    if (!reading.understood || reading.known.kind !== 'struck-out') continue;
    const { entry: target, reason } = reading.known.data;
    strikes.set(target, [...(strikes.get(target) ?? []), { by: entry.id, reason }]);
  }
  return heldStrikes(strikes);
}

/** Two entries that strike each other out cannot come from our own rules; the one that is asked about first then stands. */
function heldStrikes(strikes: ReadonlyMap<string, readonly Strike[]>): ReadonlyMap<string, Strike> {
  const held = new Map<string, Strike | undefined>();
  const judge = (id: string): Strike | undefined => {
    if (held.has(id)) return held.get(id);
    held.set(id, undefined);
    held.set(
      id,
      strikes.get(id)?.find((one) => judge(one.by) === undefined),
    );
    return held.get(id);
  };
  return new Map(
    [...strikes.keys()].flatMap((id) => {
      const strike = judge(id);
      return strike === undefined ? [] : [[id, strike] as const];
    }),
  );
}

function factsOf(entries: readonly ReadEntry[]): readonly Fact[] {
  const byId = new Map(entries.map((one) => [one.entry.id, one]));
  return entries.flatMap((one) => factOf(one, byId));
}

function factOf({ entry, reading, struck }: ReadEntry, byId: ReadonlyMap<string, ReadEntry>): Fact[] {
  if (!reading.understood || struck !== undefined) return [];
  const { known } = reading;
  if (known.kind === 'struck-out') return actStruck(byId.get(known.data.entry), entry.id);
  return isPlanFact(known) ? [{ ...known, entry: entry.id }] : [];
}

/** The kinds that plans of joints, parts and valves are folded from; every other kind has a fold of its own. */
const PLAN_FACTS: Readonly<Record<FactKind, true>> = {
  'gasket-checked': true,
  'fastener-placed': true,
  'act-done': true,
  'walk-resumed': true,
  'fastener-doubted': true,
  'joint-opened': true,
  'part-tagged': true,
  'part-fitted': true,
  'valve-set': true,
  'valve-rechecked': true,
  skipped: true,
};
const isPlanFact = (known: KnownData): known is Extract<KnownData, { readonly kind: FactKind }> =>
  Object.hasOwn(PLAN_FACTS, known.kind);

/** A struck-out act leaves a question behind: it may have been turned all the same. */
function actStruck(target: ReadEntry | undefined, by: string): Fact[] {
  if (target?.struck?.by !== by || !target.reading.understood) return [];
  const { known } = target.reading;
  if (known.kind !== 'act-done') return [];
  const { joint, stage, hole, instance } = known.data;
  return [{ kind: 'act-struck', data: { joint, stage, hole, instance }, entry: by }];
}

function sheetOf(entries: readonly ReadEntry[]): RecordState['sheet'] {
  const last = entries.findLast(
    (one) => one.struck === undefined && one.reading.understood && one.reading.known.kind === 'sheet-adopted',
  );
  const known: KnownData | undefined = last?.reading.understood ? last.reading.known : undefined;
  if (last === undefined || known?.kind !== 'sheet-adopted') return undefined;
  return { name: known.data.name, text: known.data.text, entry: last.entry.id };
}
