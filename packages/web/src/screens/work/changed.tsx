import { type ReopenedPreview, reopenedPreview, reopeningViews } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { ChoiceField, ReasonForm } from '../../bench/index.js';
import { actName } from './act-words.js';
import type { WorkDesk } from './use-work.js';

/** A finding opens finished work again: which, is shown before anything is recorded. */
export function Changed({ desk }: { readonly desk: WorkDesk }) {
  const [open, setOpen] = useState(false);
  return (
    <details id="changed" className="card" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Something changed</summary>
      {open && <ChangeForm desk={desk} />}
    </details>
  );
}

function ChangeForm({ desk }: { readonly desk: WorkDesk }) {
  const { bench } = desk;
  const views = useMemo(() => reopeningViews(bench), [bench]);
  const [rule, setRule] = useState('');
  const [place, setPlace] = useState('');
  const view = views.find((one) => one.rule === rule);
  const placed = view !== undefined && (view.places.length === 0 || place !== '');
  const preview = useMemo(
    () => (placed ? reopenedPreview(bench, rule, place === '' ? undefined : place) : undefined),
    [bench, placed, rule, place],
  );
  const record = (why: string) => {
    const told = { kind: 'reopen', rule, why, ...(place !== '' && { place }) } as const;
    if (desk.wish(told, `${view?.title ?? rule}: open again`)) setRule('');
  };
  return (
    <div className="stack">
      <ChoiceField
        name="What was found, or done"
        value={rule}
        choices={[['', 'Choose…'], ...views.map((one) => [one.rule, one.title] as const)]}
        set={(next) => {
          setRule(next);
          setPlace('');
        }}
      />
      {view && <p>Because {view.because}.</p>}
      {view && view.places.length > 0 && (
        <ChoiceField
          name="Where"
          value={place}
          choices={[['', 'Choose…'], ...view.places.map(({ id, name }) => [id, name] as const)]}
          set={setPlace}
        />
      )}
      {preview && <Preview preview={preview} />}
      {preview && <ReasonForm button="Record that it changed" usual={[]} record={record} />}
    </div>
  );
}

const MOST = 12;
/** What would be open again. */
export function Preview({ preview }: { readonly preview: ReopenedPreview }) {
  const more = preview.acts.length - MOST;
  return (
    <div className="reopened" role="status" data-reopens={preview.acts.length}>
      <strong>{preview.words}</strong>
      {preview.acts.length > 0 && (
        <ul>
          {preview.acts.slice(0, MOST).map((act) => (
            <li key={act.id}>{actName(act)}</li>
          ))}
          {more > 0 && <li>and {more} more</li>}
        </ul>
      )}
    </div>
  );
}
