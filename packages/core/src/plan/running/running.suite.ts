/** Facts of a running engine for tests: a minute counter, pressures in the units of the bench. Not part of the built package. */
import { readFileSync } from 'node:fs';
import type { Engine } from '../../engine/index.js';
import { loadSheet } from '../../engine/load/index.js';
import { parseQuantity, type QuantityKind } from '../../quantity/index.js';
import type { Reading } from '../facts.js';
import type { Gauge, RunningFact, RunningFactData, RunningFactKind } from './index.js';
import { GAUGES } from './index.js';

export function engineOf(text: string): Engine {
  const loaded = loadSheet(text);
  if (!loaded.ok) throw new Error(loaded.fault.map((one) => one.message).join('\n'));
  return loaded.value;
}
export const sheetText = (name: string): string =>
  readFileSync(new URL(`../../../../../sheets/${name}.yaml`, import.meta.url), 'utf8');
export const BASE = `gudgeon: 1
name: Four
defaultFrom: manual p. 1
layout:
  form: inline
  cylinders: [1, 2, 3, 4]
  firingOrder: 1-3-4-2
`;
export const V8 = `gudgeon: 1
name: Eight
defaultFrom: manual p. 1
layout:
  form: vee
  banks: { left: 45 deg, right: -45 deg }
  cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] }
  firingOrder: 1-8-4-3-6-5-7-2
`;

/** Local time at a minute of the run-in. */
export const minute = (count: number): string => {
  const seconds = Math.round(count * 60);
  const two = (n: number) => String(n).padStart(2, '0');
  return `2026-05-02T${two(10 + Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}+02:00`;
};
const UNITS: Partial<Record<QuantityKind, Reading['unit']>> = {
  pressure: 'Pa',
  temperature: 'K',
  'angular-speed': 'rad/s',
};
export function readingOf(kind: QuantityKind, text: string): Reading {
  const read = parseQuantity(kind, text);
  if (!read.ok) throw new Error(text);
  return { text, value: read.value.value, unit: UNITS[kind]! };
}
export const pressure = (text: string): Reading => readingOf('pressure', text);

export const fact = <K extends RunningFactKind>(kind: K, data: RunningFactData[K], at = 0): RunningFact =>
  ({ kind, data, at: minute(at), by: 'Ada' }) as unknown as RunningFact;
export const gauge = (what: Gauge, text: string, at = 0): RunningFact =>
  fact('running-read', { what, reading: readingOf(GAUGES[what].kind, text) }, at);
export const dry = (cylinder: number, text: string, more: object = {}): RunningFact =>
  fact('compression-read', { cylinder, reading: pressure(text), wet: false, ...more });
export const wet = (cylinder: number, text: string): RunningFact =>
  fact('compression-read', { cylinder, reading: pressure(text), wet: true });
export const leak = (cylinder: number, supply: string, held: string, more: object = {}): RunningFact =>
  fact('leakage-read', { cylinder, supply: pressure(supply), held: pressure(held), ...more });
