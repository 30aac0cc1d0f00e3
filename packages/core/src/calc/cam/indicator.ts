import type { Angle, Length } from '../../quantity/index.js';

/**
 * What the indicator's point rests on.
 * - `face-square-to-travel`: a plunger on a flat face that stands square to the travel, such as the top of a follower.
 * - `face-square-to-plunger`: a plunger on a flat face that stands square to the plunger.
 * - `lever`: a lever-type indicator; the angle is between its lever and the face.
 */
export const CONTACTS = ['face-square-to-travel', 'face-square-to-plunger', 'lever'] as const;
export type IndicatorContact = (typeof CONTACTS)[number];

/**
 * True travel for each unit that a tilted indicator shows.
 *
 *   face square to travel: cos α;  face square to plunger: 1/cos α;  lever: cos α
 *
 * α `tilt` [rad] between plunger and travel (or lever and face), below 90°. From plane geometry: travel along its own
 * direction pushes the face along its normal, and the plunger follows that plane.
 * Example: α = 10° on a follower's top: 0.3000 shown is 0.2954. Source: derived; usual "cosine error" of the trade.
 */
export function travelPerReading(contact: IndicatorContact, tilt: Angle): number {
  return contact === 'face-square-to-plunger' ? 1 / Math.cos(tilt) : Math.cos(tilt);
}

/** True travel of an indicator reading [m]: reading times `travelPerReading`. Source: derived. */
export function trueTravel(contact: IndicatorContact, tilt: Angle, reading: Length): Length {
  return (reading * travelPerReading(contact, tilt)) as Length;
}

/** Largest tilt [rad] at which the error stays within a share of the reading (above 0, below 1). Source: derived. */
export function tiltForShare(contact: IndicatorContact, share: number): Angle {
  return Math.acos(contact === 'face-square-to-plunger' ? 1 / (1 + share) : 1 - share) as Angle;
}
