import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plotFigure, plotWords, valueAt } from '../index.js';
import { motionPlots } from './motion-plots.js';
import { type RoomShown, valveRoomPlot } from './valve-room-plot.js';

const rad = (degrees: number) => (degrees * Math.PI) / 180;
const angles = Array.from({ length: 121 }, (_, n) => rad(n - 60));
/** A room that is least, 1.8 mm, at 10° after top and 5.4 mm sixty degrees away from it. */
const room: RoomShown = {
  kind: 'intake',
  angles,
  gaps: angles.map((angle) => 1.8e-3 + 1e-6 * ((angle * 180) / Math.PI - 10) ** 2),
  least: { angle: rad(10), gap: 1.8e-3 },
  limit: { at: 2e-3, from: 'Withy book 1' },
};

describe('plot of the room between valve and piston', () => {
  it('marks the least room and the limit, allowed above it, with its origin', () => {
    const plot = valveRoomPlot([room], 'metric', 0.01);
    expect(plot.marks).toEqual([
      { id: 'least-intake', name: 'least, intake', x: expect.closeTo(10, 9), y: expect.closeTo(1.8, 9), axis: 'left' },
    ]);
    expect(plotWords(plot)).toContain('wanted, intake: 2.0 mm, allowed above it, from Withy book 1');
    expect(valueAt(plot.curves[0]!, 40)).toBeCloseTo(2.7, 9);
  });
  it('draws only where the room is little, without a gap in the curve', () => {
    const [curve] = valveRoomPlot([room], 'metric', 3e-3).curves;
    const ys = curve!.points.map(([, y]) => y);
    expect(Math.max(...ys)).toBeLessThanOrEqual(3);
    const xs = curve!.points.map(([x]) => x);
    expect(xs.every((x, n) => n === 0 || Math.abs(x - xs[n - 1]! - 1) < 1e-9)).toBe(true);
  });
  it('has one limit line where both valves have the same, two where they differ', () => {
    const exhaust: RoomShown = { ...room, kind: 'exhaust' };
    expect(valveRoomPlot([room, exhaust], 'metric', 0.01).limits).toHaveLength(1);
    const stricter: RoomShown = { ...exhaust, limit: { at: 2.5e-3, from: 'Withy book 1' } };
    expect(valveRoomPlot([room, stricter], 'metric', 0.01).limits.map(({ at }) => at)).toEqual([2, 2.5]);
  });
  it('shows the cam as it was beside the cam as it is moved', () => {
    const moved: RoomShown = { ...room, before: angles.map(() => 2.2e-3) };
    expect(valveRoomPlot([moved], 'metric', 0.01).curves.map(({ name }) => name)).toEqual([
      'intake',
      'intake, cam as it is',
    ]);
  });
  it('can be drawn without any valve', () => {
    expect(plotFigure(valveRoomPlot([], 'metric', 0.01)).shapes.length).toBeGreaterThan(0);
  });
  it('reads in inches what it reads in millimetres', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.001, max: 0.005, noNaN: true }), (gap) => {
        const one = { ...room, gaps: angles.map(() => gap) };
        const [inch, metric] = [valveRoomPlot([one], 'inch', 0.01), valveRoomPlot([one], 'metric', 0.01)];
        expect(inch.curves[0]!.points[3]![1] * 25.4).toBeCloseTo(metric.curves[0]!.points[3]![1], 9);
      }),
    );
  });
});

describe('plots of the motion of a valve', () => {
  const motion = {
    kind: 'exhaust',
    angles,
    lifts: angles.map(() => 0.01),
    speeds: angles.map(() => 3),
    accelerations: angles.map(() => 9806.65),
  } as const;
  it('tells acceleration in the unit of the answers, at the speed that was chosen, with the highest marked', () => {
    const plots = motionPlots([motion], (6000 * Math.PI) / 30, 'metric');
    expect(plots.map(({ title }) => title)).toEqual([
      'Valve lift',
      'Valve speed at 6000 r/min',
      'Valve acceleration at 6000 r/min',
    ]);
    expect(plots[2]!.curves[0]!.points[0]![1]).toBeCloseTo(9806.65, 6);
    expect(plots[0]!.curves[0]!.points[0]![1]).toBeCloseTo(10, 9);
  });
});
