import { boltDepths } from './bolt-depth.js';
import { boltReuse } from './bolt-reuse.js';
import type { Decider } from './decision.js';

/** Every joint with blind holes or bolts that are judged by length. */
export const bolts: Decider = (assessment, words) =>
  assessment.engine.joints.flatMap((joint) => [
    ...boltDepths(assessment, joint, words),
    ...boltReuse(assessment, joint, words),
  ]);
