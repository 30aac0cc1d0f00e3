/** The sizes that readings give, or what is still to read for them. */
import type { Readings, Slot, SlotReading } from '../model.js';
import { type Bench, type Corrected, correctedReading, disagrees, type Spot, spotOf } from './corrected.js';
import { formed } from './forms.js';
import type { PlannedFigure, PlannedPlace, PlannedSize, PlannedSizes, PlannedWay } from './planned.js';
import { FormedSize, type ReadFigure } from './size.js';

export interface SizeEntry {
  readonly planned: PlannedSize;
  readonly size: FormedSize | undefined;
  /** Slots still to read; empty with a size. */
  readonly missing: readonly Slot[];
  /** How many slots it needs in all. */
  readonly needed: number;
  /** Repeats of a slot that differ by more than they may. */
  readonly disagreement: Disagreement | undefined;
}
/** The size as each repeat of the slot that differs most would give it, and how far they may differ. */
export interface Disagreement {
  readonly slot: Slot;
  readonly name: string;
  readonly readings: readonly number[];
  readonly allowed: number;
}

/** Readings of one place, by station. */
interface PlaceRead {
  readonly spot: Spot;
  readonly by: readonly (Corrected | undefined)[];
  readonly whole: boolean;
}
/** Of each place of the plan; undefined where nothing is read. */
type Read = readonly (PlaceRead | undefined)[];

/** The sizes of a plan, with the readings that they are formed from. */
export interface Sizes {
  readonly read: Read;
  readonly entries: readonly SizeEntry[];
  /** Numbers of the entries that can be others than in the moment before; absent: any of them. */
  readonly touched?: readonly number[];
}

/**
 * Every size of a plan. It appears as soon as the readings are there that one of its ways needs; before that its entry says what is
 * missing in the way of which most has been read. With the sizes of an earlier moment of the same bench, only what was
 * read anew is formed anew; the rest are the same objects.
 */
export function sizesOf(
  bench: Bench,
  planned: PlannedSizes,
  bySlot: Readings['bySlot'],
  before?: Sizes,
  since?: readonly Slot[],
): Sizes {
  if (before !== undefined && since !== undefined) return grown(bench, planned, bySlot, before, since);
  const { places, sizes } = planned;
  const read = places.map((place) => readPlace(bench, place, bySlot, before?.read[place.at]));
  const entries = sizes.map((size, at) => {
    const same = before !== undefined && size.places.every((place) => read[place] === before.read[place]);
    return same ? before.entries[at]! : entryOf(size, read);
  });
  return { read, entries };
}

/** As it was before, with what the slots read since change in it: the cost of a reading does not grow with the engine. */
function grown(
  bench: Bench,
  planned: PlannedSizes,
  bySlot: Readings['bySlot'],
  before: Sizes,
  since: readonly Slot[],
): Sizes {
  const { placeOf, sizesAt } = whereabouts(planned);
  const read = before.read.slice();
  const entries = before.entries.slice();
  const places = [...new Set(since.flatMap((slot) => placeOf.get(slot) ?? []))];
  for (const at of places) read[at] = readPlace(bench, planned.places[at]!, bySlot, before.read[at]);
  const touched = [...new Set(places.flatMap((at) => sizesAt[at]!))];
  for (const at of touched) entries[at] = entryOf(planned.sizes[at]!, read);
  return { read, entries, touched };
}

/** Which place a slot belongs to, and which sizes read each place; by their numbers. */
interface Whereabouts {
  readonly placeOf: ReadonlyMap<Slot, number>;
  readonly sizesAt: readonly (readonly number[])[];
}
const WHEREABOUTS = new WeakMap<PlannedSizes, Whereabouts>();
function whereabouts(planned: PlannedSizes): Whereabouts {
  const known = WHEREABOUTS.get(planned);
  if (known !== undefined) return known;
  const sizesAt: number[][] = planned.places.map(() => []);
  for (const [at, { places }] of planned.sizes.entries()) for (const place of places) sizesAt[place]!.push(at);
  const placeOf = new Map(planned.places.flatMap(({ at, slots }) => slots.map(({ slot }) => [slot, at] as const)));
  const made = { placeOf, sizesAt };
  WHEREABOUTS.set(planned, made);
  return made;
}

function readPlace(
  bench: Bench,
  { kind, place, slots }: PlannedPlace,
  bySlot: Readings['bySlot'],
  before: PlaceRead | undefined,
): PlaceRead | undefined {
  if (before !== undefined && asBefore(before, slots, bySlot)) return before;
  let spot = before?.spot;
  let by: (Corrected | undefined)[] | undefined;
  let count = 0;
  let changed = before === undefined;
  for (let at = 0; at < slots.length; at += 1) {
    const { slot, name } = slots[at]!;
    const taken = bySlot.get(slot);
    const known = before?.by[at];
    if (taken === undefined || taken.length === 0) {
      changed ||= known !== undefined;
      continue;
    }
    spot ??= spotOf(bench, kind, place.id);
    by ??= new Array<Corrected | undefined>(slots.length).fill(undefined);
    count += 1;
    if (known !== undefined && sameReadings(known.taken, taken)) by[at] = known;
    else {
      by[at] = correctedReading(bench, spot, slot, name, taken);
      changed = true;
    }
  }
  if (!changed) return before;
  return by && spot && { spot, by, whole: count === slots.length };
}

/** Whether every slot still has the very list of readings that it had. */
function asBefore({ by }: PlaceRead, slots: PlannedPlace['slots'], bySlot: Readings['bySlot']): boolean {
  for (let at = 0; at < slots.length; at += 1) if (by[at]?.taken !== bySlot.get(slots[at]!.slot)) return false;
  return true;
}

/** Entries never change; but a note of the temperature may have been struck out. */
function sameReadings(some: readonly SlotReading[], others: readonly SlotReading[]): boolean {
  if (some === others) return true;
  return (
    some.length === others.length &&
    some.every((one, at) => {
      const other = others[at]!;
      return (
        one.entry === other.entry &&
        one.value === other.value &&
        one.text === other.text &&
        one.at === other.at &&
        one.instrument === other.instrument &&
        one.temperature === other.temperature &&
        one.room === other.room
      );
    })
  );
}

function entryOf(planned: PlannedSize, read: Read): SizeEntry {
  let best: { readonly way: PlannedWay; readonly missing: number } | undefined;
  for (const way of planned.ways) {
    const missing = missingIn(way, read);
    if (missing === 0) return wholeEntry(planned, way, read);
    if (best === undefined || missing / way.needed < best.missing / best.way.needed) best = { way, missing };
  }
  const { way } = best!;
  return { planned, size: undefined, missing: missingSlots(way, read), needed: way.needed, disagreement: undefined };
}

function missingIn({ figures }: PlannedWay, read: Read): number {
  let missing = 0;
  for (const { place, stations } of figures) {
    const here = read[place.at];
    if (here === undefined) missing += stations.length;
    else if (!here.whole) for (const at of stations) if (here.by[at] === undefined) missing += 1;
  }
  return missing;
}
const missingSlots = ({ figures }: PlannedWay, read: Read): readonly Slot[] =>
  figures.flatMap(({ place, stations }) =>
    stations.filter((at) => read[place.at]?.by[at] === undefined).map((at) => place.slots[at]!.slot),
  );

function wholeEntry(planned: PlannedSize, way: PlannedWay, read: Read): SizeEntry {
  const figures = way.figures.map((figure) => readFigure(figure, read));
  const { value, by } = way.combine?.(figures.map((figure) => figure.value)) ?? { value: figures[0]!.value, by: WHOLE };
  const size = new FormedSize({ planned, way, figures, value, by });
  const worst = worstRepeats(figures);
  const disagreement = worst === undefined ? undefined : disagreementOf(value, worst);
  return { planned, size, missing: NONE, needed: way.needed, disagreement };
}
const NONE: readonly Slot[] = [];
const WHOLE: readonly number[] = [1];

function readFigure(planned: PlannedFigure, read: Read): ReadFigure {
  const here = read[planned.place.at]!.by;
  if (planned.stations.length === 1 && planned.form !== 'spread') {
    const only = here[planned.stations[0]!]!;
    return { planned, readings: [only], value: only.value, by: planned.even };
  }
  const readings = planned.stations.map((at) => here[at]!);
  const { value, by } = formed(
    planned,
    readings.map((one) => one.value),
  );
  return { planned, readings, value, by };
}

/** The slot whose repeats are farthest beyond what they may differ; undefined where all agree. */
function worstRepeats(figures: readonly ReadFigure[]): Corrected | undefined {
  let worst: Corrected | undefined;
  let most = 0;
  for (const { readings } of figures)
    for (const one of readings) {
      if (one.repeats === undefined || !disagrees(one)) continue;
      const excess = Math.max(...one.repeats) - Math.min(...one.repeats) - one.allowed;
      if (worst === undefined || excess > most) [worst, most] = [one, excess];
    }
  return worst;
}
/** A reading of no weight at present counts as if it had one: read again, it may decide. */
function disagreementOf(value: number, { repeats = [], value: middle, slot, name, allowed }: Corrected): Disagreement {
  return { slot, name, allowed, readings: repeats.map((one) => value + one - middle) };
}
