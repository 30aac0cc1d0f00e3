import { useId } from 'react';
import { letGo } from '../../keys/index.js';

interface PickWordsProps {
  readonly name: string;
  readonly usual: readonly string[];
  readonly chosen: string;
  readonly choose: (words: string) => void;
}

/** The usual words as buttons, pressed again to take them back; nothing is shown where there are none. */
export function PickWords({ name, usual, chosen, choose }: PickWordsProps) {
  const id = useId();
  if (usual.length === 0) return null;
  return (
    <fieldset className="plain pick-words" aria-labelledby={id}>
      <legend id={id} className="field-name">
        {name}
      </legend>
      <div className="row">
        {usual.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === chosen}
            onClick={(event) => {
              choose(each === chosen ? '' : each);
              letGo(event);
            }}
          >
            {each}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
