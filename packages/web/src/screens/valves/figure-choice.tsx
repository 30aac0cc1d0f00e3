import { letGo } from '../../keys/index.js';

interface FigureChoiceProps<N extends string> {
  readonly names: readonly (readonly [N, string])[];
  readonly chosen: N;
  readonly choose: (name: N) => void;
}

/** Which drawing stands above; a row of buttons, one pressed. */
export function FigureChoice<N extends string>({ names, chosen, choose }: FigureChoiceProps<N>) {
  return (
    <fieldset className="plain figure-choice">
      <legend className="only-read">Which drawing</legend>
      {names.map(([name, words]) => (
        <button
          key={name}
          type="button"
          className="button"
          aria-pressed={name === chosen}
          onClick={(event) => {
            choose(name);
            letGo(event);
          }}
        >
          {words}
        </button>
      ))}
    </fieldset>
  );
}
