/** Figures of the working, in the unit in which the person read the part. */
import { formatUncertain, parseQuantity, type QuantityKind } from '../../quantity/index.js';
import type { Measured } from '../model.js';
import type { Corrected } from './corrected.js';

/** Unit in which figures of one kind are shown: that of the first reading as typed, else SI's own for engines. */
export function unitOf(measured: Measured, readings: readonly Corrected[]): string {
  const typed = readings[0]?.taken[0];
  const read = typed === undefined ? undefined : parseQuantity(measured, typed.text);
  return read?.ok === true ? read.value.unit : USUAL_UNIT[measured];
}
const USUAL_UNIT: Readonly<Record<Measured, string>> = {
  length: 'mm',
  volume: 'cm3',
  mass: 'g',
  force: 'N',
  angle: 'deg',
  torque: 'N·m',
};

/** `2.49790 ±0.00022 in`. Where nothing is uncertain six places are shown. */
export const sure = (kind: QuantityKind, value: number, u: number, unit: string): string =>
  formatUncertain(kind, { value, u }, unit, { places: 6 });

/** One line for a reading: where, what was typed, and its size at 20 °C where that differs. */
export function readingLine(measured: Measured, reading: Corrected, unit: string): string {
  const typed = reading.taken.map(({ text }) => text).join(' and ');
  const raw = reading.taken.reduce((sum, { value }) => sum + value, 0) / reading.taken.length;
  const own = reading.own.u;
  const same = reading.taken.length === 1 && Math.abs(raw - reading.value) <= Math.abs(raw) * 1e-12;
  return `${reading.name}: ${typed}${same ? '' : `, corrected ${sure(measured, reading.value, own, unit)}`}`;
}
