import { describe, expect, it } from 'vitest';
import { doing, fact } from './bench-person.suite.js';
import { offers, type WorkOffer } from './offers.js';
import { workStanding } from './standing.js';
import { planNamed } from './work.suite.js';

const V8 = planNamed('quernside');
const doneTo = (rule: string) =>
  V8.acts.slice(0, V8.acts.findIndex((one) => one.rule === rule) + 1).map((one) => doing(one));
type ActOffer = Extract<WorkOffer, { kind: 'act' }>;
const acts = (facts: Parameters<typeof workStanding>[1], minutes?: number) =>
  offers(workStanding(V8, facts), minutes).filter((one): one is ActOffer => one.kind === 'act');
const offered = (facts: Parameters<typeof workStanding>[1], rule: string, minutes?: number) =>
  acts(facts, minutes).find(({ stand }) => stand.act.rule === rule);

describe('what can be done now', () => {
  it('begins with reading the numbers', () => {
    expect(acts([])[0]?.stand.act.id).toBe('numbers-read');
  });
  it('puts first what fits in the time there is', () => {
    const ten = acts([], 10);
    const fits = ten.map((one) => one.fits);
    expect(fits).toContain(false);
    expect(fits.indexOf(false)).toBe(fits.lastIndexOf(true) + 1);
    expect(ten.filter((one) => one.fits).every(({ pause }) => pause.minutesToSafe <= 10)).toBe(true);
  });
  it('stays with the operation that is under way', () => {
    const here = acts([
      ...doneTo('rust-kept-off'),
      doing(V8.acts.find(({ rule }) => rule === 'gauges-checked') as never),
    ]);
    expect(here[0]?.stand.act.operation).toBe('measuring');
  });
  it('says that a laid-in crank is no place to stop, and counts the way to the next one', () => {
    const crank = offered(doneTo('seal-half-in'), 'crank-laid-in');
    expect(crank?.pause.safeAfter).toBe(false);
    expect(crank?.pause.words).toContain('put the caps on now');
    // The crank 15, five caps of 4, the thrust tap 5, and the walk of ten bolts through its stages.
    const walk = V8.byId.get('mains-tightened@mains')?.minutes ?? 0;
    expect(crank?.pause.minutesToSafe).toBe(15 + 5 * 4 + 5 + walk);
    expect(offered(doneTo('seal-half-in'), 'crank-laid-in', 30)?.fits).toBe(false);
    expect(offered(doneTo('seal-half-in'), 'crank-laid-in', 120)?.fits).toBe(true);
  });
  it('knows a good place to stop', () => {
    expect(offered(doneTo('mains-tightened'), 'crank-spins')?.pause).toMatchObject({
      safeAfter: true,
      minutesToSafe: 5,
    });
  });
});

describe('what waits', () => {
  it('names the acts that block it, with the reason', () => {
    const blocked = workStanding(V8, doneTo('order-written')).stands.get('bore-honed@3');
    expect(blocked?.waitsFor.map((one) => one.kind === 'act' && [one.act, one.why])).toContainEqual([
      'mains-honed',
      'bores are set square to the line of the mains',
    ]);
  });
  it('keeps apart what lies at the shop, and what has not been delivered', () => {
    const standing = workStanding(V8, doneTo('fasteners-final'));
    expect(standing.away.shop.map(({ act }) => act.rule)).toContain('mains-honed');
    expect(standing.ready.map(({ act }) => act.rule)).not.toContain('mains-honed');
    expect(workStanding(V8, doneTo('parts-ordered')).away.parts.map(({ act }) => act.rule)).toEqual(['parts-counted']);
    const last = offers(standing).at(-1);
    expect(last?.kind === 'act' && last.awaits).toBe('shop');
  });
  it('offers an aid that is still out', () => {
    const facts = [fact('mock-up-aid-out', { aid: 'clay', count: 1, where: 'cylinder 1' })];
    expect(offers(workStanding(V8, facts))).toContainEqual({ kind: 'aid', aid: 'clay', count: 1 });
  });
});
