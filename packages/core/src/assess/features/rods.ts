/** Connecting rods and their bearings (M24 to M26, M36). */
import type { FeatureKind } from '../model.js';
import { perPart } from './places.js';
import { always, type FeatureRule, FIVE_TENTHS, HUNDREDTH, round, single, TENTH, THOU, whenAsked } from './rule.js';
import { AXES, CLOCK, ENDS, grid, lines, one, points } from './stations.js';

const rod = { area: 'rods', measured: 'length', material: 'rod' } as const satisfies Partial<FeatureKind>;
const gauge = { instrument: 'bore-gauge', resolution: TENTH, figure: 'housing', sense: 'hole' } as const;

export const bigEnds: readonly FeatureRule[] = [
  {
    kind: {
      ...rod,
      ...gauge,
      id: 'big-end-bore',
      title: 'Big-end bores',
      one: 'big-end bore',
      condition: 'cap on its own rod and tightened through all stages, shells out',
      how: 'Three diameters at the front and three at the rear, none on the parting line.',
      sizes: round('big-end-bore', 'big-end bore'),
    },
    places: perPart(grid(ENDS, CLOCK)),
    has: always,
  },
  {
    kind: {
      id: 'rod-shell',
      title: 'Rod bearing shells',
      one: 'rod shell wall',
      area: 'rods',
      measured: 'length',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'shells out, back and face wiped clean; ball anvil inside',
      how: 'Wall of each half at its middle, square to the parting line. Walls thin toward the split on purpose.',
      figure: 'shell',
      sizes: [
        { property: 'rod-shell.wall', title: 'rod shell wall', form: 'mean' },
        { property: 'rod-shell.upper-wall', title: 'upper rod shell wall', form: 'single', stations: ['upper'] },
        { property: 'rod-shell.lower-wall', title: 'lower rod shell wall', form: 'single', stations: ['lower'] },
      ],
      sense: 'shaft',
    },
    places: perPart(points('upper', 'lower')),
    has: always,
  },
  {
    kind: {
      ...rod,
      ...gauge,
      id: 'rod-bearing-bore',
      title: 'Rod bearing bores, shells fitted',
      one: 'rod bearing bore',
      condition: 'shells in, cap on its own rod and tightened through all stages',
      how: 'Square to the parting line at the front and at the rear.',
      sizes: [
        { property: 'rod-bearing-bore.diameter', title: 'rod bearing bore', form: 'mean' },
        { property: 'rod-bearing-bore.taper', title: 'rod bearing bore taper', form: 'taper' },
      ],
    },
    places: perPart(grid(ENDS, CLOCK.slice(0, 1))),
    has: always,
  },
  {
    kind: {
      id: 'rod-strip',
      title: 'Rod clearances by gauging strip',
      one: 'rod clearance by strip',
      area: 'rods',
      measured: 'length',
      instrument: 'gauging-strip',
      resolution: FIVE_TENTHS,
      condition: 'dry crankpin, cap tightened once through all stages, crank not turned',
      how: 'One strip along the crankpin; compare its widest and its narrowest place with the card. A cross-check only: a strip sees no taper and half a thou at best.',
      figure: 'journal',
      sizes: [{ property: 'rod-strip.clearance', title: 'rod clearance by strip', form: 'mean' }],
      optional: true,
      sense: 'neither',
    },
    places: perPart(points('widest', 'narrowest')),
    has: always,
  },
  {
    kind: {
      ...rod,
      id: 'big-end-width',
      title: 'Widths of the big ends',
      one: 'big-end width',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'cap on and tightened',
      how: 'Across both cheeks of the big end.',
      figure: 'length',
      sizes: single('big-end-width.width', 'big-end width'),
      sense: 'shaft',
    },
    places: perPart(one('width')),
    has: whenAsked,
  },
];

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

export const rodForm: readonly FeatureRule[] = [
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
