import { type Tried, timingView } from '@gudgeon/core/workbench';
import { useCallback } from 'react';
import { FigureView, useShownWidth } from '../../../figures/index.js';
import type { OpenJob } from '../../../shell/index.js';
import { SubjectFrame } from '../subject-frame.js';
import { useCombination } from '../use-combination.js';
import { useMovingView } from '../use-settled.js';

/** Two turns of the crank with the time that each valve is open. */
export function Timing({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const shownWidth = useShownWidth();
  const make = useCallback(
    (figures: Tried) => timingView(bench, figures, shownIn, { shownWidth }),
    [bench, shownIn, shownWidth],
  );
  const view = useMovingView(tried, make);
  return (
    <SubjectFrame desk={desk} view={view} watched={view.answers.filter(({ key }) => key === 'overlap')}>
      <div className="turning-figure">
        <FigureView
          figure={view.figure}
          caption="IO, IC: intake opens and closes. EO, EC: exhaust. Degrees from the nearest dead centre. Band: from seat to seat; broken line: at the checking lift."
        />
      </div>
    </SubjectFrame>
  );
}
