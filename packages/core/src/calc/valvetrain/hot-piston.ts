/** How much nearer a piston comes when hot and at speed: an estimate. */
import type { AngularSpeed, Area, Force, Length, Mass, Pressure, TemperatureDifference } from '../../quantity/index.js';
import type { SliderCrank } from '../crank/index.js';
import { thermalGrowth } from './hot-lash.js';

/**
 * Pull on a connecting rod at the top of the exhaust stroke [N]: m·r·ω²·(1 + r/l).
 *
 * `mass` [kg] piston, pin, rings, locks and small end with about a third of the rod's shank; ω `speed` [rad/s]. No gas pressure.
 * Source: exact slider-crank at the dead centre without offset (J. B. Heywood, section 2.2, from memory).
 */
export function pullAtTop({ crankRadius, rodLength }: SliderCrank, mass: Mass, speed: AngularSpeed): Force {
  return (mass * crankRadius * speed ** 2 * (1 + crankRadius / rodLength)) as Force;
}

/** Stretch of a bar under a pull [m]: F·l/(E·A). Source: definition of the modulus. */
export function stretch(pull: Force, length: Length, modulus: Pressure, section: Area): Length {
  return ((pull * length) / (modulus * section)) as Length;
}

/** A part of the stack from crank to crown, or of the block beside it: expansion [1/K] and rise. */
export interface Warming {
  readonly expansion: number;
  readonly rise: TemperatureDifference;
}
export interface HotStack {
  readonly crank: SliderCrank;
  /** Piston pin centre to crown. */
  readonly compressionHeight: Length;
  /** As for `pullAtTop`. */
  readonly pulledMass: Mass;
  readonly speed: AngularSpeed;
  readonly rodSection: Area;
  readonly rodModulus: Pressure;
  /** Play that is taken up upward. */
  readonly play: Length;
  readonly rod: Warming;
  readonly piston: Warming;
  readonly block: Warming;
}
export interface Nearer {
  /** Piston nearer to the head in all. */
  readonly nearer: Length;
  readonly pull: Force;
  readonly stretch: Length;
  /** Growth of throw, rod and piston. */
  readonly pistonSide: Length;
  /** Growth of the block over the same height, taken off. */
  readonly blockSide: Length;
}

/**
 * How much nearer to the head a piston comes hot and at speed [m].
 *
 *   Δ = F·l/(E·A) + q + αr·ΔTr·(r + l) + αp·ΔTp·c − αb·ΔTb·(r + l + c),  F from `pullAtTop`
 *
 * Symbols as in `HotStack`. An estimate: mean temperatures, one section of the rod, nothing that bends, no gas pressure; height of the block over
 * the same parts taken as throw + rod + compression height. Source: derived; parts as `pullAtTop`, `stretch`, `thermalGrowth`.
 */
export function nearerHot(s: HotStack): Nearer {
  const { crankRadius, rodLength } = s.crank;
  const pull = pullAtTop(s.crank, s.pulledMass, s.speed);
  const long = stretch(pull, rodLength, s.rodModulus, s.rodSection);
  const throwAndRod = (crankRadius + rodLength) as Length;
  const pistonSide = (thermalGrowth(throwAndRod, s.rod.expansion, s.rod.rise) +
    thermalGrowth(s.compressionHeight, s.piston.expansion, s.piston.rise)) as Length;
  const whole = (throwAndRod + s.compressionHeight) as Length;
  const blockSide = thermalGrowth(whole, s.block.expansion, s.block.rise);
  const nearer = (long + s.play + pistonSide - blockSide) as Length;
  return { nearer, pull, stretch: long, pistonSide, blockSide };
}
