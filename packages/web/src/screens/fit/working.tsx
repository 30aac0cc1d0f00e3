import { useSourceLines } from './use-source-lines.js';

interface WorkingProps {
  readonly working: readonly string[];
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
}

/** How a figure came about: each reading, the formula with its numbers, the sources with how far they can be trusted. */
export function Working({ working, sources, cautions }: WorkingProps) {
  const lines = useSourceLines(sources);
  return (
    <>
      {working.length > 0 && (
        <section className="stack" aria-label="Working">
          <strong>Working</strong>
          <ol className="fit-working">
            {working.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        </section>
      )}
      {cautions.length > 0 && (
        <section className="stack" aria-label="To bear in mind">
          <strong>To bear in mind</strong>
          <ul className="fit-working">
            {cautions.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      {lines.length > 0 && (
        <section className="stack" aria-label="Sources">
          <strong>Sources</strong>
          <ul className="fit-working">
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
