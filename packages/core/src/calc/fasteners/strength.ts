import {
  type Area,
  done,
  type Force,
  type Length,
  type Outcome,
  type Pressure,
  refused,
} from '../../quantity/index.js';
import { type Strength, strengthTable } from './strength-table.js';

export interface NoStrength {
  readonly code: 'no-such-class' | 'diameter-outside-class';
  readonly given: string;
  readonly diameter: Length;
  readonly known: readonly string[];
}

/** Names of the strength classes in the table, without repetition. */
export const strengthClasses = [...new Set(strengthTable.map((row) => row.name))];

/**
 * Minimum strength of a property class at a diameter [Pa]: proof stress, yield (0.2 %) and tensile strength.
 *
 * Marking arithmetic is not the minimum: 10.9 stands for 1000 and 900 MPa, the table says 1040 and 940. Steel studs of
 * higher strength are outside the table: their maker's figure decides. Refuses an unknown class or a diameter at which
 * the class is not defined.
 * Source: ISO 898-1 and SAE J429, read in copies.
 */
export function strengthOf(name: string, diameter: Length): Outcome<Strength, NoStrength> {
  const rows = strengthTable.filter((row) => row.name === name);
  const row = rows.find((one) => diameter > one.over * (1 + ROUNDING) && diameter <= one.upTo * (1 + ROUNDING));
  if (row) return done(row);
  const code = rows.length === 0 ? 'no-such-class' : 'diameter-outside-class';
  return refused({ code, given: name, diameter, known: strengthClasses });
}
const ROUNDING = 1e-9;

/**
 * Load at a stress: F = As·S [N]. As [m²] tensile stress area, S [Pa] proof stress (proof load) or tensile strength
 * (ultimate load). The standard multiplies the printed, rounded area: M12 prints 70.0 kN, the unrounded area gives
 * 69.9 kN. Source: ISO 898-1 by a copy.
 */
export function loadAt(area: Area, stress: Pressure): Force {
  return (area * stress) as Force;
}
