/** Wheel readings of one lobe, put where they belong in the cycle. */
import type { ValveId } from '../../engine/index.js';
import type { CamReading, PlacedReading } from './degreeing-model.js';
import type { Look } from './look.js';
import { aroundZero } from './true-dead-centre.js';

const TURN = 2 * Math.PI;
/** Usual middles of lobes: where nothing better is known they tell which turn of the wheel is meant. */
const USUAL: Readonly<Record<ValveId['kind'], number>> = {
  intake: (110 * Math.PI) / 180,
  exhaust: (-110 * Math.PI) / 180,
};
export const usualMiddle = (lobe: ValveId): number => USUAL[lobe.kind];

/**
 * Readings of one lobe by rising crank angle after its own top dead centre of overlap, lifts at the lobe.
 *
 * A wheel counts one turn. The readings are laid around the direction in which the lobe is high (their mean direction, weighed by the square
 * of the lift), half a turn either way, and the whole lobe to the turn nearest to `expected`: so neither the order of the readings nor the zero
 * of the wheel decides. `wheelAtTop` is what the wheel reads at that dead centre.
 */
export function placed(
  readings: readonly (CamReading & { readonly lobeLift: number })[],
  wheelAtTop: number,
  expected: number,
): readonly PlacedReading[] {
  const sorted = [...readings].sort((a, b) => a.wheel - b.wheel || a.lobeLift - b.lobeLift);
  const sum = (part: (angle: number) => number) =>
    sorted.reduce((total, { wheel, lobeLift }) => total + lobeLift ** 2 * part(wheel), 0);
  const high = Math.atan2(sum(Math.sin), sum(Math.cos));
  const start = high - wheelAtTop;
  const turned = TURN * Math.round((expected - start) / TURN);
  const all = sorted.map(({ wheel, lobeLift, sense, entry }) => ({
    angle: start + turned + aroundZero(wheel - high),
    lift: lobeLift,
    wheel,
    ...(sense && { sense }),
    ...(entry !== undefined && { entry }),
  }));
  return all.sort((a, b) => a.angle - b.angle || a.lift - b.lift);
}

/**
 * Readings with their lift at the lobe: what was read at the valve is more by the rocker ratio and less by the lash. A valve that stands on its seat
 * says nothing of a lobe that still takes up lash.
 */
export function atTheLobe(look: Look, readings: readonly CamReading[]) {
  const atValve = readings.some(({ at }) => at === 'valve');
  const ratio = atValve ? look.need('rocker-ratio', 'lobe lift from readings at the valve') : 1;
  const lash = atValve ? look.need('valve-lash', 'lobe lift from readings at the valve') : 0;
  return readings.flatMap((one) => {
    if (one.at === 'lifter') return [{ ...one, lobeLift: one.lift }];
    if (ratio === undefined || lash === undefined || (lash > 0 && one.lift <= 0)) return [];
    return [{ ...one, lobeLift: (one.lift + lash) / ratio }];
  });
}
