import type { PlaceView } from '@gudgeon/core/workbench';
import { VerdictShape } from '../../bench/index.js';
import { verdictState } from '../measure/verdict-mark.js';

interface PlaceChoiceProps {
  /** "Ratio of each cylinder". */
  readonly title: string;
  /** "cylinder": said before the short name, which stands alone on the button. */
  readonly kind: string;
  readonly places: readonly PlaceView[];
  readonly chosen: string;
  readonly set: (id: string) => void;
}

/** The number of every place, side by side; pressing one shows how it comes about. */
export function PlaceChoice({ title, kind, places, chosen, set }: PlaceChoiceProps) {
  if (places.length < 2) return null;
  return (
    <fieldset className="plain places">
      <legend className="field-name">{title}</legend>
      {places.map(({ id, name, value, verdict }) => (
        <button
          key={id}
          type="button"
          className="button place-button"
          aria-pressed={id === chosen}
          onClick={() => set(id)}
          data-place={id}
        >
          <small>
            <span className="only-read">{kind} </span>
            {name}
          </small>
          <span>{value === '' ? 'no data' : value}</span>
          {verdict && (
            <span className="small-shape" data-verdict={verdictState(verdict)}>
              <VerdictShape state={verdictState(verdict)} />
              <span className="only-read">{verdict}</span>
            </span>
          )}
        </button>
      ))}
    </fieldset>
  );
}
