import type { ReadyItemView } from '@gudgeon/core/workbench';
import { Link, useLocation } from 'wouter';
import { ActButton, Progress } from '../../../bench/index.js';
import { type Action, useActions } from '../../../keys/index.js';
import { benchPlace } from '../../work/act-words.js';
import { startPlace } from '../places.js';
import { StateMark } from '../state-mark.js';
import type { StartProps } from './start-props.js';
import { StopRules } from './stop-rules.js';

const placeOf = (job: string, { act }: ReadyItemView): string =>
  act === undefined ? startPlace(job, 'oil') : benchPlace(job, act);

/** All that has to be so. Nothing is ticked here: each line is answered where it is done, and the log says how it stands. */
export function ReadyPart({ desk, view }: StartProps) {
  const { job } = desk;
  const [, go] = useLocation();
  const open = view.ready.items.find(({ state }) => state !== 'ready');
  const next: Action = {
    name: 'next',
    label: open === undefined ? 'All is ready: to the start' : `Next: ${open.title}`,
    keys: ['Enter', ' ', 'PageDown'],
    available: true,
    run: () => go(open === undefined ? startPlace(job, 'go') : placeOf(job, open)),
  };
  const run = useActions([next]);
  return (
    <>
      <Progress {...view.ready.progress} />
      <ActButton action={next} run={run} />
      <ul className="plain state-list">
        {view.ready.items.map((item) => (
          <li key={item.id} data-ready={item.id}>
            <Link className="act-link state-row" href={placeOf(job, item)}>
              <StateMark state={item.state} />
              <span className="act-link-words">
                <strong>{item.title}</strong>
                <span className="state-said">
                  {item.words}
                  {item.given && ` (${item.given.by}, ${item.given.at})`}
                </span>
                {item.state !== 'ready' && <small>{item.why}</small>}
              </span>
              <span className="act-link-verb">{item.state === 'ready' ? 'See' : 'Answer'}</span>
            </Link>
          </li>
        ))}
      </ul>
      <StopRules view={view} />
    </>
  );
}
