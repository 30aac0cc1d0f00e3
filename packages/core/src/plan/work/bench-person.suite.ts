/** A person at the bench for the tests of the work plan: does what is offered, and records it. */

import type { WorkAnswer, WorkFact, WorkFactData, WorkFactKind } from './facts.js';
import { judgeWork } from './judge.js';
import type { WorkAct, WorkPlan } from './model.js';
import type { WorkOffer } from './offers.js';
import type { WorkStanding } from './standing.js';

export const at = (minutes: number) => new Date(Date.UTC(2026, 0, 5, 8) + minutes * 60_000).toISOString();

export function fact<K extends WorkFactKind>(kind: K, data: WorkFactData[K], when = 0, by = 'Ada'): WorkFact {
  return { kind, data, at: at(when), by } as WorkFact;
}
export function answerTo({ answer }: WorkAct, result: 'good' | 'bad' = 'good'): WorkAnswer {
  if (answer === 'value') return { kind: 'value', text: '0.05 mm', result };
  if (answer === 'photo') return { kind: 'photo', photo: 'photo-1', result };
  if (answer === 'sign-off') throw new Error('a signature is no answer');
  return { kind: answer, words: 'as it was felt', result };
}
export const doing = (act: WorkAct, when = 0, result: 'good' | 'bad' = 'good') =>
  fact('work-act-done', { act: act.id, answer: answerTo(act, result), method: 'by hand' }, when);

/** Keeps the facts; refuses nothing that the plan accepts, and fails the test where the plan refuses its own offer. */
export class Person {
  readonly plan: WorkPlan;
  readonly facts: WorkFact[] = [];
  #minutes = 0;
  constructor(plan: WorkPlan) {
    this.plan = plan;
  }
  get now(): number {
    return this.#minutes;
  }
  record(given: WorkFact): void {
    const judged = judgeWork(this.plan, this.facts, given);
    if (!judged.ok)
      throw new Error(`refused ${given.kind} ${JSON.stringify(given.data)}: ${JSON.stringify(judged.fault)}`);
    this.facts.push(given);
    this.#minutes += 1;
  }
  tell<K extends WorkFactKind>(kind: K, data: WorkFactData[K], by = 'Ada'): void {
    this.record(fact(kind, data, this.#minutes, by));
  }
  /** What the offer asks for, well done. */
  follow(offer: WorkOffer, standing: WorkStanding): void {
    if (offer.kind === 'aid') this.tell('mock-up-aid-returned', { aid: offer.aid, count: offer.count });
    else if (offer.kind === 'second-look') this.look(offer.stand.act);
    else if (offer.stand.act.answer === 'sign-off')
      this.tell('work-signed-off', { words: 'all read', skips: standing.skips.map(({ act }) => act.id) });
    else this.record(doing(offer.stand.act, this.#minutes));
  }
  look(act: WorkAct, result: 'good' | 'bad' = 'good', looker = 'Ben'): void {
    this.#minutes += 11;
    this.tell('second-look', { act: act.id, looker, method: 'by lamp and mark', result, seen: 'what was there' });
  }
}
