/** Which further readings of a lobe would help most. */

import type { FittedLobe } from './degreeing-lobe.js';
import type { NextReading, PlacedReading } from './degreeing-model.js';
import { flanksOf } from './degreeing-pairs.js';
import { aroundZero } from './true-dead-centre.js';

const DEGREE = Math.PI / 180;
const STEP = 5 * DEGREE;
const APART = 15 * DEGREE;
const MOST = 3;
/** A reading that takes less than this off the doubt is not worth the turn of the crank. */
const WORTH = 0.98;
/** Half of an ordinary lobe, for a first look. */
const USUAL_HALF = 60 * DEGREE;

interface Where {
  readonly wheelAtTop: number;
  /** Middle of the lobe as far as it is known, crank angle after its own top of overlap. */
  readonly middle: number;
}

/**
 * Up to three places for further readings, the best first. With a curve: where one more reading leaves the least doubt of the centreline; before
 * there is one: what each flank and the nose still lack.
 */
export function nextReadings(
  readings: readonly PlacedReading[],
  fitted: FittedLobe | undefined,
  where: Where,
): readonly NextReading[] {
  return fitted === undefined ? forACurve(readings, where) : forLessDoubt(fitted, where);
}

const at = (angle: number, { wheelAtTop }: Where) => ({ angle, wheel: aroundZero(angle + wheelAtTop) });

function forLessDoubt({ fit }: FittedLobe, where: Where): readonly NextReading[] {
  const [first, last] = [fit.usedAngles[0]!, fit.usedAngles.at(-1)!];
  const start = Math.ceil(first / STEP) * STEP;
  const count = Math.max(0, Math.floor((last - start) / STEP) + 1);
  const places = Array.from({ length: count }, (_, step) => start + step * STEP)
    .map((angle) => ({ angle, share: fit.shareWith(angle) }))
    .filter(({ share }) => share < WORTH)
    .sort((a, b) => a.share - b.share);
  const chosen: { readonly angle: number; readonly share: number }[] = [];
  for (const one of places) {
    const near = chosen.some(({ angle }) => Math.abs(angle - one.angle) < APART);
    if (!near && chosen.length < MOST) chosen.push(one);
  }
  return chosen.map(({ angle, share }) => ({
    ...at(angle, where),
    flank: angle < fit.peakAngle ? 'opening' : 'closing',
    share,
    why: `leaves ${Math.round(100 * share)} % of the doubt of the centreline`,
  }));
}

function forACurve(readings: readonly PlacedReading[], where: Where): readonly NextReading[] {
  const { opening, closing } = flanksOf(readings);
  const mirror = (one: PlacedReading) => 2 * where.middle - one.angle;
  const nose: NextReading = { ...at(where.middle, where), flank: 'nose', why: 'the highest lift of the lobe' };
  const first = (flank: 'opening' | 'closing'): NextReading => ({
    ...at(where.middle + (flank === 'opening' ? -USUAL_HALF : USUAL_HALF), where),
    flank,
    why: `the ${flank} flank has no reading yet`,
  });
  if (opening.length === 0 && closing.length === 0) return [first('opening'), first('closing'), nose];
  const [flank, other]: ['opening' | 'closing', readonly PlacedReading[]] =
    opening.length < closing.length ? ['opening', closing] : ['closing', opening];
  const steep = other.reduce((best, one) =>
    Math.abs(one.lift - HALF_UP) < Math.abs(best.lift - HALF_UP) ? one : best,
  );
  return [
    {
      ...at(mirror(steep), where),
      flank,
      why: 'near the lift that was read on the other flank: turn until the indicator shows it',
    },
    nose,
  ];
}
/** About half of an ordinary lobe lift: there the flank is steep. */
const HALF_UP = 3e-3;
