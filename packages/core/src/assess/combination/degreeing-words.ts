/** What is said of one degreed lobe. */
import { valveName } from '../../engine/index.js';
import { formatQuantity } from '../../quantity/index.js';
import { told, toldSurely } from './answering.js';
import type { FittedLobe } from './degreeing-lobe.js';
import type { LobeDegreed, PlacedReading } from './degreeing-model.js';
import type { Makeup } from './model.js';

const DEGREE = Math.PI / 180;

/** How many readings, and how the middle was found. */
export function degreedWorking(
  makeup: Makeup,
  { lobe, stage, middle, pairs, readings }: LobeDegreed,
): readonly string[] {
  const name = valveName(makeup.engine, lobe);
  const count = `${readings.length} readings`;
  if (middle === undefined) return [`${name}: ${count}, no middle yet`];
  const how =
    stage === 'whole-lobe'
      ? 'least squares over the whole lobe'
      : `equal lifts, ${pairs.length} ${pairs.length === 1 ? 'pair' : 'pairs'}`;
  return [`${name}: ${count}; ${how}: middle ${toldSurely('angle', middle)} from its top of overlap`];
}

/** Readings to take again, lifts that were not reached, flanks that are unlike. */
export function degreedCautions(
  makeup: Makeup,
  { lobe, suspects, stage, pairs }: LobeDegreed,
  fitted: FittedLobe | undefined,
  checkingLift: number,
): readonly string[] {
  const name = valveName(makeup.engine, lobe);
  const shown = (reading: PlacedReading) =>
    `${formatQuantity('angle', reading.wheel, 'deg', 2)} on the wheel, ${told('length', reading.lift)}`;
  const raised = fitted !== undefined && fitted.options.checkingLift > checkingLift;
  return [
    ...suspects.map(
      ({ reading }) => `${name}: the reading at ${shown(reading)} does not agree with the others; read it again`,
    ),
    ...(raised
      ? [
          `${name}: the readings do not go down to ${told('length', checkingLift)} on both flanks; the middle is taken at ${told('length', fitted.options.checkingLift)}`,
        ]
      : []),
    ...(stage === 'equal-lifts' && pairs.length === 1 ? [`${name}: one pair alone cannot show a wrong reading`] : []),
    ...(drifts(pairs)
      ? [`${name}: the middle moves as the lift grows: the flanks are unlike, or the wheel moved`]
      : []),
  ];
}

/** Middles that go one way with the lift by more than a degree from the lowest pair to the highest, more than they scatter. */
function drifts(pairs: LobeDegreed['pairs']): boolean {
  if (pairs.length < LEAST_PAIRS) return false;
  const byLift = [...pairs].sort((a, b) => a.lift - b.lift);
  const steps = byLift.slice(1).map(({ middle }, at) => middle - byLift[at]!.middle);
  const whole = byLift.at(-1)!.middle - byLift[0]!.middle;
  const sameWay = steps.filter((step) => step * whole > 0).length;
  return Math.abs(whole) > DEGREE && sameWay >= (2 * steps.length) / 3;
}
const LEAST_PAIRS = 4;
