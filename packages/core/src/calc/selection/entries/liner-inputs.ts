/** Inputs that the entries of wet liners share. */
import { signedLength, size } from './fit-inputs.js';

export const lowest = { ...signedLength('p₁', 'lowest protrusion accepted; left out: any'), optional: true } as const;
export const highest = signedLength('p₂', 'highest protrusion accepted');
export const stepLimit = {
  ...size('Δp', 'largest difference between neighbours; left out: any'),
  optional: true,
} as const;
export const steps = {
  kind: 'choice',
  symbol: 'steps',
  meaning: 'whether the steps from liner to liner must all run one way along the bank',
  choices: ['any', 'one-way'],
  default: 'any',
} as const;
