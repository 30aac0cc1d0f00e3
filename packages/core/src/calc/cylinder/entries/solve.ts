/** What the backward solutions share: how much room the ratio leaves for the one part that is free. */
import { type Area, done, type Length, type Outcome, type Volume } from '../../../quantity/index.js';
import { type Caution, type Conflict, conflict, type Values } from '../../catalogue/index.js';
import { type ClearanceParts, clearanceForRatio, clearanceVolume } from '../ratio.js';
import { discVolume } from '../volumes.js';
import { ratioWanted, roomOut } from './inputs.js';
import { type allParts, geometry, partCautions, partsOf } from './parts.js';

export const goal = { ratio: ratioWanted, ...geometry } as const;
export const clearanceOut = roomOut('Vc', 'clearance volume that the ratio asks for');

type Goal = Values<typeof goal> & Partial<Values<typeof allParts>>;

export interface Free {
  /** Room left for the free part; negative when the others already take too much. */
  readonly room: Volume;
  readonly clearance: Volume;
  readonly cautions: readonly Caution[];
}

/** Room that is left for one part when the ratio is to be met in a cylinder of this bore and stroke. */
export function freeRoom(v: Goal, solved: keyof ClearanceParts): Outcome<Free, Conflict> {
  const parts = partsOf(v, v.bore);
  if (!parts.ok) return parts;
  const clearance = clearanceForRatio(discVolume(v.bore, v.stroke), v.ratio);
  const room = (clearance - clearanceVolume(parts.value)) as Volume;
  return done({ room, clearance, cautions: partCautions(v, parts.value, v.bore, solved) });
}

const parts = ['ratio', 'bore', 'stroke', 'chamber', 'gasketThickness', 'gasketVolume', 'deckClearance'];
export const noRoom = conflict(
  [...parts, 'pistonVolume', 'pocketVolume', 'creviceVolume', 'otherVolume'],
  'the parts given already take more room than the ratio allows',
);
export const lengthOf = (room: Volume, area: Area): Length => (room / area) as Length;
