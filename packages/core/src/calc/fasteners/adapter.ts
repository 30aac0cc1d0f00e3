import type { Angle, Length, Torque } from '../../quantity/index.js';

/** A wrench with an adapter that moves its axis: `reach` from the drive centre to the fastener. */
export interface Adapter {
  /** Drive centre to the middle of the hand grip. */
  readonly wrench: Length;
  readonly reach: Length;
  /** 0 straight ahead, lengthening the wrench; 90° to the side; 180° folded back. */
  readonly angle: Angle;
}

/** Torque at the fastener over what the wrench shows: (L + A·cos a)/L. */
const gain = ({ wrench, reach, angle }: Adapter): number => (wrench + reach * Math.cos(angle)) / wrench;

/** Whether the hand still turns the fastener in the wrench's direction: L + A·cos a above 0. */
export const drives = (adapter: Adapter): boolean => gain(adapter) > 0;

/**
 * What to set on the wrench: wanted·L/(L + A·cos a) [N·m].
 *
 * L `wrench`, A `reach` [m], a `angle` [rad]; needs `drives`. A straight socket extension needs no correction.
 * Example: 90 N·m, 400 mm, 60 mm at 45°: 81.37 N·m. Source: TM 9-254; moment of the hand force about the fastener.
 */
export function settingFor(wanted: Torque, adapter: Adapter): Torque {
  return (wanted / gain(adapter)) as Torque;
}

/** What the fastener gets: shown·(L + A·cos a)/L [N·m]. Symbols and source as `settingFor`. */
export function torqueAtFastener(shown: Torque, adapter: Adapter): Torque {
  return (shown * gain(adapter)) as Torque;
}
