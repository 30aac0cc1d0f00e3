import type { PlaceView } from '@gudgeon/core/workbench';
import { useRef } from 'react';
import { VerdictShape, verdictState } from '../../bench/index.js';
import { useInSight, useWhenSeen } from '../../figures/index.js';

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
export function PlaceChoice(props: PlaceChoiceProps) {
  return props.places.length < 2 ? null : <Places {...props} />;
}

function Places({ title, kind, places, chosen, set }: PlaceChoiceProps) {
  const box = useRef<HTMLFieldSetElement>(null);
  const seen = useWhenSeen(places, useInSight(box));
  return (
    <fieldset ref={box} className="plain places">
      <legend className="field-name">{title}</legend>
      {seen.map(({ id, name, value, verdict }) => (
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
