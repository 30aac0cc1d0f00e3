import { type SharesShown, sharesFigure, type TurningShown, turningForce } from '@gudgeon/core/drawing/combination';
import { balanceView, type Tried } from '@gudgeon/core/workbench';
import { useCallback, useMemo, useState } from 'react';
import { FigureView, useShownWidth } from '../../figures/index.js';
import type { OpenJob } from '../../shell/index.js';
import { PlaceChoice } from './place-choice.js';
import { SubjectFrame } from './subject-frame.js';
import { useCombination } from './use-combination.js';
import { useMovingView, useSettled } from './use-settled.js';

/** Bobweights with each part's share, and what shakes over a turn of the crank. */
export function Balance({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const [pin, setPin] = useState('');
  const make = useCallback((figures: Tried) => balanceView(bench, figures, shownIn), [bench, shownIn]);
  const view = useMovingView(tried, make);
  // Drawings in the round are long: they follow when the hand rests.
  const turning = useSettled(view.turning);
  const shown = view.pins.find(({ place }) => place.id === pin) ?? view.pins[0];
  return (
    <SubjectFrame desk={desk} view={view} after={turning.map((one) => <Turning key={one.title} shown={one} />)}>
      {shown && (
        <>
          <PlaceChoice
            title="Bobweight of each crankpin"
            kind="crankpin"
            places={view.pins.map(({ place }) => place)}
            chosen={shown.place.id}
            set={setPin}
          />
          <Shares shown={shown.shares} />
        </>
      )}
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
