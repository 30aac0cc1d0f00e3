import { describe, expect, it } from 'vitest';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { assess } from '../assess.js';
import { EXACT, readAll, readingsOf } from '../assess.suite.js';
import { balanceOf } from './balance.js';
import { figure, makeupOf } from './makeup.js';
import { answerIn, bareEngine, exact } from './rows.suite.js';
import { springsOf } from './springs.js';

const vee = engineOf(read('sheets/quernside-51-v8.yaml'));
const measured = (...taken: readonly (readonly [feature: string, place: string, text: string])[]) =>
  assess(vee, readingsOf(taken.flatMap(([feature, place, text]) => readAll(vee, feature, place, text))), EXACT);

describe('the figure that counts', () => {
  const assessment = measured(['chamber-volume', '3', '67.9 cm3']);
  const stated = exact('chamber-volume', 66e-6);
  const tried = new Map([['chamber-volume', 65e-6]]);

  it('is printed, until it is measured, stated or tried', () => {
    expect(figure(makeupOf(vee), 'chamber-volume', 3)).toMatchObject({ value: 68.5e-6, origin: 'sheet' });
    expect(figure(makeupOf(vee, assessment), 'chamber-volume', 3)).toMatchObject({ origin: 'measured' });
    expect(figure(makeupOf(vee, assessment), 'chamber-volume', 3)?.value).toBeCloseTo(67.9e-6, 12);
    expect(figure(makeupOf(vee, assessment, stated), 'chamber-volume', 3)).toMatchObject({ value: 66e-6 });
    expect(figure(makeupOf(vee, assessment, stated, tried), 'chamber-volume', 3)).toMatchObject({
      value: 65e-6,
      origin: 'scratch',
      u: 0,
    });
  });
  it('of a cylinder that nobody measured is still the printed one', () => {
    expect(figure(makeupOf(vee, assessment), 'chamber-volume', 4)?.origin).toBe('sheet');
  });
  it('for one cylinder stands before the one for all, of one origin', () => {
    const both = makeupOf(vee, undefined, [...exact('chamber-volume', 66e-6), ...exact('chamber-volume@2', 64e-6)]);
    expect([1, 2].map((at) => figure(both, 'chamber-volume', at)?.value)).toEqual([66e-6, 64e-6]);
  });
  it('that nobody gives is absent', () => {
    const bare = makeupOf(bareEngine());
    for (const key of ['chamber-volume', 'piston-volume', 'gasket-thickness', 'deck-clearance', 'spring-rate'])
      expect(figure(bare, key, 1), key).toBeUndefined();
  });
});

describe('where figures come from', () => {
  it('a face of a bank or a head is the figure of each of its cylinders', () => {
    const makeup = makeupOf(
      vee,
      measured(['deck-height', 'left', '231.12 mm'], ['gasket-thickness', 'right', '1.18 mm']),
    );
    expect([1, 3, 5, 7].map((at) => figure(makeup, 'deck-height', at)?.value)).toEqual(Array(4).fill(0.23112));
    expect(figure(makeup, 'deck-height', 2)?.origin).toBe('sheet');
    expect(figure(makeup, 'gasket-thickness', 8)).toMatchObject({ origin: 'measured' });
  });
  it('a printed window is its middle, in doubt by its half width over root three', () => {
    const dish = figure(makeupOf(vee), 'piston-volume', 1);
    expect(dish?.value).toBeCloseTo(3.8e-6, 12);
    expect(dish?.u).toBeCloseTo(0.2e-6 / Math.sqrt(3), 12);
  });
  it('a piston that is printed to stand proud has a negative deck clearance', () => {
    const diesel = makeupOf(engineOf(read('sheets/tollbarrow-6w-diesel-six.yaml')));
    expect(figure(diesel, 'deck-clearance', 1)?.value).toBeCloseTo(-0.00044, 9);
  });
  it('a single printed figure is in doubt by its last digit', () => {
    const rod = figure(makeupOf(vee), 'rod-length');
    // 151.5 mm: a tenth of a millimetre over root twelve (JCGM 100, F.2.2.1).
    expect(rod?.u).toBeCloseTo(1e-4 / Math.sqrt(12), 10);
  });
  it('of a kind of valve measured one by one it is their mean with the doubt of one of them', () => {
    const makeup = makeupOf(
      vee,
      measured(['lobe-lift', '1-intake-1', '7.30 mm'], ['lobe-lift', '3-intake-1', '7.36 mm']),
    );
    const lift = figure(makeup, 'lobe-lift', 'intake');
    expect(lift?.value).toBeCloseTo(7.33e-3, 9);
    // Scatter of the two, and the step of the dial: a thou over root twelve.
    expect(lift?.u).toBeCloseTo(Math.hypot(0.06e-3 / Math.SQRT2, 25.4e-6 / Math.sqrt(12)), 9);
    expect(lift?.from).toBe('mean of 2 intake valves');
  });
});

describe('measured parts in the answers', () => {
  it('each measured spring is answered by itself, and the heights are brought together with shims of the stock', () => {
    const found = springsOf(
      makeupOf(
        vee,
        measured(['installed-height', '1-intake-1', '42.10 mm'], ['installed-height', '3-intake-1', '41.70 mm']),
      ),
    );
    const room = (valve: string) => answerIn(found, 'bind-margin', { valve })?.value;
    // 42.10 − 7.35 × 1.55 − 27.20 = 3.5075 mm by hand.
    expect(room('1-intake-1')).toBeCloseTo(3.5075e-3, 7);
    expect(room('3-intake-1')).toBeCloseTo(3.1075e-3, 7);
    expect(answerIn(found, 'height-spread', { kind: 'intake' })?.value).toBeCloseTo(0.4e-3, 9);
    expect(answerIn(found, 'common-height-spread', { kind: 'intake' })?.value).toBeCloseTo(0, 9);
    expect(found.working.join('\n')).toContain('1-intake-1 0.400 mm, 3-intake-1 none');
    expect(answerIn(found, 'bind-margin', { kind: 'exhaust', valve: '1-exhaust-1' })).toBeUndefined();
  });
  it('masses that were weighed are held against what one set may differ', () => {
    const found = balanceOf(
      makeupOf(
        vee,
        measured(['piston-mass', '1', '600.0 g'], ['piston-mass', '2', '604.5 g'], ['piston-mass', '3', '601.0 g']),
      ),
    );
    expect(answerIn(found, 'piston-mass-spread')).toMatchObject({ verdict: 'out', limit: { high: 0.002 } });
    expect(answerIn(found, 'piston-mass-spread')?.value).toBeCloseTo(0.0045, 9);
    expect(found.working.join('\n')).toContain('cylinder 1 0.0 g, cylinder 2 4.5 g, cylinder 3 1.0 g');
  });
  it('masses follow what is tried after they were weighed: one mass, one limit, and back', () => {
    const assessment = measured(['piston-mass', '1', '600.0 g'], ['piston-mass', '2', '604.5 g']);
    const spread = (...tried: readonly (readonly [key: string, value: number])[]) =>
      answerIn(balanceOf(makeupOf(vee, assessment, [], new Map(tried))), 'piston-mass-spread');
    expect(spread()?.value).toBeCloseTo(0.0045, 9);
    expect(spread(['piston-mass', 0.602])?.value).toBe(0);
    expect(spread(['piston-mass@2', 0.603])?.value).toBeCloseTo(0.003, 9);
    expect(spread(['mass-match-most', 0.005])).toMatchObject({ verdict: 'in', limit: { high: 0.005 } });
    expect(spread()).toMatchObject({ verdict: 'out', limit: { high: 0.002 } });
  });
});
