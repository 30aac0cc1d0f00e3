import type { ValvesView } from '@gudgeon/core/workbench';
import { Hindrances } from '../../bench/index.js';
import type { WayName } from './ways.js';

/** No stop of the plan serves what is left: why, and the ways that are left. */
export function NoStop({ view, goTo }: { readonly view: ValvesView; readonly goTo: (way: WayName) => void }) {
  const refused = view.refused.map((one) => ({
    code: one.valve,
    words: `${one.valve}: no stop leaves it the margin. ${one.reason}.`,
  }));
  const plan = view.hindrances.map((words) => ({ code: 'no-plan', words }));
  return (
    <div className="stack">
      <Hindrances hindrances={[...plan, ...refused]} />
      <button type="button" className="act" data-bench-control="one" onClick={() => goTo('one')}>
        Set one valve at a time
      </button>
      <button type="button" className="act act-second" data-bench-control="margin" onClick={() => goTo('margin')}>
        Look at the margin
      </button>
    </div>
  );
}
