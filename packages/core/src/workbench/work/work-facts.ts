/** The whole work as the log tells it: what was recorded of it, and what other parts of the record finish or open again. */
import { DONE_AGAIN, type WorkFact, type WorkPlan, type WorkStanding, workStanding } from '../../plan/index.js';
import type { ReadEntry } from '../../record/index.js';
import type { Bench } from '../bench.js';
import type { FinishedElsewhere } from './finished-act.js';
import { finishedElsewhere } from './finished-elsewhere.js';
import { recordedFact } from './own-facts.js';
import { planAt } from './work-plan.js';

export interface Work {
  readonly plan: WorkPlan;
  readonly facts: readonly WorkFact[];
  readonly standing: WorkStanding;
}
const kept = new WeakMap<Bench, Work>();

/** Plan, facts and standing of the work; worked out once for each moment of the log. */
export function workAt(bench: Bench): Work {
  const known = kept.get(bench);
  if (known !== undefined) return known;
  const plan = planAt(bench);
  const facts = workFacts(bench, plan);
  const work = { plan, facts, standing: workStanding(plan, facts) };
  kept.set(bench, work);
  return work;
}

/** The facts of the work in the order of the log. */
function workFacts(bench: Bench, plan: WorkPlan): readonly WorkFact[] {
  const elsewhere = finishedElsewhere(bench, plan);
  return bench.state.entries.flatMap((one) => {
    const recorded = recordedFact(one);
    return [
      ...(recorded ? [recorded] : []),
      ...openedElsewhere(bench, plan, one),
      ...(elsewhere.get(one.entry.id) ?? []).map((done) => doneFact(one, done)),
    ];
  });
}

function doneFact({ entry }: ReadEntry, { act, words, result }: FinishedElsewhere): WorkFact {
  const kind = act.answer === 'joint-walk' || act.answer === 'worksheet' ? act.answer : 'list';
  return {
    kind: 'work-act-done',
    data: { act: act.id, answer: { kind, words, result }, method: 'as recorded there' },
    at: entry.at,
    by: entry.person,
    entry: entry.id,
  };
}

/** A joint that was opened, a part that came back from the shop, an answer that was struck out: open again, with all that was built on it. */
function openedElsewhere(bench: Bench, plan: WorkPlan, { entry, reading, struck }: ReadEntry): readonly WorkFact[] {
  if (struck !== undefined || !reading.understood) return [];
  const { known } = reading;
  const opened = (acts: readonly string[], why: string): readonly WorkFact[] =>
    acts.map((place) => ({
      kind: 'work-reopened',
      data: { rule: DONE_AGAIN, place, why },
      at: entry.at,
      by: entry.person,
      entry: entry.id,
    }));
  switch (known.kind) {
    case 'joint-opened':
      return opened(actsOfJoint(plan, known.data.joint), `the joint was opened: ${known.data.reason}`);
    case 'work-returned':
      return opened(
        known.data.places.map((place) => `${known.data.feature}/${place}`).flatMap((id) => actsAtWorksheet(plan, id)),
        known.data.why,
      );
    case 'struck-out':
      return opened(actOfStruck(bench, known.data.entry), `its record was struck out: ${known.data.reason}`);
    default:
      return [];
  }
}

const actsOfJoint = ({ acts }: WorkPlan, joint: string) =>
  acts.filter(({ subject }) => subject?.kind === 'joint' && subject.joint === joint).map(({ id }) => id);
const actsAtWorksheet = ({ acts }: WorkPlan, id: string) =>
  acts.filter(({ place }) => place.kind === 'worksheet' && place.id === id).map((act) => act.id);

function actOfStruck(bench: Bench, id: string): readonly string[] {
  const target = bench.state.entries.find(({ entry }) => entry.id === id);
  if (target === undefined || !target.reading.understood) return [];
  const { known } = target.reading;
  return known.kind === 'work-act-done' ? [known.data.act] : [];
}
