import { proposeRoom, type RoomWish, shownWay, type ValveRoomView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { ChoiceField } from '../../../bench/index.js';
import { usePerson } from '../../../log/index.js';
import { AskPerson } from '../../../shell/index.js';
import type { CombinationDesk } from '../use-combination.js';
import { ReadList } from './read-list.js';
import { SeveralEntry } from './several-entry.js';

interface MeasuredRoomProps {
  readonly desk: CombinationDesk;
  readonly view: Pick<ValveRoomView, 'measured' | 'valves'>;
}
const METHODS = [
  ['drop', 'press the valve down'],
  ['clay', 'clay on the crown'],
] as const;
const HOW: Readonly<Record<RoomWish['method'], string>> = {
  drop: 'With a light checking spring on the valve, turn to a place near the top of overlap. Zero the indicator on the retainer, press the valve down until it meets the piston, key wheel and travel. Every few degrees from 20 before to 20 after.',
  clay: 'Oil the valves, lay clay on the crown, turn the crank twice by hand with the gasket fitted. Cut the clay through and key its thinnest place.',
};

/** The room in the metal, one reading after the other, and those that stand. */
export function MeasuredRoom({ desk, view }: MeasuredRoomProps) {
  const [open, setOpen] = useState(false);
  return (
    <section className="stack" aria-label="Room measured in the metal">
      {!open && (
        <button type="button" className="button" onClick={() => setOpen(true)}>
          Measure the room in the metal
        </button>
      )}
      {open && <Measuring desk={desk} view={view} done={() => setOpen(false)} />}
      <ReadList title="Measured in the metal" rows={view.measured} strike={desk.recorder.strikeOut} />
    </section>
  );
}

function Measuring({ desk, view, done }: MeasuredRoomProps & { readonly done: () => void }) {
  const person = usePerson();
  const [key, setKey] = useState(view.valves[0]?.key ?? '');
  const [method, setMethod] = useState<RoomWish['method']>('drop');
  const valve = view.valves.find((one) => one.key === key);
  const { unit } = shownWay('length', desk.shownIn);
  if (person === '') return <AskPerson />;
  if (valve === undefined) return null;
  const room = { name: 'room', slot: `Room, ${valve.name}`, unit, ghost: 'until it meets the piston', gauge: true };
  const wheel = { name: 'wheel', slot: `Wheel, ${valve.name}`, unit: 'deg', ghost: 'as it reads', sign: true };
  return (
    <div className="stack">
      <ChoiceField
        name="Measured valve"
        value={valve.key}
        choices={view.valves.map((one) => [one.key, one.name] as const)}
        set={setKey}
      />
      <fieldset className="plain row">
        <legend className="field-name">How it is measured</legend>
        {METHODS.map(([id, name]) => (
          <button key={id} type="button" className="button" aria-pressed={method === id} onClick={() => setMethod(id)}>
            {name}
          </button>
        ))}
      </fieldset>
      <p>{HOW[method]}</p>
      <SeveralEntry
        about={`${key} ${method} ${unit}`}
        asked={method === 'clay' ? [{ ...room, ghost: 'thinnest place' }] : [wheel, room]}
        record={(keyed) => {
          const found = keyed.at(-1);
          const place = method === 'drop' ? keyed[0] : undefined;
          if (!found) return false;
          const wish: RoomWish = {
            valve: valve.id,
            method,
            room: `${found.shown} ${unit}`,
            ...(place && { wheel: `${place.shown} deg` }),
          };
          const raw = keyed.map((one) => one.raw).join(' ');
          return desk.recorder.take(proposeRoom(desk.bench, wish), `${valve.name}: room ${wish.room}`, raw);
        }}
      />
      <button type="button" className="button" onClick={done}>
        Enough for now
      </button>
    </div>
  );
}
