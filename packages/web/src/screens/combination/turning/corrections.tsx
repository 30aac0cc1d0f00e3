import type { CorrectionRow, DegreeingView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { VerdictMark, VerdictShape } from '../../../bench/index.js';

interface CorrectionsProps {
  readonly view: Pick<DegreeingView, 'corrections' | 'lobe'>;
  readonly tryIt: (advance: number) => void;
}
/** As many as stand side by side; the rest unfold. */
const FIRST = 6;

/** Every part at hand and every tooth side by side, nearest to the wanted centreline first. */
export function Corrections({ view, tryIt }: CorrectionsProps) {
  const [all, setAll] = useState(false);
  const { corrections } = view;
  if (corrections.length === 0) return null;
  const shown = all ? corrections : corrections.slice(0, FIRST);
  return (
    <section className="stack" aria-labelledby="corrections">
      <h2 id="corrections">What would bring {view.lobe.name} to its card</h2>
      <p className="field-hint">With the parts and teeth below; the nearest first.</p>
      <ul className="plain turning-ways">
        {shown.map((row) => (
          <li key={row.key} className="card turning-way" data-correction={row.key}>
            <Way row={row} />
            <button type="button" className="button" onClick={() => tryIt(row.advance)}>
              Try it<span className="only-read">: {row.name}</span>
            </button>
          </li>
        ))}
      </ul>
      {corrections.length > FIRST && (
        <button type="button" className="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? `Only the nearest ${FIRST}` : `${corrections.length - FIRST} more ways`}
        </button>
      )}
    </section>
  );
}

function Way({ row }: { readonly row: CorrectionRow }) {
  const { name, change, left, buy, verdict, chance, rooms } = row;
  return (
    <>
      <strong>{name}</strong>
      <span>
        {change}; leaves it {left}
        {chance ? `; chance that it is within the aim: ${chance}` : ''}
      </span>
      {buy && <span>{buy}</span>}
      <VerdictMark verdict={verdict} />
      {rooms.map(({ kind, words, kept }) => (
        <span key={kind} className="turning-room">
          {kept !== undefined && (
            <span className="small-shape">
              <VerdictShape state={kept ? 'in' : 'out'} />
            </span>
          )}
          <span>
            {kind} room {words}
            {kept === false ? ': too little' : ''}
          </span>
        </span>
      ))}
    </>
  );
}
