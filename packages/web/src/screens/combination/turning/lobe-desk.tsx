import {
  angleKeyed,
  type CamWish,
  camSaid,
  type DegreeingView,
  judgeLift,
  proposeCamRead,
  shownWay,
} from '@gudgeon/core/workbench';
import { useState } from 'react';
import type { CombinationDesk } from '../use-combination.js';
import { type KeyedNumber, SeveralEntry } from './several-entry.js';

interface LobeDeskProps {
  readonly desk: CombinationDesk;
  readonly view: DegreeingView;
  readonly onWheel: (wheel: number | undefined) => void;
  readonly stopAgain: () => void;
}
const PLACES = [
  ['lifter', 'on the lifter'],
  ['valve', 'on the valve'],
] as const;

/** Wheel and indicator for one place of the lobe after the other, with what is known so far and where to read next. */
export function LobeDesk({ desk, view, onWheel, stopAgain }: LobeDeskProps) {
  const [at, setAt] = useState<CamWish['at']>('lifter');
  const [wheel, setWheel] = useState<KeyedNumber>();
  const { unit } = shownWay('length', desk.shownIn);
  const { lobe, next } = view;
  const wheelText = (keyed: KeyedNumber) => `${keyed.shown} deg`;
  return (
    <section className="stack" aria-label={`Reading ${lobe.name}`}>
      <p>
        <strong>{lobe.name}.</strong> <span data-lobe-words>{lobe.words}</span>
      </p>
      <SeveralEntry
        about={`${lobe.key} ${at} ${unit}`}
        asked={[
          { name: 'wheel', slot: `Wheel, ${lobe.name}`, unit: 'deg', ghost: 'any place, in any order', sign: true },
          {
            name: 'lift',
            slot: `Indicator ${at === 'lifter' ? 'on the lifter' : 'on the valve'}, ${lobe.name}`,
            unit,
            ghost: '0 on the base circle',
            sign: true,
            check: (shown) =>
              judgeLift(
                desk.bench,
                desk.tried,
                { lobe: lobe.id, at, wheel: wheel && angleKeyed(wheelText(wheel)), text: `${shown} ${unit}` },
                desk.shownIn,
              ),
          },
        ]}
        onKeyed={([keyed]) => {
          setWheel(keyed);
          // The wheel stands where it was read last until it is read again.
          if (keyed) onWheel(angleKeyed(wheelText(keyed)));
        }}
        record={([turned, lift]) => {
          if (!turned || !lift) return false;
          const wish = { lobe: lobe.id, wheel: wheelText(turned), lift: `${lift.shown} ${unit}`, at };
          const said = camSaid(desk.bench, wish);
          return desk.recorder.take(proposeCamRead(desk.bench, wish), said, `${turned.raw} ${lift.raw}`);
        }}
      />
      <fieldset className="plain row">
        <legend className="only-read">Where the indicator stands</legend>
        {PLACES.map(([each, words]) => (
          <button key={each} type="button" className="button" aria-pressed={at === each} onClick={() => setAt(each)}>
            Indicator {words}
          </button>
        ))}
        <button type="button" className="button" onClick={stopAgain}>
          Read the stop again
        </button>
      </fieldset>
      {next.length > 0 && (
        <div>
          <h3>These readings would help most</h3>
          <ol className="turning-next">
            {next.map((one) => (
              <li key={one.wheel}>
                <b>wheel {one.wheel}</b>, {one.words}
              </li>
            ))}
          </ol>
        </div>
      )}
      <p className="field-hint">{view.stop.words}</p>
    </section>
  );
}
