import type { OperationView, WorkActView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Link } from 'wouter';
import { StrikeOut } from '../../bench/index.js';
import { PhotoField, PhotoStrip } from '../../photos/index.js';
import { HoldCritical, LeaveOut } from '../work/about-act.js';
import { actName, operationPlace, workPlace } from '../work/act-words.js';
import { OperationHelp } from '../work/operation-help.js';
import type { WorkDesk } from '../work/use-work.js';

interface OtherWaysProps {
  readonly desk: WorkDesk;
  readonly act?: WorkActView;
  readonly operation?: OperationView;
  /** What was recorded last in this operation. */
  readonly last?: WorkActView;
  readonly done: () => void;
}

/** Everything but the usual answer, folded away. */
export function OtherWays({ desk, act, operation, last, done }: OtherWaysProps) {
  return (
    <div className="apart stack">
      {act && act.answer !== 'photo' && <Photos desk={desk} act={act} />}
      {act && <LeaveOut desk={desk} act={act} done={done} />}
      {act && <HoldCritical desk={desk} act={act} />}
      {operation && (
        <details className="fold">
          <summary>What goes on which surface, tools, mistakes</summary>
          <OperationHelp operation={operation} />
        </details>
      )}
      {last?.given && (
        <details className="fold">
          <summary>Recorded last</summary>
          <StrikeOut
            words={`${actName(last)}: ${last.given.words}`}
            given={last.given}
            strike={(reason) => desk.recorder.strikeOut(last.given?.entry ?? '', reason)}
          />
        </details>
      )}
      <nav className="row elsewhere" aria-label="Elsewhere in the work">
        {act && (
          <Link className="button" href={operationPlace(desk.job, act.operation)}>
            All of this operation
          </Link>
        )}
        <Link className="button" href={workPlace(desk.job)}>
          The whole work
        </Link>
        <Link className="button" href={`${workPlace(desk.job)}#leave`}>
          Leave the bench
        </Link>
      </nav>
    </div>
  );
}

/** A photo beside any answer, tied to its act. */
function Photos({ desk, act }: { readonly desk: WorkDesk; readonly act: WorkActView }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>A photo beside it</summary>
      {open && (
        <div className="stack">
          <PhotoStrip job={desk.job} bench={desk.bench} about={act.photos} />
          <PhotoField
            job={desk.job}
            about={act.photos}
            ask="A photo of this"
            onKept={(photo) => desk.recorder.record({ kind: 'photo-taken', data: photo }, 'Photo kept')}
          />
        </div>
      )}
    </details>
  );
}
