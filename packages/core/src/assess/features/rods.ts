import { bigEnds } from './big-ends.js';
/** Connecting rods and their bearings (M24 to M26, M36). */
import { perPart } from './places.js';
import { rod } from './rod-shared.js';
import { always, type FeatureRule, HUNDREDTH, single, THOU } from './rule.js';
import { smallEnds } from './small-ends.js';
import { one } from './stations.js';

const rodForm: readonly FeatureRule[] = [
  {
    kind: {
      ...rod,
      id: 'rod-length',
      title: 'Rod lengths',
      one: 'rod length',
      instrument: 'height-gauge',
      resolution: HUNDREDTH,
      condition: 'cap on and tightened, shells out',
      how: 'From the centre of the big end to the centre of the small end, on a fixture with a pin through each.',
      figure: 'length',
      sizes: single('rod-length.length', 'rod length'),
      sense: 'neither',
    },
    places: perPart(one('length')),
    has: always,
  },
  {
    kind: {
      ...rod,
      id: 'rod-bend',
      title: 'Bend of the rods',
      one: 'bend',
      instrument: 'dial-indicator',
      resolution: THOU,
      condition: 'big end on a mandrel, pin through the small end',
      how: 'Difference in height of the pin over the length for which the maker prints the limit, rod upright.',
      figure: 'runout',
      sizes: single('rod-bend.offset', 'rod bend'),
      sense: 'neither',
    },
    places: perPart(one('offset')),
    has: always,
  },
  {
    kind: {
      ...rod,
      id: 'rod-twist',
      title: 'Twist of the rods',
      one: 'twist',
      instrument: 'dial-indicator',
      resolution: THOU,
      condition: 'big end on a mandrel, pin through the small end',
      how: 'Difference in height of the pin over the length for which the maker prints the limit, rod lying on its side.',
      figure: 'runout',
      sizes: single('rod-twist.offset', 'rod twist'),
      sense: 'neither',
    },
    places: perPart(one('offset')),
    has: always,
  },
  ...(['big', 'small'] as const).map(
    (end): FeatureRule => ({
      kind: {
        id: `rod-${end}-end-mass`,
        title: `Masses of the ${end} ends`,
        one: `${end}-end mass`,
        area: 'rods',
        measured: 'mass',
        instrument: 'scale',
        resolution: 1e-4,
        condition: 'rod level, with its cap and bolts, without shells; scale set to zero',
        how: `Hang the other end on the stand and weigh the ${end} end.`,
        figure: 'mass',
        sizes: single(`rod-${end}-end-mass.mass`, `${end}-end mass`),
        sense: 'neither',
      },
      places: perPart(one('mass')),
      has: always,
    }),
  ),
];

export const rods: readonly FeatureRule[] = [...bigEnds, ...smallEnds, ...rodForm];
