/**
 * Physical quantities as compile-time branded numbers in SI units. The brand costs nothing at run time; a length
 * cannot be passed where an angle belongs. Units appear only at the edges (see `units.ts`).
 */
declare const unit: unique symbol;
export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Length = Quantity<'m'>;
export type Area = Quantity<'m2'>;
export type Volume = Quantity<'m3'>;
export type Angle = Quantity<'rad'>;
export type Torque = Quantity<'N.m'>;
export type Force = Quantity<'N'>;
export type Pressure = Quantity<'Pa'>;
export type Stiffness = Quantity<'N/m'>;
export type Mass = Quantity<'kg'>;
export type Time = Quantity<'s'>;
export type Temperature = Quantity<'K'>;
export type TemperatureDifference = Quantity<'K difference'>;
export type Speed = Quantity<'m/s'>;
export type Acceleration = Quantity<'m/s2'>;
export type AngularSpeed = Quantity<'rad/s'>;
export type Frequency = Quantity<'Hz'>;
export type Density = Quantity<'kg/m3'>;
/** Relative change of length for each kelvin. */
export type ThermalExpansion = Quantity<'1/K'>;
/** Dynamic (absolute) viscosity. */
export type Viscosity = Quantity<'Pa.s'>;
/** Change of length for each newton: the inverse of a stiffness. */
export type Compliance = Quantity<'m/N'>;
export type VolumeFlow = Quantity<'m3/s'>;
export type Power = Quantity<'W'>;
/** Mass times its distance from the axis: what a balancing machine shows and what a correction takes away. */
export type MassMoment = Quantity<'kg.m'>;
export type Ratio = Quantity<'1'>;
