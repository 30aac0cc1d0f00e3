/** The crankshaft on blocks (M12, M17 to M19, M21, M23). */
import type { FeatureKind } from '../model.js';
import { once, perCrankpin, perCylinder, perMain } from './places.js';
import { always, CALIPER, even, type FeatureRule, round, single, TENTH, whenAsked, worst } from './rule.js';
import { AXES, ENDS, grid, one, points, QUARTERS } from './stations.js';

const crank = {
  area: 'crankshaft',
  measured: 'length',
  material: 'crankshaft',
} as const satisfies Partial<FeatureKind>;
const JOURNAL =
  'Near the front fillet and near the rear fillet, two diameters at right angles each, clear of the oil hole. Half a turn of the thimble by the ratchet, never squeezed.';

const thrustPlace: FeatureRule['places'] = ({ thrustAt }) => [
  {
    id: 'thrust',
    name: thrustAt === undefined ? 'thrust main' : `thrust main, number ${thrustAt}`,
    ...(thrustAt === undefined ? {} : { journal: thrustAt }),
    stations: QUARTERS,
  },
];

export const crankshaft: readonly FeatureRule[] = [
  {
    kind: {
      ...crank,
      id: 'main-journal',
      title: 'Main journals',
      one: 'main journal',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'crank out, journals washed and wiped',
      how: JOURNAL,
      figure: 'journal',
      sizes: round('main-journal', 'main journal'),
      sense: 'shaft',
    },
    places: perMain(grid(ENDS, AXES)),
    has: always,
  },
  {
    kind: {
      ...crank,
      id: 'crankpin',
      title: 'Crankpins',
      one: 'crankpin',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'crank out, crankpins washed and wiped',
      how: JOURNAL,
      figure: 'journal',
      sizes: round('crankpin', 'crankpin'),
      sense: 'shaft',
    },
    places: perCrankpin(grid(ENDS, AXES)),
    has: always,
  },
  {
    kind: {
      ...crank,
      id: 'crank-runout',
      title: 'Run-out of the crankshaft',
      one: 'run-out',
      instrument: 'dial-indicator',
      resolution: TENTH,
      condition: 'end mains in vee blocks, or in the block on oiled end shells only',
      how: 'Dial on each main between the ends, clear of the oil hole; whole swing over one turn. What the journal is out of round is part of the swing.',
      figure: 'runout',
      sizes: worst('crank-runout.total', 'crankshaft run-out'),
      sense: 'neither',
    },
    places: once('crankshaft', 'crankshaft', ({ mains }) =>
      points(
        ...Array.from({ length: mains }, (_, index) => `main ${index + 1}`).slice(
          mains > 2 ? 1 : 0,
          mains > 2 ? -1 : undefined,
        ),
      ),
    ),
    has: always,
  },
  {
    kind: {
      ...crank,
      id: 'thrust-width',
      title: 'Width between the thrust faces',
      one: 'thrust width',
      instrument: 'depth-micrometer',
      resolution: TENTH,
      condition: 'crank out, both thrust faces clean',
      how: 'Between the two faces that run against the thrust bearing, at four places round.',
      figure: 'float',
      sizes: even('thrust-width', 'width', 'thrust width'),
      sense: 'hole',
    },
    places: thrustPlace,
    has: always,
  },
  {
    kind: {
      ...crank,
      id: 'thrust-bearing-width',
      title: 'Width over the thrust bearing',
      one: 'thrust bearing width',
      area: 'block',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'crank out; shell with flanges in, or loose washers out',
      how: 'Over the flanges of the shell, or over the block where loose washers go, at four places round.',
      figure: 'float',
      sizes: even('thrust-bearing-width', 'width', 'thrust bearing width'),
      sense: 'shaft',
      material: 'block',
    },
    places: thrustPlace,
    has: whenAsked,
  },
  {
    kind: {
      ...crank,
      id: 'fillet-radius',
      title: 'Fillets of the journals',
      one: 'fillet radius',
      instrument: 'radius-gauge',
      resolution: 2.5e-4,
      condition: 'good light behind the gauge',
      how: 'The template that shows no light at the front and at the rear corner of each journal. A shell that touches the fillet is soon spoiled.',
      figure: 'journal',
      sizes: [{ property: 'fillet-radius.largest', title: 'largest fillet', form: 'largest' }],
      optional: true,
      sense: 'neither',
    },
    places: (anatomy) => [
      ...perMain(points('front', 'rear'))(anatomy),
      ...perCrankpin(points('front', 'rear'))(anatomy),
    ],
    has: always,
  },
  {
    kind: {
      ...crank,
      id: 'crankpin-width',
      title: 'Widths of the crankpins',
      one: 'crankpin width',
      instrument: 'caliper',
      resolution: CALIPER,
      condition: 'crank out, cheeks clean',
      how: 'Between the cheeks, above the fillets. With the widths of the rods it explains the side clearance.',
      figure: 'journal',
      sizes: single('crankpin-width.width', 'crankpin width'),
      optional: true,
      sense: 'hole',
    },
    places: perCrankpin(one('width')),
    has: always,
  },
  {
    kind: {
      ...crank,
      id: 'stroke',
      title: 'Strokes',
      one: 'stroke',
      instrument: 'dial-indicator',
      resolution: TENTH,
      condition: 'crank in its bearings, one piston and rod on each crankpin in turn',
      how: 'From the highest point of the piston to the lowest, dial square to the deck.',
      figure: 'deck-height',
      sizes: single('stroke.length', 'stroke'),
      optional: true,
      sense: 'neither',
    },
    places: perCylinder(one('length')),
    has: always,
  },
  {
    kind: {
      ...crank,
      id: 'flywheel-runout',
      title: 'Run-out of the flywheel',
      one: 'flywheel run-out',
      instrument: 'dial-indicator',
      resolution: TENTH,
      condition: 'flywheel tightened to the crank, crank held against one thrust face',
      how: 'Dial on the face near the rim, whole swing over one turn.',
      figure: 'runout',
      sizes: single('flywheel-runout.total', 'flywheel run-out'),
      sense: 'neither',
    },
    places: once('flywheel', 'flywheel', one('swing')),
    has: whenAsked,
  },
];
