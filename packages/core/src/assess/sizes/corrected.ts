/** A slot as read, repeats together, corrected to a size at 20 °C with its standard uncertainty. */
import { deviation, mean } from '../../calc/metrology/index.js';
import type { Engine } from '../../engine/index.js';
import { quadrature } from '../../quantity/index.js';
import type { FeatureKind, Readings, Slot, SlotReading } from '../model.js';
import { Blend, type Blended, type Cause, causeOf, type ErrorSource } from './causes.js';
import { type Gauge, Gauges } from './gauges.js';
import { type Habits, USUAL_HABITS } from './usual-doubt.js';
import { atReference, materialOf, type WarmPlace, Warmth } from './warmth.js';

/** What all readings of a job have in common: its gauges and their checks, and how far temperatures are known. */
export interface Bench {
  readonly engine: Engine;
  readonly habits: Habits;
  readonly gauges: Gauges;
  readonly warmth: Warmth;
}
export type GaugeStory = Pick<Readings, 'instruments' | 'checks'>;
export const benchOf = (engine: Engine, story: GaugeStory, habits: Habits = USUAL_HABITS): Bench => ({
  engine,
  habits,
  gauges: new Gauges(story, habits),
  warmth: new Warmth(habits),
});

/** Where readings are taken: made once for a place. Only lengths have a warmth. */
export interface Spot {
  readonly kind: FeatureKind;
  readonly warm?: WarmPlace;
  /** Temperatures of the newest reading with their causes: those of one place are nearly always alike. */
  last?: {
    readonly temperature: number | undefined;
    readonly room: number | undefined;
    readonly causes: readonly Cause[];
  };
}
export function spotOf({ engine, warmth }: Bench, kind: FeatureKind, place: string): Spot {
  if (kind.measured !== 'length') return { kind };
  return { kind, warm: warmth.place(`${kind.id}/${place}`, materialOf(engine, kind).expansion) };
}

export interface Corrected extends Blended {
  readonly slot: Slot;
  /** "bore of cylinder 3, top, thrust direction". */
  readonly name: string;
  readonly taken: readonly SlotReading[];
  /** Each repeat as corrected, in order; only where there are several. */
  readonly repeats?: readonly number[];
  /** Largest difference that repeats may have: √2·U of one reading. */
  readonly allowed: number;
  readonly cautions: readonly string[];
}
interface Once extends Omit<Blended, 'own'> {
  readonly gauge: Gauge;
  readonly cautions: readonly string[];
}

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
  if (taken.length > 1) return correctedRepeats(bench, spot, slot, name, taken);
  return new OneReading(slot, name, taken, correctedOnce(bench, spot, taken[0]!));
}

/** A slot that was read once: it is its own cause of error. One is made for each reading of an engine. */
class OneReading implements Corrected, ErrorSource {
  readonly key: Slot;
  readonly name: string;
  readonly taken: readonly SlotReading[];
  readonly value: number;
  readonly u: number;
  readonly shared: readonly Cause[];
  readonly warm: readonly Cause[];
  readonly cautions: readonly string[];

  constructor(slot: Slot, name: string, taken: readonly SlotReading[], { gauge, value, shared, warm, cautions }: Once) {
    this.key = slot;
    this.name = name;
    this.taken = taken;
    this.value = value;
    this.u = gauge.single;
    this.shared = shared;
    this.warm = warm;
    this.cautions = cautions;
  }
  get slot(): Slot {
    return this.key;
  }
  get own(): ErrorSource {
    return this;
  }
  get allowed(): number {
    return LEAST_TWICE * this.u;
  }
}

function correctedRepeats(
  bench: Bench,
  spot: Spot,
  slot: Slot,
  name: string,
  taken: readonly SlotReading[],
): Corrected {
  const ones = taken.map((one) => correctedOnce(bench, spot, one));
  const repeats = ones.map(({ value }) => value);
  const feel = Math.max(...ones.map(({ gauge }) => gauge.feel));
  const step = Math.max(...ones.map(({ gauge }) => gauge.step));
  const u = quadrature(Math.max(feel, deviation(repeats)) / Math.sqrt(repeats.length), step);
  return {
    slot,
    name,
    taken,
    value: mean(repeats),
    own: { key: slot, name, u },
    ...sharedBy(ones),
    repeats,
    allowed: LEAST_TWICE * quadrature(feel, step),
    cautions: [...new Set(ones.flatMap(({ cautions }) => cautions))],
  };
}

function correctedOnce({ gauges, warmth }: Bench, spot: Spot, taken: SlotReading): Once {
  const gauge = gauges.of(taken.instrument, spot.kind);
  const { error, causes, cautions } = gauge.at(taken.at, taken.value);
  const value = taken.value - error;
  if (spot.warm === undefined) return { gauge, value, shared: causes, warm: NONE, cautions };
  const { temperature, room } = taken;
  if (spot.last === undefined || spot.last.temperature !== temperature || spot.last.room !== room)
    spot.last = { temperature, room, causes: warmth.causes(spot.warm, taken) };
  return {
    gauge,
    value: atReference(value, taken, spot.warm.expansion),
    shared: causes,
    warm: spot.last.causes,
    cautions,
  };
}
const NONE: readonly Cause[] = [];

/** What the repeats share, each with its part of the mean. Repeats alike in gauge and temperature share it whole. */
function sharedBy(ones: readonly Once[]): Pick<Once, 'shared' | 'warm'> {
  const { shared, warm } = ones[0]!;
  if (ones.every((one) => one.shared === shared && one.warm === warm)) return { shared, warm };
  const blend = new Blend();
  const own = { key: '', name: '', u: 0 };
  for (const { value, shared: causes, warm: warmed } of ones)
    blend.add(1 / ones.length, { value, own, shared: causes, warm: warmed });
  const mixed = blend.causes().filter(({ source }) => source !== own);
  return { shared: mixed.map(({ source, sensitivity }) => causeOf(source, sensitivity)), warm: NONE };
}

/** Whether repeats of a slot differ by more than they may. */
export const disagrees = ({ repeats, allowed }: Corrected): boolean =>
  repeats !== undefined && Math.max(...repeats) - Math.min(...repeats) > allowed;
