/** How a lobe is fitted where nobody says it. */
import type { Length } from '../../quantity/index.js';
import type { LobeOptions, LobeShape } from './whole-lobe.js';

/** Usual share of the peak below which a reading lies on the ramp; never above half of the checking lift. */
const RAMP = 0.05;
const MOST_TERMS = 6;

/**
 * Options of `fitLobe` for readings of which nothing more is known.
 *
 * `lifts` [m] all readings, `checkingLift` [m]; readings under `leastLift` are left out, by default 5 % of the highest or half of the
 * checking lift, whichever is less. Half of the readings used bear a coefficient of the mirrored curve each, up to 6; two thirds one of the
 * other, of even degree, up to 11. Source: common practice, no source.
 */
export function usualLobeOptions(
  lifts: readonly Length[],
  checkingLift: Length,
  flanks: LobeShape,
  leastLift = Math.min(RAMP * Math.max(...lifts), checkingLift / 2) as Length,
): LobeOptions {
  const used = lifts.filter((one) => one >= leastLift).length;
  return { flanks, checkingLift, leastLift, terms: usualTerms(used, flanks) };
}

function usualTerms(used: number, flanks: LobeShape): number {
  if (flanks === 'alike') return Math.min(MOST_TERMS, Math.max(3, Math.floor(used / 2)));
  const borne = Math.min(2 * MOST_TERMS - 1, Math.max(3, Math.floor((2 * used) / 3)));
  return borne % 2 === 0 ? borne - 1 : borne;
}
