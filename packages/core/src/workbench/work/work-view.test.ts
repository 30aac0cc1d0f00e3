import { describe, expect, it } from 'vitest';
import { Scribe } from '../bench.suite.js';
import { nextAction, openBench, operationView, workAt, workStandingOf, workView } from '../index.js';
import type { WorkView } from '../work-views.js';
import { ENGINES, keeping } from './work-scribe.suite.js';

const BENCHES = ENGINES.map(([sheet, engine]) => [sheet, openBench(engine, [])] as const);
const offers = (view: WorkView) => view.now.flatMap((group) => group.offers);

describe('the whole work', () => {
  it.each(BENCHES)('begins with reading the numbers, and has done nothing yet, on %s', (_, bench) => {
    const view = workView(bench);
    expect(offers(view)[0]?.act).toMatchObject({ id: 'numbers-read', state: 'ready' });
    expect(view.progress.done).toBe(0);
    expect(view.signedOff).toBe(false);
  });
  it.each(BENCHES)('has every act of the plan in one phase, on %s', (_, bench) => {
    const { phases, progress } = workView(bench);
    expect(phases.reduce((sum, phase) => sum + phase.progress.of, 0)).toBe(progress.of);
    expect(progress.of).toBe(workAt(bench).plan.acts.length);
  });
  it('offers one act of a kind, and counts the others', () => {
    const compression = offers(workView(BENCHES[0]![1])).filter(({ act }) => act.id.startsWith('compression-found'));
    expect(compression.map(({ act, alike }) => [act.place, alike])).toEqual([['cylinder 1', 7]]);
  });
  it('offers each worksheet once, and no more of them than a page holds', () => {
    const scribe = keeping('v8').beginAt('measuring').done('gauges-checked');
    const group = workView(scribe.bench).now.find(({ operation }) => operation === 'measuring')!;
    const { plan, standing } = workAt(scribe.bench);
    const open = new Set(
      standing.ready.flatMap(({ act }) => (act.subject?.kind === 'worksheet' ? [act.subject.feature] : [])),
    );
    expect(group.offers).toHaveLength(12);
    expect(group.offers.length + (group.more ?? 0)).toBe(open.size);
    expect(plan.byId.size).toBeGreaterThan(1000);
  });
  it('puts first what fits into ten minutes, and says so of what does not', () => {
    const fits = offers(workView(keeping('v8').beginAt('rear-seal').bench, { minutes: 10 })).map((one) => one.fits);
    expect(fits[0]).toBe(true);
    expect(offers(workView(keeping('v8').bench, { minutes: 4 })).some((one) => !one.fits)).toBe(true);
  });
  it('says that nobody stops with the crank laid in, and how long it is to the next place to stop', () => {
    const shells = [1, 2, 3, 4, 5].map((main) => `main-shell-in@main-${main}`);
    const scribe = keeping('v8')
      .beginAt('crankshaft')
      .done('saddles-wiped', ...shells, 'seal-half-in');
    const offer = offers(workView(scribe.bench)).find(({ act }) => act.id === 'crank-laid-in');
    expect(offer).toMatchObject({ safeAfter: false });
    expect(offer?.pause).toMatch(/^Do not stop right after it: .*put the caps on now.* About \d+ min/);
  });
  it('counts what was left out as neither done nor open', () => {
    const scribe = keeping('v8').beginAt('crankshaft').done('saddles-wiped');
    const view = workView(scribe.bench);
    expect(view.progress.of + view.skips.length).toBe(workAt(scribe.bench).plan.acts.length);
    expect(view.progress.words).toBe(`1 of ${view.progress.of} done, ${view.skips.length} left out`);
    expect(view.phases[0]?.progress.words).toMatch(/^all \d+ left out$/);
  });
  it('keeps apart what lies at the shop, what was opened again, and which aids are still out', () => {
    const scribe = keeping('v8').beginAt('machining').done('sizes-decided', 'order-written', 'fasteners-final');
    scribe.wish({ kind: 'aid-out', aid: 'checking spring', count: 2, where: 'cylinder 1' });
    scribe.wish({ kind: 'again', act: 'fasteners-final', why: 'two studs were short' });
    const view = workView(scribe.bench);
    expect(view.away.shop.map(({ id }) => id)).toContain('block-machined');
    expect(view.aids).toEqual([{ aid: 'checking spring', count: 2, where: 'cylinder 1' }]);
    expect(view.reopened.map(({ id }) => id)).toContain('fasteners-final');
  });
  it('shows the card of whoever stopped until work goes on', () => {
    const scribe = keeping('v8').beginAt('crankshaft');
    const card = { halfDone: 'saddles wiped on one side', loose: '', missing: '', uncovered: 'crank', doubt: '' };
    scribe.wish({ kind: 'leave', ...card });
    expect(workView(scribe.bench).left).toMatchObject({
      by: 'Ada',
      lines: [
        { about: 'half done', text: 'saddles wiped on one side' },
        { about: 'not oiled or covered', text: 'crank' },
      ],
    });
    expect(workView(scribe.done('saddles-wiped').bench).left).toBeUndefined();
  });
});

describe('an operation', () => {
  it.each(BENCHES)('has each of its acts once, in chunks of at most nine, on %s', (_, bench) => {
    const { plan } = workAt(bench);
    for (const { id } of plan.operations) {
      const { chunks } = operationView(bench, id)!;
      expect(chunks.flatMap(({ acts }) => acts.map((act) => act.id))).toEqual(
        plan.acts.filter(({ operation }) => operation === id).map((act) => act.id),
      );
      expect(Math.max(...chunks.map(({ acts }) => acts.length))).toBeLessThanOrEqual(9);
    }
  });
  it('is told with what goes on which surface, its tools, cautions and mistakes, and what comes before it', () => {
    const { operation } = operationView(BENCHES[0]![1], 'crankshaft')!;
    expect(operation.consumables.map(({ surface }) => surface)).toContain('shell back, housing, saddle');
    expect(operation.cautions.length * operation.mistakes.length * operation.tools.length).toBeGreaterThan(0);
    expect(operation.waitsFor.length).toBeGreaterThan(0);
  });
  it('names a chunk by its act and places where it is one act at many', () => {
    const { chunks } = operationView(BENCHES[0]![1], 'prime')!;
    const valves = chunks.filter(({ acts }) => acts.every(({ id }) => id.startsWith('oil-at-valve')));
    expect(valves.map(({ title }) => title)).not.toEqual([]);
    for (const { title, acts } of valves)
      expect(title).toBe(`Look for oil at this rocker or cam lobe: ${acts[0]!.place} to ${acts.at(-1)!.place}`);
  });
  it('is unknown where the engine has none of that name', () => {
    expect(operationView(BENCHES[0]![1], 'polishing')).toBeUndefined();
  });
});

describe('the next thing on the first page', () => {
  it('is as before for a log that keeps no whole work', () => {
    const scribe = new Scribe(ENGINES[0]![1]);
    expect(nextAction(scribe.bench).place).toBe('gasket/left');
    expect(workStandingOf(scribe.bench)).toMatchObject({ begun: false, finished: false });
  });
  it('is the first act that can be begun, at the bench', () => {
    const scribe = keeping('v8').beginAt('crankshaft');
    expect(nextAction(scribe.bench)).toEqual({
      words: 'Wipe saddles, caps and shell backs dry',
      place: 'bench',
      finished: false,
    });
    expect(workStandingOf(scribe.bench).begun).toBe(true);
  });
  it('is the worksheet where a worksheet is next', () => {
    const scribe = keeping('v8').beginAt('measuring').done('gauges-checked');
    expect(nextAction(scribe.bench).place).toMatch(/^measure\//);
  });
});
