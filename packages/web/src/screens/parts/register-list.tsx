import type { PartKind } from '@gudgeon/core/plan';
import type { PartPlaceView, PartsView } from '@gudgeon/core/workbench';
import { keyOf, placesOf } from './standing.js';

const stateOf = (place: PartPlaceView): string => {
  if (place.state === 'hindered') return '✗ a part from another place';
  return place.fitted ? `✓ ${place.fitted.words}` : 'open';
};

interface RegisterListProps {
  readonly view: PartsView;
  readonly part: PartKind;
  readonly look: (key: string) => void;
}

/** The position register of one kind: what was tagged at each place and what is in it now. Touching a row goes there. */
export function RegisterList({ view, part, look }: RegisterListProps) {
  const places = placesOf(view, part);
  return (
    <details className="fold">
      <summary>
        Register of all {places.length} {part}s
      </summary>
      <ul className="stack notes">
        {view.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <ul className="plain stack">
        {places.map((place) => (
          <li key={keyOf(place)}>
            <button type="button" className="button row-button" onClick={() => look(keyOf(place))}>
              <span>
                {place.place}
                <br />
                <span className="soft">{place.tag ?? 'not tagged'}</span>
              </span>
              <span>{stateOf(place)}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
