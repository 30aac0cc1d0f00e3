/** A whole engine from bare block to sign-off through the workbench, as the screens ask it. */
import { describe, expect, it } from 'vitest';
import { engineOf, SHEETS } from '../bench.suite.js';
import { workReturnView } from './index.js';
import { playOne } from './player.suite.js';
import { Builder } from './work.suite.js';
import { workAt } from './work-facts.js';

const single = engineOf(SHEETS.single);

describe('a single, built from bare block to sign-off by what the bench view offers', () => {
  const person = new Builder(single);
  const done: string[] = [];
  it('always has an act to offer, and ends signed', () => {
    for (let act = playOne(person); act !== undefined; act = playOne(person)) {
      done.push(act);
      expect(done.length).toBeLessThan(1_000);
    }
    const { standing } = workAt(person.bench);
    expect(standing.signedOff).toBe(true);
    expect(standing.waiting).toHaveLength(0);
    expect(standing.looksOwed).toHaveLength(0);
  });
  it('goes by every joint, every valve and every worksheet of the sheet', () => {
    const { plan, standing } = workAt(person.bench);
    for (const act of plan.acts.filter(({ subject }) => subject !== undefined))
      expect(['done', 'skipped']).toContain(standing.stands.get(act.id)?.state);
    expect(standing.done.filter(({ act }) => act.answer === 'joint-walk').map(({ act }) => act.place.id)).toEqual(
      expect.arrayContaining(single.joints.map(({ id }) => id)),
    );
  });
  it('needs no act twice', () => {
    expect(new Set(done).size).toBe(done.length);
  });
  it('asks nothing more of a person who comes back to signed work', () => {
    expect(workReturnView(person.bench, 'opened-again', person.now())).toBeUndefined();
  });
});
