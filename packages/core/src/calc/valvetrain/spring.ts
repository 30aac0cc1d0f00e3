/** Helical compression springs: rate, solid height, stress and surge. */
import type { Density, Force, Frequency, Length, Mass, Pressure, Stiffness } from '../../quantity/index.js';

export const SPRING_ENDS = ['plain', 'plain-ground', 'squared', 'squared-ground'] as const;
export type SpringEnds = (typeof SPRING_ENDS)[number];

export interface Spring {
  readonly wire: Length;
  /** Outside diameter minus one wire, or inside plus one. */
  readonly meanDiameter: Length;
  /** Coils that work. */
  readonly activeCoils: number;
}

/** Coils at both ends that do not work. Source: Shigley, table of end treatments, from memory. */
export function deadCoils(ends: SpringEnds): number {
  switch (ends) {
    case 'plain':
      return 0;
    case 'plain-ground':
      return 1;
    case 'squared':
    case 'squared-ground':
      return 2;
  }
}

/**
 * Height of a spring with its coils touching: (Nt + 1)·d with ends as wound, Nt·d with ground ends.
 *
 * `totalCoils` Nt, `wire` d [m]. Example: 12.5 coils of 0.037 in, squared: 0.4995 in. Source: Shigley, chapter 10, from memory.
 */
export function solidHeight(ends: SpringEnds, totalCoils: number, wire: Length): Length {
  const ground = ends === 'plain-ground' || ends === 'squared-ground';
  return ((ground ? totalCoils : totalCoils + 1) * wire) as Length;
}

/**
 * Rate of a helical spring of round wire: k = d⁴·G/(8·D³·Na) [N/m].
 *
 * d wire, D MEAN diameter [m], Na active coils, G `shearModulus` [Pa]. A wire error counts four times, one of D three times.
 * Example: d 0.037 in, D 0.400 in, 10.5 coils, 11.85e6 psi: 4.13 lbf/in. Source: Shigley, example 10-1, from memory.
 */
export function springRate({ wire, meanDiameter, activeCoils }: Spring, shearModulus: Pressure): Stiffness {
  return ((wire ** 4 * shearModulus) / (8 * meanDiameter ** 3 * activeCoils)) as Stiffness;
}

/** Mass of the coils that work [kg]: ρ·(π²/4)·d²·D·Na. Source: wire section times its length, small pitch. */
export function activeMass({ wire, meanDiameter, activeCoils }: Spring, density: Density): Mass {
  return ((density * Math.PI ** 2 * wire ** 2 * meanDiameter * activeCoils) / 4) as Mass;
}

/** First natural frequency with both ends held, and with one end free. */
export interface Surge {
  readonly bothHeld: Frequency;
  readonly oneFree: Frequency;
}

/**
 * Surge of a spring: f = ½·√(k/m) with both ends held, half of that with one end free.
 *
 * k rate [N/m], m mass of the active coils [kg]. It does not depend on the load.
 * Example: 43.43 N/mm, d 4.5, D 27.5 mm, 4.5 coils of steel: 473 Hz. Source: Shigley, chapter 10, from memory.
 */
export function surge(rate: Stiffness, mass: Mass): Surge {
  const bothHeld = Math.sqrt(rate / mass) / 2;
  return { bothHeld: bothHeld as Frequency, oneFree: (bothHeld / 2) as Frequency };
}

/**
 * Largest shear stress of the wire under a load: τ = K·8·F·D/(π·d³), K = (4C − 1)/(4C − 4) + 0.615/C, C = D/d above 1 [Pa].
 *
 * Source: A. M. Wahl's factor for curvature and direct shear, from memory (Shigley, chapter 10).
 */
export function springStress({ wire, meanDiameter }: Spring, load: Force): Pressure {
  const index = meanDiameter / wire;
  const factor = (4 * index - 1) / (4 * index - 4) + 0.615 / index;
  return ((factor * 8 * load * meanDiameter) / (Math.PI * wire ** 3)) as Pressure;
}
