import type { Joint } from '@gudgeon/core/engine';
import { type Seen, skipName } from '@gudgeon/core/plan';
import type { ActView, Bench, TightenView } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { AnswerButtons, answerActions, BigTarget, Progress, Reasoned, say, sayAgain } from '../../bench/index.js';
import { useActions } from '../../keys/index.js';
import { type Recorder, Said } from '../../shell/index.js';
import { StretchStep } from './stretch-step.js';
import type { WrenchChoice } from './use-wrench.js';
import { ChooseWrench } from './wrench-choice.js';
import { WrenchSet } from './wrench-set.js';

interface ActStepProps {
  readonly view: TightenView;
  readonly act: ActView;
  readonly joint: Joint;
  readonly bench: Bench;
  readonly recorder: Recorder;
  /** Tells that a hand is at work here, so that a later pause can be noticed. */
  readonly begin: () => void;
  readonly wrench: WrenchChoice;
  /** Where gauges and wrenches are kept. */
  readonly gauges: string;
}

/** One fastener, one target, one answer. */
export function ActStep({ view, act, joint, bench, recorder, begin, wrench, gauges }: ActStepProps) {
  const spoken = [act.spoken, view.wrench?.set?.spoken].filter((words) => words !== undefined).join('. ');
  useEffect(() => say(spoken), [spoken]);
  const inHand = view.wrench?.kept.find((one) => one.chosen)?.id;
  const give = (answer: { readonly id: string; readonly label: string }) => {
    begin();
    const { stage, hole, instance, round, printed } = act;
    const data = { joint: joint.id, stage, hole, instance, round, target: printed, seen: answer.id as Seen };
    const said = `${hole === 'all' ? 'Joint' : `Hole ${hole}`}: ${answer.label}`;
    recorder.record({ kind: 'act-done', data }, said, undefined, undefined, inHand);
  };
  const actions = answerActions(act.answers, give);
  const run = useActions([
    ...(act.reading ? [] : actions),
    { name: 'again', label: 'Say it again', keys: ['r'], available: true, run: sayAgain },
  ]);
  return (
    <>
      <Progress {...view.progress} />
      <section className="step" aria-live="polite" data-hole={act.hole} data-stage={act.stage}>
        <BigTarget name={act.lead} text={`${act.number} ${act.unit}`.trim()} />
        {view.wrench && <WrenchSet wrench={view.wrench} />}
        {act.note && <p>{act.note}</p>}
      </section>
      {act.reading ? (
        <StretchStep act={act} joint={joint.id} bench={bench} recorder={recorder} begin={begin} />
      ) : (
        <AnswerButtons answers={act.answers} actions={actions} run={run} />
      )}
      <Said recorder={recorder} />
      {view.wrench && (
        <ChooseWrench
          wrench={view.wrench}
          choice={wrench}
          gauges={gauges}
          {...(joint.wrench !== undefined && { asked: joint.wrench })}
        />
      )}
      {view.hindrances.map((open) => (
        <p key={open.code} className="still-open">
          Still open: {open.words}
        </p>
      ))}
      {view.next && (
        <p className="next-step">
          Then: {view.next.lead} {view.next.number} {view.next.unit}
        </p>
      )}
      <p className="field-hint">
        {act.stageName}, as printed: {act.printed}. {act.dressing} From: {act.origin}. Order: {view.order}
      </p>
      <OtherActs act={act} joint={joint} recorder={recorder} />
    </>
  );
}

function OtherActs({
  act,
  joint,
  recorder,
}: {
  readonly act: ActView;
  readonly joint: Joint;
  readonly recorder: Recorder;
}) {
  const { stage, hole, instance } = act;
  const here = hole === 'all' ? 'this step' : `hole ${hole}`;
  return (
    <div className="apart stack">
      {hole !== 'all' && (
        <Reasoned
          name="I do not know whether this one was turned"
          about={`Stop. ${joint.whenInDoubt}`}
          button={`Record the doubt about ${here}`}
          usual={['interrupted while turning', 'lost count']}
          record={(why) =>
            recorder.record(
              { kind: 'fastener-doubted', data: { joint: joint.id, stage, hole, instance, why } },
              `Doubt about ${here} recorded`,
            )
          }
        />
      )}
      <Reasoned
        name="Skip this one"
        about="A skipped step stays on the open list and on the record."
        button={`Skip ${here}`}
        usual={['tool not at hand', 'not reachable yet']}
        record={(reason) =>
          recorder.record({ kind: 'skipped', data: { what: skipName(joint.id, act), reason } }, `Skipped ${here}`)
        }
      />
      <Reasoned
        name="The joint was opened again"
        about="Everything tightened so far in this joint starts anew."
        button="Record that the joint was opened"
        usual={['gasket replaced', 'wrong part inside']}
        record={(reason) =>
          recorder.record({ kind: 'joint-opened', data: { joint: joint.id, reason } }, 'Joint opened: it starts anew')
        }
      />
    </div>
  );
}
