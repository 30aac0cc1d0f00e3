import type { MarkAnswer } from '@gudgeon/core/plan';
import { type Answer, type Bench, proposeReturn, type ResumeView } from '@gudgeon/core/workbench';
import { type AwayReason, YouWereHere } from '../../bench/index.js';
import type { Recorder } from '../../shell/index.js';

interface ComeBackProps {
  readonly joint: string;
  readonly bench: Bench;
  readonly reason: AwayReason;
  readonly resume: ResumeView;
  readonly recorder: Recorder;
  readonly back: () => void;
}

/** Records what was touched again on return, and only then lets the walk go on. */
export function ComeBack({ joint, bench, reason, resume, recorder, back }: ComeBackProps) {
  const carryOn = (verified: readonly string[], answer: Answer | undefined) => {
    const mark = answer ? { mark: answer.id as MarkAnswer } : {};
    if (recorder.take(proposeReturn(bench, joint, { arrival: reason, verified, ...mark }), 'Carrying on')) back();
  };
  return <YouWereHere reason={reason} resume={resume} carryOn={carryOn} />;
}
