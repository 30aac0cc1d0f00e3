import { degrees, inch, mm } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import { seatAllowance, type ValveCard, type ValveTimingInput, valveTiming } from './index.js';

const events = (io: number, ic: number, eo: number, ec: number) => ({
  intakeOpens: degrees(io),
  intakeCloses: degrees(ic),
  exhaustOpens: degrees(eo),
  exhaustCloses: degrees(ec),
});
const seat = (io: number, ic: number, eo: number, ec: number): ValveCard => ({
  basis: 'seat',
  events: events(io, ic, eo, ec),
});
const faults = (input: ValveTimingInput) => {
  const timing = valveTiming(input);
  return timing.ok ? [] : timing.fault;
};
function accepted(input: ValveTimingInput) {
  const timing = valveTiming(input);
  if (!timing.ok) throw new Error(JSON.stringify(timing.fault));
  return timing.value;
}

describe('firing places', () => {
  it('are even when no intervals are given, and that is said', () => {
    const timing = accepted({ firingOrder: [1, 3, 2] });
    expect(timing.cylinders.map(({ firesAt }) => firesAt)).toEqual([0, 240, 480]);
    expect(timing.assumed).toContainEqual({ code: 'intervals-even', degrees: 240 });
  });

  it('follow uneven intervals as printed', () => {
    const timing = accepted({
      firingOrder: [1, 6, 5, 4, 3, 2],
      firingIntervals: [150, 90, 150, 90, 150, 90].map(degrees),
    });
    expect(timing.cylinders.map(({ firesAt }) => firesAt)).toEqual([0, 150, 240, 390, 480, 630]);
    expect(timing.assumed.map(({ code }) => code)).not.toContain('intervals-even');
  });

  it('let two cylinders fire together', () => {
    expect(faults({ firingOrder: [1, 2], firingIntervals: [0, 720].map(degrees) })).toEqual([]);
  });

  it.each([
    [[], [{ code: 'order-empty' }]],
    [[1, 3, 4, 4, 2], [{ code: 'cylinder-repeated', cylinder: 4 }]],
    [[1, 8, 4, 3, 6, 5, 7], [{ code: 'cylinder-missing', cylinder: 2, highest: 8 }]],
    [[0, 1], [{ code: 'cylinder-out-of-range', cylinder: 0, most: 18 }]],
    [[1, 19], [{ code: 'cylinder-out-of-range', cylinder: 19, most: 18 }]],
    [[1, 2.5], [{ code: 'cylinder-out-of-range', cylinder: 2.5, most: 18 }]],
  ])('refuse the order %j', (firingOrder, fault) => {
    expect(faults({ firingOrder })).toEqual(fault);
  });

  it.each([
    [[360], { code: 'interval-count', given: 1, needed: 2 }],
    [[360, 350], { code: 'interval-sum', degrees: 710 }],
    [[-10, 730], { code: 'interval-out-of-range', place: 1, degrees: -10 }],
  ])('refuse the intervals %j of a twin', (intervals, fault) => {
    expect(faults({ firingOrder: [1, 2], firingIntervals: intervals.map(degrees) })).toContainEqual(fault);
  });

  it('takes eighteen cylinders', () => {
    expect(faults({ firingOrder: Array.from({ length: 18 }, (_, i) => i + 1) })).toEqual([]);
  });
});

describe('open windows', () => {
  it('exhaust from 180 - EO to 360 + EC and intake from 360 - IO to 540 + IC (definitions)', () => {
    expect(accepted({ firingOrder: [1], cam: seat(12, 52, 50, 14) }).open).toEqual({
      intake: { opens: 348, closes: 592 },
      exhaust: { opens: 130, closes: 374 },
    });
  });

  it('take events on the other side of a dead centre as negative', () => {
    expect(accepted({ firingOrder: [1], cam: seat(-5, 40, 45, -3) }).open).toEqual({
      intake: { opens: 365, closes: 580 },
      exhaust: { opens: 135, closes: 357 },
    });
  });

  it('without a card are the stated ones, and that is said together with the margin', () => {
    const timing = accepted({ firingOrder: [1] });
    expect(timing.open).toEqual({ intake: { opens: 325, closes: 615 }, exhaust: { opens: 100, closes: 395 } });
    expect(timing.assumed).toEqual([
      { code: 'cam-unknown', windows: { intakeOpens: 35, intakeCloses: 75, exhaustOpens: 80, exhaustCloses: 35 } },
      { code: 'margin-default', degrees: 5 },
    ]);
  });

  it('without events are never shorter than the advertised duration', () => {
    const advertisedDuration = { intake: degrees(310), exhaust: degrees(280) };
    const timing = accepted({ firingOrder: [1], cam: { basis: 'seat', advertisedDuration } });
    expect(timing.open.intake).toEqual({ opens: 315, closes: 625 });
    expect(timing.open.exhaust).toEqual({ opens: 100, closes: 395 });
    expect(timing.assumed).toContainEqual({
      code: 'default-windows-widened',
      valve: 'intake',
      eachSide: 10,
      advertised: 310,
    });
  });

  it('say nothing when everything was given', () => {
    const input = { firingOrder: [1, 2], firingIntervals: [360, 360].map(degrees), cam: seat(12, 52, 52, 12) };
    expect(accepted({ ...input, margin: degrees(0) }).assumed).toEqual([]);
  });
});

describe('events printed at a lift', () => {
  const atFiftyThou = (extra: Partial<ValveCard> = {}): ValveCard => ({
    basis: 'at-lift',
    checkingLift: { value: inch(0.05) },
    events: events(0, 40, 45, -5),
    ...extra,
  });

  it('are widened on both sides alike to the advertised duration', () => {
    // 220 at lift and 270 advertised: 25 each side; exhaust 220 and 280: 30 each side.
    const cam = atFiftyThou({ advertisedDuration: { intake: degrees(270), exhaust: degrees(280) } });
    const timing = accepted({ firingOrder: [1], cam });
    expect(timing.open).toEqual({ intake: { opens: 335, closes: 605 }, exhaust: { opens: 105, closes: 385 } });
    expect(timing.assumed).toContainEqual({
      code: 'widened-from-advertised',
      valve: 'exhaust',
      eachSide: 30,
      advertised: 280,
    });
  });

  it('are widened by a stated allowance when no advertised duration is printed', () => {
    const timing = accepted({ firingOrder: [1], cam: atFiftyThou() });
    expect(timing.open).toEqual({ intake: { opens: 335, closes: 605 }, exhaust: { opens: 110, closes: 380 } });
    expect(timing.assumed).toContainEqual({
      code: 'widened-by-allowance',
      valve: 'intake',
      eachSide: 25,
      millimetres: 1.27,
    });
  });

  it('say which lift was taken when none is printed', () => {
    const timing = accepted({ firingOrder: [1], cam: { basis: 'at-lift', events: events(0, 40, 45, -5) } });
    expect(timing.assumed[0]).toEqual({ code: 'checking-lift-unknown', millimetres: 1.27 });
  });

  it('need less the lower the lift (common practice, no source: 25 degrees at 0.050 in; root of the lift derived)', () => {
    expect([inch(0.05), mm(1), inch(0.02), inch(0.006)].map(seatAllowance)).toEqual([25, 23, 16, 9]);
  });

  it('refuse an advertised duration shorter than what is printed at lift', () => {
    const cam = atFiftyThou({ advertisedDuration: { intake: degrees(210), exhaust: degrees(280) } });
    expect(faults({ firingOrder: [1], cam })).toEqual([
      { code: 'advertised-too-short', valve: 'intake', advertised: 210, atLift: 220 },
    ]);
  });

  it.each([0, -1, 6])('refuse a checking lift of %d mm', (lift) => {
    expect(faults({ firingOrder: [1], cam: atFiftyThou({ checkingLift: { value: mm(lift) } }) })).toEqual([
      { code: 'checking-lift-out-of-range', millimetres: lift },
    ]);
  });
});

describe('a card that cannot be', () => {
  it('has a valve that never opens', () => {
    expect(faults({ firingOrder: [1], cam: seat(-90, -90, 50, 10) })).toEqual([
      { code: 'window-impossible', valve: 'intake', openDegrees: 0, below: 720 },
    ]);
  });

  it('has a valve that is open for the whole cycle', () => {
    const advertisedDuration = { intake: degrees(720), exhaust: degrees(300) };
    expect(
      faults({ firingOrder: [1], cam: { ...seat(10, 50, 50, 10), basis: 'at-lift', advertisedDuration } }),
    ).toEqual([{ code: 'window-impossible', valve: 'intake', openDegrees: 720, below: 720 }]);
  });

  it('is not a card whose base circle is shorter than two margins: the plan names those valves', () => {
    expect(faults({ firingOrder: [1], cam: seat(10, 50, 180, 10), margin: degrees(180) })).toEqual([]);
  });

  it('has an event beyond half a turn, or none that is a number', () => {
    expect(faults({ firingOrder: [1], cam: seat(10, 181, 50, 10) })).toEqual([
      { code: 'event-out-of-range', event: 'intakeCloses', degrees: 181 },
    ]);
    expect(faults({ firingOrder: [1], cam: seat(10, Number.NaN, 50, 10) })).toHaveLength(1);
  });

  it.each([-1, 360, Number.NaN])('a margin of %d degrees is refused', (margin) => {
    expect(faults({ firingOrder: [1], margin: degrees(margin) })).toEqual([
      { code: 'margin-out-of-range', degrees: margin },
    ]);
  });

  it('is named together with everything else that is wrong', () => {
    const all = faults({
      firingOrder: [1, 1],
      firingIntervals: [1, 2].map(degrees),
      cam: seat(10, 400, 50, 10),
      margin: degrees(-1),
    });
    expect(all.map(({ code }) => code)).toEqual([
      'cylinder-repeated',
      'interval-sum',
      'event-out-of-range',
      'margin-out-of-range',
    ]);
  });
});
