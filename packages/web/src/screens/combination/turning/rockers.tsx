import { proposeTrial, type RockersView, rockersView, shownWay, type Tried } from '@gudgeon/core/workbench';
import { useCallback, useState } from 'react';
import { ChoiceField } from '../../../bench/index.js';
import { FigureView, useShownWidth } from '../../../figures/index.js';
import { usePerson } from '../../../log/index.js';
import { AskPerson, type OpenJob } from '../../../shell/index.js';
import { SubjectFrame } from '../subject-frame.js';
import { type CombinationDesk, useCombination } from '../use-combination.js';
import { useMovingView } from '../use-settled.js';
import { ReadList } from './read-list.js';
import { SeveralEntry } from './several-entry.js';

/** Sweep of the rocker over the stem, the pushrod by trial lengths, preload. */
export function Rockers({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const shownWidth = useShownWidth();
  const [valve, setValve] = useState<string>();
  const make = useCallback(
    (figures: Tried) =>
      rockersView(bench, figures, shownIn, { shown: { shownWidth }, ...(valve !== undefined && { valve }) }),
    [bench, shownIn, shownWidth, valve],
  );
  const view = useMovingView(tried, make);
  return (
    <SubjectFrame
      desk={desk}
      view={view}
      after={<ReadList title="Pushrods tried" rows={view.trials} strike={desk.recorder.strikeOut} />}
    >
      <ChoiceField
        name="Valve"
        value={view.valve.key}
        choices={view.valves.map(({ id, name, value }) => [id, value === '' ? name : `${name}: ${value}`] as const)}
        set={setValve}
      />
      {view.pushrods && <Trials desk={desk} view={view} />}
    </SubjectFrame>
  );
}

interface TrialsProps {
  readonly desk: CombinationDesk;
  readonly view: RockersView;
}
/** Length, width and place of the mark, one after the other. */
function Trials({ desk, view }: TrialsProps) {
  const person = usePerson();
  const [trying, setTrying] = useState(false);
  const { unit } = shownWay('length', desk.shownIn);
  const { valve } = view;
  return (
    <section className="stack" aria-label="Pushrod by trial lengths">
      {view.trials.length > 0 && <FigureView figure={view.figure} />}
      {!trying && (
        <button type="button" className="button button-main" onClick={() => setTrying(true)}>
          {view.trials.length === 0 ? 'Find the pushrod length by trials' : 'Try another length'}
        </button>
      )}
      {trying && person === '' && <AskPerson />}
      {trying && person !== '' && (
        <>
          <p>
            Blacken the tip of the stem at {valve.name}, set a checking pushrod, turn the crank twice, take the rocker
            off and measure the mark.
          </p>
          <SeveralEntry
            about={`${valve.key} ${unit}`}
            asked={[
              {
                name: 'pushrod length',
                slot: `Pushrod length, ${valve.name}`,
                unit,
                ghost: 'over the ends',
                gauge: true,
              },
              { name: 'width', slot: `Width of the mark, ${valve.name}`, unit, ghost: 'along the rocker', gauge: true },
              {
                name: 'place',
                slot: `Middle of the mark from the middle of the stem, ${valve.name}`,
                unit,
                ghost: 'away from the pivot positive, toward it negative',
                sign: true,
              },
            ]}
            record={([length, width, offset]) => {
              if (!length || !width || !offset) return false;
              const wish = {
                valve: valve.id,
                length: `${length.shown} ${unit}`,
                width: `${width.shown} ${unit}`,
                offset: `${offset.shown} ${unit}`,
              };
              const said = `${valve.name}: pushrod ${wish.length}, mark ${wish.width}`;
              const taken = desk.recorder.take(
                proposeTrial(desk.bench, wish),
                said,
                `${length.raw} ${width.raw} ${offset.raw}`,
              );
              return taken;
            }}
          />
          <button type="button" className="button" onClick={() => setTrying(false)}>
            Enough trials for now
          </button>
        </>
      )}
    </section>
  );
}
