import type { PartKind } from '@gudgeon/core/plan';
import type { PartsView } from '@gudgeon/core/workbench';
import { letGo } from '../../keys/index.js';
import type { PartsMode } from './standing.js';

interface KindAndModeProps {
  readonly view: PartsView;
  readonly part: PartKind;
  readonly mode: PartsMode;
  readonly choosePart: (part: PartKind) => void;
  readonly chooseMode: (mode: PartsMode) => void;
}
const modes: readonly (readonly [PartsMode, string])[] = [
  ['tag', 'Tag as found'],
  ['fit', 'Fit'],
];

/** Which kind of part, and whether it comes out or goes in. */
export function KindAndMode({ view, part, mode, choosePart, chooseMode }: KindAndModeProps) {
  return (
    <div className="parts-choices">
      {view.parts.length > 1 && (
        <fieldset className="plain row">
          <legend className="only-read">Which parts</legend>
          {view.parts.map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === part}
              onClick={(event) => {
                choosePart(each);
                letGo(event);
              }}
            >
              {each}s
            </button>
          ))}
        </fieldset>
      )}
      <fieldset className="plain row">
        <legend className="only-read">What you do with them</legend>
        {modes.map(([each, words]) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === mode}
            onClick={(event) => {
              chooseMode(each);
              letGo(event);
            }}
          >
            {words}
          </button>
        ))}
      </fieldset>
    </div>
  );
}
