import { type FormEvent, useState } from 'react';
import { TextField } from '../../bench/index.js';
import type { WorkDesk } from './use-work.js';

const LINES = [
  ['halfDone', 'Half done'],
  ['loose', 'Loose, only nipped up'],
  ['missing', 'Missing, to be fetched'],
  ['uncovered', 'Not oiled, not covered'],
  ['doubt', 'In doubt'],
] as const;
type Card = Readonly<Record<(typeof LINES)[number][0], string>>;
const EMPTY: Card = { halfDone: '', loose: '', missing: '', uncovered: '', doubt: '' };

/** The card for whoever comes back, which may be the same person weeks later. */
export function Leave({ desk }: { readonly desk: WorkDesk }) {
  const [card, setCard] = useState(EMPTY);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (desk.wish({ kind: 'leave', ...card }, 'The card is written. Hang a tag on the part as well')) setCard(EMPTY);
  };
  return (
    <details id="leave" className="card">
      <summary>Leave the bench</summary>
      <form className="stack" onSubmit={submit} noValidate>
        <p>What the next person has to know. It is read before anything else, also by you.</p>
        {LINES.map(([line, name]) => (
          <TextField
            key={line}
            name={name}
            value={card[line]}
            set={(words) => setCard((before) => ({ ...before, [line]: words }))}
          />
        ))}
        <button type="submit" className="button button-main">
          Leave this card
        </button>
      </form>
    </details>
  );
}
