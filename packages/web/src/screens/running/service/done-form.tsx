import { FigureForm } from '../../../bench/index.js';
import type { RunningDesk } from '../use-running.js';
import { HOURS_ASKED, hoursTyped } from './hours-text.js';

interface DoneFormProps {
  readonly desk: RunningDesk;
  readonly what: string;
  /** Offered again: the hours that were noted last. */
  readonly hours: string;
}

/** Done, and at how many hours: the next time is counted from there. */
export function DoneForm({ desk, what, hours }: DoneFormProps) {
  return (
    <details className="fold done-form">
      <summary aria-label={`It is done: ${what}`}>It is done</summary>
      <FigureForm
        name="At how many hours"
        button="Done"
        buttonName={`Record it as done: ${what}`}
        offered={hours}
        longest={12}
        take={(text) => {
          const at = text.trim() === '' ? undefined : hoursTyped(text);
          if (text.trim() !== '' && at === undefined) return { fault: HOURS_ASKED };
          const data = { what, ...(at !== undefined && { hours: at }) };
          return desk.recorder.record({ kind: 'service-done', data }, `Done: ${what}`) ? 'taken' : 'kept';
        }}
      />
    </details>
  );
}
