import { type InputView, slid } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import type { Hand } from './hand.js';
import { InputRow } from './input-row.js';
import type { CombinationDesk } from './use-combination.js';

interface InputsProps {
  readonly desk: CombinationDesk;
  readonly inputs: readonly InputView[];
  readonly title?: string;
}
/** The figures that go in, each with its origin. Moving one changes the scratch copy only. */
export function Inputs({ desk, inputs, title = 'What goes in' }: InputsProps) {
  const { store, shownIn } = desk;
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
  return (
    <section className="stack" aria-label={title}>
      <h2>{title}</h2>
      <p className="field-hint">What you change here is tried on the scratch copy; the record stays as it is.</p>
      <ul className="plain inputs">
        {given.map((input) => (
          <li key={input.key} className="input-row" data-input={input.key} data-origin={input.origin}>
            <InputRow input={input} hand={hand} />
          </li>
        ))}
      </ul>
    </section>
  );
}
