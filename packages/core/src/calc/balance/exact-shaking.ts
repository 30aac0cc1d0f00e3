import { type Angle, done, type Length, type Outcome, wrapped } from '../../quantity/index.js';
import { pistonAcceleration, type RodTooShort } from '../crank/index.js';
import { angleOf, type Complex, length } from './complex.js';
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
  // Sums of plain numbers: a slider asks for hundreds of places of a turn in one frame.
  let [up, across, coupleUp, coupleAcross] = [0, 0, 0, 0];
  for (const one of throws) {
    const phase = (one.throwAngle + crankAngle - one.bankAngle) as Angle;
    const pull = pistonAcceleration(sizes, phase, sizes.crankSpeed);
    if (!pull.ok) return pull;
    const along = one.reciprocating * pull.value;
    const turning = one.rotating * sizes.crankRadius * sizes.crankSpeed ** 2;
    const pin = one.throwAngle + crankAngle;
    const re = along * Math.cos(one.bankAngle) + turning * Math.cos(pin);
    const im = along * Math.sin(one.bankAngle) + turning * Math.sin(pin);
    const arm = about - one.position;
    up += re;
    across += im;
    coupleUp += arm * re;
    coupleAcross += arm * im;
  }
  return done({ force: { re: up, im: across }, couple: { re: coupleUp, im: coupleAcross } });
}

export interface Peak {
  readonly most: number;
  /** Crank angle of the largest, 0 to 2π. */
  readonly crankAngle: number;
  readonly direction: number;
}

const STEPS = 90;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const REFINE = 32;
const STEP = (2 * Math.PI) / STEPS;

/**
 * Largest exact force and couple over a turn; symbols and refusal as in `shakeAt`.
 *
 * Looked for at every fourth degree, then narrowed by golden section between the neighbours of the largest: good for
 * curves whose peaks are wider than that, as those of slider-cranks are.
 */
export function exactPeaks(
  ...layout: [readonly Throw[], CrankSizes & { readonly pinOffset: Length }, Length]
): Outcome<{ readonly force: Peak; readonly couple: Peak }, RodTooShort> {
  const at: Turning = (angle) => shakeAt(...layout, angle);
  const samples = Array.from({ length: STEPS }, (_, place) => at(place * STEP));
  return andThen(peakOf('force', at, samples), (force) =>
    andThen(peakOf('couple', at, samples), (couple) => done({ force, couple })),
  );
}

type Turning = (crankAngle: number) => Outcome<Shake, RodTooShort>;

function peakOf(part: keyof Shake, at: Turning, samples: readonly ReturnType<Turning>[]): Outcome<Peak, RodTooShort> {
  const size = (found: ReturnType<Turning>): number => (found.ok ? length(found.value[part]) : 0);
  const sizes = samples.map(size);
  const best = sizes.indexOf(Math.max(...sizes));
  const there = (angle: number): number => size(at(angle));
  let [low, high] = [(best - 1) * STEP, (best + 1) * STEP];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [there(left), there(right)];
  for (let turn = 0; turn < REFINE; turn += 1) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = there(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = there(right);
    }
  }
  const crankAngle = wrapped((low + high) / 2, 2 * Math.PI);
  return andThen(at(crankAngle), (shake) =>
    done({ most: length(shake[part]), crankAngle, direction: angleOf(shake[part]) }),
  );
}

const andThen = <A, B, F>(found: Outcome<A, F>, next: (value: A) => Outcome<B, F>): Outcome<B, F> =>
  found.ok ? next(found.value) : found;
