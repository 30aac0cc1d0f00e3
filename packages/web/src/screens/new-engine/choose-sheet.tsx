import { type ChangeEvent, useId, useState } from 'react';
import { listSheets, readSheet, useAnswer } from '../../api/index.js';

/** A sheet is a page of text; anything larger is another kind of file [bytes]. */
const largestSheet = 1_000_000;

export function ChooseSheet({ choose }: { readonly choose: (text: string, from: string) => void }) {
  const answer = useAnswer(listSheets);
  const file = useId();
  const [fault, setFault] = useState('');
  const copy = async (id: string, name: string) => {
    const sheet = await readSheet(id);
    if (sheet.ok) choose(sheet.value.text, name);
    else setFault(sheet.fault.words);
  };
  const open = async (event: ChangeEvent<HTMLInputElement>) => {
    const chosen = event.target.files?.[0];
    if (!chosen) return;
    if (chosen.size > largestSheet) setFault(`${chosen.name} is larger than any sheet (${largestSheet / 1000} kB).`);
    else choose(await chosen.text(), chosen.name);
  };
  return (
    <div className="stack-wide">
      <section className="stack" aria-labelledby="start-from">
        <h2 id="start-from">Which sheet is nearest?</h2>
        <p>A copy is made. The sheet that you choose stays as it is.</p>
        <p className="field-fault" role="alert">
          {fault}
        </p>
        {!answer && <p role="status">Fetching the sheets…</p>}
        {answer && !answer.ok && <p>{answer.fault.words}</p>}
        <ul className="plain home-list">
          {answer?.ok &&
            answer.value.sheets.map((sheet) => (
              <li key={sheet.id} className="card stack">
                <h3>{sheet.name}</h3>
                <p>
                  {sheet.invented && <span className="tag-invented">invented</span>} {sheet.description}
                </p>
                <button
                  type="button"
                  className="button"
                  aria-label={`Copy this sheet: ${sheet.name}`}
                  onClick={() => void copy(sheet.id, sheet.name)}
                >
                  Copy this sheet
                </button>
              </li>
            ))}
        </ul>
      </section>
      <section className="field card" aria-labelledby="own-sheet">
        <h2 id="own-sheet">Or open a sheet of your own</h2>
        <label htmlFor={file}>A sheet file (YAML) from this device</label>
        <input
          id={file}
          className="input"
          type="file"
          accept=".yaml,.yml,text/yaml,text/plain"
          onChange={(event) => void open(event)}
        />
      </section>
    </div>
  );
}
