/** Big ends and their shells (M24, M27). */
import { perPart } from './places.js';
import { gauge, rod } from './rod-shared.js';
import { always, type FeatureRule, FIVE_TENTHS, round, single, TENTH, whenAsked } from './rule.js';
import { CLOCK, ENDS, grid, one, points } from './stations.js';

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
