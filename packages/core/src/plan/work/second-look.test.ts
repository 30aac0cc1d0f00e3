import { describe, expect, it } from 'vitest';
import { doing, fact, Person } from './bench-person.suite.js';
import { judgeWork } from './judge.js';
import type { WorkAct } from './model.js';
import { offers } from './offers.js';
import type { Done, Look } from './second-look.js';
import { lookKind } from './second-look.js';
import { workStanding } from './standing.js';
import { planNamed } from './work.suite.js';

const V8 = planNamed('quernside');
const act = (id: string) => V8.byId.get(id) as WorkAct;
const tightened = doing(act('mains-tightened@mains')) as Done;
const look = (over: Partial<Look['data']> = {}, minutes = 30) =>
  fact(
    'second-look',
    {
      act: 'mains-tightened@mains',
      looker: 'Ada',
      method: 'by paint line',
      result: 'good',
      seen: 'ten lines',
      ...over,
    },
    minutes,
  ) as Look;

describe('a second look', () => {
  it('by another person counts at once, by any method, as independent', () => {
    expect(lookKind(tightened, look({ looker: 'Ben', method: 'by hand' }, 0))).toEqual({
      ok: true,
      value: 'independent',
    });
  });
  it('alone counts after ten minutes by a different method, and is kept as a look alone', () => {
    expect(lookKind(tightened, look({}, 10))).toEqual({ ok: true, value: 'alone' });
  });
  it('alone is refused sooner', () => {
    expect(lookKind(tightened, look({}, 9))).toEqual({ ok: false, fault: { code: 'too-soon', minutes: 9, least: 10 } });
  });
  it('alone is refused by the same method, however it is spelt', () => {
    expect(lookKind(tightened, look({ method: ' By  HAND' }))).toMatchObject({ fault: { code: 'same-method' } });
  });
  it('of the same person under another spelling is never independent', () => {
    expect(lookKind(tightened, look({ looker: ' ada ' }))).toEqual({ ok: true, value: 'alone' });
  });
  it.each([
    [{ looker: ' ' }, 'nobody-looked'],
    [{ method: '' }, 'no-method'],
    [{ seen: '' }, 'nothing-seen'],
  ])('is refused without %o', (over, code) => {
    expect(lookKind(tightened, look(over))).toMatchObject({ fault: { code } });
  });
  it('alone is refused where the times cannot be read', () => {
    expect(lookKind({ ...tightened, at: 'this morning' }, look())).toMatchObject({ fault: { code: 'no-time' } });
  });
});

describe('critical acts', () => {
  // trade-map.md section 8: gallery plugs, rod and main bolts, cam timing, pump and pickup, gasket facing, valve setting, fuel joints.
  it('are the critical list of the trade map', () => {
    expect(new Set(V8.acts.filter(({ critical }) => critical).map(({ rule }) => rule))).toEqual(
      new Set([
        'gallery-plugs-in',
        'hidden-plug-in',
        'mains-tightened',
        'rods-tightened',
        'cam-read',
        'pump-drive-free',
        'pickup-gap',
        'gasket-held-up',
        'valves-spot-checked',
        'fuel-joints-closed',
      ]),
    );
  });
  it('owe a look once they are done, and keep the pan off until it was given', () => {
    const person = new Person(V8);
    const pan = V8.acts.findIndex(({ rule }) => rule === 'pan-tightened');
    for (const one of V8.acts.slice(0, pan)) person.facts.push(doing(one));
    const before = workStanding(V8, person.facts);
    const owed = before.looksOwed.map(({ act: { id } }) => id);
    expect(owed).toContain('mains-tightened@mains');
    const panStand = before.stands.get('pan-tightened@oil-pan');
    expect(panStand?.state).toBe('waiting');
    expect(panStand?.waitsFor.map(({ kind }) => kind)).toContain('second-look');
    expect(offers(before).filter(({ kind }) => kind === 'second-look')).toHaveLength(owed.length);
    for (const { act: one } of before.looksOwed) person.look(one);
    expect(workStanding(V8, person.facts).stands.get('pan-tightened@oil-pan')?.state).toBe('ready');
  });
  it('are shown with who looked: another person or the same one alone', () => {
    const shown = (looker: string) =>
      workStanding(V8, [tightened, look({ looker })]).stands.get('mains-tightened@mains')?.look;
    expect([shown('Ben'), shown('Ada')]).toEqual(['independent', 'alone']);
  });
  it('still owe a look that does not count', () => {
    expect(workStanding(V8, [tightened, look({}, 3)]).stands.get('mains-tightened@mains')?.look).toBe('owed');
  });
  it('are open again, with what was built on them, when the look finds a fault', () => {
    const spins = doing(act('crank-spins'));
    const standing = workStanding(V8, [
      tightened,
      spins,
      look({ looker: 'Ben', result: 'bad', seen: 'one without a line' }),
    ]);
    expect(standing.reopened.map(({ act: { id } }) => id)).toEqual(['mains-tightened@mains', 'crank-spins']);
  });
  it('owe a new look when they were done again', () => {
    const facts = [
      tightened,
      look({ looker: 'Ben' }),
      fact('work-reopened', { rule: 'main-cap-removed', place: 'main-2', why: 'a shell changed' }),
      doing(act('mains-tightened@mains'), 90),
    ];
    expect(workStanding(V8, facts).stands.get('mains-tightened@mains')?.look).toBe('owed');
  });
  it('take a look only when they are done, and only they do', () => {
    expect(judgeWork(V8, [], look())).toMatchObject({ fault: { code: 'not-done' } });
    expect(judgeWork(V8, [tightened], look({ act: 'crank-spins' }))).toMatchObject({ fault: { code: 'not-critical' } });
    expect(judgeWork(V8, [tightened], look({ act: 'nothing' }))).toMatchObject({ fault: { code: 'no-such-act' } });
    expect(judgeWork(V8, [tightened], look({}, 2))).toMatchObject({ fault: { code: 'too-soon' } });
  });
});
