import type { Hole, Joint } from '../../engine/index.js';
import type { Place } from '../model.js';
import type { Anatomy } from './anatomy.js';
import { one } from './stations.js';

/** Holes with a bottom: the ones in which a bolt can run out of thread. */
export function blindHolePlaces({ engine }: Anatomy): readonly Place[] {
  return engine.joints.flatMap((joint) =>
    joint.holes
      .filter((hole) => hole.opensInto === 'blind' || hole.depth !== undefined)
      .map((hole) => holePlace(joint, hole, 'depth')),
  );
}

/** Bolts that may be used again as long as they have not grown past a length. */
export function countedBoltPlaces({ engine }: Anatomy): readonly Place[] {
  return engine.joints.flatMap((joint) => {
    const counted = joint.fasteners
      .filter(({ use, lengthLimit }) => use === 'reuse-to-length' || lengthLimit !== undefined)
      .map(({ id }) => id);
    return joint.holes
      .filter((hole) => counted.includes(hole.fastener))
      .map((hole) => holePlace(joint, hole, 'length', hole.fastener));
  });
}

function holePlace(joint: Joint, hole: Hole, station: string, grade?: string): Place {
  return {
    id: `${joint.id}-${hole.id}`,
    name: `${joint.name}, ${station === 'length' ? 'bolt' : 'hole'} ${hole.id}`,
    ...(grade === undefined ? {} : { grade }),
    stations: one(station),
  };
}
