import { useId } from 'react';
import { letGo } from '../keys/index.js';

interface PickProps {
  readonly name: string;
  readonly choices: readonly string[];
  readonly chosen: string;
  readonly choose: (words: string) => void;
  /** Keys that pick them are named on the buttons: the first by 1, the second by 2. */
  readonly numbered?: boolean;
  /** Pressed again, the chosen one is taken back: `choose` gets no words. */
  readonly takenBack?: boolean;
}

/** Words that are offered as buttons, one tap each; nothing is shown where there are none. */
export function Pick({ name, choices, chosen, choose, numbered = false, takenBack = false }: PickProps) {
  const id = useId();
  if (choices.length === 0) return null;
  return (
    <fieldset className="plain pick" aria-labelledby={id}>
      <legend id={id} className="field-name">
        {name}
      </legend>
      <div className="pick-row">
        {choices.map((each, index) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === chosen}
            onClick={(event) => {
              choose(takenBack && each === chosen ? '' : each);
              letGo(event);
            }}
          >
            {numbered && <span className="act-key-name pick-key">{index + 1}</span>}
            {each}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
