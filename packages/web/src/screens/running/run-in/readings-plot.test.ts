import type { RunInView } from '@gudgeon/core/workbench';
import { describe, expect, it } from 'vitest';
import { readingsPlot } from './readings-plot.js';

type Reading = RunInView['readings'][number];
const read = (what: Reading['what'], text: string, minute: number | undefined, entry: string): Reading => ({
  given: { by: 'Ada', at: '2026-01-01 10:00', entry },
  what,
  title: what,
  text,
  says: '',
  ...(minute !== undefined && { minute }),
});

describe('readings over the minutes of the run-in', () => {
  it('are one curve a gauge, pressures on their own side, whatever unit each was keyed in', () => {
    const plot = readingsPlot([
      read('oil-pressure', '43.5 psi', 10, 'd'),
      read('oil-temperature', '176 °F', 10, 'c'),
      read('oil-pressure', '4.0 bar', 2, 'b'),
      read('oil-temperature', '40 °C', 2, 'a'),
    ]);
    const curve = (id: string) => plot?.curves.find((one) => one.id === id);
    expect(curve('oil-pressure')).toMatchObject({ axis: 'right' });
    expect(curve('oil-pressure')?.points.map(([x, y]) => [x, Math.round(y * 100) / 100])).toEqual([
      [2, 4],
      [10, 3],
    ]);
    expect(curve('oil-temperature')?.points.map(([x, y]) => [x, Math.round(y)])).toEqual([
      [2, 40],
      [10, 80],
    ]);
  });
  it('leave out what was read while the clock stood, and draw nothing of a single look', () => {
    expect(
      readingsPlot([read('oil-temperature', '40 °C', 2, 'a'), read('oil-temperature', '50 °C', undefined, 'b')]),
    ).toBeUndefined();
  });
});
