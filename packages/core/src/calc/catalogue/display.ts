/** In which unit, and with how many places, a result is shown to the person who typed the inputs. */
import { displayUnit, findUnit, formatQuantity, type Unit } from '../../quantity/index.js';
import type { ReadInput } from './read-inputs.js';
import { isQuantity, type QuantityOutput } from './spec.js';

export interface Display {
  readonly unit: string;
  readonly places: number;
}
export type System = 'inch' | 'metric';

/**
 * Unit to show an output in: the one that was typed for an input of the same kind, else one of the system (inch or
 * metric) in which the other inputs were typed, else the usual engineering unit. `system` overrides what was typed, and
 * an output whose unit was asked for is never shown in another.
 */
export function displayOf(spec: QuantityOutput, inputs: readonly ReadInput[], system?: System): Display {
  if (spec.asked) return { unit: spec.unit, places: spec.places };
  const usual = findUnit(spec.kind, spec.unit)!;
  const chosen = (system ? undefined : typedUnit(spec, inputs)) ?? unitIn(spec, usual, system ?? systemOf(inputs));
  if (chosen.name === usual.name) return { unit: spec.unit, places: spec.places };
  const finer = Math.log10((chosen.times / chosen.per) * (usual.per / usual.times));
  return { unit: chosen.name, places: Math.max(0, Math.ceil(spec.places + finer - 0.01)) };
}

/** Units that a person typed and that belong to one system; a quantity that was read has its unit. */
const typedUnits = (inputs: readonly ReadInput[]): readonly (Unit & { readonly system: System })[] =>
  inputs
    .filter((input) => !input.assumed)
    .flatMap(({ spec, values }) => (isQuantity(spec) ? values.map((one) => findUnit(spec.kind, one.unit!)!) : []))
    .filter((unit) => unit.system !== 'both') as (Unit & { system: System })[];

const typedUnit = (spec: QuantityOutput, inputs: readonly ReadInput[]) =>
  typedUnits(inputs).find((unit) => unit.kind === spec.kind);

const systemOf = (inputs: readonly ReadInput[]): System | undefined => typedUnits(inputs)[0]?.system;

/** The usual unit when it is of the system (or of both), else the trade's unit of that kind in the system. */
function unitIn(spec: QuantityOutput, usual: Unit, system: System | undefined): Unit {
  if (!system || usual.system === 'both' || usual.system === system) return usual;
  return findUnit(spec.kind, displayUnit(spec.kind, system))!;
}

export const shownValue = (spec: QuantityOutput, value: number, display: Display): string =>
  formatQuantity(spec.kind, value, display.unit, display.places);
