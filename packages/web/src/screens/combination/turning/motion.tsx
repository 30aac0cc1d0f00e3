import { highestSpeed, type MotionWish, motionMoving, motionView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import type { OpenJob } from '../../../shell/index.js';
import { SubjectFrame } from '../subject-frame.js';
import { useCombination } from '../use-combination.js';
import { useSettled } from '../use-settled.js';
import { LiftFromChoice } from './lift-from.js';
import { SpeedSlider } from './speed-slider.js';

/** Lift, speed and acceleration of the valves at a chosen crank speed. */
export function Motion({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const [wish, setWish] = useState<MotionWish>({});
  const moving = useMemo(() => motionMoving(bench, tried, shownIn, wish), [bench, tried, shownIn, wish]);
  const now = useMemo(() => ({ bench, tried, wish }), [bench, tried, wish]);
  const rested = useSettled(now);
  const whole = useMemo(() => motionView(rested.bench, rested.tried, shownIn, rested.wish), [rested, shownIn]);
  const highest = highestSpeed(tried);
  const speed = wish.speed ?? highest;
  return (
    <div data-working={rested === now ? undefined : true}>
      <SubjectFrame desk={desk} view={rested === now ? whole : { ...whole, ...moving }} watched={[]}>
        <LiftFromChoice from={whole.from} canRead={whole.canRead} set={(from) => setWish({ ...wish, from })} />
        <SpeedSlider
          {...(speed !== undefined && { speed })}
          {...(highest !== undefined && { highest })}
          set={(next) => setWish({ ...wish, speed: next })}
        />
      </SubjectFrame>
    </div>
  );
}
