import { type Angle, degrees, type Length, mm } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lobeAt, lobeLift } from '../cam/index.js';
import { cycleGaps, type ValveOverPiston } from './cycle-gaps.js';
import { gapCurve } from './piston-gap.js';

const crank = { crankRadius: mm(44.2), rodLength: mm(144.8), pinOffset: mm(0.5) };
const valve = (nose: number, crown: ValveOverPiston['crown']): ValveOverPiston => ({
  lobe: { peakLift: mm(12), halfDuration: degrees(150), exponents: [6, 8, 10] },
  nose: degrees(nose),
  crown,
  valveAngle: degrees(23),
  gapAtTop: mm(4.6),
});

describe('lift of a lobe at many angles', () => {
  it('is the lift of the lobe at each of them, whatever its exponents', () => {
    const numbers = fc.record({
      exponents: fc.constantFrom<[number, number, number][]>([6, 8, 10], [2.5, 5.25, 9], [12, 20.5, 31]),
      at: fc.double({ min: -4, max: 4, noNaN: true }),
    });
    fc.assert(
      fc.property(numbers, ({ exponents, at }) => {
        const lobe = { peakLift: mm(12), halfDuration: degrees(150), exponents };
        expect(lobeLift(lobe)(at)).toBeCloseTo(lobeAt(lobe, at).lift, 14);
      }),
    );
  });

  it('is the peak at the nose and 0 from the end of the event on', () => {
    const lift = lobeLift(valve(0, 'flat-crown').lobe);
    expect([lift(0), lift(degrees(150)), lift(degrees(-200))]).toEqual([mm(12), 0, 0]);
  });
});

describe('room of both valves over two turns', () => {
  const angles = { from: degrees(-360), step: degrees(0.1), count: 7200 };

  it('is that of each valve at each angle alone', () => {
    const valves = [valve(108, 'parallel-pocket'), valve(-112, 'flat-crown')];
    const found = cycleGaps(crank, valves, angles);
    if (!found.ok) throw new Error(found.fault.code);
    for (const [at, one] of valves.entries()) {
      const curve = gapCurve({ crank, ...one }, (angle) => lobeAt(one.lobe, angle - one.nose).lift);
      if (!curve.ok) throw new Error(curve.fault.code);
      for (let i = 0; i < angles.count; i += 97) {
        expect(found.value.gaps[at]![i]).toBeCloseTo(curve.value(angles.from + i * angles.step), 13);
      }
    }
  });

  it('is largest away from the piston by the whole stroke, with the valve closed (stroke by the closed form)', () => {
    const closed = { ...valve(108, 'parallel-pocket'), nose: degrees(0) };
    const found = cycleGaps({ ...crank, pinOffset: mm(0) }, [closed], {
      from: degrees(180),
      step: 0 as Angle,
      count: 1,
    });
    if (!found.ok) throw new Error(found.fault.code);
    expect(found.value.drops[0]).toBeCloseTo(mm(88.4), 12);
    expect(found.value.gaps[0]![0]).toBeCloseTo(mm(4.6 + 88.4 * Math.cos((23 * Math.PI) / 180)), 12);
  });

  it('is refused for a rod that cannot turn', () => {
    expect(cycleGaps({ ...crank, rodLength: 0.04 as Length }, [], angles).ok).toBe(false);
  });
});
