import { type IgnitionAsked, ignitionView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { FigureForm, type Taken } from '../../../bench/index.js';
import { FigureView } from '../../../figures/index.js';
import type { RunningDesk } from '../use-running.js';

/** Cap, rotor and advance, with cylinder one at firing dead centre. */
export function IgnitionPart({ desk }: { readonly desk: RunningDesk }) {
  const [asked, setAsked] = useState<IgnitionAsked>({});
  const view = useMemo(() => ignitionView(desk.bench, asked), [desk.bench, asked]);
  /** What was asked stays in its field, beside the answer. */
  const ask = (more: IgnitionAsked): Taken => {
    const typed = Object.values(more).every((text) => text.trim() !== '');
    if (typed) setAsked((before) => ({ ...before, ...more }));
    return typed ? 'kept' : { fault: 'Type a figure with its unit.' };
  };
  if (!view.known) return <p className="step-lead">{view.why}</p>;
  return (
    <>
      <ul className="plain stack">
        {view.warnings.slice(0, 1).map((words) => (
          <li key={words} className="still-open">
            {words}
          </li>
        ))}
      </ul>
      <div className="bench-two">
        {view.figure && <FigureView figure={view.figure} />}
        <div className="stack">
          <h2>Leads</h2>
          <p>{view.rotor}</p>
          <ol className="stack leads">
            {view.posts.map(({ cylinder, words }) => (
              <li key={cylinder}>{words}</li>
            ))}
          </ol>
        </div>
      </div>
      <section className="stack" aria-labelledby="advance">
        <h2 id="advance">Advance</h2>
        {view.advance.length === 0 && <p>The sheet gives none.</p>}
        {view.advance.map(({ words, origin }) => (
          <p key={words}>
            {words} <span className="soft">{origin}</span>
          </p>
        ))}
        <FigureForm
          name="Diameter of the damper at its mark"
          hint="With its unit, as in 165 mm"
          button="Work it out"
          take={(text) => ask({ damperDiameter: text })}
        />
        <FigureForm
          name="Timing as the lamp shows it"
          hint="With its unit, as in 4 deg; after dead centre with a minus"
          button="Work it out"
          take={(text) => ask({ read: text })}
        />
        <dl className="answers-asked" aria-live="polite">
          {view.answers.map(({ name, value, working }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>
                <strong>{value}</strong> <span className="soft">{working}</span>
              </dd>
            </div>
          ))}
        </dl>
      </section>
      <ul className="stack cited">
        {view.warnings.slice(1).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </>
  );
}
