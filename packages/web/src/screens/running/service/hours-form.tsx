import type { Given } from '@gudgeon/core/workbench';
import { FigureForm } from '../../../bench/index.js';
import type { RunningDesk } from '../use-running.js';
import { HOURS_ASKED, hoursTyped } from './hours-text.js';

interface HoursFormProps {
  readonly desk: RunningDesk;
  readonly hours?: Given & { readonly text: string };
}

/** What the counter shows, or what is estimated. */
export function HoursForm({ desk, hours }: HoursFormProps) {
  const last = hours ? `last noted: ${hours.text}, ${hours.by}, ${hours.at}` : 'none noted yet';
  return (
    <FigureForm
      name={`Running hours now (${last})`}
      button="Note it"
      longest={12}
      take={(text) => {
        const noted = hoursTyped(text);
        if (noted === undefined) return { fault: HOURS_ASKED };
        const entry = { kind: 'hours-noted', data: { hours: noted } } as const;
        return desk.recorder.record(entry, `Running hours: ${noted} h`, text) ? 'taken' : 'kept';
      }}
    />
  );
}
