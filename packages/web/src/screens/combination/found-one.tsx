import { chancesView, type FoundCombinationView, foundAsScratch } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { Answers } from './answers.js';
import type { FinderState, FinderStore } from './finder-store.js';
import type { CombinationDesk } from './use-combination.js';

interface FoundOneProps {
  readonly desk: CombinationDesk;
  readonly found: FoundCombinationView;
  readonly finder: FinderState;
  readonly store: FinderStore;
  readonly title: string;
}

/** One combination: its parts; opened, its figures against the limits with the chance that each holds. */
export function FoundOne({ desk, found, finder, store, title }: FoundOneProps) {
  const [open, setOpen] = useState(false);
  const { id, combination, parts, words } = found;
  const look = (opened: boolean) => {
    setOpen(opened);
    if (opened && !finder.chances.has(id)) store.askChances(id, combination.picked);
  };
  return (
    <article className="card stack found" data-combination={id}>
      <h3>
        {title}: {words}
      </h3>
      <dl className="fit-figures">
        {parts.map(({ name, text }) => (
          <div key={name} className="fit-figure">
            <dt className="fit-figure-name">{name}</dt>
            <dd className="fit-figure-text">{text}</dd>
          </div>
        ))}
      </dl>
      <details className="fit-fold" onToggle={(event) => look(event.currentTarget.open)}>
        <summary>
          <strong>Its figures, and the chance that each limit holds</strong>
        </summary>
        {open && <Figures found={found} finder={finder} />}
      </details>
      <Take desk={desk} found={found} />
    </article>
  );
}

function Figures({ found, finder }: Pick<FoundOneProps, 'found' | 'finder'>) {
  const chances = finder.chances.get(found.id);
  const view = useMemo(() => chances && chancesView(found.figures, chances), [chances, found]);
  return (
    <div className="stack fit-opened">
      <p role="status">
        {view ? `Chance that all hold together: ${view.together}.` : 'Working out the chances…'}
        {view && view.unstated.length > 0
          ? ` Not counted, because no doubt is stated: ${view.unstated.join(', ')}.`
          : ''}
      </p>
      <Answers rows={view?.figures ?? found.figures} title="Figures of this combination" />
    </div>
  );
}

/** Puts the combination on the scratch copy, where every other screen shows what follows; deciding comes after that. */
function Take({ desk, found }: Pick<FoundOneProps, 'desk' | 'found'>) {
  const figures = foundAsScratch(desk.tried, found.combination);
  if (figures.length === 0) return <p>This is what counts now.</p>;
  return (
    <button type="button" className="button" onClick={() => desk.store.put(figures)}>
      Take this to the scratch copy<span className="only-read">: {found.words}</span>
    </button>
  );
}
