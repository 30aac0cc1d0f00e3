import type { Engine } from '../engine/index.js';
import type { CrankPose, Pose } from './crank-pose.js';
import type { Point } from './figure.js';
import { at, heading, plus, times } from './geometry.js';
import type { DrawnSizes } from './sizes.js';

/** What the parts of the front view share: the engine, its sizes, the crank's pose, and where things stand. */

export interface View {
  readonly engine: Engine;
  readonly sizes: DrawnSizes;
  readonly crank: CrankPose;
  readonly shown: readonly Pose[];
  readonly bankAngles: readonly number[];
}

export const CENTRE = at(0, 0);

/** A point of a cylinder: `up` along its axis from the crank centre, `across` to the right of it seen from the front. */
export const inBank = (bank: number, up: number, across: number): Point =>
  plus(times(heading(bank), up), times(heading(bank + 90), across));

export const caseRadius = ({ throw: r, bore }: DrawnSizes): number => r + bore * 0.44;

export const damperRadius = (sizes: DrawnSizes): number => caseRadius(sizes) + sizes.bore * 0.24;

export function pointerHeading(bankAngles: readonly number[]): number {
  const [low, high] = [Math.min(...bankAngles), Math.max(...bankAngles)];
  if (bankAngles.length < 2) return low + 90;
  return high - low > 150 ? 0 : high + 66;
}
