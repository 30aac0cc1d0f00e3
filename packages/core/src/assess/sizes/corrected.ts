/** A slot as read, repeats together, corrected to a size at 20 °C with its standard uncertainty. */
import { deviation, mean } from '../../calc/metrology/index.js';
import type { Engine } from '../../engine/index.js';
import { quadrature } from '../../quantity/index.js';
import type { FeatureKind, Readings, Slot, SlotReading } from '../model.js';
import type { Cause, ErrorSource, Known } from './causes.js';
import { type Gauge, Gauges } from './gauges.js';
import { type Habits, USUAL_HABITS } from './usual-doubt.js';
import { materialOf, type PartMaterial, Warmth } from './warmth.js';

/** What all readings of a job have in common; made once for an assessment. */
export interface Bench {
  readonly engine: Engine;
  readonly readings: Readings;
  readonly gauges: Gauges;
  readonly warmth: Warmth;
}
export const benchOf = (engine: Engine, readings: Readings, habits: Habits = USUAL_HABITS): Bench => ({
  engine,
  readings,
  gauges: new Gauges(readings, habits),
  warmth: new Warmth(habits),
});

/** Where a reading was taken: what follows from the feature and its place, made once for a place. */
export interface Spot {
  readonly kind: FeatureKind;
  readonly material: PartMaterial;
  /** Part and gauge that lay together, at this place. */
  readonly apart: ErrorSource;
}
export const spotOf = (
  bench: Bench,
  kind: FeatureKind,
  place: { readonly id: string },
): Spot => ({
  kind,
  material: materialOf(bench.engine, kind),
  apart: bench.warmth.apartAt(`${kind.id}/${place.id}`),
});

export interface Corrected extends Known {
  readonly slot: Slot;
  /** "bore of cylinder 3, top, thrust direction". */
  readonly name: string;
  readonly taken: readonly SlotReading[];
  /** Each repeat as corrected, in order. */
  readonly repeats: readonly number[];
  /** Largest difference that repeats may have: √2·U of one reading. */
  readonly allowed: number;
  readonly cautions: readonly string[];
}

const NO_TEMPERATURE = 'no temperature noted: not corrected to 20 °C';
const LEAST_TWICE = 2 * Math.SQRT2;

/**
 * Size at 20 °C of one slot from one or more readings of it.
 *
 *   x = mean of ((reading − gauge error) at 20 °C);  u(own) = √(max(feel, s)²/n + step²/12)
 *
 * Feel is the doubt of the hand, s the scatter of the repeats seen: two readings that happen to be equal do not prove that the hand
 * is steady. Setting of the gauge, its drift and the temperatures are causes shared with other readings. Lengths only are
 * corrected for temperature.
 * Source: calc/metrology (instrument, temperature, repeats); JCGM 100, 4.2 and 5.1.2 (recalled).
 */
export function correctedReading(
  bench: Bench,
  spot: Spot,
  slot: Slot,
  name: string,
  taken: readonly SlotReading[],
): Corrected {
  const ones = taken.map((one) => correctedOnce(bench, spot, one));
  const first = ones[0]!;
  const repeats = ones.map(({ value }) => value);
  const feel = ones.length < 2 ? first.gauge.feel : Math.max(...ones.map(({ gauge }) => gauge.feel));
  const step = ones.length < 2 ? first.gauge.step : Math.max(...ones.map(({ gauge }) => gauge.step));
  const scatter = repeats.length < 2 ? feel : Math.max(feel, deviation(repeats));
  const u = quadrature(scatter / Math.sqrt(repeats.length), step);
  const own: Cause = { source: { key: slot, name, u }, sensitivity: 1 };
  return {
    slot,
    name,
    taken,
    repeats,
    value: repeats.length < 2 ? first.value : mean(repeats),
    causes: [own, ...(ones.length < 2 ? first.causes : sharedOf(ones))],
    allowed: LEAST_TWICE * quadrature(feel, step),
    cautions: ones.length < 2 ? first.cautions : [...new Set(ones.flatMap(({ cautions }) => cautions))],
  };
}

interface Once extends Known {
  readonly gauge: Gauge;
  readonly cautions: readonly string[];
}
function correctedOnce({ gauges, warmth }: Bench, { kind, material, apart }: Spot, taken: SlotReading): Once {
  const gauge = gauges.of(taken.instrument, kind);
  const { error, causes, cautions } = gauge.at(taken.at, taken.value);
  const told = gauge.cautions.length === 0 ? cautions : [...gauge.cautions, ...cautions];
  const value = taken.value - error;
  if (kind.measured !== 'length') return { gauge, value, causes, cautions: told };
  const cold = warmth.atReference(value, taken, material.expansion, apart);
  return {
    gauge,
    value: cold.value,
    causes: [...causes, ...cold.causes],
    cautions: cold.noted ? told : [...told, NO_TEMPERATURE],
  };
}

/** Shared causes of a mean of repeats: each with its mean sensitivity. */
function sharedOf(ones: readonly Once[]): readonly Cause[] {
  const sums = new Map<ErrorSource, number>();
  for (const { causes } of ones)
    for (const { source, sensitivity } of causes) sums.set(source, (sums.get(source) ?? 0) + sensitivity / ones.length);
  return [...sums].map(([source, sensitivity]) => ({ source, sensitivity }));
}

/** Whether repeats of a slot differ by more than they may. */
export const disagrees = ({ repeats, allowed }: Corrected): boolean =>
  repeats.length > 1 && Math.max(...repeats) - Math.min(...repeats) > allowed;
