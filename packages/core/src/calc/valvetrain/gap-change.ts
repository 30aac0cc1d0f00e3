import type { Angle, Length } from '../../quantity/index.js';
import { type Crown, roomPerTravel } from './piston-gap.js';

/** What changes after a room was measured; positive as said. */
export interface GapChanges {
  /** Head higher over the piston, along the bore: thicker gasket, crown cut, shorter rod; a cut of deck or head is negative. */
  readonly alongBore: Length;
  /** Pocket deeper, square to its floor (parallel pocket) or along the bore (flat crown). */
  readonly pocketDeeper: Length;
  /** Valve head farther from the piston along its stem: seat cut or sunk. */
  readonly valveSunk: Length;
  /** Net lift at the closest place larger; more lash is negative. */
  readonly liftMore: Length;
}

/**
 * Change of the room between valve and piston along the stem [m].
 *
 *   Δg = c·b + k (flat crown: c·k) + v − l,  c from `roomPerTravel`
 *
 * b `alongBore`, k `pocketDeeper`, v `valveSunk`, l `liftMore`. The closest place in the turn hardly moves with such changes. Source: derived.
 */
export function gapChange(crown: Crown, valveAngle: Angle, changes: GapChanges): Length {
  const per = roomPerTravel(crown, valveAngle);
  const { alongBore, pocketDeeper, valveSunk, liftMore } = changes;
  const pocket = crown === 'flat-crown' ? per * pocketDeeper : pocketDeeper;
  return (per * alongBore + pocket + valveSunk - liftMore) as Length;
}
