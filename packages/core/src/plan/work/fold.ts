import { SIGNED_OFF } from './build-plan.js';
import type { WorkFact, WorkFactData } from './facts.js';
import type { WorkPlan } from './model.js';
import { builtOn, reopenedBy } from './reopening.js';
import { type Done, type Look, type LookKind, lookKind } from './second-look.js';

type Skip = Extract<WorkFact, { readonly kind: 'work-act-skipped' }>;
type Begun = Extract<WorkFact, { readonly kind: 'work-begun' }>;
export type Left = Extract<WorkFact, { readonly kind: 'work-left' }>;
export type Resumed = Extract<WorkFact, { readonly kind: 'work-resumed' }>;
type Signature = Extract<WorkFact, { readonly kind: 'work-signed-off' }>;
/** Why an act is open that was finished before. */
export interface OpenAgain {
  readonly title: string;
  readonly because: string;
  readonly why: string;
}
/** What the record holds of one act. */
export interface Held {
  readonly done?: Done;
  readonly skipped?: Skip;
  readonly signed?: Signature;
  readonly again?: OpenAgain;
  readonly look?: { readonly kind: LookKind; readonly fact: Look };
}
export interface Folded {
  readonly held: ReadonlyMap<string, Held>;
  /** Acts done, in the order of the record; one that is open again is left out. */
  readonly lately: readonly Done[];
  readonly aids: ReadonlyMap<string, number>;
  /** Acts that the record names and this plan has not: kept, never dropped. */
  readonly unknown: readonly string[];
  /** The card of whoever stopped, until work goes on. */
  readonly left?: Left;
  /** Acts that were touched when the person came back last, while nothing was done since. */
  readonly resumed?: Resumed;
}

/** What the facts say of each act, newest last. A fact is believed as recorded; whether it may be recorded is for `judgeWork`. */
export function foldWork(plan: WorkPlan, facts: readonly WorkFact[]): Folded {
  const fold = new Fold(plan);
  for (const fact of facts) fold.take(fact);
  return fold.result();
}

class Fold {
  readonly #plan: WorkPlan;
  readonly #held = new Map<string, Held>();
  readonly #aids = new Map<string, number>();
  readonly #unknown = new Set<string>();
  #done: Done[] = [];
  #left: Left | undefined;
  #resumed: Resumed | undefined;

  constructor(plan: WorkPlan) {
    this.#plan = plan;
  }

  take(fact: WorkFact): void {
    switch (fact.kind) {
      case 'work-act-done':
        this.#finish(fact.data.act, { done: fact });
        this.#done.push(fact);
        this.#left = undefined;
        this.#resumed = undefined;
        break;
      case 'work-begun':
        this.#begin(fact);
        break;
      case 'work-act-added':
      case 'work-act-critical':
        // The plan has them already: `withOwnActs`.
        break;
      case 'work-left':
        this.#left = fact;
        break;
      case 'work-resumed':
        this.#resumed = fact;
        break;
      case 'work-act-skipped':
        this.#finish(fact.data.act, { skipped: fact });
        break;
      case 'work-reopened':
        this.#reopen(fact.data);
        break;
      case 'second-look':
        this.#look(fact);
        break;
      case 'mock-up-aid-out':
        this.#aid(fact.data.aid, fact.data.count);
        break;
      case 'mock-up-aid-returned':
        this.#aid(fact.data.aid, -fact.data.count);
        break;
      case 'work-signed-off':
        this.#finish(SIGNED_OFF, { signed: fact });
        break;
      default:
        fact satisfies never;
    }
  }

  result(): Folded {
    const lately = this.#done.filter((fact) => this.#held.get(fact.data.act)?.done === fact);
    return {
      held: this.#held,
      lately,
      aids: this.#aids,
      unknown: [...this.#unknown],
      ...(this.#left && { left: this.#left }),
      ...(this.#resumed && { resumed: this.#resumed }),
    };
  }

  #begin({ data: { operation, why }, ...envelope }: Begun): void {
    const first = this.#plan.acts.findIndex((act) => act.operation === operation);
    if (first < 0) this.#unknown.add(operation);
    for (const { id } of this.#plan.acts.slice(0, Math.max(0, first)))
      if (!this.#held.has(id))
        this.#held.set(id, { skipped: { ...envelope, kind: 'work-act-skipped', data: { act: id, reason: why } } });
  }

  #finish(act: string, held: Held): void {
    if (this.#plan.byId.has(act)) this.#held.set(act, held);
    else this.#unknown.add(act);
  }

  #reopen(data: WorkFactData['work-reopened']): void {
    const reopened = reopenedBy(this.#plan, data);
    if (!reopened.ok) {
      this.#unknown.add(`${data.rule}@${data.place ?? 'engine'}`);
      return;
    }
    const { title, because, acts } = reopened.value;
    this.#open(acts, { title, because, why: data.why });
  }

  #open(acts: readonly string[], again: OpenAgain): void {
    for (const act of acts) if (this.#held.has(act)) this.#held.set(act, { again });
  }

  #look(look: Look): void {
    const held = this.#held.get(look.data.act);
    if (held?.done === undefined) return;
    const kind = lookKind(held.done, look);
    if (!kind.ok) return;
    if (look.data.result === 'good') this.#held.set(look.data.act, { ...held, look: { kind: kind.value, fact: look } });
    else
      this.#open(builtOn(this.#plan, [look.data.act]), {
        title: 'The second look found a fault',
        because: 'what was done, and what was built on it, cannot be relied on',
        why: look.data.seen,
      });
  }

  #aid(aid: string, count: number): void {
    const out = (this.#aids.get(aid) ?? 0) + count;
    if (out > 0) this.#aids.set(aid, out);
    else this.#aids.delete(aid);
  }
}
