import { type DegreeingView, degreeingView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { BeforeYouBegin, CautionsAgain, useAwake } from '../../../bench/index.js';
import { FigureView, useShownWidth } from '../../../figures/index.js';
import { usePerson } from '../../../log/index.js';
import { AskPerson, type OpenJob } from '../../../shell/index.js';
import { PlaceChoice } from '../place-choice.js';
import { SubjectFrame } from '../subject-frame.js';
import { useCombination } from '../use-combination.js';
import { Corrections } from './corrections.js';
import { LobeDesk } from './lobe-desk.js';
import { PartsForm } from './parts-form.js';
import { ReadList } from './read-list.js';
import { StopDesk } from './stop-desk.js';
import { usePartsAtHand } from './use-parts-at-hand.js';

/** A person turns the crank and keys wheel and indicator in any order; the lobe grows with every reading. */
export function Degreeing({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn, recorder } = desk;
  const shownWidth = useShownWidth();
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
  return (
    <SubjectFrame
      desk={desk}
      view={view}
      watched={[]}
      after={
        <>
          <ReadList title={`Read of ${view.lobe.name}`} rows={view.readings} strike={recorder.strikeOut} />
          <ReadList title="Stop readings" rows={view.stop.pairs} strike={recorder.strikeOut} />
          <Corrections view={view} tryIt={(advance) => desk.store.put([['cam-advance', advance]])} />
          <PartsForm atHand={atHand} shownIn={shownIn} set={setAtHand} />
          <CautionsAgain cautions={view.before} />
          {dark && <p className="field-hint">{dark}</p>}
        </>
      }
    >
      {person === '' ? (
        <AskPerson />
      ) : read ? (
        <>
          <div className="turning-bench">
            <Desk desk={desk} view={view} onWheel={setWheel} />
            <FigureView figure={view.figure} />
          </div>
          <PlaceChoice
            title="Lobe that is read"
            kind="lobe of"
            places={view.lobes}
            chosen={view.lobe.key}
            set={(next) => {
              setWheel(undefined);
              setLobe(next);
            }}
          />
        </>
      ) : (
        <BeforeYouBegin cautions={view.before} begin={() => setRead(true)} />
      )}
    </SubjectFrame>
  );
}

interface DeskProps {
  readonly desk: ReturnType<typeof useCombination>;
  readonly view: DegreeingView;
  readonly onWheel: (wheel: number | undefined) => void;
}
/** The stop first; then wheel and lift, one place of the lobe after the other. */
function Desk({ desk, view, onWheel }: DeskProps) {
  const [again, setAgain] = useState(false);
  if (!view.stop.found || again)
    return (
      <StopDesk
        desk={desk}
        view={view}
        onWheel={onWheel}
        done={() => setAgain(false)}
        {...(again && { leave: () => setAgain(false) })}
      />
    );
  return <LobeDesk desk={desk} view={view} onWheel={onWheel} stopAgain={() => setAgain(true)} />;
}
