import { type SharesShown, sharesFigure, type TurningShown, turningForce } from '@gudgeon/core/drawing/combination';
import { balanceView, type Tried } from '@gudgeon/core/workbench';
import { useCallback, useMemo, useRef, useState } from 'react';
import { FigureView, useInSight, useShownWidth, useWhenSeen } from '../../figures/index.js';
import type { OpenJob } from '../../shell/index.js';
import { PlaceChoice } from './place-choice.js';
import { SubjectFrame } from './subject-frame.js';
import { useCombination } from './use-combination.js';
import { useLastKnown, useMovingView } from './use-settled.js';

/** Bobweights with each part's share, and what shakes over a turn of the crank. */
export function Balance({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const [pin, setPin] = useState('');
  const make = useCallback(
    (figures: Tried, moving: boolean) => balanceView(bench, figures, shownIn, moving),
    [bench, shownIn],
  );
  const view = useMovingView(tried, make);
  // Drawings in the round are long: they follow when the hand rests.
  const turning = useLastKnown(view.turning) ?? [];
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
  const box = useRef<HTMLDivElement>(null);
  const seen = useWhenSeen(shown, useInSight(box));
  const figure = useMemo(() => sharesFigure(seen, { shownWidth }), [seen, shownWidth]);
  return (
    <div ref={box}>
      <FigureView figure={figure} caption={seen.title} />
    </div>
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
