import type { AidView } from '@gudgeon/core/workbench';
import { type FormEvent, useState } from 'react';
import { Pick, TextField } from '../../bench/index.js';
import { noteChosen, offeredWords } from './kept.js';
import type { WorkDesk } from './use-work.js';

/** What must not stay inside. Common practice, no source. */
const AIDS = ['checking spring', 'clay', 'solid stand-in lifter', 'piston stop', 'rod sleeve', 'rag'] as const;

/** Aids of the trial: booked out with their number, and back; nothing is closed over one that is out. */
export function Aids({ desk, aids }: { readonly desk: WorkDesk; readonly aids: readonly AidView[] }) {
  return (
    <section className="stack" aria-labelledby="aids">
      <h2 id="aids">Aids of the trial</h2>
      {aids.length === 0 && <p>None is out.</p>}
      <ul className="plain stack">
        {aids.map(({ aid, count, where }) => (
          <li key={aid} className="recorded">
            <span>
              {count} × {aid}
              {where === '' ? '' : `, ${where}`}
            </span>
            <span className="row">
              {count > 1 && <BackButton desk={desk} aid={aid} count={1} words="One is back" />}
              <BackButton
                desk={desk}
                aid={aid}
                count={count}
                words={count === 1 ? 'It is back' : `All ${count} are back`}
              />
            </span>
          </li>
        ))}
      </ul>
      <details className="fold">
        <summary>Book an aid out</summary>
        <AidOut desk={desk} />
      </details>
    </section>
  );
}

interface BackProps {
  readonly desk: WorkDesk;
  readonly aid: string;
  readonly count: number;
  readonly words: string;
}
function BackButton({ desk, aid, count, words }: BackProps) {
  return (
    <button
      type="button"
      className="button"
      aria-label={`${words}: ${aid}`}
      onClick={() => desk.wish({ kind: 'aid-back', aid, count }, `Back: ${count} × ${aid}`)}
    >
      {words}
    </button>
  );
}

function AidOut({ desk }: { readonly desk: WorkDesk }) {
  const [aid, setAid] = useState('');
  const [count, setCount] = useState('1');
  const [where, setWhere] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const told = { kind: 'aid-out', aid, count: Number(count), where: where.trim() } as const;
    if (!desk.wish(told, `Out: ${count} × ${aid}`)) return;
    noteChosen('aid', aid);
    setAid('');
    setCount('1');
  };
  return (
    <form className="stack" onSubmit={submit} noValidate>
      <Pick name="Which" choices={offeredWords('aid', AIDS)} chosen={aid} choose={setAid} />
      <TextField name="Aid" value={aid} set={setAid} />
      <TextField name="How many" value={count} set={setCount} figure />
      <TextField
        name="Where it is put"
        value={where}
        set={setWhere}
        hint="Cylinder, valve, bore: where to look for it."
      />
      <button type="submit" className="button button-main">
        Book it out
      </button>
    </form>
  );
}
