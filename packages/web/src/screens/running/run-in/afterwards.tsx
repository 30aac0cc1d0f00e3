import { Link } from 'wouter';
import { benchPlace, operationPlace } from '../../work/act-words.js';
import type { RunInProps } from './run-in-props.js';

const DO = { do: 'Do it', never: 'Leave it', 'look-up': 'Look it up first' } as const;

/** Where each is done and recorded. */
const placeOf = (job: string, id: RunInProps['view']['afterwards'][number]['id']): string => {
  if (id === 'oil-and-filter') return benchPlace(job, 'filter-cut');
  return id === 'lash' ? `/engine/${job}/valves` : operationPlace(job, 're-check');
};

/** Looked at, tightened and set once more, hot and cold: only what a maker asks for. */
export function Afterwards({ desk, view }: RunInProps) {
  return (
    <section className="stack" aria-labelledby="afterwards">
      <h2 id="afterwards">After the run-in</h2>
      <ul className="plain state-list">
        {view.afterwards.map(({ id, words, origin, do: what }) => (
          <li key={id} className="schedule-line" data-after={id}>
            <span className={what === 'do' ? 'after-word' : 'after-word after-not'}>{DO[what]}</span>
            <span className="act-link-words">
              <span>{words}</span>
              <small>{origin}</small>
            </span>
            {what !== 'never' && (
              <Link className="button" href={placeOf(desk.job, id)} aria-label={`Record it: ${id}`}>
                Record it
              </Link>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
