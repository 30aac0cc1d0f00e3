import type { Length } from '../../quantity/index.js';

/** Amounts of embedding in µm: in the thread, under each head or nut, at each inner interface. */
type Amounts = readonly [thread: number, face: number, inner: number];
/** By direction of the working load and roughness Rz of the faces. Source: VDI 2230 part 1 (from memory). */
const AMOUNTS = {
  tension: { 'Rz below 10 µm': [3, 2.5, 1.5], 'Rz 10 to 40 µm': [3, 3, 2], 'Rz 40 to 160 µm': [3, 4, 3] },
  shear: { 'Rz below 10 µm': [3, 3, 2], 'Rz 10 to 40 µm': [3, 4.5, 2.5], 'Rz 40 to 160 µm': [3, 6.5, 3.5] },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Amounts>>>>;
export type LoadDirection = keyof typeof AMOUNTS;
export type Roughness = keyof (typeof AMOUNTS)['tension'];
export const roughnesses = Object.keys(AMOUNTS.tension) as readonly Roughness[];

const MICROMETRE = 1e-6;

/**
 * How much a joint beds in: fZ = thread + faces·head + interfaces·inner [m].
 *
 * `faces` under heads and nuts: 1 for a screw in a tapped part, 2 for a bolt with a nut; `interfaces` between clamped
 * parts. Gasket creep is not in it and is much larger.
 * Example: tension, Rz 10 to 40 µm, one head, one interface: 8 µm. Source: see `AMOUNTS`.
 */
export function embeddingAmount(
  direction: LoadDirection,
  roughness: Roughness,
  faces: number,
  interfaces: number,
): Length {
  const [thread, face, inner] = AMOUNTS[direction][roughness];
  return ((thread + faces * face + interfaces * inner) * MICROMETRE) as Length;
}
