import {
  type AnswerRow,
  type ValveRoomMoving,
  type ValveRoomView,
  type ValveRoomWish,
  valveRoomMoving,
  valveRoomView,
} from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { PlotView } from '../../../plots/index.js';
import type { OpenJob } from '../../../shell/index.js';
import { Inputs } from '../inputs.js';
import { SubjectFrame } from '../subject-frame.js';
import { useCombination } from '../use-combination.js';
import { useSettled } from '../use-settled.js';
import { CamChoices } from './cam-choices.js';
import { LiftFromChoice } from './lift-from.js';
import { MeasuredRoom } from './measured-room.js';
import { Sensitivities } from './sensitivities.js';

/** Degrees between the points that are drawn while a slider moves. */
const COARSE = 2;

/** Do the valves keep clear of the pistons, and how far may the cam be moved? */
export function ValveRoom({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const [wish, setWish] = useState<ValveRoomWish>({});
  // Doubts, window and sensitivities take longer than a frame: they wait until the slider rests.
  const now = useMemo(() => ({ bench, tried, wish }), [bench, tried, wish]);
  const rested = useSettled(now);
  const resting = rested === now;
  const whole = useMemo(() => valveRoomView(rested.bench, rested.tried, shownIn, rested.wish), [rested, shownIn]);
  const moving = useMemo(
    () => valveRoomMoving(bench, tried, shownIn, wish, resting ? 1 : COARSE),
    [bench, tried, shownIn, wish, resting],
  );
  const watched = resting ? leastAnswers(whole) : leastNow(moving);
  return (
    <div data-working={resting ? undefined : true}>
      <SubjectFrame
        desk={desk}
        view={{ ...whole, inputs: moving.inputs }}
        watched={watched}
        after={<Sensitivities rows={whole.sensitivities} />}
      >
        <Inputs desk={desk} inputs={[moving.cam]} title="Move the cam" watched={watched} />
        <p className="combination-question" role="status">
          {resting ? whole.window : 'Worked out again when the slider rests.'}
        </p>
        {moving.plots.map((plot) => (
          <PlotView key={plot.id} plot={plot} />
        ))}
        <LiftFromChoice from={whole.from} canRead={whole.canRead} set={(from) => setWish({ ...wish, from })} />
        <MeasuredRoom desk={desk} view={whole} />
        <CamChoices view={whole} wish={wish} set={setWish} />
      </SubjectFrame>
    </div>
  );
}

const leastAnswers = ({ answers }: ValveRoomView): readonly AnswerRow[] =>
  answers.filter(({ key }) => key.startsWith('valve-room@'));

/** While the cam moves the doubt is not known: the word OUT stands where the limit is not kept, and none where it is. */
const leastNow = ({ least }: ValveRoomMoving): readonly AnswerRow[] =>
  least.map(({ kind, words, kept }) => ({
    key: `valve-room@${kind}`,
    name: `least room, ${kind}`,
    value: words,
    doubt: '',
    limit: '',
    origin: '',
    ...(kept === false && { verdict: 'out' as const }),
  }));
