/** Inputs that several entries of this subject share. */
import { mm } from '../../../quantity/index.js';

export const size = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(2000) } } as const;

export const housing = {
  ...size,
  symbol: 'H',
  meaning: 'housing bore without shells, caps at their torque',
} as const;

export const wall = {
  ...size,
  symbol: 'tu',
  meaning: 'wall of the upper shell half at its crown, 90° from the parting line, with a ball anvil',
} as const;

export const upperWall = wall;
export const lowerWall = {
  ...wall,
  symbol: 'tl',
  meaning: 'wall of the lower shell half; left out: the upper one counted twice',
  optional: true,
} as const;

export const journal = {
  ...size,
  symbol: 'J',
  meaning: 'journal diameter, the largest that was measured',
} as const;

/** A clearance or float as a limit: negative ones are nonsense for shells. */
export const clearance = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(10) } } as const;
export const lowest = { ...clearance, symbol: 'C min', meaning: 'lowest clearance accepted', optional: true } as const;
export const highest = {
  ...clearance,
  symbol: 'C max',
  meaning: 'highest clearance accepted',
  optional: true,
} as const;

export const clearanceOut = { kind: 'length', unit: 'mm', places: 4 } as const;
export const verdict = {
  kind: 'text',
  symbol: 'verdict',
  meaning: 'in, below or above the window; no data where no limit is given',
} as const;
