import { BETWEEN } from '../features/between.js';
import { senseOf } from '../features/rule.js';
import { FEATURE_RULES } from '../features/rules.js';
import type { Measured } from '../model.js';

/** A size that limits and findings know by name. */
export interface Property {
  readonly id: string;
  readonly title: string;
  readonly measured: Measured;
  /** `size` of one feature; `pair` of two parts; `spread` between the places of one feature. */
  readonly made: 'size' | 'pair' | 'spread';
  /** Features whose readings form it. */
  readonly needs: readonly string[];
  /** Whether wear makes it larger (`hole`) or smaller (`shaft`). */
  readonly sense: 'hole' | 'shaft' | 'neither';
}

const pair = (id: string, title: string, ...needs: readonly string[]): Property => ({
  id,
  title,
  measured: 'length',
  made: 'pair',
  needs,
  sense: 'hole',
});

/** Clearances: the hole less the shaft; wear opens them. */
const PAIRS: readonly Property[] = [
  pair('piston.clearance', 'piston clearance', 'cylinder-bore', 'piston-skirt'),
  pair('main-bearing.clearance', 'main bearing clearance', 'main-housing', 'main-shell', 'main-journal'),
  pair('rod-bearing.clearance', 'rod bearing clearance', 'big-end-bore', 'rod-shell', 'crankpin'),
  pair('cam-bearing.clearance', 'cam bearing clearance', 'cam-bearing', 'cam-journal'),
  pair('lifter.clearance', 'lifter clearance', 'lifter-bore', 'lifter'),
  pair('bucket.clearance', 'bucket clearance', 'bucket-bore', 'bucket'),
  pair('stem.clearance', 'stem clearance', 'valve-guide', 'valve-stem'),
  pair('pin.clearance-in-rod', 'pin clearance in the rod', 'small-end-bore', 'piston-pin'),
  pair('pin.clearance-in-piston', 'pin clearance in the piston', 'pin-bore', 'piston-pin'),
  pair('rocker.clearance', 'rocker clearance', 'rocker-bore', 'rocker-shaft'),
  pair('liner.clearance-flange', 'liner clearance at the flange', 'counterbore', 'liner-flange-outside'),
  pair('liner.clearance-upper', 'liner clearance below the flange', 'liner-upper-seat', 'liner-upper-outside'),
  pair('liner.clearance-lower', 'liner clearance at the lower seals', 'liner-lower-seat', 'liner-lower-outside'),
];

const KINDS = new Map(FEATURE_RULES.map(({ kind }) => [kind.id, kind]));

/** Over the places of one feature: largest less smallest, steps between neighbours, the largest. They only grow. */
const SPREADS: readonly Property[] = BETWEEN.map(({ property, title, features }) => ({
  id: property,
  title,
  measured: KINDS.get(features[0]!)!.measured,
  made: 'spread',
  needs: features,
  sense: 'hole',
}));

const SIZES: readonly Property[] = FEATURE_RULES.flatMap(({ kind }) =>
  kind.sizes.map((rule) => ({
    id: rule.property,
    title: rule.title,
    measured: kind.measured,
    made: 'size' as const,
    needs: [kind.id],
    sense: senseOf(kind, rule),
  })),
);

/** Every size that the project knows by name, by id. */
export const PROPERTIES: ReadonlyMap<string, Property> = new Map(
  [...SIZES, ...PAIRS, ...SPREADS].map((property) => [property.id, property]),
);
