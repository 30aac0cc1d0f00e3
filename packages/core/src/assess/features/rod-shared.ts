import type { FeatureKind } from '../model.js';
import { TENTH } from './rule.js';

export const rod = { area: 'rods', measured: 'length', material: 'rod' } as const satisfies Partial<FeatureKind>;
export const gauge = { instrument: 'bore-gauge', resolution: TENTH, figure: 'housing', sense: 'hole' } as const;
