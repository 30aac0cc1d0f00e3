import { rpm } from '../../../quantity/index.js';

export const crankSpeed = {
  kind: 'angular-speed',
  symbol: 'n',
  meaning: 'crank speed',
  unit: 'rpm',
  range: { from: 0, to: rpm(30_000) },
} as const;
