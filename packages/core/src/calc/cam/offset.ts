/** What turns a cam against its crank, and which of the parts at hand does it best. */
import type { Angle, Length } from '../../quantity/index.js';

/** Where an offset key or bushing sits. */
export const OFFSET_PLACES = ['crank-key', 'cam-key', 'cam-dowel-bushing'] as const;
export type OffsetPlace = (typeof OFFSET_PLACES)[number];

/**
 * Crank angle by which an offset key or bushing moves the cam timing.
 *
 *   β = asin(s/R) where it sits;  at the crank: crank angle = β;  at the cam: crank angle = 2·β
 *
 * s `offset` [m], R `radius` [m] from the shaft's centre to the key or dowel, s < R. The cam turns at half crank speed,
 * so an angle at the cam counts twice at the crank. Source: derived.
 */
export function timingOfOffset(place: OffsetPlace, offset: Length, radius: Length): Angle {
  const where = Math.asin(offset / radius);
  return (place === 'crank-key' ? where : 2 * where) as Angle;
}

/** Offset [m] for a crank angle of timing; turns `timingOfOffset` round. Source: derived. */
export function offsetForTiming(place: OffsetPlace, timing: Angle, radius: Length): Length {
  return (radius * Math.sin(place === 'crank-key' ? timing : timing / 2)) as Length;
}

/** A part at hand and teeth to move with it. */
export interface OffsetChoice {
  /** Index of the part in the list, or undefined for none. */
  readonly part: number | undefined;
  /** Sprocket teeth, positive advances the cam. */
  readonly teeth: number;
  /** What both do together, crank angle, positive advances. */
  readonly change: Angle;
  /** What is left: wanted minus done. */
  readonly left: Angle;
}

/**
 * Every choice of one part at hand, or none, with so many teeth moved.
 *
 * `wanted` [rad of crank, positive advances]; `parts` crank angles of what is at hand; `tooth` crank angle of one sprocket
 * tooth, with `mostTeeth` 0 where teeth are not to be moved. Leaving all as it is, is one of the choices. Source: definition.
 */
export function offsetChoices(
  wanted: Angle,
  parts: readonly Angle[],
  tooth: number,
  mostTeeth: number,
): readonly OffsetChoice[] {
  const teeth = Array.from({ length: 2 * mostTeeth + 1 }, (_, at) => at - mostTeeth);
  return [undefined, ...parts.map((_, at) => at)].flatMap((part) =>
    teeth.map((count) => {
      const change = ((part === undefined ? 0 : parts[part]!) + count * tooth) as Angle;
      return { part, teeth: count, change, left: (wanted - change) as Angle };
    }),
  );
}

/**
 * The one part at hand, with so many teeth, that leaves the least of a wanted change of cam timing; of two that leave alike
 * the one with fewer teeth moved, then the one named first. Arguments as in `offsetChoices`.
 *
 * Source: search over all choices.
 */
export function bestOffset(wanted: Angle, parts: readonly Angle[], tooth: number, mostTeeth: number): OffsetChoice {
  return offsetChoices(wanted, parts, tooth, mostTeeth).reduce((best, one) => (betterOffset(one, best) ? one : best));
}

const ALIKE = 1e-9;
/** Whether a choice leaves less than the best so far, or as little with fewer teeth. */
export function betterOffset(one: OffsetChoice, best: OffsetChoice): boolean {
  const gain = Math.abs(best.left) - Math.abs(one.left);
  return gain > ALIKE || (gain > -ALIKE && Math.abs(one.teeth) < Math.abs(best.teeth));
}
