import type { HoleView } from '@gudgeon/core/workbench';

const stateWords: Record<HoleView['state'], string> = { empty: 'empty', right: '✓ in', wrong: '✗ wrong' };

/** Every hole with what it takes and what is in it; touching one goes there. The way in for joints without a drawing. */
export function HoleList({
  holes,
  look,
}: {
  readonly holes: readonly HoleView[];
  readonly look: (hole: string) => void;
}) {
  return (
    <details className="fold">
      <summary>All {holes.length} holes</summary>
      <ul className="plain stack">
        {holes.map((hole) => (
          <li key={hole.hole}>
            <button type="button" className="button row-button" onClick={() => look(hole.hole)}>
              <span>
                Hole {hole.hole}: {hole.length}
              </span>
              <span>{stateWords[hole.state]}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
