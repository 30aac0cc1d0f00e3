/** Piston rings: gap, side clearance, back clearance, and widths where the maker prints them (M33, M34). */
import type { FeatureKind } from '../model.js';
import type { Anatomy } from './anatomy.js';
import { perPart } from './places.js';
import { always, CALIPER, type FeatureRule, HUNDREDTH, single, TENTH, THOU, whenAsked } from './rule.js';
import { one, points, QUARTERS } from './stations.js';

export const RINGS = ['top', 'second', 'third', 'oil'] as const;
export type Ring = (typeof RINGS)[number];

const usual = (ring: Ring) => (ring === 'third' ? whenAsked : always);
const part = (ring: Ring) => (ring === 'oil' ? 'oil ring' : `${ring} ring`);

/** Depth that the maker names for the gap; else below all the wear of the bore. */
function gapHow({ engine }: Anatomy): Partial<FeatureKind> {
  const depth = engine.inspection?.ringDepth;
  if (depth === undefined) return {};
  return {
    how: `Push the ring square with a piston to ${depth.text} below the deck, in the bore in which it will run; feeler in the gap.`,
  };
}

function gap(ring: Ring): FeatureRule {
  return {
    kind: {
      id: `ring-gap-${ring}`,
      title: `Gaps of the ${part(ring)}s`,
      one: `${part(ring)} gap`,
      area: 'rings',
      measured: 'length',
      instrument: 'feeler-gauge',
      resolution: THOU,
      condition: 'bore at its final size, ring and bore clean',
      how: 'Push the ring square with a piston to where the bore is least worn, in the bore in which it will run; feeler in the gap.',
      figure: 'ring-gap',
      sizes:
        ring === 'oil'
          ? [
              { property: 'ring-gap-oil.gap', title: 'oil ring gap', form: 'mean' },
              { property: 'ring-gap-oil.smallest', title: 'smaller oil rail gap', form: 'smallest' },
            ]
          : single(`ring-gap-${ring}.gap`, `${part(ring)} gap`),
      sense: 'hole',
      material: 'block',
    },
    places: perPart(ring === 'oil' ? points('upper rail', 'lower rail') : one('gap')),
    has: usual(ring),
    fitted: gapHow,
  };
}

function groove(ring: Ring): FeatureRule {
  return {
    kind: {
      id: `ring-groove-${ring}`,
      title: `Side clearances of the ${part(ring)}s`,
      one: `${part(ring)} side clearance`,
      area: 'rings',
      measured: 'length',
      instrument: 'feeler-gauge',
      resolution: 1e-5,
      condition: 'groove scraped clean, the new ring in it',
      how: 'Roll the ring round the groove with its outside in; thickest feeler beside it at four places.',
      figure: 'ring-groove',
      sizes: [
        { property: `ring-groove-${ring}.clearance`, title: `${part(ring)} side clearance`, form: 'largest' },
        { property: `ring-groove-${ring}.tightest`, title: `tightest ${part(ring)} side clearance`, form: 'smallest' },
      ],
      sense: 'hole',
      material: 'piston',
    },
    places: perPart(QUARTERS),
    has: usual(ring),
  };
}

/** Sizes of ring and groove that some makers print instead of the clearance. */
function printed(ring: Ring): readonly FeatureRule[] {
  const base = { area: 'rings', measured: 'length', figure: 'ring-groove' } as const;
  return [
    {
      kind: {
        ...base,
        id: `groove-width-${ring}`,
        title: `Widths of the ${ring} grooves`,
        one: `${ring} groove width`,
        instrument: 'feeler-gauge',
        resolution: HUNDREDTH,
        condition: 'groove scraped clean',
        how: 'Gauge blocks or a known ring with feelers, at two places opposite each other.',
        sizes: [{ property: `groove-width-${ring}.width`, title: `${ring} groove width`, form: 'largest' }],
        sense: 'hole',
        material: 'piston',
      },
      places: perPart(points('first', 'opposite')),
      has: whenAsked,
    },
    {
      kind: {
        ...base,
        id: `ring-width-${ring}`,
        title: `Widths of the ${part(ring)}s`,
        one: `${part(ring)} width`,
        instrument: 'outside-micrometer',
        resolution: TENTH,
        condition: 'ring clean, no burr',
        how: 'Thickness along the cylinder at two places opposite each other.',
        sizes: [{ property: `ring-width-${ring}.width`, title: `${part(ring)} width`, form: 'mean' }],
        sense: 'shaft',
      },
      places: perPart(points('first', 'opposite')),
      has: whenAsked,
    },
    {
      kind: {
        ...base,
        id: `ring-tension-${ring}`,
        title: `Tension of the ${part(ring)}s`,
        one: `${part(ring)} tension`,
        measured: 'force',
        instrument: 'spring-tester',
        resolution: 0.1,
        condition: 'band round the ring, gap closed to what the maker names',
        how: 'Pull at the band when the gap is as printed.',
        figure: 'ring-gap',
        sizes: single(`ring-tension-${ring}.pull`, `${part(ring)} tension`),
        sense: 'shaft',
      },
      places: perPart(one('pull')),
      has: whenAsked,
    },
  ];
}

function back(ring: 'top' | 'second'): FeatureRule {
  return {
    kind: {
      id: `ring-back-${ring}`,
      title: `Back clearances of the ${part(ring)}s`,
      one: `${part(ring)} back clearance`,
      area: 'rings',
      measured: 'length',
      instrument: 'depth-micrometer',
      resolution: CALIPER,
      condition: 'ring pushed to the bottom of its groove',
      how: 'How far the ring’s face lies below the land. It must never stand proud.',
      figure: 'ring-groove',
      sizes: single(`ring-back-${ring}.depth`, `${part(ring)} back clearance`),
      optional: true,
      sense: 'neither',
    },
    places: perPart(one('depth')),
    has: always,
  };
}

export const rings: readonly FeatureRule[] = [
  ...RINGS.map(gap),
  ...RINGS.map(groove),
  back('top'),
  back('second'),
  ...RINGS.flatMap(printed),
];
