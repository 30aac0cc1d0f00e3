import { assembly } from './assembly.js';
import { block } from './block.js';
import { camshaft } from './camshaft.js';
import { crankshaft } from './crankshaft.js';
import { followers } from './followers.js';
import { heads } from './heads.js';
import { pistons } from './pistons.js';
import { rings } from './rings.js';
import { rods } from './rods.js';
import type { FeatureRule } from './rule.js';
import { springs } from './springs.js';
import { valves } from './valves.js';

/** Everything that the trade measures with an instrument, in the order of the walk: what vanishes at the strip-down first. */
export const FEATURE_RULES: readonly FeatureRule[] = [
  ...assembly,
  ...block,
  ...crankshaft,
  ...rods,
  ...pistons,
  ...rings,
  ...camshaft,
  ...followers,
  ...heads,
  ...valves,
  ...springs,
];
