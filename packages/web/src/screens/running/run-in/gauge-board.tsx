import type { RunInView } from '@gudgeon/core/workbench';
import { VerdictMark } from '../../../bench/index.js';

/** What each gauge showed last, against its limit. */
export function GaugeBoard({ view }: { readonly view: RunInView }) {
  return (
    <section className="stack" aria-labelledby="gauges">
      <h2 id="gauges">Gauges</h2>
      <ul className="plain gauge-board">
        {view.gauges.map(({ what, title, newest, verdict, says, limit, origin }) => (
          <li key={what} data-gauge-now={what}>
            {what !== 'load-words' && <VerdictMark verdict={verdict} />}
            <span>
              <strong>
                {title} {newest?.text ?? ''}
              </strong>{' '}
              {says}
              {limit !== '' && (
                <span className="soft gauge-limit">
                  {limit}; {origin}
                </span>
              )}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
