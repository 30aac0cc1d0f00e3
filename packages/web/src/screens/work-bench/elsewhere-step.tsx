import type { WorkActView } from '@gudgeon/core/workbench';
import { useLocation } from 'wouter';
import { ActButton } from '../../bench/index.js';
import { useActions } from '../../keys/index.js';
import { setWayBack } from '../../shell/index.js';
import { benchPlace } from '../work/act-words.js';
import { usual } from './step.js';

interface ElsewhereProps {
  readonly job: string;
  readonly act: WorkActView;
  readonly opens: NonNullable<WorkActView['opens']>;
  /** Tells that a hand is at work here, though it goes elsewhere now. */
  readonly begin: () => void;
}

/** Remembers the way back, so that the other screen can offer it. */
function useWayThere({ job, act, opens, begin }: ElsewhereProps): () => void {
  const [, go] = useLocation();
  return () => {
    begin();
    setWayBack({
      job,
      to: benchPlace(job, act.id),
      left: benchPlace(job),
      aim: opens.place,
      words: 'Back to the work',
    });
    go(`/engine/${job}/${opens.place}`);
  };
}

/** Another screen of this program is where it is done; its own record finishes the act. */
export function ElsewhereStep(props: ElsewhereProps) {
  const action = usual(props.opens.words, useWayThere(props));
  const run = useActions([action]);
  return <ActButton action={action} run={run} />;
}

/** Another screen helps; the answer is given here. */
export function HelpElsewhere(props: ElsewhereProps) {
  const go = useWayThere(props);
  return (
    <button type="button" className="button help-elsewhere" onClick={go}>
      {props.opens.words} →
    </button>
  );
}
