import { stackFigure } from '@gudgeon/core/drawing/combination';
import { type CompressionView, type CompressionWish, compressionView, type Tried } from '@gudgeon/core/workbench';
import { useCallback, useMemo, useRef, useState } from 'react';
import { FigureView, useInSight, useShownWidth, useWhenSeen } from '../../figures/index.js';
import type { OpenJob } from '../../shell/index.js';
import { Answers } from './answers.js';
import { PlaceChoice } from './place-choice.js';
import { RatioGoalForm } from './ratio-goal.js';
import { SubjectFrame } from './subject-frame.js';
import { useCombination } from './use-combination.js';
import { useMovingView } from './use-settled.js';

/** Compression built up part by part, cylinder by cylinder, and the way back from a wanted ratio. */
export function Compression({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const [cylinder, setCylinder] = useState('');
  const [alone, setAlone] = useState(false);
  const [goal, setGoal] = useState<CompressionWish['goal']>();
  const make = useCallback(
    (figures: Tried) =>
      compressionView(bench, figures, shownIn, { cylinder: Number(cylinder), alone, ...(goal && { goal }) }),
    [bench, shownIn, cylinder, alone, goal],
  );
  const view = useMovingView(tried, make);
  return (
    <SubjectFrame
      desk={desk}
      view={view}
      beforeInputs={view.cylinders.length > 1 && <ForWhich cylinder={view.cylinder} alone={alone} set={setAlone} />}
      after={
        <>
          <RatioGoalForm view={view} shownIn={shownIn} set={setGoal} />
          <Answers rows={view.intake} title="Intake faces of the vee" />
        </>
      }
    >
      <PlaceChoice
        title="Ratio of each cylinder"
        kind="cylinder"
        places={view.cylinders}
        chosen={`${view.cylinder}`}
        set={setCylinder}
      />
      <Stack view={view} />
    </SubjectFrame>
  );
}

function Stack({ view }: { readonly view: CompressionView }) {
  const shownWidth = useShownWidth();
  const box = useRef<HTMLDivElement>(null);
  const stack = useWhenSeen(view.stack, useInSight(box));
  const figure = useMemo(() => stackFigure(stack, { shownWidth }), [stack, shownWidth]);
  return (
    <div ref={box}>
      <FigureView figure={figure} />
    </div>
  );
}

interface ForWhichProps {
  readonly cylinder: number;
  readonly alone: boolean;
  readonly set: (alone: boolean) => void;
}
/** Whether a change holds for every cylinder or for the chosen one only. */
function ForWhich({ cylinder, alone, set }: ForWhichProps) {
  return (
    <fieldset className="plain row">
      <legend className="field-name">A change holds for</legend>
      <button type="button" className="button" aria-pressed={!alone} onClick={() => set(false)}>
        all cylinders
      </button>
      <button type="button" className="button" aria-pressed={alone} onClick={() => set(true)}>
        cylinder {cylinder} only
      </button>
    </fieldset>
  );
}
