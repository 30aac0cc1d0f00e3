import type { DecisionView } from '@gudgeon/core/workbench';
import { StrikeOut } from '../../bench/index.js';

interface DecidedProps {
  readonly view: DecisionView;
  readonly strike: (entry: string, reason: string) => boolean;
}

/** What was decided, by whom and why; what is computed otherwise since stands beside it and is never taken over by itself. */
export function Decided({ view, strike }: DecidedProps) {
  const { decided } = view;
  if (!decided) return null;
  return (
    <section className="card stack" aria-labelledby="decided" data-state={view.state}>
      <h2 id="decided">Decided: {decided.words}</h2>
      <p>Reason: {decided.reason}</p>
      {decided.differs.length > 0 && (
        <div className="fit-differs stack" role="note" aria-label="Differs from when it was decided">
          <h3>Differs from when it was decided</h3>
          <ul className="fit-working">
            {decided.differs.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p>The decision stands as it was taken. Decide again below, or leave it.</p>
        </div>
      )}
      <StrikeOut
        words={`Decided: ${decided.words}`}
        given={decided}
        strike={(reason) => strike(decided.entry, reason)}
      />
    </section>
  );
}
