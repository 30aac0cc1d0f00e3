import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, degrees, inch, mm, toUnit } from '../../quantity/index.js';
import { describeCalcFault, runDeclared } from '../catalogue/index.js';
import { seatWindows as calculation } from './entries/seat-windows.js';
import {
  advanced,
  baseCircleWindow,
  type CamEvents,
  eventsFromLobes,
  lobesFromEvents,
  marginOnBaseCircle,
  openWindows,
  roomFaults,
  seatAllowance,
  seatWindows,
} from './index.js';

const events = (io: number, ic: number, eo: number, ec: number): CamEvents => ({
  intakeOpens: degrees(io),
  intakeCloses: degrees(ic),
  exhaustOpens: degrees(eo),
  exhaustCloses: degrees(ec),
});
const value = <T>(outcome: { ok: true; value: T } | { ok: false; fault: unknown }): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
};
const deg = (angle: Angle) => Math.round(toUnit('angle', angle, 'deg') * 1e6) / 1e6;
const anyEvents = fc
  .tuple(...[0, 1, 2, 3].map(() => fc.double({ min: -40, max: 89, noNaN: true })))
  .map(([a = 0, b = 0, c = 0, d = 0]) => events(a, b, c, d));

describe('cam card', () => {
  it('reads the same after events are turned into lobes and back', () => {
    fc.assert(
      fc.property(anyEvents, (card) => {
        const back = value(eventsFromLobes(value(lobesFromEvents(card))));
        for (const key of Object.keys(card) as (keyof CamEvents)[]) expect(back[key]).toBeCloseTo(card[key], 10);
      }),
    );
  });

  it('keeps durations and separation when the cam is advanced, and moves the centreline by as much', () => {
    fc.assert(
      fc.property(anyEvents, fc.double({ min: -20, max: 20, noNaN: true }), (card, turn) => {
        const before = value(lobesFromEvents(card));
        const after = value(lobesFromEvents(advanced(card, degrees(turn))));
        expect(after.intakeDuration).toBeCloseTo(before.intakeDuration, 10);
        expect(after.exhaustDuration).toBeCloseTo(before.exhaustDuration, 10);
        expect(after.separation).toBeCloseTo(before.separation, 10);
        expect(after.intakeCentreline).toBeCloseTo(before.intakeCentreline - degrees(turn), 10);
        expect(after.advance).toBeCloseTo(before.advance + degrees(turn), 10);
      }),
    );
  });

  it('refuses events that leave a valve no open time', () => {
    expect(lobesFromEvents(events(-100, -80, 60, 20))).toMatchObject({
      fault: { code: 'no-duration', valve: 'intake' },
    });
    expect(lobesFromEvents(events(20, 60, -100, -90))).toMatchObject({ fault: { valve: 'exhaust' } });
    const lobes = {
      intakeDuration: degrees(0),
      exhaustDuration: degrees(9),
      separation: degrees(1),
      intakeCentreline: degrees(1),
    };
    expect(eventsFromLobes(lobes)).toMatchObject({ ok: false });
  });
});

describe('base-circle windows', () => {
  const card = events(10, 50, 50, 10);

  it('hold the figures of the exhaust-opening rule (mechanism reference 8.2)', () => {
    // At exhaust opening the intake has been closed for 260 degrees and stays so for 220 more; at intake closing the
    // exhaust has been closed for 220 and stays so for 260.
    const { intake, exhaust } = openWindows(card);
    const closedFor = (window: { closes: Angle }, phase: Angle) =>
      deg(((phase - window.closes + 8 * Math.PI) % (4 * Math.PI)) as Angle);
    const openIn = (window: { opens: Angle }, phase: Angle) =>
      deg(((window.opens - phase + 8 * Math.PI) % (4 * Math.PI)) as Angle);
    expect([closedFor(intake, exhaust.opens), openIn(intake, exhaust.opens)]).toEqual([260, 220]);
    expect([closedFor(exhaust, intake.closes), openIn(exhaust, intake.closes)]).toEqual([220, 260]);
  });

  it('use seat events as printed', () => {
    const seat = value(seatWindows(card, { basis: 'seat' }));
    expect(seat).toMatchObject({ basis: 'seat-events', ...openWindows(card) });
  });

  it('widen events at a lift about their middle to the advertised duration', () => {
    // 0.050 in durations 214 and 224, advertised 270 and 280: 28 degrees at each end (hand arithmetic).
    const lobes = {
      intakeDuration: degrees(214),
      exhaustDuration: degrees(224),
      separation: degrees(112),
      intakeCentreline: degrees(107),
    };
    const atLift = value(eventsFromLobes(lobes));
    const advertisedDuration = { intake: degrees(270), exhaust: degrees(280) };
    const seat = value(seatWindows(atLift, { basis: 'at-lift', advertisedDuration }, degrees(5)));
    expect(seat.basis).toBe('widened-to-advertised-duration');
    expect([deg(seat.intake.opens), deg(seat.intake.closes)]).toEqual([360 - 28, 574 + 28]);
    expect([deg(seat.exhaust.opens), deg(seat.exhaust.closes)]).toEqual([131 - 28, 355 + 28]);
  });

  it('widen by the allowance where the card says nothing of the seat', () => {
    const seat = value(seatWindows(card, { basis: 'at-lift' }, degrees(30)));
    expect(seat.basis).toBe('widened-by-allowance');
    expect([deg(seat.intake.opens), deg(seat.intake.closes)]).toEqual([320, 620]);
  });

  it('widen by the root of the checking lift where no allowance is given (common practice: 25 degrees at 0.050 in)', () => {
    const allowances = [inch(0.05), mm(1), inch(0.02), inch(0.006)].map((lift) => deg(seatAllowance(lift)));
    expect(allowances).toEqual([25, 23, 16, 9]);
    const seat = value(seatWindows(card, { basis: 'at-lift', checkingLift: { value: mm(1) } }));
    expect([deg(seat.intake.opens), deg(seat.intake.closes)]).toEqual([350 - 23, 590 + 23]);
    expect(deg(value(seatWindows(card, { basis: 'at-lift' })).eachSide.exhaust)).toBe(25);
  });

  it('take an advertised duration equal to the printed one as no widening', () => {
    const advertisedDuration = { intake: degrees(240), exhaust: degrees(240) };
    const seat = value(seatWindows(card, { basis: 'at-lift', advertisedDuration }));
    expect(seat.eachSide.intake).toBeCloseTo(0, 12);
  });

  it('refuse a card that contradicts itself, naming both valves', () => {
    const short = { intake: degrees(200), exhaust: degrees(230) };
    expect(seatWindows(card, { basis: 'at-lift', advertisedDuration: short })).toMatchObject({
      fault: [
        { code: 'advertised-too-short', valve: 'intake', advertised: 200, atLift: 240 },
        { code: 'advertised-too-short', valve: 'exhaust' },
      ],
    });
  });

  it('leave no room when a valve never opens or never lets go', () => {
    const wide = value(seatWindows(events(179, 179, 50, 10), { basis: 'at-lift' }, degrees(91)));
    expect(roomFaults(wide)).toEqual([{ code: 'window-impossible', valve: 'intake', openDegrees: 720, below: 720 }]);
    expect(roomFaults(openWindows(events(-100, -80, 50, 10)))).toMatchObject([{ valve: 'intake', openDegrees: 0 }]);
    expect(roomFaults(openWindows(card))).toEqual([]);
  });

  it('fill the cycle together with the open windows', () => {
    fc.assert(
      fc.property(anyEvents, (any) => {
        for (const open of Object.values(openWindows(any))) {
          const rest = baseCircleWindow(open);
          expect(rest.to - rest.from + (open.closes - open.opens)).toBeCloseTo(4 * Math.PI, 10);
        }
      }),
    );
  });

  it('measure the margin to the nearer edge, with the same answer two turns later', () => {
    fc.assert(
      fc.property(anyEvents, fc.double({ min: -800, max: 1600, noNaN: true }), (any, at) => {
        const { intake } = openWindows(any);
        const margin = marginOnBaseCircle(intake, degrees(at));
        expect(marginOnBaseCircle(intake, degrees(at + 720))).toBeCloseTo(margin, 9);
        const rest = baseCircleWindow(intake);
        expect(marginOnBaseCircle(intake, ((rest.from + rest.to) / 2) as Angle)).toBeGreaterThanOrEqual(margin - 1e-9);
      }),
    );
    const { exhaust } = openWindows(card);
    expect(deg(marginOnBaseCircle(exhaust, degrees(90)))).toBe(40);
    expect(deg(marginOnBaseCircle(exhaust, degrees(140)))).toBe(-10);
    expect(marginOnBaseCircle(exhaust, exhaust.opens)).toBeCloseTo(0, 12);
  });
});

describe('the windows of a card', () => {
  const shown = { intakeOpens: '10 deg', intakeCloses: '50 deg', exhaustOpens: '50 deg', exhaustCloses: '10 deg' };
  const run = (inputs: object) => runDeclared(calculation, { ...shown, ...inputs });
  const refusal = (inputs: object) => {
    const found = run(inputs);
    return found.ok ? '' : found.fault.map(describeCalcFault).join('; ');
  };

  it('are widened by the checking lift, and that is a caution', () => {
    const found = value(run({ basis: 'at-lift', checkingLift: '1 mm' }));
    expect(found.outputs.intakeOpens?.text).toBe('327.00 deg');
    expect(found.cautions.map(({ code }) => code)).toEqual(['ramps-not-known']);
  });

  it('are widened to the advertised durations without a caution', () => {
    const found = value(run({ basis: 'at-lift', advertisedIntake: '270 deg', advertisedExhaust: '280 deg' }));
    expect(found.outputs.exhaustCloses?.text).toBe('390.00 deg');
    expect(found.cautions).toEqual([]);
  });

  it('are refused with the inputs that cannot stand together', () => {
    expect(refusal({ basis: 'seat', advertisedIntake: '270 deg' })).toContain('of both valves or of none');
    expect(refusal({ basis: 'seat', intakeOpens: '-90 deg', intakeCloses: '-90 deg' })).toContain(
      'the intake valve would be open for 0 degrees; above 0 and below 720 is valid',
    );
    expect(refusal({ basis: 'at-lift', advertisedIntake: '200 deg', advertisedExhaust: '280 deg' })).toContain(
      'advertised intake duration 200 degrees is shorter than the 240 degrees',
    );
  });
});
