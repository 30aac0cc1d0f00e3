/** Readings for the tests of assess: made by hand, or one for each slot of a plan. */

import type { Engine } from '../engine/index.js';
import { engineOf } from '../engine/load/try-sheets.suite.js';
import { parseQuantity } from '../quantity/index.js';
import { inspectionPlan, slotOf } from './features/index.js';
import type {
  Finding,
  Instrument,
  InstrumentCheck,
  InstrumentKind,
  Measured,
  Place,
  Readings,
  Slot,
  SlotReading,
} from './model.js';
import { type Habits, USUAL_HABITS } from './sizes/index.js';

/** A four with limits written by hand; `more` are further sections of the sheet. */
export const engineWith = (limits: readonly string[], more = ''): Engine =>
  engineOf(`gudgeon: 1
name: Four
layout:
  form: inline
  cylinders: [1, 2, 3, 4]
  firingOrder: 1-3-4-2
${more}${limits.length === 0 ? '' : `limits:\n${limits.map((row) => `  - { part: part, what: size, ${row} }\n`).join('')}`}`);

/** SI value of a text. */
export function si(text: string, measured: Measured = 'length'): number {
  const read = parseQuantity(measured, text);
  if (!read.ok) throw new Error(`no ${measured}: ${text}`);
  return read.value.value;
}

export function reading(
  slot: Slot,
  text: string,
  more: Partial<SlotReading> = {},
  measured: Measured = 'length',
): SlotReading {
  const at = '2026-03-02T09:00:00+00:00';
  return { slot, entry: `${slot} ${text}`, text, value: si(text, measured), occasion: 1, at, by: 'A', ...more };
}

export function readingsOf(
  taken: readonly SlotReading[],
  more: { readonly instruments?: readonly Instrument[]; readonly checks?: readonly InstrumentCheck[] } = {},
): Readings {
  const bySlot = new Map<Slot, SlotReading[]>();
  for (const one of taken) bySlot.set(one.slot, [...(bySlot.get(one.slot) ?? []), one]);
  return {
    bySlot,
    before: new Map(),
    instruments: new Map((more.instruments ?? []).map((one) => [one.id, one])),
    checks: more.checks ?? [],
    choices: [],
    occasions: new Map(),
  };
}

/** A gauge without a doubt, for rows that are printed without one. */
export const EXACT_GAUGE: Instrument = {
  id: 'exact',
  name: 'exact gauge',
  kind: 'outside-micrometer',
  measured: 'length',
  unit: 'mm',
  resolution: 0,
  expanded: 0,
};
const none = (doubts: Habits['doubts']): Habits['doubts'] =>
  Object.fromEntries(Object.keys(doubts).map((kind) => [kind, { expanded: 0, from: 'exact' }])) as Record<
    InstrumentKind,
    { expanded: number; from: string }
  >;
/** Nothing is uncertain: for rows that are printed without a doubt. */
export const EXACT: Habits = {
  ...USUAL_HABITS,
  doubts: none(USUAL_HABITS.doubts),
  workshop: 0,
  apart: 0,
  thermometer: 0,
  expansion: 0,
};

/** Readings of every station of a place: one text for all, or one for each station in the order of the place. */
export function readAll(
  engine: Engine,
  feature: string,
  place: string,
  texts: string | readonly string[],
  more: Partial<SlotReading> = {},
): readonly SlotReading[] {
  const found = placeIn(engine, feature, place);
  const kind = inspectionPlan(engine).features.find((one) => one.kind.id === feature)!.kind;
  return found.stations.map((station, at) =>
    reading(slotOf(feature, place, station.id), typeof texts === 'string' ? texts : texts[at]!, more, kind.measured),
  );
}
export function placeIn(engine: Engine, feature: string, place: string): Place {
  const found = inspectionPlan(engine)
    .features.find(({ kind }) => kind.id === feature)
    ?.places.find(({ id }) => id === place);
  if (found === undefined) throw new Error(`the plan has no ${feature}/${place}`);
  return found;
}
export function findingIn(findings: readonly Finding[], key: string): Finding {
  const found = findings.find((one) => one.key === key);
  if (found === undefined) throw new Error(`no finding ${key}`);
  return found;
}
