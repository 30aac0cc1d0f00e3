import { type FoundView, foundView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import type { FinderState, FinderStore } from './finder-store.js';
import { FoundOne } from './found-one.js';
import type { CombinationDesk } from './use-combination.js';

interface FoundProps {
  readonly desk: CombinationDesk;
  readonly finder: FinderState;
  readonly store: FinderStore;
}
type Ranking = FoundView['rankings'][number]['name'];

/** What was found, ranked three ways; and where nothing fits, what blocks and what would help. */
export function Found({ desk, finder, store }: FoundProps) {
  const { answer, state } = finder;
  const [ranking, setRanking] = useState<Ranking>('least-metal');
  const view = useMemo(
    () => answer && foundView(answer, desk.shownIn, state !== 'cancelled'),
    [answer, desk.shownIn, state],
  );
  if (!view || state === 'running') return null;
  const shown = view.rankings.find(({ name }) => name === ranking)?.combinations ?? [];
  return (
    <section className="stack" aria-labelledby="found" data-found>
      <h2 id="found">{state === 'cancelled' ? 'Found before it was cancelled' : 'What was found'}</h2>
      <ul className="plain fit-list">
        {view.words.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {shown.length > 0 && (
        <fieldset className="plain row">
          <legend className="only-read">In which order</legend>
          {view.rankings.map(({ name, title }) => (
            <button
              key={name}
              type="button"
              className="button"
              aria-pressed={ranking === name}
              onClick={() => setRanking(name)}
            >
              {title}
            </button>
          ))}
        </fieldset>
      )}
      <ol className="plain stack">
        {shown.map((one, at) => (
          <li key={`${ranking} ${one.id}`}>
            <FoundOne desk={desk} found={one} finder={finder} store={store} title={`${at + 1}`} />
          </li>
        ))}
      </ol>
      {view.nearest && (
        <FoundOne desk={desk} found={view.nearest} finder={finder} store={store} title="Nearest, with that loosening" />
      )}
    </section>
  );
}
