/** From where in the log it is the engine that was built, and no longer the one that was found. */
import type { WorkPlan } from '../../plan/index.js';
import type { KnownData } from '../../record/index.js';
import type { Bench } from '../bench.js';

/**
 * Whether an entry is about the engine as it was built: it came with or after the first start that ran, after the start was answered or left out in the
 * work, or after a book that was begun behind it. Undefined while none of these has happened: then everything is as found.
 */
export function ofBuilt({ state }: Bench, plan: WorkPlan): ((entry: string | undefined) => boolean) | undefined {
  const start = plan.acts.findIndex(({ rule }) => rule === 'started');
  const passes = (known: KnownData): boolean => {
    switch (known.kind) {
      case 'start-tried':
        return known.data.outcome === 'runs';
      case 'work-act-done':
      case 'work-act-skipped':
        return known.data.act === 'started';
      case 'work-begun':
        return plan.acts.findIndex(({ operation }) => operation === known.data.operation) > start;
      default:
        return false;
    }
  };
  const at = state.entries.findIndex(
    ({ reading, struck }) => struck === undefined && reading.understood && passes(reading.known),
  );
  if (at < 0) return undefined;
  const after = new Set(state.entries.slice(at).map(({ entry }) => entry.id));
  return (entry) => entry !== undefined && after.has(entry);
}
