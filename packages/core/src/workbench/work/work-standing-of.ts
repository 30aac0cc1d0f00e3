import type { Bench } from '../bench.js';
import type { Standing } from '../standings.js';
import { recordedFact } from './own-facts.js';
import { workAt } from './work-facts.js';
import { progressOf } from './work-progress.js';

/** Whether anybody keeps the whole work in this log: any entry of its own, not what other screens finish. */
export const keepsWork = ({ state }: Bench): boolean => state.entries.some((one) => recordedFact(one) !== undefined);

/** How far the whole work has come. */
export function workStandingOf(bench: Bench): Standing & { readonly begun: boolean } {
  const { standing } = workAt(bench);
  return {
    progress: progressOf([...standing.stands.values()]),
    begun: keepsWork(bench),
    finished: standing.signedOff,
  };
}
