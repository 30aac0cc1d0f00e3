import type { CheckedSheet } from '../../sheet-text/index.js';

interface FaultsProps {
  readonly checked: CheckedSheet;
  readonly goTo: (line: number) => void;
}

/** Everything wrong with the sheet, each with its line; touching one goes there. */
export function Faults({ checked, goTo }: FaultsProps) {
  const { faults, cautions } = checked;
  return (
    <section className="stack" aria-labelledby="found" data-faults={faults.length}>
      <h2 id="found" aria-live="polite">
        {faults.length === 0 ? 'The sheet can be read' : `${faults.length} to mend before this sheet can be used`}
      </h2>
      <ul className="plain fault-list">
        {faults.map((fault) => (
          <li key={`${fault.line} ${fault.column} ${fault.path} ${fault.code}`}>
            <Line line={fault.line} words={fault.message} look="fault-line" goTo={goTo} />
          </li>
        ))}
        {cautions.map((caution) => (
          <li key={`${caution.line} ${caution.path} ${caution.code}`}>
            <Line
              line={caution.line}
              words={`Look at this: ${caution.message}`}
              look="fault-line caution-line"
              goTo={goTo}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface LineProps {
  readonly line: number | undefined;
  readonly words: string;
  readonly look: string;
  readonly goTo: (line: number) => void;
}
function Line({ line, words, look, goTo }: LineProps) {
  if (line === undefined) return <p className={look}>{words}</p>;
  return (
    <button type="button" className={look} onClick={() => goTo(line)}>
      <strong>Line {line}</strong> {words}
    </button>
  );
}
