import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wearFigure } from '../../calc/metrology/index.js';
import type { InspectionLimit } from '../../engine/index.js';
import { newWindow, wearWindow } from './index.js';
import { row, sheet } from './limit.suite.js';

const whenNew = (low: number, high: number): Partial<InspectionLimit> => ({
  whenNew: { window: { low, high }, text: '' },
});
const change = (amount: number): Partial<InspectionLimit> => ({
  wear: { form: 'change-from-new', change: amount, text: '' },
});
const named = (engine: ReturnType<typeof sheet>, part: string, what: string) =>
  engine.limits.find((each) => each.part === part && each.what === what) as InspectionLimit;

describe('wear limits in three forms', () => {
  it('leaves an absolute limit as printed: main journal not under 83.930 mm (invented diesel)', () => {
    const limit = named(sheet('tollbarrow'), 'crankshaft', 'main journal diameter');
    expect(wearWindow(limit, 'shaft')).toEqual({ low: expect.closeTo(0.08393, 9) });
  });

  it('leaves a clearance as printed: rod bearing up to 0.076 mm (manual SM3)', () => {
    const limit = named(sheet('99x92'), 'connecting rod', 'bearing clearance');
    expect(limit.wear?.form).toBe('clearance');
    expect(wearWindow(limit, 'hole')?.high).toBeCloseTo(76e-6, 9);
    expect(newWindow(limit)).toEqual({ low: expect.closeTo(23e-6, 9), high: expect.closeTo(65e-6, 9) });
  });

  it('counts a change from the new end at which wear begins: bore 87.20..87.25 and 0.2 of wear make 87.45 mm (manual 653:p61)', () => {
    const limit = named(sheet('tm10'), 'cylinder block', 'bore');
    expect(wearWindow(limit, 'hole')).toEqual({ low: expect.closeTo(0.0872, 9), high: expect.closeTo(0.08745, 9) });
  });

  it('counts it downward for a shaft: pin 0.9899..0.9901 in and 0.001 in of wear make 0.9889 in (manual 584:1-5)', () => {
    const limit = named(sheet('584'), 'piston pin', 'diameter');
    expect((wearWindow(limit, 'shaft')?.low ?? 0) / 0.0254).toBeCloseTo(0.9889, 7);
  });

  it('counts it both ways where wear has no sense', () => {
    expect(wearWindow(row('a', 'b', { ...whenNew(10, 12), ...change(1) }), 'neither')).toEqual({ low: 9, high: 13 });
  });

  it('knows no window where the new size of a change is not printed, and none where no wear is printed', () => {
    expect(wearWindow(row('a', 'b', change(0.1)), 'hole')).toBeUndefined();
    expect(wearWindow(row('a', 'b', whenNew(1, 2)), 'hole')).toBeUndefined();
    const openEnded = row('a', 'b', { whenNew: { window: { low: 1 }, text: '' }, ...change(0.1) });
    expect(wearWindow(openEnded, 'hole')).toEqual({ low: 1 });
  });

  it('puts the end where the calculation of wear reaches the printed change', () => {
    const size = fc.double({ min: 0.001, max: 0.2, noNaN: true });
    const small = fc.double({ min: 0, max: 0.001, noNaN: true });
    fc.assert(
      fc.property(
        size,
        small,
        small,
        fc.constantFrom('hole' as const, 'shaft' as const),
        (low, width, amount, part) => {
          const high = low + width;
          const window = wearWindow(row('a', 'b', { ...whenNew(low, high), ...change(amount) }), part);
          const [end, begin] = part === 'hole' ? [window?.high, high] : [window?.low, low];
          const worn = wearFigure({
            form: 'change-from-new',
            measured: end ?? Number.NaN,
            whenNew: begin,
            mate: 0,
            part,
          });
          expect(worn).toBeCloseTo(amount, 12);
        },
      ),
    );
  });
});
