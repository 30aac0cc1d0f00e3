import { degrees } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import published from '../../../../../cases/valve-sets.json' with { type: 'json' };
import {
  baseCircleSpans,
  mateOf,
  mirrorRule,
  neighbourSteps,
  runningMates,
  signsAt,
  type ValveGroup,
  type ValveTiming,
  valveTiming,
} from './index.js';

const SHORT = [10, 50, 50, 10] as const;
function engine(
  firingOrder: readonly number[],
  events: readonly number[] = SHORT,
  intervals?: readonly number[],
): ValveTiming {
  const [io = 0, ic = 0, eo = 0, ec = 0] = events;
  const timing = valveTiming({
    firingOrder,
    ...(intervals ? { firingIntervals: intervals.map(degrees) } : {}),
    cam: {
      basis: 'seat',
      events: {
        intakeOpens: degrees(io),
        intakeCloses: degrees(ic),
        exhaustOpens: degrees(eo),
        exhaustCloses: degrees(ec),
      },
    },
  });
  if (!timing.ok) throw new Error(JSON.stringify(timing.fault));
  return timing.value;
}

describe('running mates (reference mechanism-open.md section 8.2)', () => {
  it.each([
    [
      [1, 8, 4, 3, 6, 5, 7, 2],
      [
        [1, 6],
        [8, 5],
        [4, 7],
        [3, 2],
      ],
    ],
    [
      [1, 5, 3, 6, 2, 4],
      [
        [1, 6],
        [5, 2],
        [3, 4],
      ],
    ],
    [
      [1, 6, 5, 4, 3, 2],
      [
        [1, 4],
        [6, 3],
        [5, 2],
      ],
    ],
    [
      [1, 3, 4, 2],
      [
        [1, 4],
        [3, 2],
      ],
    ],
  ])('%j pairs as %j', (order, pairs) => {
    expect(runningMates(engine(order))).toEqual({ pairs, alone: [] });
  });

  it('pairs fourteen cylinders, whose firing places are no whole degrees', () => {
    const order = Array.from({ length: 14 }, (_, i) => i + 1);
    expect(runningMates(engine(order)).pairs).toEqual(order.slice(0, 7).map((cylinder) => [cylinder, cylinder + 7]));
  });

  it('finds none in a three-cylinder engine', () => {
    expect(runningMates(engine([1, 3, 2]))).toEqual({ pairs: [], alone: [1, 3, 2] });
  });

  it('finds none in a vee six that fires at 150 and 90 degrees in turn, and pairs no nearest one instead', () => {
    const mates = runningMates(engine([1, 6, 5, 4, 3, 2], SHORT, [150, 90, 150, 90, 150, 90]));
    expect(mates.alone).toEqual([1, 6, 5, 4, 3, 2]);
    expect(mateOf(mates, 1)).toBeUndefined();
  });
});

describe('per-cylinder method (reference mechanism-open.md section 8.2)', () => {
  it('as the exhaust begins to open the intake has been closed 260 degrees and stays so for 220', () => {
    const step = neighbourSteps(engine([1])).find(({ valve }) => valve === 'intake')!;
    expect([step.sinceClosing, step.untilOpening]).toEqual([260, 220]);
    expect(step).toMatchObject({
      watch: 'exhaust',
      until: 'begins-to-open',
      from: 130,
      to: 160,
      degrees: 190,
      permitted: true,
    });
  });

  it('as the intake closes the exhaust has been closed 220 degrees and stays so for 260', () => {
    const step = neighbourSteps(engine([1])).find(({ valve }) => valve === 'exhaust')!;
    expect([step.sinceClosing, step.untilOpening]).toEqual([220, 260]);
    expect(step).toMatchObject({
      watch: 'intake',
      until: 'nearly-closed',
      from: 560,
      to: 590,
      degrees: 190,
      permitted: true,
    });
  });

  it('still works with a cam too long for stops at every quarter turn', () => {
    const steps = neighbourSteps(engine([1, 8, 4, 3, 6, 5, 7, 2], [60, 100, 105, 60]));
    expect(steps.every(({ permitted }) => permitted)).toBe(true);
  });

  it('comes in the order of turning, two steps for each cylinder', () => {
    const steps = neighbourSteps(engine([1, 3, 4, 2]));
    expect(steps.map(({ cylinder, valve }) => `${valve} ${cylinder}`)).toEqual([
      'exhaust 3',
      'intake 1',
      'exhaust 4',
      'intake 3',
      'exhaust 2',
      'intake 4',
      'exhaust 1',
      'intake 2',
    ]);
  });

  it('is refused only where the valve to set is itself nearer to its window than the margin', () => {
    const step = neighbourSteps(engine([1], [100, 170, 100, 100])).find(({ valve }) => valve === 'intake')!;
    // Exhaust opens at 80; intake closes at 710 and opens at 260: 90 before, 180 ahead: fine. The exhaust is not.
    expect(step.permitted).toBe(true);
    const late = neighbourSteps(engine([1], [100, 170, 170, 100])).find(({ valve }) => valve === 'exhaust')!;
    // Intake nearly closed from 680 to 710; the exhaust opens at 10 of the next cycle, 20 degrees later.
    expect(late).toMatchObject({ degrees: 20, permitted: true });
    const never = neighbourSteps(engine([1], [100, 180, 176, 100])).find(({ valve }) => valve === 'exhaust')!;
    // Intake nearly closed from 690 to 720; the exhaust opens at 4: nearer than the margin of 5.
    expect(never).toMatchObject({ degrees: 4, permitted: false });
  });
});

it('refuses the per-cylinder step of a card on which the valve to set passes full lift while the other one moves', () => {
  // Intake from 340 to 420, highest at 380; exhaust opens at 360 and is watched up to 390. No real cam: a mistyped card.
  const step = neighbourSteps(engine([1], [20, -120, -180, 60])).find(({ valve }) => valve === 'intake')!;
  expect(step).toMatchObject({ from: 360, to: 390, degrees: -40, permitted: false });
});

it('gives the whole span in which a valve may be set, margin taken off both ends', () => {
  const spans = baseCircleSpans(engine([1]));
  expect(spans).toEqual([
    { cylinder: 1, valve: 'intake', from: 595, to: 345, length: 470 },
    { cylinder: 1, valve: 'exhaust', from: 375, to: 125, length: 470 },
  ]);
});

describe('rule of nine and thirteen (reference mechanism-open.md section 8.2)', () => {
  const row = (text: string): ValveGroup[] =>
    text.split(' ').map((one) => ({ cylinder: Number(one.slice(1)), valve: one[0] === 'I' ? 'intake' : 'exhaust' }));

  it('holds for E I I E E I I E with mates 1-4 and 2-3, as the printed table of nine', () => {
    const rule = mirrorRule(engine([1, 3, 4, 2]), row('E1 I1 I2 E2 E3 I3 I4 E4'));
    expect(rule.ok && rule.value.sum).toBe(9);
    expect(rule.ok && Object.fromEntries(rule.value.pairs)).toEqual(published.ruleOfNine.map);
  });

  it('is a rule of thirteen on a mirrored six', () => {
    const rule = mirrorRule(engine([1, 5, 3, 6, 2, 4]), row('E1 I1 I2 E2 E3 I3 I4 E4 E5 I5 I6 E6'));
    expect(rule.ok && rule.value.sum).toBe(13);
  });

  it('is refused for E I E I E I E I: valve 8 is only 140 degrees from full lift when valve 1 is there', () => {
    expect(mirrorRule(engine([1, 3, 4, 2]), row('E1 I1 E2 I2 E3 I3 E4 I4'))).toEqual({
      ok: false,
      fault: {
        code: 'not-a-mirror',
        open: { cylinder: 1, valve: 'exhaust', number: 1 },
        set: { cylinder: 4, valve: 'intake', number: 8 },
        fromFullLift: 140,
        reason: 'other-kind',
      },
    });
  });

  it('is refused on a mirrored head when the outer cylinders are not mates', () => {
    const rule = mirrorRule(engine([1, 2, 4, 3, 5]), row('E1 I1 I2 E2 E3 I3 E4 I4 I5 E5'));
    expect(!rule.ok && rule.fault).toMatchObject({ code: 'not-a-mirror', reason: 'not-mates' });
  });

  it('asks for a row without valves of cylinders that never fire', () => {
    expect(mirrorRule(engine([1, 2]), row('E1 I1 I9 E9'))).toEqual({
      ok: false,
      fault: { code: 'valves-do-not-fit', cylinder: 9 },
    });
  });

  it('asks for one intake and one exhaust valve of every cylinder', () => {
    expect(mirrorRule(engine([1, 3, 4, 2]), row('E1 I1 I2 E2 E3 I3'))).toEqual({
      ok: false,
      fault: { code: 'valves-do-not-fit', cylinder: 4 },
    });
  });
});

it('two cylinders that fire together are set one after the other, by number', () => {
  const steps = neighbourSteps(engine([2, 1], SHORT, [0, 720]));
  expect(steps.map(({ cylinder, valve }) => `${valve} ${cylinder}`)).toEqual([
    'intake 1',
    'intake 2',
    'exhaust 1',
    'exhaust 2',
  ]);
});

describe('what is seen with the crank at a stop', () => {
  it('at the firing dead centre of 1 the valves of its mate rock (TM 10-3930-671-24: No. 4 rocks at No. 1)', () => {
    const signs = signsAt(engine([1, 3, 4, 2]), 0);
    expect(signs).toMatchObject({ firing: [1], rocking: [4], exhaustDeadCentre: [] });
    expect(signs.bothFree).toContain(1);
    expect(signs.bothFree).not.toContain(4);
  });

  it('nothing rocks at the exhaust dead centre of a cam without overlap', () => {
    const signs = signsAt(engine([1, 3, 4, 2], [-5, 40, 40, -5]), 0);
    expect(signs).toMatchObject({ rocking: [], exhaustDeadCentre: [4] });
  });
});
