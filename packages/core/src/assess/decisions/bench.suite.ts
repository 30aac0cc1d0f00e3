/** For the tests of decisions: an engine read at the places named, the rest not read. */

import type { Engine } from '../../engine/index.js';
import { BASE, engineOf } from '../../engine/load/try-sheets.suite.js';
import { parseQuantity } from '../../quantity/index.js';
import { assess } from '../assess.js';
import { inspectionPlan } from '../features/index.js';
import type { Assessment, Choice, Decision, Place, Readings, SlotReading } from '../model.js';
import { decisionsOf } from './index.js';

/** `cylinder-bore/3`, or `cylinder-bore` for every place; `{ 'top-thrust': ..., rest: ... }` where stations differ. */
export type Sizes = Readonly<Record<string, string | number | Readonly<Record<string, string | number>>>>;

function metres(given: string | number): number {
  if (typeof given === 'number') return given;
  const read = parseQuantity('length', given);
  if (!read.ok) throw new Error(`a test says "${given}"`);
  return read.value.value;
}

function readingsAt(engine: Engine, sizes: Sizes): Readings {
  const slots = new Map<string, number>();
  for (const { kind, places } of inspectionPlan(engine).features)
    for (const place of places) fill(slots, kind.id, place, sizes[`${kind.id}/${place.id}`] ?? sizes[kind.id]);
  return {
    bySlot: new Map([...slots].map(([slot, value]) => [slot, [readingOf(slot, value)]])),
    before: new Map(),
    instruments: new Map(),
    checks: [],
    choices: [],
    occasions: new Map(),
  };
}
const readingOf = (slot: string, value: number): SlotReading => ({
  slot,
  entry: slot,
  text: `${value * 1000} mm`,
  value,
  occasion: 1,
  at: '2026-03-02T09:00:00+00:00',
  by: 'A',
});
function fill(slots: Map<string, number>, feature: string, place: Place, given: Sizes[string] | undefined): void {
  if (given === undefined) return;
  for (const { id } of place.stations) {
    const one = typeof given === 'object' ? (given[id] ?? given.rest) : given;
    if (one !== undefined) slots.set(`${feature}/${place.id}/${id}`, metres(one));
  }
}

export const assessed = (engine: Engine, sizes: Sizes, choices: readonly Choice[] = []): Assessment =>
  assess(engine, { ...readingsAt(engine, sizes), choices });

/** An inline four of the tests with what follows in the sheet. */
export const four = (rest: string): Engine => engineOf(`${BASE}${rest}`);

export function decisionOf(assessment: Assessment, id: string, scope?: string, unit?: 'mm' | 'in'): Decision {
  const found = decisionsOf(assessment, unit).find(
    (one) => one.id === id && (scope === undefined || one.scope === scope),
  );
  if (found === undefined) throw new Error(`no decision ${id}`);
  return found;
}
export const alternativeOf = ({ alternatives }: Decision, id: string) => {
  const found = alternatives.find((one) => one.id === id);
  if (found === undefined)
    throw new Error(`no alternative ${id} among ${alternatives.map((one) => one.id).join(', ')}`);
  return found;
};
export const figureOf = (decision: Decision, alternative: string, name: string): string | undefined =>
  alternativeOf(decision, alternative).figures.find((one) => one.name === name)?.text;
