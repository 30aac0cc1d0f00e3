import type { FeatureKind } from '../model.js';
import { perValve } from './places.js';
import { CALIPER, type FeatureRule, single, TENTH } from './rule.js';
import { one } from './stations.js';

/** One reading of each valve, or of what belongs to it. */
export function eachValve(
  own: Omit<FeatureKind, 'sizes'> & { readonly size: string },
  has: FeatureRule['has'],
  fitted?: FeatureRule['fitted'],
): FeatureRule {
  const { size, ...kind } = own;
  return {
    kind: { ...kind, sizes: single(`${kind.id}.${size}`, kind.one) },
    places: perValve(one(size)),
    has,
    ...(fitted === undefined ? {} : { fitted }),
  };
}

export const valve = { area: 'valves', measured: 'length' } as const satisfies Partial<FeatureKind>;

export const DIAL = {
  ...valve,
  instrument: 'dial-indicator',
  resolution: TENTH,
  figure: 'runout',
  sense: 'neither',
} as const;
export const PROTRACTOR = {
  ...valve,
  instrument: 'protractor',
  measured: 'angle',
  resolution: Math.PI / 720,
  figure: 'valve-seat',
  sense: 'neither',
} as const;
export const RULE = {
  ...valve,
  instrument: 'caliper',
  resolution: CALIPER,
  sense: 'neither',
} as const;
