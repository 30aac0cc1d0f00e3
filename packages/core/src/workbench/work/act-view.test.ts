import { describe, expect, it } from 'vitest';
import { findUnit } from '../../quantity/index.js';
import { SHEETS } from '../bench.suite.js';
import { actView, answeredBy, openBench, operationView, workAt } from '../index.js';
import { HELPED_RULES } from './act-opens.js';
import { KIND_ASKED } from './act-units.js';
import { BOLT_CARDS } from './fastener-register.js';
import { REGISTER_RULES } from './part-register.js';
import { STOOD_RULES } from './stood-lines.js';
import { ENGINES, keeping } from './work-scribe.suite.js';

const BENCHES = ENGINES.map(([sheet, engine]) => [sheet, openBench(engine, [])] as const);
const RULES = new Set(BENCHES.flatMap(([, bench]) => workAt(bench).plan.acts.map(({ rule }) => rule)));
const VIEWS = BENCHES.map(
  ([sheet, bench]) => [sheet, bench, workAt(bench).plan.acts.map(({ id }) => actView(bench, id)!)] as const,
);

describe('a figure that an act asks for', () => {
  it.each(VIEWS)('may carry only units of its kind, on %s', (_, __, acts) => {
    for (const { asked, units, id } of acts) {
      if (asked === undefined || asked === 'count') expect(units, id).toEqual([]);
      else
        expect(
          units.map((unit) => findUnit(KIND_ASKED[asked], unit)?.name),
          id,
        ).toEqual(units);
    }
  });
  it('comes in the unit of the device first', () => {
    const bench = BENCHES[0]![1];
    const first = (act: string, length: 'mm' | 'in') => actView(bench, act, { length })?.units[0];
    expect([first('crank-float', 'mm'), first('crank-float', 'in')]).toEqual(['mm', 'in']);
    expect([first('oil-filled', 'mm'), first('oil-filled', 'in')]).toEqual(['L', 'US qt']);
    expect([first('turning-drag', 'mm'), first('turning-drag', 'in')]).toEqual(['N·m', 'lbf·ft']);
  });
  it('is told as the trade tells it: a loss in percent, cranking in seconds, compression to one', () => {
    const bench = BENCHES[0]![1];
    expect(actView(bench, 'leakage-read@1')?.units).toEqual(['%']);
    expect(actView(bench, 'started')?.units[0]).toBe('s');
    expect(actView(bench, 'compression-figured@1')?.units[0]).toBe(':1');
  });
});

describe('the screen of an act', () => {
  const SCREENS =
    /^(measure\/[a-z-]+|tighten\/.+|fasteners\/.+|gasket\/.+|valves|parts|fit|order|combination(\/[a-z-]+)?|start(\/(oil|ignition|go))?|run-in|tests|service|registers|record)$/;
  it.each(VIEWS)('answers it exactly where its own record finishes it, on %s', (_, bench, acts) => {
    const { plan } = workAt(bench);
    for (const { id, opens } of acts) {
      expect(opens?.answers ?? false, id).toBe(answeredBy(bench, plan.byId.get(id)!) !== undefined);
      if (opens !== undefined) expect(opens.place, id).toMatch(SCREENS);
    }
  });
  it('is that of its worksheet, its joint, its valve, its gasket', () => {
    const place = (act: string) => actView(BENCHES[0]![1], act)?.opens?.place;
    expect(BENCHES[0]![0]).toBe(SHEETS.v8);
    expect(place('worksheet@cylinder-bore/3')).toBe('measure/cylinder-bore');
    expect(place('mains-tightened@mains')).toBe('tighten/mains');
    expect(place('head-bolts-laid-out@left')).toBe('fasteners/head-left');
    expect(place('gasket-held-up@left')).toBe('gasket/left');
    expect(place('valve-set@1-intake-1')).toBe('valves');
  });
  it('is named for rules that the plan has', () => {
    const named = [...HELPED_RULES, ...STOOD_RULES, ...REGISTER_RULES, ...BOLT_CARDS];
    expect(named.filter((rule) => !RULES.has(rule))).toEqual([]);
  });
});

describe('what is recorded of an act', () => {
  it('is shown as it was told, with who and when and how', () => {
    const scribe = keeping('v8').beginAt('crankshaft').done('saddles-wiped');
    expect(actView(scribe.bench, 'saddles-wiped')).toMatchObject({
      state: 'done',
      given: { words: 'as it was felt', method: 'by hand', result: 'good', by: 'Ada', at: '2026-01-01 10:00' },
    });
  });
  it('stays in sight where it was found bad, and the act stays open', () => {
    const scribe = keeping('v8').beginAt('crankshaft');
    const answer = { kind: 'felt-or-seen', words: 'lint behind the shell', result: 'bad' } as const;
    scribe.wish({ kind: 'done', act: 'saddles-wiped', answer, method: 'by eye' });
    expect(actView(scribe.bench, 'saddles-wiped')).toMatchObject({
      state: 'ready',
      given: { words: 'lint behind the shell', result: 'bad' },
    });
  });
  it('tells what was left out and why, and never as done', () => {
    const view = actView(keeping('v8').beginAt('crankshaft').bench, 'block-washed');
    expect(view).toMatchObject({ state: 'skipped', skipped: { reason: 'the book was begun late', by: 'Ada' } });
    expect(view?.given).toBeUndefined();
  });
  it('keeps the words beside a photo', () => {
    const scribe = keeping('v8').beginAt('rear-seal');
    const acts = operationView(scribe.bench, 'pistons-on-rods')!.chunks.flatMap((chunk) => chunk.acts);
    scribe.done(
      ...acts
        .filter(({ place }) => place === 'cylinder 1')
        .slice(0, -1)
        .map(({ id }) => id),
    );
    const answer = {
      kind: 'photo',
      photo: 'b'.repeat(64),
      words: 'ends a third of a turn apart',
      result: 'good',
    } as const;
    scribe.wish({ kind: 'done', act: 'ring-ends-placed@1', answer, method: '' });
    expect(actView(scribe.bench, 'ring-ends-placed@1')?.given).toMatchObject({
      words: 'ends a third of a turn apart',
      photo: 'b'.repeat(64),
    });
  });
  it('of a critical act owes a second look, and tells whose look it was', () => {
    const scribe = keeping('v8').beginAt('plugs-and-liners').done('plugs-counted', 'gallery-plugs-in');
    expect(actView(scribe.bench, 'gallery-plugs-in')).toMatchObject({ critical: true, look: 'owed' });
    scribe.wish({
      kind: 'look',
      act: 'gallery-plugs-in',
      looker: 'Ben',
      method: 'by lamp',
      result: 'good',
      seen: 'six',
    });
    expect(actView(scribe.bench, 'gallery-plugs-in')).toMatchObject({
      look: 'independent',
      looked: { looker: 'Ben', method: 'by lamp', seen: 'six' },
    });
  });
  it('says why it is open again', () => {
    const scribe = keeping('v8').beginAt('crankshaft').done('saddles-wiped');
    scribe.wish({ kind: 'reopen', rule: 'crank-removed', why: 'a burr was seen' });
    expect(actView(scribe.bench, 'saddles-wiped')).toMatchObject({
      state: 'ready',
      again: { title: 'The crank came out', why: 'a burr was seen' },
    });
  });
  it('shows an act that the person put in, with the reason', () => {
    const scribe = keeping('v8').beginAt('crankshaft');
    const own = { does: 'Weigh the crank.', ask: 'Its weight', answer: 'value', asked: 'mass' } as const;
    scribe.wish({
      kind: 'add',
      after: 'saddles-wiped',
      ...own,
      minutes: 5,
      critical: true,
      why: 'bought without a maker',
    });
    expect(actView(scribe.bench, 'own-1')).toMatchObject({
      added: { why: 'bought without a maker' },
      critical: true,
      units: ['g', 'kg'],
      state: 'waiting',
    });
  });
});

describe('an act that waits', () => {
  it('names what it waits for, where, and why', () => {
    const view = actView(keeping('v8').beginAt('machining').bench, 'bore-honed@3');
    expect(view?.state).toBe('waiting');
    expect(view?.waitsFor.map(({ words }) => words)).toContain(
      'Shop: main bores honed in line, with the final fasteners: bores are set square to the line of the mains',
    );
  });
  it('tells the same wait at many places once, with their number', () => {
    const waits = actView(keeping('v8').bench, 'readings-looked-through')?.waitsFor ?? [];
    expect(waits.length).toBeLessThan(5);
    expect(waits.some(({ words }) => /\(and \d+ more like it\)$/.test(words))).toBe(true);
  });
  it('on a second look or an aid says so', () => {
    const scribe = keeping('v8').beginAt('pump-and-pan');
    scribe.wish({ kind: 'aid-out', aid: 'clay', count: 2, where: 'cylinder 1' });
    const pan = workAt(scribe.bench).plan.acts.find(({ rule }) => rule === 'pan-tightened')!;
    const waits = actView(scribe.bench, pan.id)?.waitsFor ?? [];
    expect(waits).toContainEqual({ kind: 'aid', words: '2 × clay not returned: it may still be inside' });
  });
});
