/** The usual words for a part as it came out. Anything else may be said in own words. */
import type { PartKind } from '../plan/index.js';
import type { PartChoices } from './views.js';

/** A part tagged with these words does not go back anywhere. */
export const NOT_AGAIN = 'not to be used again';

const usual: PartChoices = { conditions: ['used, good', NOT_AGAIN], ends: [], faces: [] };
const choices: Readonly<Record<PartKind, PartChoices>> = {
  lifter: { ...usual, faces: ['paint mark to the front'] },
  pushrod: { ...usual, ends: ['rocker end marked with paint'] },
  rocker: { ...usual, faces: ['paint mark to the front'] },
  follower: { ...usual, faces: ['paint mark to the front'] },
  shim: { ...usual, ends: ['figures face down', 'figures face up'] },
};

/** Conditions, ends and faces that a person picks from when tagging. Common practice, no source. */
export const partChoices = (part: PartKind): PartChoices => choices[part];

/** What usually goes onto a part as it is fitted. Common practice, no source: the part maker's sheet decides. */
export const LUBRICANTS = ['assembly lube on the face, oil on the side', 'engine oil', 'dry'] as const;
