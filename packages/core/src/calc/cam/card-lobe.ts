/** A lobe that has the durations of a cam card. */
import { type Angle, done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { lowest, signChange } from '../numeric/index.js';
import { lobeLift } from './lobe-lift.js';
import type { Exponents, PolynomialLobe } from './polynomial-lobe.js';

/** Duration of a lobe at one lift. */
export interface CardDuration {
  readonly lift: Length;
  readonly duration: Angle;
}
export interface CardFit {
  readonly lobe: PolynomialLobe;
  /** Duration of the curve minus that of the card, in the order of the card. */
  readonly misses: readonly Angle[];
}
export type CardFault =
  | { readonly code: 'lift-too-high'; readonly lift: Length }
  /** A longer duration at a higher lift, or twice the same lift. */
  | { readonly code: 'not-falling' }
  | { readonly code: 'no-such-lobe'; readonly fuller: boolean };

const FIRST_EXPONENT = { least: 2.1, most: 80, steps: 120 };

/**
 * Polynomial lobe whose durations at given lifts are those of a cam card.
 *
 * | symbol | argument   | unit       | meaning                                                                    |
 * |--------|------------|------------|----------------------------------------------------------------------------|
 * | L      | `peakLift` | [m]        | highest lift, above every checking lift                                    |
 * | l, d   | `card`     | [m], [rad] | checking lifts and durations, one or more, at the same place (lobe or valve) as L |
 * | p      | `given`    |            | first exponent, used when the card has a single duration; else it is found |
 * | s      | `step`     |            | p, p + s, p + 2s are the exponents                                         |
 *
 * One duration fixes the length; two fix length and fullness, so that both durations come out exactly; more are met in
 * the sense of least squares. Refuses a lift at or above the peak, durations that do not shrink as the lift grows, and two durations
 * that no lobe of the family has.
 * Source: derived; the curve is that of `lobeCoefficients`.
 */
export function lobeFromCard(
  peakLift: Length,
  card: readonly CardDuration[],
  given: number,
  step: number,
): Outcome<CardFit, CardFault> {
  const high = card.find(({ lift }) => lift >= peakLift);
  if (high) return refused({ code: 'lift-too-high', lift: high.lift });
  const rising = [...card].sort((a, b) => a.lift - b.lift);
  const turned = rising.some(({ lift, duration }, at) => {
    const lower = rising[at - 1];
    return lower !== undefined && (lower.lift === lift || lower.duration <= duration);
  });
  if (turned) return refused({ code: 'not-falling' });
  const shares = (first: number) => card.map(({ lift }) => shareAt(exponentsOf(first, step), lift / peakLift));
  const first = firstExponent(rising, card, shares, given);
  if (!first.ok) return first;
  const found = shares(first.value);
  const halfDuration = bestHalf(card, found) as Angle;
  const lobe = { peakLift, halfDuration, exponents: exponentsOf(first.value, step) };
  return done({ lobe, misses: card.map(({ duration }, at) => (2 * halfDuration * found[at]! - duration) as Angle) });
}

const exponentsOf = (first: number, step: number): Exponents => [first, first + step, first + 2 * step];

/** Angle from the nose, over half duration, at which the lift is a share of the peak. */
function shareAt(exponents: Exponents, share: number): number {
  if (share === 0) return 1;
  const unit: PolynomialLobe = { peakLift: 1 as Length, halfDuration: 1 as Angle, exponents };
  const lift = lobeLift(unit);
  return signChange((x) => lift(x) - share, 0, 1);
}

/** Half duration that meets all durations best for a given fullness. */
const bestHalf = (card: readonly CardDuration[], shares: readonly number[]): number =>
  card.reduce((sum, { duration }, at) => sum + duration * shares[at]!, 0) /
  (2 * shares.reduce((sum, share) => sum + share ** 2, 0));

function firstExponent(
  rising: readonly CardDuration[],
  card: readonly CardDuration[],
  shares: (first: number) => readonly number[],
  given: number,
): Outcome<number, CardFault> {
  const { least, most, steps } = FIRST_EXPONENT;
  if (card.length === 1) return done(given);
  if (card.length === 2) {
    const [low, high] = rising[0] === card[0] ? [0, 1] : [1, 0];
    const wanted = card[high]!.duration / card[low]!.duration;
    const apart = (first: number) => {
      const found = shares(first);
      return found[high]! / found[low]! - wanted;
    };
    if (apart(least) > 0) return refused({ code: 'no-such-lobe', fuller: false });
    if (apart(most) < 0) return refused({ code: 'no-such-lobe', fuller: true });
    return done(signChange(apart, least, most));
  }
  const missed = (first: number) => {
    const found = shares(first);
    const half = bestHalf(card, found);
    return card.reduce((sum, { duration }, at) => sum + (2 * half * found[at]! - duration) ** 2, 0);
  };
  const places = Array.from({ length: steps + 1 }, (_, at) => least * (most / least) ** (at / steps));
  return done(lowest(missed, places).at);
}
