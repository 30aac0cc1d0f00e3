/**
 * A record of any act is struck out, at any moment, for a good reason (it was not done) or by mistake (it was). The
 * simulated fasteners know what was really done to them; at the end each must be as the printed recipe leaves it.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint, StageAct } from '../../engine/model.js';
import { allPlaced, angle, doing, hole, jointOf, loosen, placed, torque } from '../bench.suite.js';
import type { Fact } from '../facts.js';
import { answerLook, walk } from './index.js';

/** Torque reached by the wrench, and degrees turned on from there. */
interface Held {
  readonly torque: number;
  readonly turned: number;
}
const FREE: Held = { torque: 0, turned: 0 };

/** A wrench set to a value does not turn a fastener that holds more, nor one that was turned on by angle. */
function after(held: Held, act: StageAct): Held {
  if (act.kind === 'loosen') return FREE;
  if (act.kind === 'angle') return { ...held, turned: held.turned + (act.target.high ?? 0) };
  if (act.kind !== 'torque') return held;
  const value = act.target.high ?? 0;
  return held.turned > 0 || held.torque >= value ? held : { torque: value, turned: 0 };
}

class Fasteners {
  readonly #joint: Joint;
  readonly #held = new Map<string, Held>();
  constructor(joint: Joint) {
    this.#joint = joint;
  }
  do(act: { readonly stage: number; readonly hole: string }, instance: number): void {
    const stage = this.#joint.stages.find((one) => one.number === act.stage);
    const key = `${act.hole}#${instance}`;
    if (stage) this.#held.set(key, after(this.#held.get(key) ?? FREE, stage.act));
  }
  of(where: string, instance: number): Held {
    return this.#held.get(`${where}#${instance}`) ?? FREE;
  }
}

/** Printed recipes: passes that rise, seating passes that are slackened again, turns by angle at the end. */
const RECIPES: readonly (readonly StageAct[])[] = [
  [torque(30), torque(60), torque(90)],
  [torque(78), loosen('fully'), torque(20), angle(90), angle(90)],
  [torque(95), loosen('fully'), torque(156), angle(90)],
  [torque(40), angle(90), loosen(360), torque(40), angle(90)],
  [torque(50), loosen(360), torque(30)],
];
const anyJoint = fc
  .constantFrom(...RECIPES)
  .map((stages) => jointOf({ holes: [hole('1'), hole('2')], stages: [...stages] }));
/** The record of which act is struck out, how many acts later, and whether the act had really been done. */
interface Strike {
  readonly act: number;
  readonly later: number;
  readonly done: boolean;
}
const anyStrikes: fc.Arbitrary<readonly Strike[]> = fc.array(
  fc.record({ act: fc.nat(9), later: fc.integer({ min: 1, max: 9 }), done: fc.boolean() }),
  { minLength: 1, maxLength: 2 },
);

/** Works the joint to its end. An act that was not done is recorded all the same, and struck out later. */
function worked(joint: Joint, strikes: readonly Strike[]): { facts: readonly Fact[]; fasteners: Fasteners } {
  const fasteners = new Fasteners(joint);
  const facts = allPlaced(joint);
  const recorded: Fact[] = [];
  const open = new Set(strikes);
  for (;;) {
    const ended = walk(joint, facts).current === undefined;
    for (const strike of open) {
      if (recorded.length <= strike.act || (!ended && recorded.length < strike.act + strike.later)) continue;
      open.delete(strike);
      strikeOut(facts, recorded[strike.act]);
    }
    const now = walk(joint, facts).current;
    if (now === undefined) return { facts, fasteners };
    if (now.kind === 'place') facts.push(placed(joint, now.hole, { instance: now.instance, condition: 'new' }));
    // Whoever cannot tell says so; the fastener then comes out.
    else if (now.kind === 'look') facts.push(...answerLook(joint, now, 'unknown'));
    else {
      const believed = strikes.every((strike) => strike.done || strike.act !== recorded.length);
      if (believed) fasteners.do(now.act, now.instance);
      const fact = doing(joint, now);
      facts.push(fact);
      recorded.push(fact);
    }
  }
}

function strikeOut(facts: Fact[], fact: Fact | undefined): void {
  const at = fact === undefined ? -1 : facts.indexOf(fact);
  if (at < 0 || fact?.kind !== 'act-done') return;
  const { joint, stage, hole: where, instance } = fact.data;
  facts.splice(at, 1);
  facts.push({ kind: 'act-struck', data: { joint, stage, hole: where, instance } });
}

describe('a joint in which records were struck out', () => {
  it('ends with every fastener as the recipe leaves it, and none turned on from an unknown state', () => {
    fc.assert(
      fc.property(anyJoint, anyStrikes, (joint, strikes) => {
        const { facts, fasteners } = worked(joint, strikes);
        const wanted = joint.stages.map((stage) => stage.act).reduce(after, FREE);
        for (const { hole: where, instance } of walk(joint, facts).holes) {
          expect(fasteners.of(where, instance), `hole ${where}, fastener ${instance}`).toEqual(wanted);
        }
      }),
      { numRuns: 600 },
    );
  });
});
