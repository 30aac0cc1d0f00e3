import { type FindForm, findInput } from '@gudgeon/core/workbench';
import { useId, useState } from 'react';
import type { FinderState, FinderStore } from './finder-store.js';
import type { CombinationDesk } from './use-combination.js';

interface FindRunProps {
  readonly desk: CombinationDesk;
  readonly form: FindForm;
  readonly finder: FinderState;
  readonly store: FinderStore;
}
const PHASES: Readonly<Record<string, string>> = {
  combinations: 'Looking at every combination',
  loosening: 'Nothing fits; looking for what could give way',
  additions: 'Looking for parts that would help',
  done: 'Done',
};

/** Begins the search, shows how far it is, and ends it at once when asked. */
export function FindRun({ desk, form, finder, store }: FindRunProps) {
  const id = useId();
  const [fault, setFault] = useState('');
  const running = finder.state === 'running';
  const begin = () => {
    const input = findInput(desk.tried, form, desk.shownIn);
    setFault(input.ok ? '' : input.fault);
    if (input.ok) store.search(input.value);
  };
  const { progress } = finder;
  const percent = Math.floor((progress?.share ?? 0) * 100);
  return (
    <section className="stack" aria-label="The search" data-finder={finder.state}>
      {running ? (
        <>
          <label htmlFor={id} className="field-name">
            {PHASES[progress?.phase ?? 'combinations']}: {percent} %{progress ? `, ${progress.feasible} found` : ''}
          </label>
          <progress id={id} className="find-progress" max={100} value={percent} />
          <button type="button" className="button" onClick={store.cancel}>
            Cancel the search
          </button>
        </>
      ) : (
        <button type="button" className="button button-main" onClick={begin}>
          Find every combination
        </button>
      )}
      <span className="field-fault" role="alert">
        {fault || finder.refusal}
      </span>
      <p className="only-read" role="status">
        {finder.state === 'whole'
          ? 'The search is done.'
          : finder.state === 'cancelled'
            ? 'The search was cancelled.'
            : ''}
      </p>
    </section>
  );
}
