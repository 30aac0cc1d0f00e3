/** From a wish of the person about the work to entries of the log, or one clear line why not. */
import {
  DONE_AGAIN,
  judgeWork,
  type WorkAnswer,
  type WorkFact,
  type WorkFactData,
  type WorkFactKind,
} from '../../plan/index.js';
import { done, refused } from '../../quantity/index.js';
import { decide, type NewEntry } from '../../record/index.js';
import type { Bench } from '../bench.js';
import type { Proposal } from '../propose.js';
import { refusalWords } from '../refusal-words.js';
import type { Moment, WorkWish } from '../work-views.js';
import { answeredBy } from './finished-elsewhere.js';
import { workAt } from './work-facts.js';
import { workRefusalWords } from './work-refusal-words.js';

/** Kind and data, still without who and when. */
type Draft = { readonly [K in WorkFactKind]: { readonly kind: K; readonly data: WorkFactData[K] } }[WorkFactKind];

/**
 * The entries for a wish. Several are judged one after the other, each as if those before it stood in the log; when one is refused none is
 * written. `moment` is who acts and when: a second look rests on both.
 */
export function proposeWork(bench: Bench, wish: WorkWish, moment: Moment): Proposal {
  const { plan, facts } = workAt(bench);
  const elsewhere = wish.kind === 'done' ? recordedElsewhere(bench, wish.act) : undefined;
  if (elsewhere !== undefined) return refused(elsewhere);
  const entries: NewEntry[] = [];
  const known: WorkFact[] = [...facts];
  for (const draft of draftsOf(bench, wish)) {
    const fact = { ...draft, at: moment.at, by: moment.by } as WorkFact;
    const judged = judgeWork(plan, known, fact);
    if (!judged.ok) return refused(workRefusalWords(plan, judged.fault));
    const decision = decide(bench.state, draft);
    if (!decision.ok) return refused(refusalWords(bench.engine, decision.fault));
    entries.push(...decision.value);
    known.push(fact);
  }
  return done(entries);
}

/** What another screen records cannot be typed here beside it: one way only. */
function recordedElsewhere(bench: Bench, id: string): string | undefined {
  const act = workAt(bench).plan.byId.get(id);
  const by = act && answeredBy(bench, act);
  return (
    by &&
    `This is recorded where it is done (${WHERE[by]}), not here; leave it out with a reason if it is not to be done.`
  );
}
const WHERE = {
  joint: 'tightening',
  worksheet: 'its worksheet',
  valve: 'setting the valves',
  gasket: 'the gasket check',
  fasteners: 'the fasteners by hole',
  parts: 'the parts and their places',
  'valve-again': 'setting the valves, after two turns',
  oil: 'ready to start, oil at the valves',
  start: 'ready to start, the start itself',
  'run-in': 'the run-in, by its clock',
  'cylinder-tests': 'compression and leakage',
} as const;

function draftsOf(bench: Bench, wish: WorkWish): readonly Draft[] {
  switch (wish.kind) {
    case 'done':
      return [
        { kind: 'work-act-done', data: { act: wish.act, answer: answerOf(wish.answer), method: wish.method.trim() } },
      ];
    case 'begin-at':
      return [{ kind: 'work-begun', data: { operation: wish.operation, why: wish.why } }];
    case 'skip':
      return wish.acts.map((act) => ({ kind: 'work-act-skipped', data: { act, reason: wish.reason } }));
    case 'reopen':
      return [reopened(wish.rule, wish.place, wish.why)];
    case 'again':
      return [reopened(DONE_AGAIN, wish.act, wish.why)];
    case 'look': {
      const { act, looker, method, result, seen } = wish;
      return [{ kind: 'second-look', data: { act, looker: looker.trim(), method: method.trim(), result, seen } }];
    }
    case 'aid-out':
      return [{ kind: 'mock-up-aid-out', data: { aid: wish.aid.trim(), count: wish.count, where: wish.where } }];
    case 'aid-back':
      return [{ kind: 'mock-up-aid-returned', data: { aid: wish.aid.trim(), count: wish.count } }];
    case 'add':
      return [addedOf(bench, wish)];
    case 'make-critical':
      return [{ kind: 'work-act-critical', data: { act: wish.act, why: wish.why } }];
    case 'leave': {
      const { kind: _kind, ...card } = wish;
      return [{ kind: 'work-left', data: card }];
    }
    case 'resume':
      return [
        ...wish.notAsRecorded.map(({ act, found }) => reopened(DONE_AGAIN, act, `not as recorded on return: ${found}`)),
        { kind: 'work-resumed', data: { why: wish.arrival, verified: wish.verified } },
      ];
    case 'sign':
      return [{ kind: 'work-signed-off', data: { words: wish.words, skips: wish.skips } }];
  }
}

const reopened = (rule: string, place: string | undefined, why: string): Draft => ({
  kind: 'work-reopened',
  data: { rule, ...(place !== undefined && { place }), why },
});

function answerOf(answer: Extract<WorkWish, { kind: 'done' }>['answer']): WorkAnswer {
  switch (answer.kind) {
    case 'value':
      return { ...answer, text: answer.text.trim() };
    case 'photo': {
      const words = answer.words?.trim() ?? '';
      return { kind: 'photo', photo: answer.photo, ...(words !== '' && { words }), result: answer.result };
    }
    case 'register': {
      const { position, end, face, condition, result } = answer;
      const marks = { position, end, face, condition };
      const words = Object.values(marks)
        .map((mark) => mark.trim())
        .filter((mark) => mark !== '');
      return { kind: 'register', words: words.join('; '), marks, result };
    }
    default:
      return answer;
  }
}

/** Own acts are numbered in the order in which they were put in. */
function addedOf(bench: Bench, wish: Extract<WorkWish, { kind: 'add' }>): Draft {
  const { kind: _kind, before, asked, ...rest } = wish;
  const number = workAt(bench).plan.acts.filter(({ own }) => own !== undefined).length + 1;
  return {
    kind: 'work-act-added',
    data: {
      ...rest,
      id: `own-${number}`,
      ...(before !== undefined && { before }),
      ...(asked !== undefined && { asked }),
    },
  };
}
