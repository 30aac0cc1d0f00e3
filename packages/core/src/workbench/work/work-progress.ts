import type { ActStand } from '../../plan/index.js';
import type { Progress } from '../views.js';

/** Acts done, of those that are to be done; what was left out with a reason counts as neither, and is told. */
export function progressOf(stands: readonly ActStand[]): Progress {
  const done = stands.filter(({ state }) => state === 'done').length;
  const left = stands.filter(({ state }) => state === 'skipped').length;
  const of = stands.length - left;
  if (of === 0) return { done, of, words: `all ${left} left out` };
  return { done, of, words: `${done} of ${of} done${left === 0 ? '' : `, ${left} left out`}` };
}

/** Nothing of it is open: all done, or left out with a reason. */
export const isFinished = (stands: readonly ActStand[]): boolean =>
  stands.every(({ state }) => state === 'done' || state === 'skipped');
