/** Middles of a lobe from readings of equal lift on both flanks. */
import {
  crossingAt,
  curveThrough,
  type EqualLifts,
  equalLifts,
  type LiftTable,
  liftTable,
} from '../../calc/cam/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import type { LobeDegreed, PlacedReading } from './degreeing-model.js';

/** Lifts within a hundredth of a millimetre are one lift: an indicator does not tell them apart. */
const ALIKE = 1e-5;
const SAME_ANGLE = 1e-6;

export interface Paired {
  readonly pairs: LobeDegreed['pairs'];
  readonly middle: EqualLifts;
}

/** Readings at one angle, taken as their mean. */
export function merged(readings: readonly PlacedReading[]): LiftTable | undefined {
  const groups: PlacedReading[][] = [];
  for (const one of readings) {
    const last = groups.at(-1);
    if (last !== undefined && one.angle - last[0]!.angle < SAME_ANGLE) last.push(one);
    else groups.push([one]);
  }
  const mean = (group: readonly PlacedReading[]) => group.reduce((sum, { lift }) => sum + lift, 0) / group.length;
  const table = liftTable(
    groups.map(([one]) => one!.angle as Angle),
    groups.map((group) => mean(group) as Length),
  );
  return table.ok ? table.value : undefined;
}

/** Readings of each flank: as the person says, else by the side of the highest reading on which they lie. */
export function flanksOf(readings: readonly PlacedReading[]) {
  const top = readings.reduce<PlacedReading | undefined>(
    (best, one) => (best && best.lift >= one.lift ? best : one),
    undefined,
  );
  const on = (sense: 'opening' | 'closing') =>
    readings.filter((one) => {
      if (one.sense !== undefined) return one.sense === sense;
      if (top === undefined || one.angle === top.angle) return false;
      return sense === 'opening' ? one.angle < top.angle : one.angle > top.angle;
    });
  return { opening: on('opening'), closing: on('closing') };
}

/**
 * Middle by equal lifts: from pairs that were read at one lift, else where the readings of the other flank pass that lift (spline through
 * them). Undefined while no lift is known on both flanks.
 */
export function byEqualLifts(readings: readonly PlacedReading[]): Paired | undefined {
  const { opening, closing } = flanksOf(readings);
  const read = opening.flatMap((one) => {
    const near = closing.filter((other) => Math.abs(other.lift - one.lift) <= ALIKE);
    const best = near.reduce<PlacedReading | undefined>(
      (found, other) => (found && Math.abs(found.lift - one.lift) <= Math.abs(other.lift - one.lift) ? found : other),
      undefined,
    );
    return best === undefined ? [] : [{ opens: one.angle, closes: best.angle, lift: one.lift, read: true }];
  });
  const pairs = read.length > 0 ? read : passed(readings);
  if (pairs.length === 0) return undefined;
  const middle = equalLifts(
    pairs.map(({ opens }) => opens as Angle),
    pairs.map(({ closes }) => closes as Angle),
    0 as Angle,
  );
  return {
    pairs: pairs.map(({ lift, read: own }, at) => ({ lift, middle: middle.middles[at]!, read: own })),
    middle,
  };
}

/** Each lift that was read on one flank and lies between readings of the other; the ramps, and the nose where a flank is flat, left out. */
function passed(readings: readonly PlacedReading[]) {
  const table = merged(readings);
  if (table === undefined) return [];
  const curve = curveThrough(table, 'spline');
  const highest = Math.max(...table.lifts);
  const lifts = [...new Set(table.lifts)].filter((lift) => lift > LOW * highest && lift < HIGH * highest);
  return lifts.flatMap((lift) => {
    const found = crossingAt(table, curve, lift);
    return found.ok ? [{ ...found.value, lift, read: false }] : [];
  });
}
const LOW = 0.1;
const HIGH = 0.85;
