import type { RunInView } from '@gudgeon/core/workbench';

/** When it was stopped, why, and what that means for going on. */
export function Stops({ view }: { readonly view: RunInView }) {
  return (
    <ul className="plain stack" aria-label="Times that it was stopped">
      {view.stops.map(({ given, words, meaning }) => (
        <li key={given.entry} className="still-open" data-stopped>
          <p>
            {words}{' '}
            <span className="soft">
              ({given.by}, {given.at})
            </span>
          </p>
          <p>{meaning}</p>
        </li>
      ))}
    </ul>
  );
}
