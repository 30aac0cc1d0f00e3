/** One place of a worksheet: its cells, what follows from them, and how it was before it was worked on. */
import type { Assessment, Feature, Finding, Place, Slot, SlotReading } from '../assess/index.js';
import { type Bench, givenBy } from './bench.js';
import { findingView } from './finding-view.js';
import type { Cell, ShownIn, WorksheetRow } from './measure-views.js';
import { slotsByPlace } from './slot-names.js';
import { disagrees, findingsOf } from './worksheet-figure.js';

/** All that a row is made of. */
interface RowParts {
  readonly findings: readonly Finding[];
  readonly read: readonly (readonly SlotReading[] | undefined)[];
  readonly before: readonly (readonly SlotReading[] | undefined)[];
  readonly occasion: number;
  readonly hidden: Slot | undefined;
  readonly length: ShownIn['length'];
}
interface Known {
  readonly parts: RowParts;
  readonly row: WorksheetRow;
}
const rows = new WeakMap<Feature, Map<Place, Known>>();

/** The row of a place; the same object as before where nothing of it has changed, so that a screen need not draw it anew. */
export function rowOf(
  bench: Bench,
  assessment: Assessment,
  feature: Feature,
  place: Place,
  { shownIn, hidden }: { readonly shownIn: ShownIn; readonly hidden?: Slot },
): WorksheetRow {
  const { bySlot, before, occasions } = assessment.readings;
  const slots = slotsByPlace(feature).get(place) ?? [];
  const parts: RowParts = {
    findings: findingsOf(assessment, feature, place),
    read: slots.map((slot) => bySlot.get(slot)),
    before: slots.map((slot) => before.get(slot)),
    occasion: occasions.get(`${feature.kind.id}/${place.id}`) ?? 1,
    hidden: hidden !== undefined && slots.includes(hidden) ? hidden : undefined,
    length: shownIn.length,
  };
  const known = rows.get(feature) ?? new Map<Place, Known>();
  const last = known.get(place);
  if (last !== undefined && sameParts(last.parts, parts)) return last.row;
  const row = rowFrom(bench, place, slots, parts, last);
  rows.set(feature, known.set(place, { parts, row }));
  return row;
}
const sameParts = (one: RowParts, other: RowParts): boolean =>
  one.occasion === other.occasion &&
  one.hidden === other.hidden &&
  one.length === other.length &&
  sameItems(one.findings, other.findings) &&
  sameItems(one.read, other.read) &&
  sameItems(one.before, other.before);
const sameItems = (some: readonly unknown[], others: readonly unknown[]): boolean =>
  some.length === others.length && some.every((one, at) => one === others[at]);

function rowFrom(
  bench: Bench,
  place: Place,
  slots: readonly Slot[],
  parts: RowParts,
  last: Known | undefined,
): WorksheetRow {
  const { findings, occasion, hidden, length } = parts;
  const cells = place.stations.map((station, at): Cell => {
    const slot = slots[at]!;
    const readings = parts.read[at] ?? [];
    const newest = readings.at(-1);
    const same = last !== undefined && last.parts.read[at] === parts.read[at];
    const given = same ? last.row.cells[at]?.given : givenBy(bench, newest?.entry);
    return {
      slot,
      name: place.stations.length === 1 ? place.name : `${place.name}, ${withoutDetail(station.name)}`,
      state: newest === undefined ? 'empty' : disagrees(readings, findings, slot) ? 'disagrees' : 'read',
      ...(newest && slot !== hidden && { text: newest.text }),
      ...(given && { given }),
      readings: readings.length,
    };
  });
  return {
    place: place.id,
    name: place.name,
    cells,
    findings: findings.map((finding, at) => {
      const same = last?.parts.length === length && last.parts.findings[at] === finding;
      return (same && last.row.findings[at]) || findingView(finding, { length });
    }),
    occasion,
    before: place.stations.flatMap(({ name }, at) => {
      const earlier = parts.before[at] ?? [];
      return earlier.length === 0 ? [] : [`${name}: ${earlier.map((one) => one.text).join(', ')}`];
    }),
  };
}

/** "top, 18 mm below the deck, along the crank" is "top, along the crank" at the bench; the head of its column has the rest. */
function withoutDetail(name: string): string {
  const parts = name.split(', ');
  return parts.length > 2 ? `${parts[0]}, ${parts.at(-1)}` : name;
}
