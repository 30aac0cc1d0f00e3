import { type Angle, done, type Length, type Outcome, wrapped } from '../../quantity/index.js';
import { pistonAcceleration, type RodTooShort } from '../crank/index.js';
import { angleOf, type Complex, length, polar, sum, times } from './complex.js';
import type { CrankSizes, Throw } from './shaking.js';

/** Whole force [N] and couple [N·m] at one crank angle. */
export interface Shake {
  readonly force: Complex;
  readonly couple: Complex;
}

/**
 * Force and couple on the engine at a crank angle, from the exact slider-crank with pin offset: all orders at once.
 *
 *   F = Σ (m·a(φ)·e^(iβ) + mr·r·ω²·e^(i(τ+θ))),  φ = τ + θ − β,  couple = Σ (z0 − z)·F
 *
 * Symbols as in `shakingOf`; a is the piston's acceleration away from its head. Refuses with `rod-too-short`.
 * Example: four cylinders in line, 0.62 kg, throw 43.5 mm, rod 145 mm, 6000 r/min: largest 13 394 N.
 * Source: `pistonAcceleration`; d'Alembert.
 */
export function shakeAt(
  throws: readonly Throw[],
  sizes: CrankSizes & { readonly pinOffset: Length },
  about: Length,
  crankAngle: number,
): Outcome<Shake, RodTooShort> {
  const forces: Complex[] = [];
  for (const one of throws) {
    const phase = (one.throwAngle + crankAngle - one.bankAngle) as Angle;
    const pull = pistonAcceleration(sizes, phase, sizes.crankSpeed);
    if (!pull.ok) return pull;
    const turning = one.rotating * sizes.crankRadius * sizes.crankSpeed ** 2;
    forces.push(
      sum([polar(one.reciprocating * pull.value, one.bankAngle), polar(turning, one.throwAngle + crankAngle)]),
    );
  }
  const couples = forces.map((force, place) => times(force, about - (throws[place] as Throw).position));
  return done({ force: sum(forces), couple: sum(couples) });
}

export interface Peak {
  readonly most: number;
  /** Crank angle of the largest, 0 to 2π. */
  readonly crankAngle: number;
  readonly direction: number;
}

const STEPS = 720;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const REFINE = 60;

/** A vector at a crank angle, or why there is none. */
type Turning = (crankAngle: number) => Outcome<Complex, RodTooShort>;

/**
 * Largest length of a vector over one turn: looked for at every half degree, then narrowed by golden section between the
 * neighbours of the largest. Exact for curves that have no narrower peak than a degree, as slider-cranks have not.
 */
function peakOver(at: Turning): Outcome<Peak, RodTooShort> {
  const step = (2 * Math.PI) / STEPS;
  const size = (angle: number): number => {
    const found = at(angle);
    return found.ok ? length(found.value) : 0;
  };
  let best = 0;
  for (let place = 1; place < STEPS; place += 1) if (size(place * step) > size(best * step)) best = place;
  let low = (best - 1) * step;
  let high = (best + 1) * step;
  for (let turn = 0; turn < REFINE; turn += 1) {
    const width = GOLDEN * (high - low);
    if (size(high - width) >= size(low + width)) high = low + width;
    else low = high - width;
  }
  const crankAngle = wrapped((low + high) / 2, 2 * Math.PI);
  return andThen(at(crankAngle), (vector) => done({ most: length(vector), crankAngle, direction: angleOf(vector) }));
}

/** Largest exact force and couple over a turn; symbols and refusal as in `shakeAt`. */
export function exactPeaks(
  ...layout: [readonly Throw[], CrankSizes & { readonly pinOffset: Length }, Length]
): Outcome<{ readonly force: Peak; readonly couple: Peak }, RodTooShort> {
  const of =
    (part: keyof Shake): Turning =>
    (angle) =>
      andThen(shakeAt(...layout, angle), (shake) => done(shake[part]));
  return andThen(peakOver(of('force')), (force) =>
    andThen(peakOver(of('couple')), (couple) => done({ force, couple })),
  );
}

const andThen = <A, B, F>(found: Outcome<A, F>, next: (value: A) => Outcome<B, F>): Outcome<B, F> =>
  found.ok ? next(found.value) : found;
