import type { StartView } from '@gudgeon/core/workbench';

/** What stops it at once, whatever else is going on. */
export function StopRules({ view }: { readonly view: StartView }) {
  return (
    <details className="fold">
      <summary>What stops it at once ({view.stop.rules.length})</summary>
      <ul className="stack cited">
        {view.stop.rules.map(({ words, origin }) => (
          <li key={words}>
            {words} <span className="soft">{origin}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
