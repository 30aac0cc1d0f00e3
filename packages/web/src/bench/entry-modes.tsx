import { letGo } from '../keys/index.js';
import type { EntryMode } from './use-entry-mode.js';

/** A gauge that sends no Enter is heard out for this long [ms]. */
export const SILENCE = 150;

const MODES: readonly (readonly [EntryMode, string])[] = [
  ['pad', 'Number keys'],
  ['keyboard', 'Keyboard'],
  ['gauge', 'Gauge types'],
];

interface EntryModesProps {
  readonly mode: EntryMode;
  readonly setMode: (mode: EntryMode) => void;
}

/** Chooses what types into the armed field. */
export function EntryModes({ mode, setMode }: EntryModesProps) {
  return (
    <fieldset className="plain figure-choice">
      <legend className="only-read">What types</legend>
      {MODES.map(([each, words]) => (
        <button
          key={each}
          type="button"
          className="button"
          aria-pressed={each === mode}
          onClick={(event) => {
            setMode(each);
            letGo(event);
          }}
        >
          {words}
        </button>
      ))}
    </fieldset>
  );
}
