import { figureKind, figureParts, placesOfFigure } from '@gudgeon/core/engine';
import { proposeFigure, type SubjectView, shownWay, titleOfFigure, typedFigure } from '@gudgeon/core/workbench';
import { type FormEvent, useId, useState } from 'react';
import { ChoiceField } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { AskPerson } from '../../shell/index.js';
import type { CombinationDesk } from './use-combination.js';

interface MissingFiguresProps {
  readonly desk: CombinationDesk;
  readonly view: Pick<SubjectView, 'missing'>;
}

/** What cannot be computed yet and for want of what; each figure can be tried, or stated for the engine with its source. */
export function MissingFigures({ desk, view }: MissingFiguresProps) {
  if (view.missing.length === 0) return null;
  return (
    <section className="stack combination-missing" aria-labelledby="missing">
      <h2 id="missing">
        {view.missing.length === 1 ? 'One figure is missing' : `${view.missing.length} figures are missing`}
      </h2>
      <p>The rest is computed without them. Unknown never counts as good.</p>
      <ul className="plain stack">
        {view.missing.map((one) => (
          <li key={one.key} data-missing={one.key}>
            <Missing desk={desk} missing={one} />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface MissingProps {
  readonly desk: CombinationDesk;
  readonly missing: SubjectView['missing'][number];
}
function Missing({ desk, missing }: MissingProps) {
  const [open, setOpen] = useState(false);
  return (
    <details className="fit-fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span>
          <strong>{titleOfFigure(missing.key)}</strong>
          <br />
          <small>for {missing.for}</small>
        </span>
      </summary>
      {open && <StateFigure desk={desk} figure={missing.key} />}
    </details>
  );
}

const EVERYWHERE = '';

interface StateFigureProps {
  readonly desk: CombinationDesk;
  /** Key of the figure; with a place where it is missing only there. */
  readonly figure: string;
}
/** A figure with the words where it comes from: recorded for the engine, or only tried. */
export function StateFigure({ desk, figure }: StateFigureProps) {
  const id = useId();
  const person = usePerson();
  const [text, setText] = useState('');
  const [why, setWhy] = useState('');
  const parts = figureParts(figure);
  const kind = figureKind(parts.key);
  const [place, setPlace] = useState(parts.place ?? EVERYWHERE);
  const [fault, setFault] = useState('');
  if (kind === undefined) return null;
  const key = place === EVERYWHERE ? parts.key : `${parts.key}@${place}`;
  const { unit } = shownWay(kind.quantity, desk.shownIn);
  const tryIt = () => {
    const typed = typedFigure(key, text, desk.shownIn);
    if (typed.ok) desk.store.put([[key, typed.value.value]]);
    else setFault(typed.fault);
  };
  const state = (event: FormEvent) => {
    event.preventDefault();
    const proposal = proposeFigure(desk.bench, { key, text, why }, desk.shownIn);
    if (!proposal.ok) setFault(proposal.fault);
    else if (desk.recorder.take(proposal, `Stated: ${titleOfFigure(key)} ${text}`, text)) setFault('');
  };
  const places = placesOfFigure(
    kind,
    desk.open.engine.layout.cylinders.map(({ number }) => number),
  );
  if (person === '') return <AskPerson />;
  return (
    <form className="stack fit-opened" onSubmit={state} noValidate>
      <p className="field-hint">{kind.meaning}</p>
      {places.length > 1 && (
        <ChoiceField
          name="It holds for"
          value={place}
          choices={[
            [EVERYWHERE, kind.per === 'cylinder' ? 'all cylinders' : 'intake and exhaust'],
            ...places.map((one) => [one, kind.per === 'cylinder' ? `cylinder ${one}` : one] as const),
          ]}
          set={setPlace}
        />
      )}
      {kind.choices ? (
        <ChoiceField
          name={kind.title}
          value={text}
          choices={[['', 'choose'], ...kind.choices.map((one) => [one, one.replaceAll('-', ' ')] as const)]}
          set={setText}
        />
      ) : (
        <div className="field">
          <label htmlFor={id}>
            {kind.title}
            {unit === '' ? '' : `, ${unit}`}
          </label>
          <input
            id={id}
            className="input"
            inputMode="decimal"
            autoComplete="off"
            maxLength={40}
            value={text}
            aria-invalid={fault !== ''}
            aria-describedby={`${id}-f`}
            onChange={(event) => setText(event.target.value)}
          />
        </div>
      )}
      <div className="field">
        <label htmlFor={`${id}-w`}>Where it comes from (for the record)</label>
        <input
          id={`${id}-w`}
          className="input"
          autoComplete="off"
          maxLength={120}
          value={why}
          onChange={(event) => setWhy(event.target.value)}
        />
      </div>
      <span className="field-fault" id={`${id}-f`} role="alert">
        {fault}
      </span>
      <div className="combination-apart">
        <button type="submit" className="button button-main">
          Record it for this engine
        </button>
        <button type="button" className="button" onClick={tryIt}>
          Only try it
        </button>
      </div>
    </form>
  );
}
