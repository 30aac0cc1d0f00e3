import type { SubjectView } from '@gudgeon/core/workbench';

/** What was decided about the combination, by whom and why, and what is computed otherwise since. */
export function StandingDecision({ view }: { readonly view: Pick<SubjectView, 'decided'> }) {
  const { decided } = view;
  if (!decided) return null;
  return (
    <section className="card stack" aria-label="Decided" data-decided>
      <p>
        <strong>Decided: {decided.words}</strong>
        <br />
        {decided.by}, {decided.at}: {decided.reason}
      </p>
      {decided.differs.length > 0 && (
        <ul className="plain fit-list">
          {decided.differs.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
