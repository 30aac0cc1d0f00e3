import type {
  AngularSpeed,
  Force,
  Length,
  Power,
  Pressure,
  Ratio,
  Torque,
  Viscosity,
  VolumeFlow,
} from '../../quantity/index.js';

/** One loaded journal bearing. */
export interface LoadedBearing {
  readonly load: Force;
  /** Journal diameter. */
  readonly diameter: Length;
  readonly length: Length;
  /** Half of the diametral clearance. */
  readonly radialClearance: Length;
  readonly speed: AngularSpeed;
  readonly viscosity: Viscosity;
}

/** Mean pressure on the projected area: P = W/(D·L) [Pa]. W [N], D and L [m] above 0. Source: definition. */
export function projectedPressure({ load, diameter, length }: LoadedBearing): Pressure {
  return (load / (diameter * length)) as Pressure;
}

const perSecond = (speed: AngularSpeed): number => speed / (2 * Math.PI);

/**
 * Sommerfeld number: S = (R/c)²·μ·N/P, N in turns a second.
 *
 * R half of `diameter`, c `radialClearance` [m], μ `viscosity` [Pa·s], P `projectedPressure`. All above 0.
 * Example: 500 lbf, 30 rev/s, R 0.75 in, c 0.0015 in, L 1.5 in, 4 µreyn: 0.135. Source: `shigley-bearing`.
 */
export function sommerfeldNumber(bearing: LoadedBearing): Ratio {
  const { diameter, radialClearance, viscosity, speed } = bearing;
  const slack = diameter / 2 / radialClearance;
  return ((slack ** 2 * viscosity * perSecond(speed)) / projectedPressure(bearing)) as Ratio;
}

/** Viscosity that makes a Sommerfeld number [Pa·s]: μ = S·P/((R/c)²·N). Speed above 0. Source as `sommerfeldNumber`. */
export function viscosityForNumber(number: Ratio, bearing: Omit<LoadedBearing, 'viscosity'>): Viscosity {
  const unit = sommerfeldNumber({ ...bearing, viscosity: 1 as Viscosity });
  return (number / unit) as Viscosity;
}

/** What friction makes of a bearing. */
export interface BearingFriction {
  readonly coefficient: Ratio;
  readonly torque: Torque;
  readonly power: Power;
}

/**
 * Friction from its dimensionless variable: f = variable·c/R, T = f·W·R, power = T·ω [–, N·m, W].
 *
 * Example: variable 3.50, c 0.0015, R 0.75 in, 500 lbf: f 0.007, 2.62 lbf·in. Source: `shigley-bearing`.
 */
export function frictionOf(variable: Ratio, bearing: LoadedBearing): BearingFriction {
  const radius = bearing.diameter / 2;
  const coefficient = (variable * bearing.radialClearance) / radius;
  const torque = coefficient * bearing.load * radius;
  return {
    coefficient: coefficient as Ratio,
    torque: torque as Torque,
    power: (torque * bearing.speed) as Power,
  };
}

/**
 * Friction variable of a shaft running centred: (R/c)·f = 2π²·S. A lower bound, good when lightly loaded.
 *
 * Example: S 0.135: 2.665, where the loaded bearing has 3.5. Source: `petroff`.
 */
export function petroffVariable(number: Ratio): Ratio {
  return (2 * Math.PI ** 2 * number) as Ratio;
}

/** Oil drawn through the film: Q = variable·R·c·N·L [m³/s]. Symbols as in `sommerfeldNumber`. Source: `shigley-bearing`. */
export function oilFlow(variable: Ratio, bearing: LoadedBearing): VolumeFlow {
  const { diameter, radialClearance, speed, length } = bearing;
  return (variable * (diameter / 2) * radialClearance * perSecond(speed) * length) as VolumeFlow;
}

/** Thinnest film: h0 = c·(1 − ε) [m]. Source: geometry of two circles. */
export function thinnestFilm(radialClearance: Length, eccentricity: Ratio): Length {
  return (radialClearance * (1 - eccentricity)) as Length;
}
