import type { Force, Pressure, Ratio, Torque } from '../../quantity/index.js';
import { stressArea, stressDiameter, type Thread } from './thread.js';
import { threadTorqueArm } from './torque.js';

/** How the shank's twist is counted: at first yield of the outer fibre, or with the whole section yielding. */
export type Torsion = 'elastic' | 'plastic';

/** Polar resistance is π·d0³ over this. */
const RESISTANCE_DIVISOR: Readonly<Record<Torsion, number>> = { elastic: 16, plastic: 12 };

export interface TighteningStress {
  readonly tension: Pressure;
  readonly torsion: Pressure;
  readonly equivalent: Pressure;
}

/**
 * Stress in the shank while the wrench is on.
 *
 *   σ = F/As,  τ = MG/Wp,  Wp = π·d0³/16 (elastic) or π·d0³/12 (plastic),  σeq = √(σ² + 3·(k·τ)²)
 *
 * F `preload` [N]; MG `threadTorque` [N·m] is the thread's part only: the part under the head never reaches the shank.
 * k `torsionLeft` is 1 while tightening and about 0.5 after the twist has relaxed. Results [Pa].
 * Example: M10 x 1.25, F = 40 kN, MG = 33.58 N·m: 653.6, 248.6 and 782.7 MPa (elastic).
 * Source: VDI 2230 part 1 (from memory).
 */
export function tighteningStress(
  thread: Thread,
  preload: Force,
  threadTorque: Torque,
  torsion: Torsion,
  torsionLeft: Ratio = 1 as Ratio,
): TighteningStress {
  const tension = preload / stressArea(thread);
  const resistance = (Math.PI * stressDiameter(thread) ** 3) / RESISTANCE_DIVISOR[torsion];
  const twist = threadTorque / resistance;
  return {
    tension: tension as Pressure,
    torsion: twist as Pressure,
    equivalent: Math.hypot(tension, Math.sqrt(3) * torsionLeft * twist) as Pressure,
  };
}

/**
 * Largest assembly preload at a utilisation of the yield strength.
 *
 *   F = As·ν·Re/√(1 + 3·(c·d2/d0·tan(φ + ρ))²),  c = 2.0 (elastic) or 1.5 (plastic torsion)
 *
 * ν `utilisation` 0 to 1, Re `yieldStrength` [Pa], friction in the thread 0 to 1. Current tables count plastic torsion;
 * tables of older editions count elastic torsion and lie 8 to 10 % lower. A maximum, not a target with margin.
 * Example: M10 x 1.25, class 10.9, μ 0.12, ν 0.9, plastic: 46.4 kN.
 * Source: VDI 2230 part 1, 2001 edition (formula from memory, checked against a reprinted table).
 */
export function assemblyPreload(
  thread: Thread,
  yieldStrength: Pressure,
  utilisation: Ratio,
  friction: Ratio,
  torsion: Torsion,
): Force {
  const arm = threadTorqueArm(thread, friction);
  const shear = (arm * stressArea(thread) * RESISTANCE_DIVISOR[torsion]) / (Math.PI * stressDiameter(thread) ** 3);
  return ((stressArea(thread) * utilisation * yieldStrength) / Math.sqrt(1 + 3 * shear ** 2)) as Force;
}
