import type * as Q from './quantity.js';

/** SI type of each kind of quantity. */
export interface QuantityTypes {
  readonly length: Q.Length;
  readonly area: Q.Area;
  readonly volume: Q.Volume;
  readonly angle: Q.Angle;
  readonly torque: Q.Torque;
  readonly force: Q.Force;
  readonly pressure: Q.Pressure;
  readonly stiffness: Q.Stiffness;
  readonly mass: Q.Mass;
  readonly time: Q.Time;
  readonly temperature: Q.Temperature;
  readonly 'temperature-difference': Q.TemperatureDifference;
  readonly speed: Q.Speed;
  readonly acceleration: Q.Acceleration;
  readonly 'angular-speed': Q.AngularSpeed;
  readonly frequency: Q.Frequency;
  readonly density: Q.Density;
  readonly 'thermal-expansion': Q.ThermalExpansion;
  readonly viscosity: Q.Viscosity;
  readonly compliance: Q.Compliance;
  readonly 'volume-flow': Q.VolumeFlow;
  readonly power: Q.Power;
  readonly 'mass-moment': Q.MassMoment;
  readonly ratio: Q.Ratio;
}
export type QuantityKind = keyof QuantityTypes;
export type QuantityOf<K extends QuantityKind> = QuantityTypes[K];

/** Every kind, in the order in which lists and pages show them. */
export const QUANTITY_KINDS = [
  'length',
  'area',
  'volume',
  'angle',
  'torque',
  'force',
  'pressure',
  'stiffness',
  'mass',
  'time',
  'temperature',
  'temperature-difference',
  'speed',
  'acceleration',
  'angular-speed',
  'frequency',
  'density',
  'thermal-expansion',
  'viscosity',
  'compliance',
  'volume-flow',
  'power',
  'mass-moment',
  'ratio',
] as const satisfies readonly QuantityKind[];

/** The kind that a text from outside names, or undefined when it names none. Exact spelling, as in `QUANTITY_KINDS`. */
export function toQuantityKind(name: unknown): QuantityKind | undefined {
  return QUANTITY_KINDS.find((kind) => kind === name);
}
