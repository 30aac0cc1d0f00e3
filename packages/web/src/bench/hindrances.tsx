import type { Hindrance } from '@gudgeon/core/workbench';

/** Why this cannot be done now and what to do about it. */
export function Hindrances({ hindrances }: { readonly hindrances: readonly Hindrance[] }) {
  if (hindrances.length === 0) return null;
  return (
    <section className="hindrances" aria-labelledby="hindered">
      <h2 id="hindered">Not yet</h2>
      <ul className="stack">
        {hindrances.map((hindrance) => (
          <li key={hindrance.code + hindrance.words}>{hindrance.words}</li>
        ))}
      </ul>
    </section>
  );
}
