import type { Phrase } from './phrase.js';
import { CAMSHAFT, FOLLOWERS, HEADS, SPRINGS, VALVES } from './vocabulary-above.js';
import { BLOCK, CRANKSHAFT, DRIVE, HEIGHTS, LINERS, PINS, PISTONS, RINGS, RODS } from './vocabulary-below.js';

/** The whole vocabulary; what is more special stands before what is more general. */
export const PHRASES: readonly Phrase[] = [
  ...SPRINGS,
  ...DRIVE,
  ...HEIGHTS,
  ...LINERS,
  ...FOLLOWERS,
  ...CAMSHAFT,
  ...VALVES,
  ...RINGS,
  ...PINS,
  ...CRANKSHAFT,
  ...RODS,
  ...PISTONS,
  ...HEADS,
  ...BLOCK,
];
