/** In which unit, and with how many places, a result is shown to the person who typed the inputs. */
import { findUnit, formatQuantity, unitsOf } from '../../quantity/index.js';
import type { ReadInput } from './read-inputs.js';
import { isQuantity, type QuantityOutput } from './spec.js';

export interface Display {
  readonly unit: string;
  readonly places: number;
}
export type System = 'inch' | 'metric';

/**
 * Unit to show an output in: the one that was typed for an input of the same kind, else one of the system (inch or
 * metric) in which the other inputs were typed, else the usual engineering unit. `system` overrides what was typed.
 */
export function displayOf(spec: QuantityOutput, inputs: readonly ReadInput[], system?: System): Display {
  const usual = findUnit(spec.kind, spec.unit);
  const wanted = system ?? systemOf(inputs);
  const chosen = (system ? undefined : typedUnit(spec, inputs)) ?? unitIn(spec, wanted) ?? usual;
  if (!usual || !chosen || chosen.name === usual.name) return { unit: spec.unit, places: spec.places };
  const finer = Math.log10((chosen.times / chosen.per) * (usual.per / usual.times));
  return { unit: chosen.name, places: Math.max(0, Math.ceil(spec.places + finer - 0.01)) };
}

const typedUnits = (inputs: readonly ReadInput[]) =>
  inputs
    .filter((input) => !input.assumed)
    .flatMap(({ spec, values }) => (isQuantity(spec) ? values.map((one) => findUnit(spec.kind, one.unit ?? '')) : []))
    .filter((unit) => unit !== undefined && unit.system !== 'both');

const typedUnit = (spec: QuantityOutput, inputs: readonly ReadInput[]) =>
  typedUnits(inputs).find((unit) => unit?.kind === spec.kind);

const systemOf = (inputs: readonly ReadInput[]): System | undefined => {
  const system = typedUnits(inputs)[0]?.system;
  return system === 'both' ? undefined : system;
};

/** The usual unit when it is of the system (or of both), else the system's first unit of that kind. */
function unitIn(spec: QuantityOutput, system: System | undefined) {
  const usual = findUnit(spec.kind, spec.unit);
  if (!system || !usual || usual.system === 'both' || usual.system === system) return usual;
  return unitsOf(spec.kind).find((unit) => unit.system === system);
}

export const shownValue = (spec: QuantityOutput, value: number, display: Display): string =>
  formatQuantity(spec.kind, value, display.unit, display.places);
