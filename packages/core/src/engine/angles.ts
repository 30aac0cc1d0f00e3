import type { Angle } from '../quantity/quantity.js';

export { apart, wrapped } from '../quantity/circle.js';

export const DEGREE = Math.PI / 180;
export const ONE_TURN = (2 * Math.PI) as Angle;
/** A four-stroke cycle: two turns of the crank. */
export const CYCLE = (4 * Math.PI) as Angle;
