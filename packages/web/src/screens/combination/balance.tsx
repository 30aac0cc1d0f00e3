import { type SharesShown, sharesFigure, type TurningShown, turningForce } from '@gudgeon/core/drawing/combination';
import { balanceView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { FigureView, useShownWidth } from '../../figures/index.js';
import type { OpenJob } from '../../shell/index.js';
import { SubjectFrame } from './subject-frame.js';
import { useCombination } from './use-combination.js';

/** Bobweights with each part's share, and what shakes over a turn of the crank. */
export function Balance({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const view = useMemo(() => balanceView(bench, tried, shownIn), [bench, tried, shownIn]);
  return (
    <SubjectFrame desk={desk} view={view} after={view.turning.map((one) => <Turning key={one.title} shown={one} />)}>
      {view.pins.map((one) => (
        <Shares key={one.title} shown={one} />
      ))}
    </SubjectFrame>
  );
}

function Shares({ shown }: { readonly shown: SharesShown }) {
  const shownWidth = useShownWidth();
  return (
    <FigureView
      figure={useMemo(() => sharesFigure(shown, { shownWidth }), [shown, shownWidth])}
      caption={shown.title}
    />
  );
}

function Turning({ shown }: { readonly shown: TurningShown }) {
  const shownWidth = useShownWidth();
  return (
    <FigureView
      figure={useMemo(() => turningForce(shown, { shownWidth }), [shown, shownWidth])}
      caption={shown.title}
    />
  );
}
