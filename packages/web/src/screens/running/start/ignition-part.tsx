import { type IgnitionAsked, ignitionView } from '@gudgeon/core/workbench';
import { type FormEvent, useId, useMemo, useState } from 'react';
import { FigureView } from '../../../figures/index.js';
import type { RunningDesk } from '../use-running.js';

/** Cap, rotor and advance, with cylinder one at firing dead centre. */
export function IgnitionPart({ desk }: { readonly desk: RunningDesk }) {
  const [asked, setAsked] = useState<IgnitionAsked>({});
  const view = useMemo(() => ignitionView(desk.bench, asked), [desk.bench, asked]);
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
        <Ask
          name="Diameter of the damper at its mark"
          example="165 mm"
          ask={(damperDiameter) => setAsked((before) => ({ ...before, damperDiameter }))}
        />
        <Ask
          name="Timing as the lamp shows it (after dead centre with a minus)"
          example="4 deg"
          ask={(read) => setAsked((before) => ({ ...before, read }))}
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

interface AskProps {
  readonly name: string;
  readonly example: string;
  readonly ask: (text: string) => void;
}
function Ask({ name, example, ask }: AskProps) {
  const id = useId();
  const [text, setText] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() !== '') ask(text.trim());
  };
  return (
    <form className="field" onSubmit={submit} noValidate>
      <label htmlFor={id}>{name}</label>
      <div className="input-exact">
        <input
          id={id}
          className="input"
          autoComplete="off"
          maxLength={40}
          placeholder={example}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
        <button type="submit" className="button">
          Work it out
        </button>
      </div>
    </form>
  );
}
