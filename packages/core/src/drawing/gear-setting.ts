import type { AdjusterPlace, ValveId } from '../engine/index.js';
import type { Point, Shape } from './figure.js';
import { polar } from './geometry.js';
import { lobeOutline } from './lobe.js';
import { centreCross, circle, line, polygon, turnArrow } from './shapes.js';
import type { ValveMotion } from './valve-motion.js';

/** What each mechanism hands over for lettering: its shapes and where its parts stand. */
export interface Drawn {
  readonly shapes: readonly Shape[];
  readonly names: readonly { readonly text: string; readonly at: Point; readonly anchor: 'start' | 'middle' | 'end' }[];
}

export interface Setting {
  readonly motion: ValveMotion;
  readonly roller: number;
  readonly base: number;
  /** Running sense of the cam on the page. */
  readonly sense: 1 | -1;
  readonly adjuster: AdjusterPlace;
  readonly valve: ValveId;
  readonly headDiameter: number;
}

/** A cam whose follower lies in the direction `toFollower` (page heading). */
export function cam(centre: Point, toFollower: number, { motion, base, roller, sense }: Setting): readonly Shape[] {
  const nose = toFollower + sense * motion.pastNose;
  const look = { fill: 'metal', part: 'cam' } as const;
  const shaft = base * 0.42;
  return [
    polygon(lobeOutline(motion.lobe, base, centre, nose, roller), 'visible', look),
    circle(centre, shaft, 'thin', { part: 'cam' }),
    line(polar(centre, shaft, nose), polar(centre, base + motion.lobe.lift * 0.8, nose), 'centre'),
    ...centreCross(centre, shaft * 1.5),
    ...turnArrow(centre, base * 0.72, toFollower + 180 - sense * 40, toFollower + 180 + sense * 40, base * 0.26, {
      part: 'cam',
    }),
  ];
}

export const TIP = 5;
