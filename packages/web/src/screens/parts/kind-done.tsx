import type { PartKind } from '@gudgeon/core/plan';
import type { PartsView } from '@gudgeon/core/workbench';
import { useLocation } from 'wouter';
import { ActButton, Finished } from '../../bench/index.js';
import { useActions } from '../../keys/index.js';
import { useWayBack, useWayOn } from '../../shell/index.js';
import { firstKind, type PartsMode } from './standing.js';

interface KindDoneProps {
  readonly view: PartsView;
  readonly part: PartKind;
  readonly mode: PartsMode;
  readonly job: string;
  readonly next: (part: PartKind) => void;
  readonly fit: () => void;
}

/** Every place of this kind is done; the way on leads to the next kind, then to the valves. */
export function KindDone({ view, part, mode, job, next, fit }: KindDoneProps) {
  const [, go] = useLocation();
  const on = useWayOn(job, 'parts', { to: `/engine/${job}/valves`, toWords: 'Set the valves' });
  const cameFromWork = useWayBack(job)?.aim === 'parts';
  const following = firstKind(view, mode);
  // The work says itself when the next kind goes in: another act may stand between.
  const workLeads = cameFromWork && mode === 'fit';
  if (following !== undefined && !workLeads)
    return (
      <OnWith
        words={`Every ${part} is ${mode === 'fit' ? 'in its place' : 'tagged'}`}
        to={`Now the ${following}s`}
        go={() => next(following)}
      />
    );
  if (mode === 'tag' && !cameFromWork) return <OnWith words="Every part is tagged" to="Fit them" go={fit} />;
  const which = following === undefined ? 'part' : part;
  const words = mode === 'tag' ? 'Every part is tagged' : `Every ${which} is in its place`;
  return <Finished words={words} {...on} go={() => go(on.to)} />;
}

function OnWith({ words, to, go }: { readonly words: string; readonly to: string; readonly go: () => void }) {
  const action = { name: 'on', label: to, keys: ['Enter', ' '], available: true, run: go };
  const run = useActions([action]);
  return (
    <section className="finished" aria-live="polite">
      <p className="finished-words">✓ {words}</p>
      <ActButton action={action} run={run} />
    </section>
  );
}
