/** Camshaft on vee blocks, or in its bearings (M45). */
import type { FeatureKind } from '../model.js';
import { perCamJournal, perCamshaft, perCylinder, perValve } from './places.js';
import { always, type FeatureRule, round, single, TENTH, THOU, whenAsked, worst } from './rule.js';
import { AXES, ENDS, grid, one, points } from './stations.js';

const cam = { area: 'camshaft', measured: 'length' } as const satisfies Partial<FeatureKind>;
const dial = { instrument: 'dial-indicator', resolution: THOU } as const;

export const camshaft: readonly FeatureRule[] = [
  {
    kind: {
      ...cam,
      id: 'cam-journal',
      title: 'Cam journals',
      one: 'cam journal',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'camshaft out and clean',
      how: 'Two diameters at right angles near the front and near the rear of each journal.',
      figure: 'journal',
      sizes: round('cam-journal', 'cam journal'),
      sense: 'shaft',
    },
    places: perCamJournal(grid(ENDS, AXES)),
    has: always,
  },
  {
    kind: {
      ...cam,
      ...dial,
      id: 'lobe-lift',
      title: 'Lobe lifts',
      one: 'lobe lift',
      condition: 'camshaft in vee blocks or in the block, dial in line with the follower',
      how: 'Zero on the base circle, then the highest reading over the nose.',
      figure: 'cam-lobe',
      sizes: single('lobe-lift.lift', 'lobe lift'),
      sense: 'shaft',
    },
    places: perValve(one('lift')),
    has: always,
  },
  {
    kind: {
      ...cam,
      id: 'lobe-height',
      title: 'Heights over the lobes',
      one: 'height over the lobe',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'camshaft out and clean',
      how: 'From the nose to the base circle opposite.',
      figure: 'cam-lobe',
      sizes: single('lobe-height.height', 'height over the lobe'),
      sense: 'shaft',
    },
    places: perValve(one('height')),
    has: whenAsked,
  },
  {
    kind: {
      ...cam,
      ...dial,
      id: 'lobe-base-runout',
      title: 'Run-out of the base circles',
      one: 'base circle run-out',
      resolution: TENTH,
      condition: 'camshaft in vee blocks or in the block',
      how: 'Whole swing of the dial over the base circle, away from the ramps. More than a little spoils lash and lifters.',
      figure: 'cam-lobe',
      sizes: single('lobe-base-runout.total', 'base circle run-out'),
      sense: 'neither',
    },
    places: perValve(one('swing')),
    has: always,
  },
  {
    kind: {
      ...cam,
      ...dial,
      id: 'cam-runout',
      title: 'Run-out of the camshaft',
      one: 'cam run-out',
      resolution: TENTH,
      condition: 'end journals in vee blocks',
      how: 'Dial on each journal between the ends, whole swing over one turn.',
      figure: 'runout',
      sizes: worst('cam-runout.total', 'camshaft run-out'),
      sense: 'neither',
    },
    places: perCamshaft((journals) => {
      const names = Array.from({ length: journals }, (_, index) => `journal ${index + 1}`);
      return points(...(journals > 2 ? names.slice(1, -1) : names));
    }),
    has: always,
  },
  {
    kind: {
      ...cam,
      ...dial,
      id: 'injector-lobe-lift',
      title: 'Lifts of the injector lobes',
      one: 'injector lobe lift',
      condition: 'camshaft in vee blocks or in the block',
      how: 'Zero on the base circle, then the highest reading over the nose.',
      figure: 'cam-lobe',
      sizes: single('injector-lobe-lift.lift', 'injector lobe lift'),
      sense: 'shaft',
    },
    places: perCylinder(one('lift')),
    has: whenAsked,
  },
];
