/** The unbalanced masses of a rotor as inputs, and as parts. */
import { type Angle, done, type Length, type Outcome, wrapped } from '../../../quantity/index.js';
import { type Conflict, conflict, type Values } from '../../catalogue/index.js';
import type { Unbalance } from '../rotor.js';
import { direction, mass, place, size } from './inputs.js';

export const rotorInputs = {
  masses: { ...mass('m', 'masses out of the middle, each'), list: true },
  radii: { ...size('r', 'radius of each mass; one value for all, or one each'), list: true },
  angles: { ...direction('α', 'angle of each mass from one mark, all in one sense'), list: true },
} as const;
export const positions = { ...place('z', 'each mass along the axis, from any common point'), list: true } as const;

type RotorValues = Values<typeof rotorInputs> & { readonly positions?: readonly Length[] };

export function partsOf(v: RotorValues): Outcome<readonly Unbalance[], Conflict> {
  const n = v.masses.length;
  const short = v.radii.length !== 1 && v.radii.length !== n ? ['radii'] : [];
  const wrong = [...short, ...(v.angles.length === n ? [] : ['angles'])];
  if (v.positions !== undefined && v.positions.length !== n) wrong.push('positions');
  if (wrong.length > 0)
    return conflict(['masses', ...wrong], `${wrong.join(', ')}: one value is needed for each of ${n} masses`);
  return done(
    v.masses.map((one, at) => ({
      mass: one,
      radius: (v.radii.length === 1 ? v.radii[0] : v.radii[at]) as Length,
      angle: v.angles[at] as Angle,
      position: (v.positions?.[at] ?? 0) as Length,
    })),
  );
}

/** An angle of 0 to 360°. */
export const whole = (angle: Angle): Angle => wrapped(angle, (2 * Math.PI) as Angle);
