import type { ValvesView } from '@gudgeon/core/workbench';

/** What the plan rests on, always in sight: an assumption that nobody sees is a trap. */
export function Assumed({ view }: { readonly view: ValvesView }) {
  return (
    <section className="assumed" aria-labelledby="assumed">
      <h2 id="assumed" className="field-name">
        {view.assumed.length === 0 ? 'The plan rests on the sheet alone' : 'Assumed for the plan'}
      </h2>
      <ul className="field-hint">
        {view.assumed.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>The engine maker’s manual outranks this plan.</li>
      </ul>
    </section>
  );
}
