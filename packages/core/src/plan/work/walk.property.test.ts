/**
 * A person who takes any of the offers, finds faults, skips, reports changes and leaves aids about: whatever happens, the work ends signed
 * and no precedence is broken. What is settled is kept here apart from the plan's own standing.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doing, Person } from './bench-person.suite.js';
import type { WorkPlan } from './model.js';
import { offers, type WorkOffer } from './offers.js';
import { placesIn, reopenedBy } from './reopening.js';
import { REOPENING_RULES } from './reopenings/index.js';
import { workStanding } from './standing.js';
import { PLANS } from './work.suite.js';

/** Draws from a list of choices; when it is used up everything goes well and the first offer is taken, so every walk ends. */
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
}

class Walk {
  readonly person: Person;
  readonly #settled = new Set<string>();
  readonly #chance: Chance;
  reopenings = 0;
  readonly plan: WorkPlan;
  constructor(plan: WorkPlan, choices: readonly number[]) {
    this.plan = plan;
    this.person = new Person(plan);
    this.#chance = new Chance(choices);
  }

  /** One offer taken; false when the work is signed. */
  step(): boolean {
    const standing = workStanding(this.plan, this.person.facts);
    if (standing.signedOff) return false;
    const all = offers(standing);
    expect(all.length, 'there is always something to do').toBeGreaterThan(0);
    const offer = all[this.#chance.pick(all.length)] as WorkOffer;
    const luck = this.#chance.pick(40);
    if (luck === 1) this.#reopen();
    else if (luck === 2) this.person.tell('mock-up-aid-out', { aid: 'rod sleeve', count: 2, where: 'on the bolts' });
    else if (offer.kind === 'second-look' && luck === 3) {
      this.person.look(offer.stand.act, 'bad');
      this.#open([offer.stand.act.id]);
    } else if (offer.kind === 'second-look' && luck < 20) this.person.look(offer.stand.act, 'good', 'Ada');
    else if (offer.kind !== 'act') this.person.follow(offer, standing);
    else this.#act(offer, luck, standing);
    return true;
  }

  #act(offer: Extract<WorkOffer, { kind: 'act' }>, luck: number, standing: ReturnType<typeof workStanding>): void {
    const { act } = offer.stand;
    const open = (this.plan.before.get(act.id) ?? []).filter(({ from }) => !this.#settled.has(from));
    expect(open, `offered too early: ${act.id}`).toEqual([]);
    if (act.closes) {
      expect(standing.aidsOut.size, `closed on an aid: ${act.id}`).toBe(0);
    }
    if (luck === 4 && act.answer !== 'sign-off') this.person.record(doing(act, this.person.now, 'bad'));
    else if (luck === 5 && act.mustDo === undefined) {
      this.person.tell('work-act-skipped', { act: act.id, reason: 'this engine has none' });
      this.#settled.add(act.id);
    } else {
      this.person.follow(offer, standing);
      this.#settled.add(act.id);
    }
  }

  #reopen(): void {
    const rule = REOPENING_RULES[this.#chance.pick(REOPENING_RULES.length)];
    if (rule === undefined) return;
    const places = placesIn(this.plan, rule.at);
    const place = places[this.#chance.pick(Math.max(1, places.length))];
    const data = { rule: rule.id, why: 'it was seen', ...(place && { place: place.id }) };
    const reopened = reopenedBy(this.plan, data);
    if (!reopened.ok) return;
    this.reopenings += 1;
    this.person.tell('work-reopened', data);
    for (const act of reopened.value.acts) this.#settled.delete(act);
  }

  /** Opens an act and whatever is built on it; found here by the edges alone. */
  #open(acts: readonly string[]): void {
    const open = [...acts];
    for (let id = open.pop(); id !== undefined; id = open.pop()) {
      this.#settled.delete(id);
      for (const { to, kind } of this.plan.after.get(id) ?? []) if (kind === 'built-on') open.push(to);
    }
  }
}

const SMALLEST = PLANS.reduce((a, b) => (a[2].acts.length <= b[2].acts.length ? a : b));

describe('a walk that takes any offer', () => {
  it('always ends signed, and never breaks a precedence, whatever is found, skipped, changed or left about', () => {
    let reopenings = 0;
    fc.assert(
      fc.property(fc.array(fc.nat(5000), { minLength: 200, maxLength: 600 }), (choices) => {
        const walk = new Walk(SMALLEST[2], choices);
        let steps = 0;
        while (walk.step()) {
          steps += 1;
          expect(steps, 'the walk ends').toBeLessThan(20 * SMALLEST[2].acts.length);
        }
        const { looksOwed, aidsOut, ready, waiting } = workStanding(walk.plan, walk.person.facts);
        expect([looksOwed, [...aidsOut], ready, waiting]).toEqual([[], [], [], []]);
        reopenings += walk.reopenings;
      }),
      { numRuns: 4 },
    );
    expect(reopenings, 'changes were reported on the way').toBeGreaterThan(0);
  }, 120_000);

  /** Several of the offers of one moment are taken together, as two people at one engine do; what hinders none of the others. */
  it.each(PLANS)('ends signed on %s', (_path, _engine, plan) => {
    fc.assert(
      fc.property(fc.array(fc.nat(9), { minLength: 50, maxLength: 400 }), (choices) => {
        const chance = new Chance(choices);
        const person = new Person(plan);
        const settled = new Set<string>();
        for (let moment = 0; !settled.has('signed-off'); moment += 1) {
          expect(moment, 'the walk ends').toBeLessThan(plan.acts.length);
          takeSome(plan, person, settled, chance);
        }
        expect(settled.size).toBe(plan.acts.length);
        expect(workStanding(plan, person.facts).signedOff).toBe(true);
      }),
      { numRuns: 2 },
    );
  });
});

function takeSome(plan: WorkPlan, person: Person, settled: Set<string>, chance: Chance): void {
  const standing = workStanding(plan, person.facts);
  const all = offers(standing);
  expect(all.length, 'there is always something to do').toBeGreaterThan(0);
  const taken = all.filter((_, index) => index === 0 || chance.pick(10) < 8);
  for (const offer of taken) {
    if (offer.kind === 'second-look') person.look(offer.stand.act);
    if (offer.kind !== 'act') continue;
    const { act } = offer.stand;
    expect(
      (plan.before.get(act.id) ?? []).filter(({ from }) => !settled.has(from)),
      act.id,
    ).toEqual([]);
    settled.add(act.id);
    if (act.answer === 'sign-off') person.follow(offer, standing);
    else person.facts.push(doing(act, person.now));
  }
}
