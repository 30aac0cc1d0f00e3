import { degrees, mm } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import { describeAssumption, describeMirrorFault, describeTimingFault, mirrorRule, valveTiming } from './index.js';

const card = (io: number, ic: number, eo: number, ec: number) => ({
  intakeOpens: degrees(io),
  intakeCloses: degrees(ic),
  exhaustOpens: degrees(eo),
  exhaustCloses: degrees(ec),
});
const lines = (input: Parameters<typeof valveTiming>[0]) => {
  const timing = valveTiming(input);
  return timing.ok ? timing.value.assumed.map(describeAssumption) : timing.fault.map(describeTimingFault);
};

describe('a refusal says what, where and what is valid, in one line', () => {
  it.each([
    [{ firingOrder: [] }, /empty; list every cylinder once/],
    [{ firingOrder: [1, 19] }, /cylinder 19 is not a whole number from 1 to 18/],
    [{ firingOrder: [1, 2], firingIntervals: [degrees(720)] }, /1 given, 2 needed/],
    [{ firingOrder: [1, 2], firingIntervals: [-1, 721].map(degrees) }, /number 1 is -1 degrees; 0 to 720 is valid/],
    [{ firingOrder: [1], margin: degrees(400) }, /margin: 400 degrees; 0 to below 360 is valid/],
    [
      { firingOrder: [1], cam: { basis: 'seat', events: card(0, 200, 40, 0) } },
      /intake closes \(ABDC\) at 200 degrees; -180 to 180 is valid/,
    ],
    [{ firingOrder: [1, 1, 3] }, /cylinder 1 stands more than once/],
    [
      { firingOrder: [1], cam: { basis: 'at-lift', checkingLift: { value: 0.01 }, events: card(0, 40, 40, 0) } },
      /checking lift 10 mm; above 0 to 5 mm is valid/,
    ],
    [
      {
        firingOrder: [1],
        cam: {
          basis: 'at-lift',
          advertisedDuration: { intake: degrees(200), exhaust: degrees(270) },
          events: card(0, 40, 40, 0),
        },
      },
      /advertised intake duration 200 degrees is shorter than the 220 degrees/,
    ],
  ])('%j', (input, line) => {
    const said = lines(input as Parameters<typeof valveTiming>[0]);
    expect(said[0]).toMatch(line);
    for (const one of said) expect(one).not.toContain('\n');
  });
});

it('says how far windows without a card were widened, and which lift was taken', () => {
  const advertisedDuration = { intake: degrees(310), exhaust: degrees(280) };
  expect(lines({ firingOrder: [1], cam: { basis: 'seat', advertisedDuration } })).toContain(
    'intake window widened by 10 degrees on each side to the advertised 310 degrees',
  );
  expect(lines({ firingOrder: [1], cam: { basis: 'at-lift', events: card(0, 40, 40, 0) } })).toContain(
    'checking lift not given: taken as 0.050 in (1.27 mm)',
  );
});

it('says by how much printed events at a lift were widened, and to what', () => {
  const advertisedDuration = { intake: degrees(270), exhaust: degrees(260) };
  const said = lines({ firingOrder: [1], cam: { basis: 'at-lift', advertisedDuration, events: card(0, 40, 40, 0) } });
  expect(said).toContain(
    'intake events are at a lift: widened by 25 degrees on each side to the advertised 270 degrees',
  );
  const allowed = lines({
    firingOrder: [1],
    cam: { basis: 'at-lift', checkingLift: { value: mm(1) }, events: card(0, 40, 40, 0) },
  });
  expect(allowed[1]).toContain('exhaust events are at 1 mm lift: widened by 23 degrees on each side');
});

it('says why the rule of thirteen does not hold for a head whose outer cylinders are no mates', () => {
  const timing = valveTiming({ firingOrder: [1, 2, 3], cam: { basis: 'seat', events: card(10, 50, 50, 10) } });
  if (!timing.ok) throw new Error('the card is sound');
  const row = ['E1', 'I1', 'I2', 'E2', 'I3', 'E3'].map((one) => ({
    cylinder: Number(one[1]),
    valve: one[0] === 'I' ? ('intake' as const) : ('exhaust' as const),
  }));
  const rule = mirrorRule(timing.value, row);
  expect(!rule.ok && describeMirrorFault(rule.fault)).toMatch(/their cylinders are not running mates$/);
});

it('says why the rule of nine is wrong for a head E I E I E I E I', () => {
  const timing = valveTiming({ firingOrder: [1, 3, 4, 2], cam: { basis: 'seat', events: card(10, 50, 50, 10) } });
  if (!timing.ok) throw new Error('the card is sound');
  const row = [1, 2, 3, 4].flatMap((cylinder) => [
    { cylinder, valve: 'exhaust' as const },
    { cylinder, valve: 'intake' as const },
  ]);
  const rule = mirrorRule(timing.value, row);
  expect(!rule.ok && describeMirrorFault(rule.fault)).toBe(
    'with valve 1 (exhaust 1) at full lift, valve 8 (intake 4) is only 140 degrees from its own full lift: they are not of the same kind',
  );
  const short = mirrorRule(timing.value, row.slice(2));
  expect(!short.ok && describeMirrorFault(short.fault)).toMatch(/cylinder 1 needs exactly one intake and one exhaust/);
});
