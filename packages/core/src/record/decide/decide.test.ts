/** Given a record, when somebody wants something recorded: what it records, when it says no, when it has nothing to add. */
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../engine/model.js';
import {
  allPlaced,
  angle,
  bolt,
  doing,
  doNext,
  hole,
  jointOf,
  placed,
  stretch,
  torque,
} from '../../plan/bench.suite.js';
import { engineOf, headJoint } from '../../plan/engine.suite.js';
import { type Fact, walk } from '../../plan/index.js';
import { inch, mm } from '../../quantity/index.js';
import type { EntryData, EntryKind } from '../entry.js';
import { chainOf, idOf, SAMPLES_V1, type Wish } from '../samples.suite.js';
import { foldEntries, type RecordState } from '../state.js';
import { type Command, decide } from './index.js';

// Rules of the bench: common practice, no source.
const wishes = (facts: readonly Fact[]): Wish[] => facts.map(({ kind, data }) => ({ kind, data }));
const given = (facts: readonly Fact[], joint: Joint = headJoint): RecordState =>
  foldEntries(chainOf(wishes(facts)), engineOf({ joints: [joint] }));
const command = <K extends EntryKind>(kind: K, over: Partial<EntryData[K]> = {}): Command =>
  ({ kind, data: { ...SAMPLES_V1[kind], ...over } }) as Command;
const fault = (state: RecordState, wish: Command) => {
  const decision = decide(state, wish);
  return decision.ok ? undefined : decision.fault;
};
const records = (state: RecordState, wish: Command) => expect(decide(state, wish)).toEqual({ ok: true, value: [wish] });
const addsNothing = (state: RecordState, wish: Command) => expect(decide(state, wish)).toEqual({ ok: true, value: [] });

const all = allPlaced(headJoint);
const act = (over: Partial<EntryData['act-done']>): Command => command('act-done', { hole: '2', ...over });

describe('recording a tightening act', () => {
  it('records the act that the walk offers', () => {
    records(given(all), act({}));
    records(given(doNext(headJoint, all, 3)), act({ stage: 2 }));
  });

  it('adds nothing when the same act is recorded already', () => {
    addsNothing(given(doNext(headJoint, all, 3)), act({}));
    addsNothing(given(doNext(headJoint, all, 6)), act({ stage: 2 }));
  });

  // given caps with the first stage missing, when the final stage is wanted: the example of the style guide.
  it('refuses a stage while an earlier one is missing', () => {
    expect(fault(given(doNext(headJoint, all, 2)), act({ stage: 2, hole: '3' }))).toEqual({
      code: 'stage-skipped',
      hole: '3',
      stage: 2,
      missing: 1,
    });
  });

  it('refuses another fastener than the one whose turn it is', () => {
    expect(fault(given(all), act({ hole: '1' }))).toEqual({ code: 'out-of-order', given: '1/1', expected: '1/2' });
  });

  it('refuses before every hole has its right fastener', () => {
    expect(fault(given(all.slice(1)), act({}))).toMatchObject({
      code: 'blocked',
      blocks: [{ code: 'fastener-missing', hole: '1' }],
    });
  });

  it('refuses while a gasket check is bad', () => {
    const bad: Fact = { kind: 'gasket-checked', data: { head: 'top', item: 'faces', result: 'bad', seen: 'scratch' } };
    expect(fault(given([...all, bad]), act({}))).toMatchObject({ code: 'blocked', blocks: [{ code: 'gasket-bad' }] });
  });

  it('refuses an answer that does not fit the act', () => {
    expect(fault(given(all), act({ seen: 'turned-and-marked' }))).toEqual({
      code: 'wrong-answer',
      seen: 'turned-and-marked',
      valid: ['reached'],
    });
  });

  it('refuses another round or fastener than the one on offer', () => {
    expect(fault(given(all), act({ round: 2 }))).toMatchObject({
      code: 'other-fastener',
      expected: { instance: 1, round: 1 },
    });
    expect(fault(given(all), act({ instance: 2 }))).toMatchObject({ code: 'other-fastener' });
  });

  it('refuses an act, a joint and a stage that the sheet does not have', () => {
    expect(fault(given(all), act({ hole: '99' }))).toMatchObject({ code: 'unknown-act', stages: 2 });
    expect(fault(given(all), act({ joint: 'sump' }))).toEqual({
      code: 'unknown-joint',
      joint: 'sump',
      valid: ['head'],
    });
  });

  it('says that the joint is finished', () => {
    expect(fault(given(doNext(headJoint, all, 6)), act({ round: 2 }))).toEqual({
      code: 'joint-finished',
      joint: 'head',
    });
  });

  it('needs the engine of a loaded sheet', () => {
    expect(fault(foldEntries(chainOf(wishes(all))), act({}))).toEqual({ code: 'no-sheet' });
  });

  it('wants the new fastener in its hole before it goes on', () => {
    const doubted: Fact = {
      kind: 'fastener-doubted',
      data: { joint: 'head', stage: 1, hole: '2', instance: 1, why: 'x' },
    };
    const state = given([...doNext(headJoint, all, 2), doubted]);
    expect(fault(state, act({ hole: '3' }))).toMatchObject({ code: 'place-first', hole: '2', instance: 2 });
  });

  it('never takes a turn by angle again after its record was struck out, before the mark was looked for', () => {
    const joint = jointOf({ holes: [hole('1'), hole('2')], stages: [angle(90)] });
    const facts = doNext(joint, allPlaced(joint), 1);
    const struck = [...wishes(facts), { kind: 'struck-out', data: { entry: idOf(3), reason: 'wrong tap' } }];
    const state = foldEntries(chainOf(struck), engineOf({ joints: [joint] }));
    const turned = act({ hole: '1', target: '90 deg', seen: 'turned-and-marked' });
    expect(fault(state, turned)).toEqual({ code: 'look-for-mark', stage: 1, hole: '1' });
    expect(decide(state, act({ hole: '1', seen: 'mark-found' })).ok).toBe(true);
  });

  describe('by stretch', () => {
    const joint = jointOf({ holes: [hole('1')], stages: [stretch(0.0135, 0.0185)] });
    const state = given(allPlaced(joint), joint);
    const stretched = (seen: 'within' | 'short' | 'beyond', inches: number) =>
      act({ hole: '1', seen, reading: { text: `${inches} in`, value: inch(inches), unit: 'm' } });

    it('needs the reading', () => {
      expect(fault(state, act({ hole: '1', seen: 'within' }))).toEqual({ code: 'reading-needed', hole: '1' });
    });

    it.each([
      [0.0134, 'short'],
      [0.0135, 'within'],
      [0.0185, 'within'],
      [0.0186, 'beyond'],
    ] as const)('%f in reads as %s', (inches, seen) => {
      records(state, stretched(seen, inches));
      const other = seen === 'within' ? 'short' : 'within';
      expect(fault(state, stretched(other, inches))).toMatchObject({ code: 'reading-disagrees', says: seen });
    });
  });
});

describe('placing a fastener', () => {
  const place = (over: Partial<EntryData['fastener-placed']> = {}): Command =>
    ({ kind: 'fastener-placed', data: { ...placed(headJoint, '1').data, ...over } }) as Command;

  it('records the right one, once', () => {
    records(given([]), place());
    addsNothing(given([placed(headJoint, '1')]), place());
  });

  it('refuses a wrong one, with what is wrong with it', () => {
    expect(fault(given([]), place({ fastener: 'short' }))).toMatchObject({
      code: 'wrong-fastener',
      judgement: { verdict: 'too-short' },
    });
    expect(fault(given([]), place({ onThread: 'sealer' }))).toMatchObject({
      judgement: { verdict: 'wrong-on-thread' },
    });
  });

  it('refuses a second one in the same hole, and a hole that is not there', () => {
    expect(fault(given([placed(headJoint, '1')]), place({ condition: 'new' }))).toMatchObject({
      code: 'already-placed',
    });
    expect(fault(given([]), place({ hole: '9' }))).toMatchObject({ code: 'unknown-hole', valid: ['1', '2', '3'] });
    expect(fault(given([]), place({ instance: 2 }))).toMatchObject({ code: 'other-fastener' });
  });

  it('wants a new one where the last was turned by angle and in doubt', () => {
    const joint = jointOf({ holes: [hole('1')], stages: [torque(30), angle(90)] });
    const doubted: Fact = {
      kind: 'fastener-doubted',
      data: { joint: 'head', stage: 2, hole: '1', instance: 1, why: 'x' },
    };
    const state = given([...doNext(joint, allPlaced(joint), 1), doubted], joint);
    expect(fault(state, place({ instance: 2 }))).toMatchObject({ code: 'must-be-new' });
    expect(fault(state, place({ instance: 2, condition: 'used' }))).toMatchObject({ code: 'must-be-new' });
    records(state, place({ instance: 2, condition: 'new' }));
  });

  it('wants the old one measured where the sheet lets it be used up to a length', () => {
    const lengthLimit = { text: '95.4 mm', value: mm(95.4), from: headJoint.stages[0]!.from };
    const kind = bolt({ use: 'reuse-to-length', lengthLimit });
    const joint = jointOf({ holes: [hole('1')], fasteners: [kind], stages: [angle(90)] });
    const doubted: Fact = {
      kind: 'fastener-doubted',
      data: { joint: 'head', stage: 1, hole: '1', instance: 1, why: 'x' },
    };
    const state = given([...allPlaced(joint), doubted], joint);
    const length = (value: number) => ({ text: `${value} mm`, value: mm(value), unit: 'm' }) as const;
    expect(fault(state, place({ instance: 2, condition: 'used' }))).toMatchObject({ code: 'must-be-measured' });
    records(state, place({ instance: 2, condition: 'used', length: length(95.4) }));
    expect(fault(state, place({ instance: 2, condition: 'used', length: length(95.5) }))).toMatchObject({
      judgement: { verdict: 'past-limit' },
    });
  });
});

describe('around a joint', () => {
  it('records a gasket answer, adds nothing for the same again, and takes another answer', () => {
    const good = command('gasket-checked');
    records(given([]), good);
    addsNothing(given([good as Fact]), good);
    records(given([good as Fact]), command('gasket-checked', { result: 'bad' }));
    const opened: Fact = { kind: 'joint-opened', data: { joint: 'head', reason: 'leak' } };
    records(given([good as Fact, opened]), good);
  });

  it('refuses a gasket item or head that is not there', () => {
    expect(fault(given([]), command('gasket-checked', { item: 'opening:x' }))).toMatchObject({ code: 'unknown-item' });
    expect(fault(given([]), command('gasket-checked', { head: 'x' }))).toMatchObject({
      code: 'unknown-head',
      valid: ['top'],
    });
  });

  it('records a doubt about the fastener that is in the hole, and only that', () => {
    const doubt = command('fastener-doubted', { stage: 1 });
    records(given(all), doubt);
    addsNothing(given([...all, doubt as Fact]), doubt);
    expect(fault(given(all), command('fastener-doubted', { instance: 3 }))).toMatchObject({ code: 'other-fastener' });
    expect(fault(given([]), doubt)).toMatchObject({ code: 'other-fastener' });
  });

  it('records a return', () => {
    records(given(doNext(headJoint, all, 2)), command('walk-resumed'));
    expect(fault(given([]), command('walk-resumed', { joint: 'x' }))).toMatchObject({ code: 'unknown-joint' });
  });

  it('opens a joint that holds something, and adds nothing where it is open already', () => {
    const open = command('joint-opened');
    records(given(all), open);
    addsNothing(given([]), open);
    addsNothing(given([...all, open as Fact]), open);
  });

  it('skips an act of the sheet with a reason, once', () => {
    const skip = command('skipped', { what: 'act:head/1/2' });
    records(given(all), skip);
    addsNothing(given([...all, skip as Fact]), skip);
    expect(fault(given(all), command('skipped', { what: 'act:head/7/2' }))).toMatchObject({ code: 'unknown-item' });
    const opened: Fact = { kind: 'joint-opened', data: { joint: 'head', reason: 'leak' } };
    records(given([...all, skip as Fact, opened]), skip);
    records(given([]), command('skipped', { what: 'second look at the dowels' }));
  });
});

describe('parts and valves', () => {
  it('records a tag once, and a fitting once', () => {
    const tag = command('part-tagged');
    const fit = command('part-fitted', { end: 'cup up', face: 'dot to the front' });
    records(given([]), tag);
    addsNothing(given([tag as Fact]), tag);
    records(given([tag as Fact]), fit);
    addsNothing(given([tag as Fact, fit as Fact]), fit);
  });

  it('refuses a used lifter in another bore', () => {
    const to = { cylinder: 2, kind: 'intake', index: 1 } as const;
    expect(fault(given([]), command('part-fitted', { to }))).toMatchObject({ code: 'used-part-elsewhere', to });
    records(given([]), command('part-fitted', { to, from: 'new' }));
  });

  it('refuses a tag on a valve or part that the engine does not have', () => {
    const valve = { cylinder: 9, kind: 'intake', index: 1 } as const;
    expect(fault(given([]), command('part-tagged', { valve }))).toMatchObject({ code: 'unknown-valve' });
    expect(fault(given([]), command('part-tagged', { part: 'shim' }))).toMatchObject({ code: 'unknown-part' });
  });

  it('records a valve set, once, and again with other figures', () => {
    const set = command('valve-set');
    records(given([]), set);
    addsNothing(given([set as Fact]), set);
    records(given([set as Fact]), command('valve-set', { turns: 0.5 }));
    expect(fault(given([]), command('valve-set', { valve: { cylinder: 3, kind: 'intake', index: 1 } }))).toMatchObject({
      code: 'unknown-valve',
    });
  });

  it('checks a valve again only after it was set', () => {
    const again = command('valve-rechecked');
    expect(fault(given([]), again)).toMatchObject({ code: 'not-set-yet' });
    const set = command('valve-set') as Fact;
    records(given([set]), again);
    addsNothing(given([set, again as Fact]), again);
  });

  it('records a measured shim', () => records(given([]), command('shim-measured')));
  it('records a spare shim', () => records(given([]), command('spare-shim')));
});

describe('the record itself', () => {
  it('strikes out an entry that exists, with a reason, once', () => {
    const state = given(all);
    records(state, command('struck-out', { entry: idOf(2) }));
    expect(fault(state, command('struck-out', { entry: idOf(77) }))).toEqual({
      code: 'unknown-entry',
      entry: idOf(77),
    });
    const struck = foldEntries(chainOf([...wishes(all), command('struck-out', { entry: idOf(2) })]), engineOf());
    addsNothing(struck, command('struck-out', { entry: idOf(2), reason: 'again' }));
  });

  it.each(['struck-out', 'joint-opened', 'skipped', 'sheet-adopted'] as const)('%s needs a reason', (kind) => {
    expect(fault(given(all), command(kind, { reason: '  ' }))).toEqual({ code: 'reason-needed' });
  });

  it('adopts a sheet once, and another one after it', () => {
    const sheet = command('sheet-adopted');
    records(given([]), sheet);
    addsNothing(foldEntries(chainOf([sheet])), sheet);
    records(foldEntries(chainOf([sheet])), command('sheet-adopted', { text: 'gudgeon: 1\nname: other\n' }));
  });

  it('takes every note, and no data of another shape', () => {
    records(given([]), command('note'));
    expect(fault(given([]), { kind: 'note', data: { about: 1 } } as never)).toMatchObject({ code: 'wrong-shape' });
    expect(fault(given([]), { kind: 'bored', data: {} } as never)).toMatchObject({ code: 'unknown-kind' });
  });

  it('takes a whole joint from the first fastener to the last act, command by command', () => {
    let facts: Fact[] = [];
    for (let steps = 0; steps < 20; steps += 1) {
      const offer = walk(headJoint, facts).current;
      if (offer === undefined) break;
      const wish = doing(headJoint, offer) as Command;
      records(given(facts), wish);
      facts = [...facts, wish as Fact];
    }
    expect(walk(headJoint, facts).finished).toBe(true);
    expect(facts).toHaveLength(3 + 6);
  });
});
