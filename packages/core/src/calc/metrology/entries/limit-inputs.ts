/** Limits as entries take them, and the refusal of a window that is upside down. */
import type { Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import type { Limits } from '../decision.js';
import type { Flavour } from './flavour.js';

export const limitInputs = (of: Flavour) => {
  const { input } = of;
  return {
    low: { ...input, symbol: 'low', meaning: 'lower limit, inclusive; left out: none', optional: true },
    high: { ...input, symbol: 'high', meaning: 'upper limit, inclusive; left out: none', optional: true },
  } as const;
};

export const upsideDown = ({ low, high }: Limits): Outcome<never, Conflict> | undefined =>
  low !== undefined && high !== undefined && low > high
    ? conflict(['low', 'high'], 'the lower limit is above the upper one', { input: 'high', from: low })
    : undefined;
