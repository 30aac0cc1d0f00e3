/**
 * A person at the bench who is interrupted at any moment: before an act, between turning and recording, after recording.
 * The simulated fasteners know what was really done to them; the walk knows only what was recorded.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint, StageAct } from '../../engine/model.js';
import { angle, doing, feel, hole, jointOf, loosen, placed, renew, stretch, torque, verify } from '../bench.suite.js';
import type { ArrivalReason, Fact, MarkAnswer, Seen } from '../facts.js';
import {
  type Act,
  actKey,
  answerLook,
  answerResume,
  byTorqueValue,
  finishes,
  type Offer,
  type OfferedAct,
  resumeQuestion,
  walk,
} from './index.js';

const anyAct: fc.Arbitrary<StageAct> = fc.constantFrom(
  torque(30),
  torque(60),
  verify(60),
  angle(90),
  angle(45),
  loosen('fully'),
  loosen(360),
  stretch(0.0135, 0.0185),
  renew,
  feel('turn the crank'),
);
const anyJoint = fc
  .record({
    holes: fc.integer({ min: 1, max: 5 }),
    acts: fc.array(anyAct, { minLength: 1, maxLength: 5 }),
    odd: fc.boolean(),
  })
  .map(({ holes, acts, odd }) => {
    const ids = Array.from({ length: holes }, (_, index) => `${index + 1}`);
    const stages = acts.map((act, index) => ({
      act,
      ...(odd && index % 2 === 1
        ? { cap: 'cap 1', holes: ids.slice(0, Math.ceil(holes / 2)) }
        : { holes: 'all' as const }),
      direction: index % 3 === 2 ? ('reverse' as const) : ('in-order' as const),
    }));
    return jointOf({ holes: ids.map((id) => hole(id)), stages });
  });

/** Draws from a list of choices; when it is used up everything goes well, so every run ends. */
class Chance {
  readonly #choices: readonly number[];
  #next = 0;
  constructor(choices: readonly number[]) {
    this.#choices = choices;
  }
  pick(of: number): number {
    const choice = this.#choices[this.#next] ?? 0;
    this.#next += 1;
    return choice % of;
  }
  get left(): boolean {
    return this.#next < this.#choices.length;
  }
}

class Bench {
  readonly joint: Joint;
  facts: Fact[] = [];
  /** Turned for good by angle or stretch, and painted: `stage/hole#instance`. */
  readonly #turned = new Set<string>();
  readonly #chance: Chance;
  interruptions = 0;

  constructor(joint: Joint, choices: readonly number[]) {
    this.joint = joint;
    this.#chance = new Chance(choices);
  }

  step(offer: Offer): void {
    if (offer.kind === 'place') {
      const { hole: at, instance } = offer;
      this.facts.push(placed(this.joint, at, { instance, condition: 'new' }));
    } else if (offer.kind === 'look') {
      this.facts.push(...answerLook(this.joint, offer, this.#look(offer)));
    } else {
      this.#act(offer);
    }
    if (this.#chance.left && this.#chance.pick(6) === 1) this.#strikeSomething();
  }

  #act(offer: Extract<Offer, { kind: 'act' }>): void {
    const when = this.#chance.pick(8);
    if (when !== 1) {
      const seen = this.#turn(offer);
      if (when !== 2) this.facts.push(doing(this.joint, offer, { seen }));
    }
    if (when >= 1 && when <= 3) this.#interrupted();
  }

  /** What really happens under the wrench. */
  #turn(offer: OfferedAct): Seen {
    const { act } = offer;
    const key = `${actKey(act)}#${offer.instance}`;
    if (act.once) expect(this.#turned, `turned twice: ${key}`).not.toContain(key);
    const luck = this.#chance.pick(7);
    if (act.kind === 'verify') return luck === 1 ? 'moved' : 'held';
    if (act.kind === 'stretch' && luck === 1) return 'short';
    if ((act.kind === 'stretch' || act.kind === 'angle') && luck === 2) return 'beyond';
    if (act.once) this.#turned.add(key);
    const usual = { torque: 'reached', angle: 'turned-and-marked', loosen: 'loosened', stretch: 'within' } as const;
    if (act.kind === 'feel') return luck === 1 ? 'stiff' : 'free';
    return act.kind === 'renew' ? 'renewed' : act.kind === 'instruct' ? 'followed' : usual[act.kind];
  }

  #look({ act, instance }: OfferedAct): MarkAnswer {
    if (this.#chance.pick(4) === 1) return 'unknown';
    return this.#turned.has(`${actKey(act)}#${instance}`) ? 'found' : 'clean';
  }

  #interrupted(): void {
    this.interruptions += 1;
    const why: ArrivalReason = (['opened-again', 'paused', 'other-person'] as const)[this.#chance.pick(3)]!;
    const before = walk(this.joint, this.facts);
    const question = resumeQuestion(this.joint, this.facts, { why });
    if (question === undefined) return;
    const mark = question.look && this.#look(question.look);
    const verified = question.touch.map((one) => actKey(one.act));
    const answer = answerResume(question, { verified, ...(mark && { mark }) });
    if (!answer.ok) throw new Error(answer.fault.code);
    this.facts.push(...answer.value);
    if (before.current?.kind !== 'act' || !byTorqueValue(before.current.act.kind)) return;
    this.#restarts(before.current.act, question.roundAgain?.first);
  }

  /** A torque stage that was left part-way is offered from its first fastener. */
  #restarts(act: Act, first: Act | undefined): void {
    const { recorded, current, holes } = walk(this.joint, this.facts);
    const later = recorded.some((one) => one.act.stage > act.stage);
    if (later || current?.kind !== 'act') return;
    expect(current.act.stage).toBe(act.stage);
    const inRound = recorded.filter(
      ({ done }) => done.stage === act.stage && done.round === current.round && finishes(done.seen),
    );
    // A fastener that has left its hole took its records with it.
    const standing = inRound.filter(({ done }) =>
      holes.some((one) => one.hole === done.hole && one.instance === done.instance),
    );
    expect(standing).toEqual([]);
    if (first !== undefined) expect(actKey(current.act)).toBe(actKey(first));
  }

  /** Strikes out the record of the last act; the fastener stays as it is. */
  #strikeSomething(): void {
    const at = this.facts.findLastIndex((fact) => fact.kind === 'act-done');
    const fact = this.facts[at];
    if (fact?.kind !== 'act-done' || fact.data.seen === 'renewed') return;
    const { joint, stage, hole: where, instance } = fact.data;
    this.facts.splice(at, 1);
    this.facts.push({ kind: 'act-struck', data: { joint, stage, hole: where, instance } });
  }

  /** Everything shown done for the fastener in a hole stands in the record. */
  honest(): void {
    const now = walk(this.joint, this.facts);
    for (const one of now.holes) {
      if (one.mark !== 'done' || one.of === 0) continue;
      const recorded = this.facts.some(
        (fact) => fact.kind === 'act-done' && fact.data.hole === one.hole && fact.data.instance <= one.instance,
      );
      expect(recorded, `hole ${one.hole} shown done`).toBe(true);
    }
    expect(now.finished).toBe(now.current === undefined);
  }
}

function workedThrough(joint: Joint, choices: readonly number[]): Bench {
  const bench = new Bench(joint, choices);
  for (let steps = 0; steps < 2_000; steps += 1) {
    const { current } = walk(joint, bench.facts);
    bench.honest();
    if (current === undefined) return bench;
    bench.step(current);
  }
  throw new Error('the walk does not end');
}

const anyChoices = fc.array(fc.integer({ min: 0, max: 839 }), { minLength: 10, maxLength: 60, size: 'max' });

describe('a walk with interruptions at any moment', () => {
  it('always ends, never turns a fastener twice by angle, restarts a torque stage, shows done only what is recorded', () => {
    let interruptions = 0;
    fc.assert(
      fc.property(anyJoint, anyChoices, (joint, choices) => {
        const bench = workedThrough(joint, choices);
        interruptions += bench.interruptions;
        const end = walk(joint, bench.facts);
        expect(end.holes.every((one) => one.final)).toBe(true);
      }),
      { numRuns: 300 },
    );
    expect(interruptions).toBeGreaterThan(300);
  });

  it('leaves every fastener with every stage after its last renewal recorded for it', () => {
    fc.assert(
      fc.property(anyJoint, anyChoices, (joint, choices) => {
        const { facts } = workedThrough(joint, choices);
        const now = walk(joint, facts);
        for (const { hole: at, instance } of now.holes) {
          const own = joint.stages.filter((stage) => stage.holes === 'all' || stage.holes.includes(at));
          const last = own.findLast((stage) => stage.act.kind === 'renew')?.number ?? 0;
          for (const stage of own.filter((one) => one.number > last && one.act.kind !== 'feel')) {
            const recorded = facts.some(
              (fact) =>
                fact.kind === 'act-done' &&
                fact.data.hole === at &&
                fact.data.stage === stage.number &&
                fact.data.instance === instance,
            );
            expect(recorded, `stage ${stage.number}, hole ${at}`).toBe(true);
          }
        }
      }),
      { numRuns: 150 },
    );
  });
});
