/** The tightening walk of one joint: one very large target, the next one greyed, and what happens after an interruption. */
import { headFromAbove, type Marks, type PlanOptions } from '../drawing/index.js';
import { type Joint, jointById } from '../engine/index.js';
import {
  type ArrivalReason,
  type Block,
  type RecordedAct,
  type ResumeQuestion,
  readiness,
  resumeQuestion,
  type Walk,
  walk,
} from '../plan/index.js';
import { actView, nextActView, placeWords } from './act-words.js';
import { advisoryOf } from './advisory.js';
import { type Bench, givenBy } from './bench.js';
import { blockHindrances } from './block-words.js';
import { tightenCautions } from './cautions.js';
import type { Answer, Hindrance, ResumeView, TightenView, WrenchInHand } from './views.js';
import { wrenchView } from './wrench-view.js';

function hindrancesOf(bench: Bench, jointId: string, walked: Walk): readonly Hindrance[] {
  const { blocks, unchecked } = readiness(bench.engine, jointId, bench.facts);
  const waits = walked.current?.kind === 'place' ? walked.current.hole : undefined;
  const placing =
    walked.current?.kind === 'place' && walked.started
      ? [{ code: 'fastener-waits', words: `Hole ${waits}: ${walked.current.words}` }]
      : [];
  const gasket =
    unchecked.length === 0 || walked.started
      ? []
      : [
          {
            code: 'gasket-unchecked',
            words: `${unchecked.length} gasket checks are still open. Nobody has said that they are good.`,
          },
        ];
  return [
    ...placing,
    ...blockHindrances(blocks.filter((block) => placing.length === 0 || holeOf(block) !== waits)),
    ...gasket,
  ];
}

const holeOf = (block: Block): string | undefined => ('hole' in block ? block.hole : undefined);

const markAnswers: readonly Answer[] = [
  { id: 'found', label: 'Mark there: turned', key: 'f', unlike: false },
  { id: 'clean', label: 'No mark: not turned', key: 'c', unlike: false },
  { id: 'unknown', label: 'Cannot tell', key: 'u', unlike: true },
];

function touched(joint: Joint, recorded: RecordedAct): ResumeView['verify'][number] {
  const { act } = recorded;
  const view = nextActView(joint, act);
  return {
    key: view.key,
    hole: act.hole,
    words: `Touch ${placeWords(act)}: ${view.stageName.toLowerCase()}, ${act.target.text}${act.once ? ', paint mark seen' : ''}`,
  };
}

/** The page "You were here" for an arrival; undefined when there is nothing to ask. */
function resumeView(joint: Joint, question: ResumeQuestion): ResumeView {
  const { look } = question;
  return {
    words: question.words,
    verify: question.touch.map((one) => touched(joint, one)),
    roundAgain: question.roundAgain !== undefined,
    ...(look && { ask: { hole: look.act.hole, words: `Hole ${look.act.hole}: ${look.words}`, answers: markAnswers } }),
  };
}

function marksOf(walked: Walk): Marks {
  return Object.fromEntries(walked.holes.map((hole) => [hole.hole, hole.mark]));
}

function doneList(bench: Bench, joint: Joint, walked: Walk): TightenView['done'] {
  return walked.recorded.flatMap((one) => {
    const given = givenBy(bench, one.entry);
    if (given === undefined) return [];
    const { lead, printed } = nextActView(joint, one.act);
    const round = one.done.round > 1 ? `, round ${one.done.round}` : '';
    return [
      {
        key: `${one.act.stage}/${one.act.hole}/${one.entry}`,
        words: `${lead} ${printed}: ${one.done.seen}${round}`,
        given,
      },
    ];
  });
}

/**
 * The walk through one joint as a screen shows it; undefined where the engine has no such joint. With `arrival` the view
 * opens with what has to be touched again before the walk goes on; with `hand` the person's wrenches are judged for the act.
 */
export function tightenView(
  bench: Bench,
  jointId: string,
  arrival?: ArrivalReason,
  shown: PlanOptions = {},
  hand?: WrenchInHand,
): TightenView | undefined {
  const joint = jointById(bench.engine, jointId);
  if (joint === undefined) return undefined;
  const walked = walk(joint, bench.facts);
  const question = arrival === undefined ? undefined : resumeQuestion(joint, bench.facts, { why: arrival });
  const hindrances = hindrancesOf(bench, jointId, walked);
  const blocked = hindrances.some((one) => one.code !== 'gasket-unchecked');
  const offer = walked.current;
  const acting = offer !== undefined && offer.kind !== 'place' ? offer : undefined;
  const look = offer?.kind === 'look' ? offer : undefined;
  const advisory = acting && advisoryOf(acting.act);
  const wrench = acting && hand && !blocked ? wrenchView(bench, acting.act, hand) : undefined;
  return {
    joint: jointId,
    title: joint.name,
    order: walked.order.words,
    orderOrigin: walked.order.origin,
    hindrances,
    ...(question && { resume: resumeView(joint, question) }),
    ...(look &&
      !question && {
        look: { hole: look.act.hole, words: `Hole ${look.act.hole}: ${look.words}`, answers: markAnswers },
      }),
    ...(acting &&
      !blocked && { current: actView(joint, acting, 'words' in acting ? { words: acting.words ?? '' } : undefined) }),
    ...(offer?.kind === 'place' && { place: { hole: offer.hole, words: offer.words } }),
    ...(walked.next && { next: nextActView(joint, walked.next) }),
    progress: { done: walked.progress.done, of: walked.progress.acts, words: walked.progress.words },
    finished: walked.finished,
    skipped: walked.skipped.map(({ act, reason }) => `Stage ${act.stage}, hole ${act.hole}: skipped, ${reason}`),
    cautions: [...tightenCautions(bench.engine, jointId)],
    notes: joint.cautions,
    ...(advisory && { advisory }),
    ...(wrench && { wrench }),
    ...(joint.head !== undefined && {
      figure: headFromAbove(bench.engine, joint.head, marksOf(walked), {
        joint: jointId,
        order: walked.order.holes,
        ...shown,
      }),
    }),
    done: doneList(bench, joint, walked),
  };
}
