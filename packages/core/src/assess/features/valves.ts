/** Valves, guides and seats (M39 to M42, M44). */
import type { FeatureKind } from '../model.js';
import { hasRockers } from './anatomy.js';
import { perValve } from './places.js';
import {
  always,
  CALIPER,
  type FeatureRule,
  FIVE_TENTHS,
  HUNDREDTH,
  round,
  single,
  TENTH,
  THOU,
  whenAsked,
} from './rule.js';
import { AXES, grid, lines, one, points } from './stations.js';

const valve = { area: 'valves', measured: 'length' } as const satisfies Partial<FeatureKind>;
/** Along the stem as it hangs in the head: worn at both ends of the guide. */
const ALONG = ['spring side', 'middle', 'port side'] as const;

/** Most of these are one reading of each valve. */
function each(
  own: Omit<FeatureKind, 'area' | 'measured' | 'sizes'> & {
    readonly measured?: FeatureKind['measured'];
    readonly size: string;
  },
  has: FeatureRule['has'],
): FeatureRule {
  const { size, ...kind } = own;
  return {
    kind: { ...valve, ...kind, sizes: single(`${own.id}.${size}`, own.one) },
    places: perValve(one(size)),
    has,
  };
}

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

const DIAL = { instrument: 'dial-indicator', resolution: TENTH, figure: 'runout', sense: 'neither' } as const;
const PROTRACTOR = {
  instrument: 'protractor',
  measured: 'angle',
  resolution: Math.PI / 720,
  figure: 'valve-seat',
  sense: 'neither',
} as const;
const RULE = { instrument: 'caliper', resolution: CALIPER, sense: 'neither' } as const;

export const seats: readonly FeatureRule[] = [
  each(
    {
      ...RULE,
      id: 'seat-width',
      title: 'Widths of the seats',
      one: 'seat width',
      condition: 'seat ground, its mark shown with blue',
      how: 'Width of the blue band where the valve seals.',
      figure: 'valve-seat',
      size: 'width',
    },
    always,
  ),
  each(
    {
      ...DIAL,
      id: 'seat-runout',
      title: 'Run-out of the seats',
      one: 'seat run-out',
      condition: 'pilot tight in its own guide',
      how: 'Whole swing of the dial round the seat.',
      size: 'total',
    },
    always,
  ),
  each(
    {
      ...PROTRACTOR,
      id: 'seat-angle',
      title: 'Angles of the seats',
      one: 'seat angle',
      condition: 'seat ground',
      how: 'From the plane across the seat to its face.',
      size: 'angle',
    },
    whenAsked,
  ),
  each(
    {
      ...PROTRACTOR,
      id: 'face-angle',
      title: 'Angles of the valve faces',
      one: 'face angle',
      condition: 'face ground',
      how: 'From the plane across the valve head to its face.',
      size: 'angle',
    },
    whenAsked,
  ),
  each(
    {
      ...DIAL,
      id: 'face-runout',
      title: 'Run-out of the valve faces',
      one: 'face run-out',
      condition: 'stem turning in vee blocks',
      how: 'Whole swing of the dial on the face.',
      size: 'total',
    },
    whenAsked,
  ),
  each(
    {
      ...RULE,
      id: 'valve-margin',
      title: 'Margins of the valves',
      one: 'margin',
      condition: 'face ground',
      how: 'Edge left between the face and the flat of the head, at its thinnest.',
      figure: 'valve-seat',
      sense: 'shaft',
      size: 'thickness',
    },
    always,
  ),
  each(
    {
      ...RULE,
      id: 'valve-head-diameter',
      title: 'Diameters of the valve heads',
      one: 'valve head',
      condition: 'valve out and clean',
      how: 'Across the head.',
      figure: 'valve-seat',
      size: 'diameter',
    },
    whenAsked,
  ),
  each(
    {
      ...RULE,
      id: 'valve-length',
      title: 'Lengths of the valves',
      one: 'valve length',
      condition: 'valve out and clean',
      how: 'From the tip to the flat of the head.',
      figure: 'length',
      size: 'length',
    },
    whenAsked,
  ),
  each(
    {
      ...DIAL,
      id: 'valve-recess',
      title: 'Valve recesses',
      one: 'valve recess',
      resolution: HUNDREDTH,
      condition: 'valve on its seat, head face clean',
      how: 'Zero the dial on the head face, then read the middle of the valve head. Below the face is positive.',
      figure: 'protrusion',
      sense: 'hole',
      material: 'head',
      size: 'depth',
    },
    whenAsked,
  ),
];

export const heights: readonly FeatureRule[] = [
  each(
    {
      ...RULE,
      id: 'stem-height',
      title: 'Heights of the stem tips',
      one: 'stem height',
      resolution: HUNDREDTH,
      condition: 'valve on its seat, no spring',
      how: 'From the spring seat to the tip. A valve and seat ground deep raise it, and with it the rocker.',
      figure: 'valve-stem',
      size: 'height',
    },
    always,
  ),
  each(
    {
      ...RULE,
      id: 'installed-height',
      title: 'Installed heights',
      one: 'installed height',
      instrument: 'height-gauge',
      resolution: 5 * THOU,
      condition: 'retainer and locks on without spring, pulled up hard',
      how: 'From the spring seat to the retainer where the outer spring will bear.',
      figure: 'spring',
      size: 'height',
    },
    always,
  ),
  each(
    {
      ...RULE,
      id: 'retainer-to-guide',
      title: 'Room from retainer to guide',
      one: 'room to the guide',
      condition: 'valve on its seat, retainer and locks on, seal on the guide',
      how: 'From the underside of the retainer to the seal. Full lift must leave some of it.',
      figure: 'spring',
      size: 'room',
    },
    always,
  ),
  each(
    {
      ...RULE,
      id: 'retainer-to-rocker',
      title: 'Room from retainer to rocker',
      one: 'room to the rocker',
      instrument: 'feeler-gauge',
      resolution: FIVE_TENTHS * 2,
      condition: 'trial assembly, rocker on its stud or shaft',
      how: 'Smallest gap while the valve goes through its whole lift.',
      figure: 'spring',
      optional: true,
      size: 'room',
    },
    hasRockers,
  ),
];

export const valves: readonly FeatureRule[] = [...guides, ...seats, ...heights];
