import type { Length } from '../../quantity/index.js';

/**
 * Piston-to-head distance at top dead centre (quench) [m]: q = d + tg, deck clearance (proud negative) and compressed
 * gasket. Source: definition. Example: 0.005 + 0.039 in: 0.044 in.
 */
export const quench = (deckClearance: Length, gasket: Length): Length => (deckClearance + gasket) as Length;

/**
 * Stretch of a rod by the inertia of what it carries at top dead centre [m]: δ = m·a·l/(A·E).
 *
 * | symbol | argument    | unit   | meaning                                                       |
 * |--------|-------------|--------|---------------------------------------------------------------|
 * | m      | `mass`      | [kg]   | piston, pin, rings, and about half of the rod's beam          |
 * | a      | `pull`      | [m/s²] | piston acceleration at top dead centre                        |
 * | l      | `beam`      | [m]    | length of beam that stretches                                 |
 * | A      | `area`      | [m²]   | its mean section                                              |
 * | E      | `modulus`   | [Pa]   | elastic modulus: steel about 207 GPa, aluminium about 71 GPa  |
 *
 * A bar in tension; cap and ends that bend are not counted and add to it. Source: Hooke's law, any handbook.
 * Example: 1 kg, 25 000 m/s², 145 mm, 200 mm², 207 GPa: 0.0876 mm.
 */
export const rodStretch = (mass: number, pull: number, beam: Length, area: number, modulus: number): Length =>
  ((mass * pull * beam) / (area * modulus)) as Length;
