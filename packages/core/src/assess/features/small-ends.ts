/** Small ends and their bushes (M25). */
import { perPart } from './places.js';
import { gauge, rod } from './rod-shared.js';
import { always, type FeatureRule, round, TENTH, whenAsked } from './rule.js';
import { AXES, ENDS, grid, lines } from './stations.js';

export const smallEnds: readonly FeatureRule[] = [
  {
    kind: {
      ...rod,
      ...gauge,
      id: 'small-end-bore',
      title: 'Small-end bores',
      one: 'small-end bore',
      instrument: 'small-bore-gauge',
      condition: 'bush in place where there is one, pin out',
      how: 'Two diameters at right angles at the front and at the rear.',
      sizes: round('small-end-bore', 'small-end bore'),
    },
    places: perPart(grid(ENDS, AXES)),
    has: always,
  },
  {
    kind: {
      ...rod,
      ...gauge,
      id: 'small-end-housing',
      title: 'Small ends without bush',
      one: 'small-end housing',
      condition: 'old bush pressed out',
      how: 'Two diameters at right angles.',
      sizes: round('small-end-housing', 'small-end housing').slice(0, 2),
    },
    places: perPart(grid(lines('middle'), AXES)),
    has: whenAsked,
  },
  {
    kind: {
      id: 'small-end-bush',
      title: 'Small-end bushes before pressing in',
      one: 'small-end bush outside',
      area: 'rods',
      measured: 'length',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'new bush, not yet pressed in',
      how: 'Over the outside, two diameters at right angles.',
      figure: 'pin',
      sizes: round('small-end-bush', 'small-end bush').slice(0, 1),
      sense: 'shaft',
    },
    places: perPart(grid(lines('middle'), AXES)),
    has: whenAsked,
  },
];
