/** Units in which a person reads plots of the combination. */
import { type DisplaySystem, displayUnit, type QuantityKind, toUnit } from '../../../quantity/index.js';

export interface ReaderUnit {
  readonly unit: string;
  readonly of: (value: number) => number;
}
/** Crank angles are degrees in both systems. */
export function readerUnit(quantity: QuantityKind, system: DisplaySystem): ReaderUnit {
  const unit = displayUnit(quantity, system);
  return { unit, of: (value) => toUnit(quantity, value, unit) };
}
export const degreesOf = (angle: number): number => (angle * 180) / Math.PI;
const RPM = 30 / Math.PI;
export const rpmText = (speed: number): string => `${Math.round(speed * RPM)} r/min`;
