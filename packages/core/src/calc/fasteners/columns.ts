import type { Ratio, Torque } from '../../quantity/index.js';

/** What a printed pair of torques for one bolt says about its own column heads. */
export interface ColumnCheck {
  /** `heads-exchanged`: the larger torque stands under "lubricated", which cannot be at equal preload. */
  readonly verdict: 'consistent' | 'heads-exchanged' | 'alike';
  readonly dry: Torque;
  readonly lubricated: Torque;
  /** Lubricated over dry once the heads are put right. */
  readonly ratio: Ratio;
}

/**
 * Checks a printed pair of torques: at equal preload the lubricated bolt needs less torque than the dry one.
 *
 * `underDry`, `underLubricated` [N·m] as headed, above 0. Answers the pair put right, which a person must confirm.
 * Example: 63 under dry and 80 under lubricated: heads exchanged, ratio 0.79.
 * Source: follows from the torque equation, less friction needs less torque.
 */
export function checkColumns(underDry: Torque, underLubricated: Torque): ColumnCheck {
  const dry = Math.max(underDry, underLubricated) as Torque;
  const lubricated = Math.min(underDry, underLubricated) as Torque;
  const ratio = (lubricated / dry) as Ratio;
  if (underDry === underLubricated) return { verdict: 'alike', dry, lubricated, ratio };
  return { verdict: underDry > underLubricated ? 'consistent' : 'heads-exchanged', dry, lubricated, ratio };
}
