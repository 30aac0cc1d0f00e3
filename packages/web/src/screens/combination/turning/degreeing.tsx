import { type CamWish, type DegreeingView, degreeingView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { BeforeYouBegin, CautionsAgain, useAwake } from '../../../bench/index.js';
import { FigureView, useShownWidth } from '../../../figures/index.js';
import { usePerson } from '../../../log/index.js';
import { PlotView } from '../../../plots/index.js';
import { AskPerson, type OpenJob } from '../../../shell/index.js';
import { SubjectFrame } from '../subject-frame.js';
import { type CombinationDesk, useCombination } from '../use-combination.js';
import { Corrections } from './corrections.js';
import { LobeDesk } from './lobe-desk.js';
import { LobeHelp } from './lobe-help.js';
import { PartsForm } from './parts-form.js';
import { ReadList } from './read-list.js';
import { StopDesk } from './stop-desk.js';
import { usePartsAtHand } from './use-parts-at-hand.js';

/** Width of the column in which the wheel stands on a laptop [CSS px]. */
const WHEEL_ROOM = 352;

/** A person turns the crank and keys wheel and indicator in any order; the lobe grows with every reading. */
export function Degreeing({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn, recorder } = desk;
  const shownWidth = Math.min(useShownWidth(), WHEEL_ROOM);
  const person = usePerson();
  const dark = useAwake();
  const [atHand, setAtHand] = usePartsAtHand();
  const [lobe, setLobe] = useState<string>();
  const [wheel, setWheel] = useState<number>();
  const view = useMemo(
    () =>
      degreeingView(bench, tried, shownIn, {
        atHand,
        shown: { shownWidth },
        ...(lobe !== undefined && { lobe }),
        ...(wheel !== undefined && { wheel }),
      }),
    [bench, tried, shownIn, atHand, shownWidth, lobe, wheel],
  );
  const [read, setRead] = useState(view.begun);
  const choose = (next: string) => {
    setWheel(undefined);
    setLobe(next);
  };
  // The lobe that grows stands with the field, the rest below.
  const below = read && view.stop.found && person !== '' ? { ...view, plots: view.plots.slice(1) } : view;
  return (
    <SubjectFrame
      desk={desk}
      view={below}
      watched={[]}
      after={
        <>
          <ReadList title={`Read of ${view.lobe.name}`} rows={view.readings} strike={recorder.strikeOut} />
          <ReadList title="Stop readings" rows={view.stop.pairs} strike={recorder.strikeOut} />
          <Corrections view={view} tryIt={(advance) => desk.store.put([['cam-advance', advance]])} />
          <PartsForm atHand={atHand} stock={view.stock} shownIn={shownIn} set={setAtHand} />
          <CautionsAgain cautions={view.before} />
          {dark && <p className="field-hint">{dark}</p>}
        </>
      }
    >
      {person === '' ? (
        <AskPerson />
      ) : read ? (
        <TurningBench desk={desk} view={view} onWheel={setWheel} choose={choose} />
      ) : (
        <BeforeYouBegin cautions={view.before} begin={() => setRead(true)} />
      )}
    </SubjectFrame>
  );
}

interface TurningBenchProps {
  readonly desk: CombinationDesk;
  readonly view: DegreeingView;
  readonly onWheel: (wheel: number | undefined) => void;
  readonly choose: (lobe: string) => void;
}
/** The stop first; then wheel and lift, one place of the lobe after the other, with the lobe that grows in sight. */
function TurningBench({ desk, view, onWheel, choose }: TurningBenchProps) {
  const [again, setAgain] = useState(false);
  const [at, setAt] = useState<CamWish['at']>('lifter');
  const stop = !view.stop.found || again;
  const [lobe] = view.plots;
  return (
    <>
      <div className="turning-bench">
        {stop ? (
          <StopDesk
            desk={desk}
            view={view}
            onWheel={onWheel}
            done={() => setAgain(false)}
            {...(again && { leave: () => setAgain(false) })}
          />
        ) : (
          <LobeDesk desk={desk} view={view} at={at} onWheel={onWheel} choose={choose} />
        )}
        <FigureView figure={view.figure} />
      </div>
      {!stop && lobe && <PlotView key={lobe.id} plot={lobe} />}
      {!stop && <LobeHelp view={view} at={at} setAt={setAt} stopAgain={() => setAgain(true)} />}
    </>
  );
}
