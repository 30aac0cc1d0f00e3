import { type AnswerRow, type InputView, slid } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import type { Hand } from './hand.js';
import { InSight } from './in-sight.js';
import { InputRow } from './input-row.js';
import type { CombinationDesk } from './use-combination.js';

interface InputsProps {
  readonly desk: CombinationDesk;
  readonly inputs: readonly InputView[];
  readonly title?: string;
  /** Answers that stay in sight while figures are moved. */
  readonly watched?: readonly AnswerRow[];
}
/** As many as are moved most; the rest unfold. */
const FIRST = 8;

/** The figures that go in, each with its origin. Moving one changes the scratch copy only. */
export function Inputs({ desk, inputs, title = 'What goes in', watched = [] }: InputsProps) {
  const { store, shownIn } = desk;
  const [all, setAll] = useState(false);
  const hand = useMemo<Hand>(
    () => ({
      shownIn,
      slide: (key, number) => store.put([[key, slid(key, number, shownIn)]]),
      put: (key, value) => store.put([[key, value]]),
      takeBack: store.drop,
    }),
    [store, shownIn],
  );
  const given = inputs.filter(({ origin }) => origin !== 'missing');
  if (given.length === 0) return null;
  const shown = all ? given : given.filter(({ origin }, at) => at < FIRST || origin === 'scratch');
  return (
    <section className="stack" aria-label={title}>
      <h2>{title}</h2>
      <p className="field-hint">What you change here is tried on the scratch copy; the record stays as it is.</p>
      <InSight rows={watched} />
      <ul className="plain inputs">
        {shown.map((input) => (
          <li key={input.key} className="input-row" data-input={input.key} data-origin={input.origin}>
            <InputRow input={input} hand={hand} />
          </li>
        ))}
      </ul>
      {given.length > FIRST && (
        <button type="button" className="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? `Only the first ${FIRST}` : `${given.length - shown.length} more: ${title.toLowerCase()}`}
        </button>
      )}
    </section>
  );
}
