/**
 * Coming back to a joint that was under way: touch the last acts, go round a torque stage again, and never turn the same
 * fastener twice by angle.
 */
import type { Joint } from '../../engine/model.js';
import { done, type Outcome, refused } from '../../quantity/outcome.js';
import type { ArrivalReason, Fact, MarkAnswer, NewFact } from '../facts.js';
import { type Act, actKey, byTorqueValue } from './acts.js';
import { foldJoint, type RecordedAct } from './ledger.js';
import { LOOK_WORDS, type Offer, type OfferedAct, offerNow } from './offer.js';
import { type Standing, standingOf } from './standing.js';

export interface Arrival {
  readonly why: ArrivalReason;
}
export interface ResumeQuestion {
  readonly joint: string;
  readonly why: ArrivalReason;
  /** The stage that the walk stands in. */
  readonly stage: number;
  /** Up to three acts to re-verify by touch, not to re-do; the most recent one last. */
  readonly touch: readonly RecordedAct[];
  /** Set when a stage by torque value was left part-way: it starts again from `first`. */
  readonly roundAgain?: { readonly stage: number; readonly first: Act; readonly of: number; readonly round: number };
  /** Set when the next act cannot be repeated: its fastener is asked about before it is offered. */
  readonly look?: OfferedAct & { readonly words: string };
  readonly words: string;
}
export interface ResumeAnswer {
  /** Acts touched, as `stage/hole`. */
  readonly verified: readonly string[];
  readonly mark?: MarkAnswer;
}
export type ResumeRefusal =
  | { readonly code: 'not-all-touched'; readonly missing: readonly string[] }
  | { readonly code: 'look-for-mark'; readonly stage: number; readonly hole: string };

const ACTS_BACK = 3;

/**
 * What to ask of a person who comes back to a joint part-way; undefined when there is nothing to ask: the joint is
 * finished, or nothing has been recorded and the first act may be repeated.
 *
 * The last three acts are touched again. A stage by torque value that was left part-way goes round again from its first
 * fastener: the wrench clicks and nothing turns. A stage by angle or stretch never does; its next fastener is asked
 * about, because it may have been turned and not recorded. A stage whose acts are all recorded is not repeated.
 *
 * Source: going back three steps after an interruption, maintenance technician handbook, human factors chapter, as
 * quoted in an encyclopedia article on distraction (read); the rest common practice, no source.
 */
export function resumeQuestion(joint: Joint, facts: readonly Fact[], arrival: Arrival): ResumeQuestion | undefined {
  const standing = standingOf(foldJoint(joint, facts));
  const offer = offerNow(standing);
  if (offer === undefined) return undefined;
  const look = lookAt(offer);
  const recorded = standing.ledger.recorded;
  if (recorded.length === 0 && look === undefined) return undefined;
  const roundAgain = partWay(standing);
  const stage = roundAgain?.stage ?? (offer.kind === 'place' ? standing.frontier : offer.act.stage);
  return {
    joint: joint.id,
    why: arrival.why,
    stage,
    touch: lastActs(standing),
    ...(roundAgain && { roundAgain }),
    ...(look && { look }),
    words: resumeWords(stage, joint.stages.length, roundAgain?.first, look?.act),
  };
}

function lookAt(offer: Offer): ResumeQuestion['look'] {
  if (offer.kind === 'place' || !offer.act.once) return undefined;
  const { act, instance, round } = offer;
  return { act, instance, round, words: LOOK_WORDS };
}

/** The last acts that still stand: a fastener that was replaced since has nothing to touch. */
function lastActs({ ledger, finished }: Standing): readonly RecordedAct[] {
  return ledger.recorded.filter((one) => finished.get(one.act) === one).slice(-ACTS_BACK);
}

/** A stage by torque value with some of its acts recorded in this round and some not. */
function partWay({ ledger, frontier, finished, open }: Standing): ResumeQuestion['roundAgain'] {
  const inStage = ledger.acts.filter((act) => act.stage === frontier);
  const first = inStage[0];
  if (first === undefined || !byTorqueValue(first.kind)) return undefined;
  if (!inStage.some((act) => finished.has(act)) || !inStage.some((act) => open.includes(act))) return undefined;
  return { stage: frontier, first, of: inStage.length, round: (ledger.rounds.get(frontier) ?? 1) + 1 };
}

function resumeWords(stage: number, stages: number, first: Act | undefined, look: Act | undefined): string {
  const lines = [`You were here: stage ${stage} of ${stages}. Touch these again; do not turn them.`];
  if (first !== undefined) {
    lines.push(
      `Stage ${first.stage} goes round again from hole ${first.hole}: the wrench should click and nothing turn.`,
    );
  }
  if (look !== undefined)
    lines.push(`Hole ${look.hole}: has it been turned in stage ${look.stage} already? Look for the paint mark.`);
  return lines.join(' ');
}

/**
 * The facts to record for an answer. Mark found: the act counts as done. Clean: the act is offered. Unknown: the fastener
 * is in doubt and comes out. Refuses until every listed act was touched and the paint mark was looked for.
 */
export function answerResume(
  question: ResumeQuestion,
  answer: ResumeAnswer,
): Outcome<readonly NewFact[], ResumeRefusal> {
  const missing = question.touch.map((one) => actKey(one.act)).filter((key) => !answer.verified.includes(key));
  if (missing.length > 0) return refused({ code: 'not-all-touched', missing });
  const { look, joint, stage, why } = question;
  if (look !== undefined && answer.mark === undefined) {
    return refused({ code: 'look-for-mark', stage: look.act.stage, hole: look.act.hole });
  }
  const resumed = { joint, stage, why, verified: answer.verified, roundAgain: question.roundAgain !== undefined };
  if (look === undefined || answer.mark === undefined) return done([{ kind: 'walk-resumed', data: resumed }]);
  const mark = { ...spot(look), answer: answer.mark };
  return done([{ kind: 'walk-resumed', data: { ...resumed, mark } }, ...afterLook(joint, look, answer.mark)]);
}

/** The facts to record when a `look` offer is answered: the record of the act had been struck out. */
export function answerLook(joint: Joint, offered: OfferedAct, answer: MarkAnswer): readonly NewFact[] {
  const mark = { ...spot(offered), answer };
  const stage = offered.act.stage;
  const resumed = { joint: joint.id, stage, why: 'struck-out', verified: [], roundAgain: false, mark } as const;
  return [{ kind: 'walk-resumed', data: resumed }, ...afterLook(joint.id, offered, answer)];
}

const spot = ({ act, instance }: OfferedAct) => ({ stage: act.stage, hole: act.hole, instance });

function afterLook(joint: string, offered: OfferedAct, answer: MarkAnswer): readonly NewFact[] {
  const at = { joint, ...spot(offered) };
  switch (answer) {
    case 'clean':
      return [];
    case 'unknown':
      return [{ kind: 'fastener-doubted', data: { ...at, why: 'not known whether it was turned in this stage' } }];
    case 'found': {
      const target = offered.act.target.text;
      return [{ kind: 'act-done', data: { ...at, round: offered.round, target, seen: 'mark-found' } }];
    }
  }
}
