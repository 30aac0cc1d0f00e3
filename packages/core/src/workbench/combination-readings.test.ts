import { describe, expect, it } from 'vitest';
import { foldEntries } from '../record/index.js';
import { chainOf, idOf, SAMPLES_V1, type Wish } from '../record/samples.suite.js';
import { combinationReadings } from './combination-readings.js';

const sample = (kind: 'dead-centre-read' | 'cam-read' | 'pushrod-tried' | 'figure-stated'): Wish => ({
  kind,
  data: SAMPLES_V1[kind],
});
const of = (...wishes: readonly Wish[]) => combinationReadings(foldEntries(chainOf(wishes)));
const strike = (entry: number): Wish => ({ kind: 'struck-out', data: { entry: idOf(entry), reason: 'misread' } });

describe('the combination in the log', () => {
  it('keeps every reading of wheel and stop that stands, repeats too', () => {
    const held = of(sample('dead-centre-read'), sample('cam-read'), sample('cam-read'), sample('cam-read'), strike(3));
    expect(held.stops.map(({ cylinder }) => cylinder)).toEqual([1]);
    expect(held.cam.map(({ entry }) => entry)).toEqual([idOf(2), idOf(4)]);
    expect(held.cam[0]).toMatchObject({ at: 'lifter', sense: 'opening', lift: 0.00127 });
  });
  it('takes the newest statement of a figure, the one before when it is struck out, and its last place as its doubt', () => {
    const newer: Wish = {
      kind: 'figure-stated',
      data: { ...SAMPLES_V1['figure-stated'], reading: { text: '4.80 mm', value: 0.0048, unit: 'm' } },
    };
    const [held] = of(sample('figure-stated'), newer).stated;
    expect(held).toMatchObject({ key: 'valve-drop@intake', value: 0.0048, origin: 'stated' });
    expect(held!.u).toBeCloseTo(1e-5 / Math.sqrt(12), 12);
    expect(held!.from).toMatch(/clay on the crown \(A. Fitter\)/);
    expect(of(sample('figure-stated'), newer, strike(2)).stated[0]).toMatchObject({ value: 0.0046 });
  });
  it('keeps the newest trial of each pushrod length, valve by valve', () => {
    const again: Wish = {
      kind: 'pushrod-tried',
      data: { ...SAMPLES_V1['pushrod-tried'], width: { text: '1.7 mm', value: 0.0017, unit: 'm' } },
    };
    const key = '1-intake-1';
    expect(of(sample('pushrod-tried'), again).trials.get(key)).toMatchObject([{ length: 0.198, width: 0.0017 }]);
    expect(of(sample('pushrod-tried'), again, strike(2)).trials.get(key)).toMatchObject([{ width: 0.0019 }]);
    expect(of().trials.size).toBe(0);
  });
  it('is folded once for a state', () => {
    const state = foldEntries(chainOf([sample('cam-read')]));
    expect(combinationReadings(state)).toBe(combinationReadings(state));
  });
});
