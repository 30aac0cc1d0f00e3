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
import { ChoiceField } from '../../../bench/index.js';
import type { CombinationDesk } from '../use-combination.js';
import { type KeyedNumber, SeveralEntry } from './several-entry.js';

interface LobeDeskProps {
  readonly desk: CombinationDesk;
  readonly view: DegreeingView;
  readonly onWheel: (wheel: number | undefined) => void;
  readonly at: CamWish['at'];
  readonly choose: (lobe: string) => void;
}
/** "cylinder 1 intake: 13 read, out". */
const lobeChoice = ({ name, value, verdict }: DegreeingView['lobes'][number]): string =>
  value === '' ? name : `${name}: ${value}${verdict === undefined ? '' : `, ${verdict}`}`;

/** Wheel and indicator for one place of the lobe after the other, with what is known so far and where to read next. */
export function LobeDesk({ desk, view, at, onWheel, choose }: LobeDeskProps) {
  const [wheel, setWheel] = useState<KeyedNumber>();
  const { unit } = shownWay('length', desk.shownIn);
  const { lobe, next } = view;
  const wheelText = (keyed: KeyedNumber) => `${keyed.shown} deg`;
  return (
    <section className="stack" aria-label={`Reading ${lobe.name}`}>
      <ChoiceField
        name="Lobe that is read"
        value={lobe.key}
        choices={view.lobes.map((one) => [one.id, lobeChoice(one)] as const)}
        set={choose}
      />
      <p>
        <span data-lobe-words>{lobe.words}</span>{' '}
        {next.length > 0 && <strong>Best next: wheel {next.map((one) => one.wheel).join(', ')}.</strong>}
      </p>
      <LooksWrong rows={view.readings} />
      <SeveralEntry
        about={`${lobe.key} ${at} ${unit}`}
        asked={[
          { name: 'wheel', slot: `Wheel, ${lobe.name}`, unit: 'deg', ghost: 'any place, in any order', sign: true },
          {
            name: 'lift',
            slot: `Indicator ${at === 'lifter' ? 'on the lifter' : 'on the valve'}, ${lobe.name}`,
            unit,
            ghost: '0 on the base circle',
            gauge: true,
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
      >
        {desk.recorder.said !== '' && <p className="several-said">{desk.recorder.said}</p>}
      </SeveralEntry>
    </section>
  );
}

/** Named where it is seen; struck out in the list of readings. */
function LooksWrong({ rows }: { readonly rows: DegreeingView['readings'] }) {
  const wrong = rows.filter((row) => row.wrong !== undefined);
  if (wrong.length === 0) return null;
  return (
    <p className="turning-wrong" role="status">
      <strong>{wrong.length === 1 ? 'One reading looks wrong:' : `${wrong.length} readings look wrong:`}</strong>{' '}
      {wrong.map(({ words }) => words).join('; ')}. Read it again, or strike it out below.
    </p>
  );
}
