/** Valve guides and stems (M39). */
import { valve } from './each-valve.js';
import { perValve } from './places.js';
import { always, type FeatureRule, round, TENTH } from './rule.js';
import { AXES, grid, lines, points } from './stations.js';

/** Along the stem as it hangs in the head: worn at both ends of the guide. */
const ALONG = ['spring side', 'middle', 'port side'] as const;

export const guides: readonly FeatureRule[] = [
  {
    kind: {
      ...valve,
      id: 'valve-guide',
      title: 'Valve guides',
      one: 'valve guide',
      instrument: 'small-bore-gauge',
      resolution: TENTH,
      condition: 'guide brushed clean of carbon',
      how: 'Near the spring end, in the middle and near the port end; in line with the head, then across it.',
      figure: 'valve-guide',
      sizes: round('valve-guide', 'guide'),
      sense: 'hole',
      material: 'head',
    },
    places: perValve(grid(lines(...ALONG), AXES)),
    has: always,
  },
  {
    kind: {
      ...valve,
      id: 'valve-stem',
      title: 'Valve stems',
      one: 'valve stem',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'stem clean; its cylinder marked',
      how: 'Where the spring end, the middle and the port end of the guide run.',
      figure: 'valve-stem',
      sizes: [
        { property: 'valve-stem.diameter', title: 'stem diameter', form: 'mean' },
        { property: 'valve-stem.smallest', title: 'stem at its thinnest', form: 'smallest' },
        { property: 'valve-stem.taper', title: 'stem taper', form: 'spread' },
      ],
      sense: 'shaft',
    },
    places: perValve(points(...ALONG)),
    has: always,
  },
];
