import type { Mass, Ratio } from '../../quantity/index.js';

/** What hangs on one crankpin by one rod [kg]. */
export interface RodSide {
  /** Big end with its cap and bolts, as weighed, and the shells of this rod. */
  readonly rotating: Mass;
  /** Piston, pin, locks, rings and the rod's small end. */
  readonly reciprocating: Mass;
}

/**
 * Bobweight of one crankpin [kg]: Mb = Σ rotating + oil + f·Σ reciprocating, over the rods of the pin.
 *
 * f `factor` 0 to 1: share of the reciprocating mass that the counterweights carry, 0.5 for a 90° vee with shared pins.
 * The oil is that of the pin. Example: two rods, 253.5 and 994.2 g each, oil 4 g, 0.5: 1505.2 g.
 * Source: weights `bobweight-parts`; formula common practice, factor derived (see `shakingOf`).
 */
export function bobweight(rods: readonly RodSide[], oil: Mass, factor: Ratio): Mass {
  const rotating = rods.reduce((all, rod) => all + rod.rotating, 0);
  const reciprocating = rods.reduce((all, rod) => all + rod.reciprocating, 0);
  return (rotating + oil + factor * reciprocating) as Mass;
}
