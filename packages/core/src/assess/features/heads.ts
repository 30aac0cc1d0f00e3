/** Cylinder heads bare and their gaskets (M37, M38). */
import type { FeatureKind } from '../model.js';
import { SIX_WAYS } from './decks.js';
import { perCylinder, perHead } from './places.js';
import { always, type FeatureRule, HUNDREDTH, single, TENTH, whenAsked, worst } from './rule.js';
import { one, points } from './stations.js';

const head = { area: 'heads', measured: 'length', material: 'head' } as const satisfies Partial<FeatureKind>;
const edge = { instrument: 'straightedge-and-feeler', resolution: 2e-5, figure: 'face', sense: 'neither' } as const;

export const heads: readonly FeatureRule[] = [
  {
    kind: {
      ...head,
      ...edge,
      id: 'head-flatness',
      title: 'Flatness of the heads',
      one: 'gap under the straight edge',
      condition: 'face scraped clean, head at the temperature of the room',
      how: 'Straight edge along both long edges, both ends and both diagonals; the thickest feeler that enters under it.',
      sizes: worst('head-flatness.gap', 'head flatness'),
    },
    places: perHead(SIX_WAYS),
    has: always,
  },
  {
    kind: {
      ...head,
      ...edge,
      id: 'manifold-flatness',
      title: 'Flatness of the manifold faces',
      one: 'gap under the straight edge',
      condition: 'face scraped clean',
      how: 'Straight edge along the face and across it.',
      sizes: worst('manifold-flatness.gap', 'manifold flatness'),
    },
    places: perHead(points('along', 'one diagonal', 'other diagonal'), 'manifold'),
    has: whenAsked,
  },
  {
    kind: {
      ...head,
      id: 'head-thickness',
      title: 'Thicknesses of the heads',
      one: 'head thickness',
      instrument: 'outside-micrometer',
      resolution: HUNDREDTH,
      condition: 'both faces clean',
      how: 'From the gasket face to the upper face near each corner, always at the same features.',
      figure: 'face',
      sizes: [
        { property: 'head-thickness.thickness', title: 'head thickness', form: 'mean' },
        { property: 'head-thickness.smallest', title: 'head thickness at its thinnest', form: 'smallest' },
        { property: 'head-thickness.spread', title: 'head thickness, spread over the corners', form: 'spread' },
      ],
      sense: 'neither',
    },
    places: perHead(points('front, intake side', 'rear, intake side', 'rear, exhaust side', 'front, exhaust side')),
    has: always,
  },
  {
    kind: {
      id: 'chamber-volume',
      title: 'Chamber volumes',
      one: 'chamber volume',
      area: 'heads',
      measured: 'volume',
      instrument: 'burette',
      resolution: 1e-7,
      condition: 'valves and plug in, seats greased, head level, plate sealed over the chamber',
      how: 'Fill through the hole in the plate until no bubble is left, eye level with the burette.',
      figure: 'chamber',
      sizes: single('chamber-volume.volume', 'chamber volume'),
      sense: 'neither',
    },
    places: perCylinder(one('volume')),
    has: always,
  },
  {
    kind: {
      ...head,
      id: 'injector-protrusion',
      title: 'Injector protrusions',
      one: 'injector protrusion',
      instrument: 'dial-indicator',
      resolution: HUNDREDTH,
      condition: 'injector tightened down on a new washer',
      how: 'Zero the dial on the head face, then read the tip. Beyond the face is positive.',
      figure: 'protrusion',
      sizes: single('injector-protrusion.height', 'injector protrusion'),
      sense: 'neither',
    },
    places: perCylinder(one('height')),
    has: whenAsked,
  },
  {
    kind: {
      id: 'gasket-thickness',
      title: 'Head gaskets',
      one: 'gasket thickness',
      area: 'heads',
      measured: 'length',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'the old gasket, pressed as it came off; or a new one, and then say so in a note',
      how: 'Between the bores near the fire rings, four places along the gasket.',
      figure: 'face',
      sizes: [
        { property: 'gasket-thickness.thickness', title: 'gasket thickness', form: 'mean' },
        { property: 'gasket-thickness.spread', title: 'gasket thickness, spread', form: 'spread' },
      ],
      sense: 'neither',
    },
    places: perHead(points('first', 'second', 'third', 'fourth'), 'gasket'),
    has: always,
  },
];
