import { type ReminderView, remindersView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { localTime } from '../../../log/index.js';
import { BenchScreen, type OpenJob, Said, WithJob } from '../../../shell/index.js';
import { StateMark } from '../state-mark.js';
import { useNow } from '../use-now.js';
import { useRunning } from '../use-running.js';
import { DoneForm } from './done-form.js';
import { HoursForm } from './hours-form.js';
import { PlanForm } from './plan-form.js';

export function ServiceScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Service open={open} />}</WithJob>;
}

/** A day turns over while a page is left open [ms]. */
const TICK = 60_000;

/** What is due by hours or by date. */
function Service({ open }: { readonly open: OpenJob }) {
  const desk = useRunning(open);
  const { bench } = desk;
  const now = useNow(TICK, bench);
  const view = useMemo(() => remindersView(bench, localTime(new Date(now))), [bench, now]);
  return (
    <BenchScreen title={view.title} cautions={view.cautions} begun>
      <p className="step-lead" data-service>
        {view.words}
      </p>
      <HoursForm desk={desk} {...(view.hours && { hours: view.hours })} />
      <ul className="plain state-list">
        {view.items.map((item) => (
          <li key={item.what} className="schedule-line" data-reminder={item.what}>
            <StateMark state={item.state} />
            <Told item={item} />
            {item.state !== 'done' && (
              <DoneForm desk={desk} what={item.what} hours={view.hours?.text.replace(/ h$/, '') ?? ''} />
            )}
          </li>
        ))}
      </ul>
      <PlanForm desk={desk} />
      <Said recorder={desk.recorder} />
    </BenchScreen>
  );
}

function Told({ item }: { readonly item: ReminderView }) {
  const { what, words, origin, planned, done } = item;
  return (
    <span className="act-link-words">
      <strong>{what}</strong>
      <span>{words}</span>
      <small>
        {planned ? 'planned' : 'of the sheet'}: {origin}
        {done && `. Done last ${done.at} by ${done.by}`}
      </small>
    </span>
  );
}
