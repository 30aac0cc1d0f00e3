import type { Angle } from '../../quantity/index.js';

export const TURN = (2 * Math.PI) as Angle;
/** One four-stroke cycle: two turns of the crank. */
export const CYCLE = (4 * Math.PI) as Angle;
