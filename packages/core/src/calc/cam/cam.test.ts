import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, degrees, toUnit } from '../../quantity/index.js';
import {
  advanced,
  baseCircleWindow,
  type CamEvents,
  eventsFromLobes,
  lobesFromEvents,
  marginOnBaseCircle,
  openWindows,
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
    const seat = value(seatWindows(card, { basis: 'seat' }, degrees(30)));
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

  it('refuse a card that contradicts itself or never lets go of a valve', () => {
    const short = { intake: degrees(200), exhaust: degrees(300) };
    expect(seatWindows(card, { basis: 'at-lift', advertisedDuration: short }, degrees(0))).toMatchObject({
      fault: { code: 'advertised-shorter', valve: 'intake' },
    });
    expect(seatWindows(events(179, 179, 50, 10), { basis: 'at-lift' }, degrees(91))).toMatchObject({
      fault: { code: 'always-open' },
    });
    expect(seatWindows(events(-100, -80, 50, 10), { basis: 'seat' }, degrees(0))).toMatchObject({
      fault: { code: 'never-open' },
    });
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
