import type { Area, Compliance, Length, Pressure } from '../../quantity/index.js';
import { circle, rootAreas, stressArea, type Thread } from './thread.js';

/** Change of length of a bar for each newton: L/(E·A) [m/N]. All above 0. Source: elastic bar. */
export function barCompliance(length: Length, area: Area, modulus: Pressure): Compliance {
  return (length / (modulus * area)) as Compliance;
}

/**
 * Compliance of a clamped sleeve: L/(E·π/4·(D² − d²)) [m/N].
 *
 * Example: 22/11 mm, 85 mm long, 110 GPa: 2.710 µm/kN. Source: elastic bar.
 */
export function sleeveCompliance(outside: Length, hole: Length, length: Length, modulus: Pressure): Compliance {
  return barCompliance(length, (circle(outside) - circle(hole)) as Area, modulus);
}

/** Area that counts for the stretch of the free thread: the root d3, or the tensile stress area. */
export type ThreadArea = 'root' | 'stress';
export type HeadKind = 'none' | 'hexagon' | 'socket';
/** What the thread is screwed into, with the modulus of a tapped part. */
export type Partner = { readonly kind: 'none' | 'nut' } | { readonly kind: 'tapped'; readonly modulus: Pressure };

export interface BoltShape {
  readonly thread: Thread;
  readonly modulus: Pressure;
  readonly shank: readonly { readonly length: Length; readonly diameter: Length }[];
  /** Thread between the shank and the part it is screwed into. */
  readonly freeThread: Length;
  readonly threadArea: ThreadArea;
  readonly head: HeadKind;
  readonly partner: Partner;
}

/** Compliance [m/N] by part; the sum is that of the bolt. */
export interface BoltResilience {
  readonly head: Compliance;
  readonly shank: Compliance;
  readonly freeThread: Compliance;
  readonly engagedThread: Compliance;
  readonly partner: Compliance;
}

/** Lengths that stand for what gives inside head, engaged thread and nut, in nominal diameters. */
const HEAD: Readonly<Record<HeadKind, number>> = { none: 0, hexagon: 0.5, socket: 0.4 };
const ENGAGED = 0.5;
const NUT = 0.4;
const TAPPED = 0.33;

/**
 * Compliance of a bolt from its parts: Σ L/(E·A) with allowances for what gives out of sight [m/N].
 *
 *   head 0.5·d (socket 0.4·d) on π·d²/4; shank segments; free thread on d3 or As; engaged thread 0.5·d on the same;
 *   nut 0.4·d, or tapped part 0.33·d with the part's E, on π·d²/4
 *
 * `none` leaves an allowance out; without a partner there is no engaged thread either. Lengths [m], E [Pa].
 * Example: M10 x 1.5, 205 GPa, hexagon, shank 60 mm of 10 mm, free thread 25 mm, tapped into 110 GPa: 7.218 µm/kN.
 * Source: VDI 2230 part 1 (from memory).
 */
export function boltResilience(bolt: BoltShape): BoltResilience {
  const { thread, modulus, partner } = bolt;
  const whole = circle(thread.diameter);
  const threaded = bolt.threadArea === 'root' ? rootAreas(thread).rounded : stressArea(thread);
  const part = (diameters: number, area: Area, of: Pressure = modulus) =>
    barCompliance((diameters * thread.diameter) as Length, area, of);
  const shank = bolt.shank.map(({ length, diameter }) => barCompliance(length, circle(diameter), modulus));
  return {
    head: part(HEAD[bolt.head], whole),
    shank: shank.reduce((sum, one) => sum + one, 0) as Compliance,
    freeThread: barCompliance(bolt.freeThread, threaded, modulus),
    engagedThread: part(partner.kind === 'none' ? 0 : ENGAGED, threaded),
    partner:
      partner.kind === 'tapped' ? part(TAPPED, whole, partner.modulus) : part(partner.kind === 'nut' ? NUT : 0, whole),
  };
}

/** Sum of the parts [m/N]. */
export const wholeResilience = (r: BoltResilience): Compliance =>
  (r.head + r.shank + r.freeThread + r.engagedThread + r.partner) as Compliance;
