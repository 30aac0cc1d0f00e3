/** The pressed pair that the shared inputs describe, or why it cannot be. */
import type { Length, Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict, type Values } from '../../catalogue/index.js';
import type { PressedPair } from '../thick-cylinder.js';
import type { rings } from './inputs.js';

export function pairOf(v: Values<typeof rings>): PressedPair {
  const { diameter, hubOutside, shaftBore, hubModulus, hubPoisson } = v;
  return {
    diameter,
    hubOutside,
    shaftBore: shaftBore as Length,
    hub: { modulus: hubModulus, poisson: hubPoisson },
    shaft: { modulus: v.shaftModulus ?? hubModulus, poisson: v.shaftPoisson ?? hubPoisson },
  };
}

/** Refuses rings that have no wall. */
export function noWall(v: Values<typeof rings>): Outcome<never, Conflict> | undefined {
  if (v.hubOutside <= v.diameter) {
    return conflict(['hubOutside', 'diameter'], 'the hub has no wall', { input: 'hubOutside', above: v.diameter });
  }
  if (v.shaftBore >= v.diameter) {
    return conflict(['shaftBore', 'diameter'], 'the shaft has no wall', { input: 'shaftBore', below: v.diameter });
  }
  return undefined;
}
