import { type Angle, degrees, inch, type Length } from '../../quantity/index.js';
import { snap } from '../crank/index.js';

/** The checking lift that is meant where a card names none. Common practice, no source. */
export const USUAL_CHECKING_LIFT = inch(0.05);
/** Crank degrees between the seat and 0.050 in of lift, at each end. Common practice, no source. */
const ALLOWANCE_AT_FIFTY_THOU = 25;

/**
 * Crank angle [rad] by which each end of an open window is moved out when its events were taken at a lift and the card
 * does not say how long the valve is open from seat to seat.
 *
 *   allowance = 25° × √(lift / 0.050 in), rounded up to the whole degree
 *
 * A follower that leaves the base circle under constant acceleration rises with the square of the angle, so the angle
 * goes with the root of the lift. 0.050 in gives 25°, 1 mm gives 23°. Lift [m] above 0.
 * Source: the 25° are common practice, no source; the root is derived. A margin comes on top of it.
 */
export function seatAllowance(checkingLift: Length): Angle {
  return degrees(Math.ceil(snap(ALLOWANCE_AT_FIFTY_THOU * Math.sqrt(checkingLift / USUAL_CHECKING_LIFT))));
}
