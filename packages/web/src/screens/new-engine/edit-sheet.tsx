import { useId, useRef, useState } from 'react';
import { AdoptSheet } from './adopt-sheet.js';
import { Faults } from './faults.js';
import { useChecked, useSheetWords } from './use-sheet-words.js';
import { UsualForm } from './usual-form.js';

interface EditSheetProps {
  readonly start: string;
  readonly from: string;
  readonly mayAdopt: boolean;
  readonly chooseAgain: () => void;
}

/** Form and text show the same sheet: a change in one stands in the other at once. */
export function EditSheet({ start, from, mayAdopt, chooseAgain }: EditSheetProps) {
  const id = useId();
  const area = useRef<HTMLTextAreaElement>(null);
  const words = useSheetWords();
  const [text, setText] = useState(start);
  const { checked, stale } = useChecked(text, words);

  const goTo = (line: number) => {
    const field = area.current;
    if (!field) return;
    const lines = text.split('\n');
    const begin = lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0);
    field.focus();
    field.setSelectionRange(begin, begin + (lines[line - 1]?.length ?? 0));
    field.scrollTop = (field.scrollHeight / lines.length) * Math.max(0, line - 4);
  };

  return (
    <div className="new-engine">
      <div className="row">
        <p>
          Copied from <strong>{from}</strong>.
        </p>
        <button type="button" className="button" onClick={chooseAgain}>
          Choose another
        </button>
      </div>
      <div className="new-edit stack-wide">
        {words ? (
          <UsualForm text={text} words={words} change={setText} />
        ) : (
          <p role="status">Fetching the sheet reader…</p>
        )}
        <section className="stack" aria-labelledby={`${id}-whole`}>
          <h2 id={`${id}-whole`}>The whole sheet</h2>
          <div className="field">
            <label htmlFor={id}>Text of the sheet</label>
            <textarea
              id={id}
              ref={area}
              className="input text-sheet"
              spellCheck={false}
              autoCapitalize="none"
              value={text}
              rows={16}
              aria-describedby={`${id}-found`}
              aria-invalid={(checked?.faults.length ?? 0) > 0}
              onChange={(event) => setText(event.target.value)}
            />
          </div>
          <div id={`${id}-found`}>{checked && <Faults checked={checked} goTo={goTo} />}</div>
        </section>
      </div>
      <AdoptSheet text={text} {...(checked ? { checked } : {})} stale={stale} mayAdopt={mayAdopt} />
    </div>
  );
}
