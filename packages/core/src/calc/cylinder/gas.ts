import type { AngularSpeed, Area, Length, Ratio, Speed, Volume, VolumeFlow } from '../../quantity/index.js';
import { meanPistonSpeed } from '../crank/index.js';
import { discArea } from './volumes.js';

/**
 * Mean gas speed through a port or valve opening [m/s]: v = vp·(π/4·B²)/A, vp the mean piston speed, A `area` [m²].
 *
 * As if the charge were incompressible and the port open for the whole stroke: a figure to compare engines by.
 * Source: `mean-gas-speed` (from memory). Example: 100 x 90 mm, 6000 r/min, 1400 mm²: 101 m/s.
 */
export const meanGasSpeed = (bore: Length, stroke: Length, crankSpeed: AngularSpeed, area: Area): Speed =>
  ((meanPistonSpeed(stroke, crankSpeed) * discArea(bore)) / area) as Speed;

/**
 * Air that a four-stroke engine takes in [m³/s], at the state of the air in front of it: Q = V·n/2·η.
 *
 * V `displacement` [m³], n crank speed [turns/s], η `filling` (volumetric efficiency). Source: definition.
 * Example: 5.0 L, 6000 r/min, 85 %: 0.2125 m³/s.
 */
export const airFlow = (displacement: Volume, crankSpeed: AngularSpeed, filling: Ratio): VolumeFlow =>
  (((displacement * crankSpeed) / (4 * Math.PI)) * filling) as VolumeFlow;
