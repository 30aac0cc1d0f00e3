import { describe, expect, it } from 'vitest';
import { DONE_AGAIN, reopenedBy } from '../../plan/index.js';
import { actView, openBench, reopenedPreview, reopeningViews, workAt } from '../index.js';
import { ENGINES, keeping } from './work-scribe.suite.js';

describe('what may have changed', () => {
  it.each(ENGINES)('is offered only where the plan takes it, on %s', (_, engine) => {
    const bench = openBench(engine, []);
    const { plan } = workAt(bench);
    const views = reopeningViews(bench);
    for (const { rule, places } of views)
      for (const place of places.length === 0 ? [undefined] : places.map(({ id }) => id))
        expect(reopenedBy(plan, { rule, why: '', ...(place !== undefined && { place }) }).ok, `${rule} ${place}`).toBe(
          true,
        );
    expect(views.length).toBeGreaterThan(20);
  });
  it('is offered at the places of its kind, by their names', () => {
    const caps = reopeningViews(openBench(ENGINES[0]![1], [])).find(({ rule }) => rule === 'main-cap-removed');
    expect(caps?.places.map(({ name }) => name)).toEqual(['main 1', 'main 2', 'main 3', 'main 4', 'main 5']);
  });
});

describe('what a finding opens again', () => {
  const shells = [1, 2, 3, 4, 5].map((main) => `main-shell-in@main-${main}`);
  const scribe = keeping('v8')
    .beginAt('crankshaft')
    .done('saddles-wiped', ...shells, 'seal-half-in', 'crank-laid-in');

  it('is told before it is recorded, exactly as it then is', () => {
    const told = reopenedPreview(scribe.bench, 'main-shell-changed', 'main-2')!;
    expect(told.acts.map(({ id }) => id)).toContain('main-shell-in@main-2');
    expect(told.acts.map(({ id }) => id)).not.toContain('main-shell-in@main-4');
    expect(told.words).toBe(`${told.acts.length} finished acts are open again.`);
    const after = keeping('v8')
      .beginAt('crankshaft')
      .done('saddles-wiped', ...shells, 'seal-half-in', 'crank-laid-in');
    after.wish({ kind: 'reopen', rule: 'main-shell-changed', place: 'main-2', why: 'scored' });
    expect(workAt(after.bench).standing.reopened.map(({ act }) => act.id)).toEqual(told.acts.map(({ id }) => id));
    expect(actView(after.bench, 'main-shell-in@main-2')?.again?.why).toBe('scored');
  });
  it('is nothing where nothing that is finished rests on it', () => {
    expect(reopenedPreview(keeping('v8').bench, 'pan-removed')).toEqual({
      words: 'Nothing that is finished rests on it: nothing is open again.',
      acts: [],
    });
  });
  it('may be a single act that is done again', () => {
    const told = reopenedPreview(scribe.bench, DONE_AGAIN, 'crank-laid-in');
    expect(told).toMatchObject({ words: 'One finished act is open again.', acts: [{ id: 'crank-laid-in' }] });
  });
  it('is not told for a finding or a place that the plan does not know', () => {
    expect(reopenedPreview(scribe.bench, 'lightning')).toBeUndefined();
    expect(reopenedPreview(scribe.bench, 'main-cap-removed', 'main-9')).toBeUndefined();
  });
});
