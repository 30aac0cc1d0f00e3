/** Lifters, buckets, shims, pushrods and rockers (M11, M47, M48, M54). */
import type { FeatureKind } from '../model.js';
import { hasShims, isBucket, isPushrod } from './anatomy.js';
import { perCylinder, perValve } from './places.js';
import { type FeatureRule, round, single, TENTH, THOU, whenAsked } from './rule.js';
import { AXES, grid, lines, one, points } from './stations.js';

const follower = { area: 'followers', measured: 'length' } as const satisfies Partial<FeatureKind>;
const hole = { instrument: 'small-bore-gauge', resolution: TENTH, figure: 'follower-bore', sense: 'hole' } as const;
const shaft = { instrument: 'outside-micrometer', resolution: TENTH, figure: 'pin', sense: 'shaft' } as const;
const IN_BORE = grid(lines('top', 'bottom'), AXES);
const BORE = 'Two diameters at right angles near the top and near the bottom.';

export const followerBores: readonly FeatureRule[] = [
  {
    kind: {
      ...follower,
      ...hole,
      id: 'lifter-bore',
      title: 'Lifter bores',
      one: 'lifter bore',
      condition: 'bores washed, varnish off',
      how: BORE,
      sizes: round('lifter-bore', 'lifter bore'),
      material: 'block',
    },
    places: perValve(IN_BORE),
    has: isPushrod,
  },
  {
    kind: {
      ...follower,
      ...shaft,
      id: 'lifter',
      title: 'Lifters',
      one: 'lifter',
      condition: 'clean, with the number of its own bore',
      how: 'Across the body near the top and near the bottom, where it runs.',
      sizes: [
        { property: 'lifter.diameter', title: 'lifter diameter', form: 'mean' },
        { property: 'lifter.taper', title: 'lifter taper', form: 'spread' },
      ],
    },
    places: perValve(points('top', 'bottom')),
    has: isPushrod,
  },
  {
    kind: {
      ...follower,
      id: 'lifter-crown',
      title: 'Crowns of the lifter faces',
      one: 'lifter crown',
      instrument: 'dial-indicator',
      resolution: TENTH,
      condition: 'face clean; lifter turning in a vee block',
      how: 'From the edge of the face to its middle. A flat or hollow face is finished.',
      figure: 'runout',
      sizes: single('lifter-crown.height', 'lifter crown'),
      sense: 'shaft',
    },
    places: perValve(one('height')),
    has: (anatomy) => isPushrod(anatomy) && anatomy.engine.valveGear?.follower === 'flat',
  },
  {
    kind: {
      ...follower,
      ...hole,
      id: 'bucket-bore',
      title: 'Bucket bores',
      one: 'bucket bore',
      condition: 'head clean, buckets out',
      how: BORE,
      sizes: round('bucket-bore', 'bucket bore'),
      material: 'head',
    },
    places: perValve(IN_BORE),
    has: isBucket,
  },
  {
    kind: {
      ...follower,
      ...shaft,
      id: 'bucket',
      title: 'Buckets',
      one: 'bucket',
      condition: 'clean, with the number of its own bore',
      how: 'Across the skirt near the top and near the bottom.',
      sizes: [
        { property: 'bucket.diameter', title: 'bucket diameter', form: 'mean' },
        { property: 'bucket.taper', title: 'bucket taper', form: 'spread' },
      ],
    },
    places: perValve(points('top', 'bottom')),
    has: isBucket,
  },
  {
    kind: {
      ...follower,
      ...hole,
      id: 'injector-lifter-bore',
      title: 'Bores of the injector lifters',
      one: 'injector lifter bore',
      condition: 'bores washed, varnish off',
      how: BORE,
      sizes: round('injector-lifter-bore', 'injector lifter bore'),
      material: 'block',
    },
    places: perCylinder(IN_BORE),
    has: whenAsked,
  },
];

export const links: readonly FeatureRule[] = [
  {
    kind: {
      ...follower,
      id: 'shim-thickness',
      title: 'Shims as found',
      one: 'shim',
      instrument: 'outside-micrometer',
      resolution: 5e-6,
      condition: 'shim wiped; number on it read but not believed',
      how: 'Thickness at the middle, where it runs.',
      figure: 'length',
      sizes: single('shim-thickness.thickness', 'shim thickness'),
      sense: 'shaft',
    },
    places: perValve(one('thickness')),
    has: hasShims,
  },
  {
    kind: {
      ...follower,
      id: 'pushrod-length',
      title: 'Pushrod lengths',
      one: 'pushrod length',
      instrument: 'caliper',
      resolution: THOU,
      condition: 'oil holes clean; the same gauge balls for all',
      how: 'Over the ends; where the ends are drilled, over gauge balls, and say so in a note.',
      figure: 'length',
      sizes: single('pushrod-length.length', 'pushrod length'),
      sense: 'shaft',
    },
    places: perValve(one('length')),
    has: isPushrod,
  },
  {
    kind: {
      ...follower,
      id: 'pushrod-runout',
      title: 'Run-out of the pushrods',
      one: 'pushrod run-out',
      instrument: 'dial-indicator',
      resolution: THOU,
      condition: 'ends on vee blocks, tube clean',
      how: 'Dial at the middle, whole swing over one turn.',
      figure: 'runout',
      sizes: single('pushrod-runout.total', 'pushrod run-out'),
      sense: 'neither',
    },
    places: perValve(one('swing')),
    has: isPushrod,
  },
  {
    kind: {
      ...follower,
      ...hole,
      id: 'rocker-bore',
      title: 'Rocker bores',
      one: 'rocker bore',
      condition: 'rocker off its shaft, bush clean',
      how: 'Two diameters at right angles.',
      sizes: round('rocker-bore', 'rocker bore').slice(0, 2),
    },
    places: perValve(grid(lines('middle'), AXES)),
    has: whenAsked,
  },
  {
    kind: {
      ...follower,
      ...shaft,
      id: 'rocker-shaft',
      title: 'Rocker shaft where the rockers run',
      one: 'rocker shaft',
      condition: 'shaft out and clean',
      how: 'Two diameters at right angles under each rocker; the underside wears.',
      sizes: round('rocker-shaft', 'rocker shaft').slice(0, 2),
    },
    places: perValve(grid(lines('middle'), AXES)),
    has: whenAsked,
  },
];

export const followers: readonly FeatureRule[] = [...followerBores, ...links];
