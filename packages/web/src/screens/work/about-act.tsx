import type { WorkActView } from '@gudgeon/core/workbench';
import { Reasoned } from '../../bench/index.js';
import { actName } from './act-words.js';
import type { WorkDesk } from './use-work.js';

interface AboutActProps {
  readonly desk: WorkDesk;
  readonly act: WorkActView;
  readonly done?: () => void;
}

/** Leaves an act out with a reason, or says why it must be done. */
export function LeaveOut({ desk, act, done }: AboutActProps) {
  if (act.mustDo !== undefined) return <p className="field-hint">It cannot be left out: {act.mustDo}.</p>;
  return (
    <Reasoned
      name="Leave this one out"
      about="What is left out stays on the list of skips, and is read before the work is signed."
      button="Leave it out"
      usual={['does not apply here', 'done before this book was begun', 'tool not at hand']}
      record={(reason) => {
        if (desk.wish({ kind: 'skip', acts: [act.id], reason }, `Left out: ${actName(act)}`)) done?.();
      }}
    />
  );
}

/** The person holds an act for critical; nothing where it is, and where it is the signature. */
export function HoldCritical({ desk, act }: AboutActProps) {
  if (act.critical || act.answer === 'sign-off') return null;
  return (
    <Reasoned
      name="Hold it for critical"
      about="From then on a second look at it is owed."
      button="Hold it for critical"
      usual={['went wrong before', 'cannot be seen later']}
      record={(why) => desk.wish({ kind: 'make-critical', act: act.id, why }, 'Held for critical')}
    />
  );
}
