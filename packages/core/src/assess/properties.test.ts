import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from './assess.js';
import { EXACT, EXACT_GAUGE, engineWith, placeIn, reading, readingsOf } from './assess.suite.js';
import { slotOf } from './features/index.js';
import type { Assessment, SlotReading } from './model.js';

const LIMITS = [
  'property: cylinder-bore.diameter, whenNew: "90.000..90.020 mm", wear: { changeFromNew: 0.05 mm }',
  'property: cylinder-bore.out-of-round, whenNew: "<= 0.010 mm"',
  'property: cylinder-bore.taper, whenNew: "<= 0.010 mm", rule: spread',
  'property: piston.clearance, whenNew: "0.030..0.050 mm", wear: { clearance: <= 0.080 mm }',
];
const engine = engineWith(LIMITS);
const inches = engineWith(
  LIMITS.map((row) =>
    row
      .replace(/"([\d.]+)\.\.([\d.]+) mm"/, (_, a, b) => `"${a / 25.4}..${b / 25.4} in"`)
      .replace(/([\d.]+) mm/g, (_, a) => `${(a / 25.4).toFixed(15)} in`),
  ),
);
const PLACES = [
  ['cylinder-bore', '1'],
  ['cylinder-bore', '2'],
  ['piston-skirt', '1'],
  ['piston-skirt', '2'],
] as const;
const SLOTS = PLACES.flatMap(([feature, place]) =>
  placeIn(engine, feature, place).stations.map((station) => slotOf(feature, place, station.id)),
);
/** Readings in tenths of a micrometre about 90 mm, some slots twice, some left out. */
const taken = fc
  .array(
    fc.record({ slot: fc.constantFrom(...SLOTS), offset: fc.integer({ min: -900, max: 900 }), warm: fc.boolean() }),
    { maxLength: 40 },
  )
  .map((all) =>
    all.map(({ slot, offset, warm }, at): SlotReading => {
      const one = reading(slot, `${(90 + offset / 10_000).toFixed(4)} mm`, warm ? { temperature: 298.15 } : {});
      return { ...one, entry: `entry-${at}` };
    }),
  );
/** What a person sees of an assessment. */
const seen = ({ findings }: Assessment) =>
  findings.map(({ key, size, missing, verdict, words, again }) => ({
    key,
    value: size?.value,
    u: size?.u,
    missing,
    verdict,
    words,
    again: again?.key,
  }));
const round = (n: number | undefined) => (n === undefined ? undefined : Number(n.toPrecision(9)));

describe('an assessment', () => {
  it('is the same in whatever order independent readings came', () => {
    fc.assert(
      fc.property(taken, fc.infiniteStream(fc.nat()), (all, keys) => {
        const order = new Map([...new Set(all.map(({ slot }) => slot))].map((slot) => [slot, keys.next().value ?? 0]));
        const moved = all.toSorted((a, b) =>
          a.slot === b.slot ? 0 : order.get(a.slot)! - order.get(b.slot)! || (a.slot < b.slot ? -1 : 1),
        );
        expect(seen(assess(engine, readingsOf(moved)))).toEqual(seen(assess(engine, readingsOf(all))));
      }),
      { numRuns: 60 },
    );
  });

  it('is the former one again when a reading is struck out', () => {
    fc.assert(
      fc.property(taken, fc.constantFrom(...SLOTS), (all, slot) => {
        const before = seen(assess(engine, readingsOf(all)));
        const slip = reading(slot, '95.000 mm');
        assess(engine, readingsOf([...all, slip]));
        expect(seen(assess(engine, readingsOf([...all, slip].filter((one) => one !== slip))))).toEqual(before);
      }),
      { numRuns: 40 },
    );
  });

  it('does not depend on the unit in which the sheet is written', () => {
    fc.assert(
      fc.property(taken, (all) => {
        const [mm, inch] = [engine, inches].map((sheet) => seen(assess(sheet, readingsOf(all))));
        const near = mm!.filter(({ verdict }, at) => verdict !== inch![at]!.verdict);
        expect(near).toEqual([]);
        expect(mm!.map(({ value }) => round(value))).toEqual(inch!.map(({ value }) => round(value)));
      }),
      { numRuns: 40 },
    );
  });

  it('is the same after any other assessment of the sheet as on a sheet never assessed before', () => {
    const gauge = { ...EXACT_GAUGE, resolution: 1e-6 };
    const check = {
      instrument: 'exact',
      moment: 'start',
      standard: 0.09,
      read: 0.090002,
      at: '2026-03-02T08:00:00+00:00',
      entry: 'check',
    } as const;
    const moment = fc
      .record({ all: taken, gauged: fc.boolean(), checked: fc.boolean() })
      .map(({ all, gauged, checked }) =>
        readingsOf(
          all.map((one) => ({ ...one, ...(gauged && { instrument: 'exact' }) })),
          { instruments: gauged ? [gauge] : [], checks: checked ? [check] : [] },
        ),
      );
    fc.assert(
      fc.property(fc.array(moment, { minLength: 2, maxLength: 4 }), (moments) => {
        for (const readings of moments)
          expect(seen(assess(engine, readings))).toEqual(seen(assess(engineWith(LIMITS), readings)));
      }),
      { numRuns: 12 },
    );
  });

  it('of readings that grew one by one is that of all of them at once', () => {
    fc.assert(
      fc.property(taken, (all) => {
        const grown = engineWith(LIMITS);
        let last = readingsOf([]);
        let assessment = assess(grown, last);
        for (const [at, { slot }] of all.entries()) {
          const grewFrom = { bySlot: last.bySlot, slots: [slot] };
          last = { ...readingsOf(all.slice(0, at + 1)), grewFrom };
          assessment = assess(grown, last);
        }
        const whole = assess(engineWith(LIMITS), readingsOf(all));
        expect(seen(assessment)).toEqual(seen(whole));
        expect([...assessment.sizes.keys()]).toEqual([...whole.sizes.keys()]);
      }),
      { numRuns: 30 },
    );
  });

  it('has no doubt where nothing is uncertain, and then nothing is near', () => {
    const exactly = { instruments: [EXACT_GAUGE] };
    fc.assert(
      fc.property(taken, (all) => {
        const once = [...new Map(all.map((one) => [one.slot, { ...one, instrument: 'exact' }])).values()];
        const { findings } = assess(engine, readingsOf(once, exactly), EXACT);
        for (const { size, verdict } of findings) {
          if (size !== undefined) expect(size.u).toBe(0);
          expect(['in', 'out', 'no data']).toContain(verdict);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('never calls in what was not read', () => {
    fc.assert(
      fc.property(taken, (all) => {
        const read = new Set(all.map(({ slot }) => slot));
        for (const { size, missing, verdict } of assess(engine, readingsOf(all)).findings) {
          if (size === undefined) expect([verdict, missing.length > 0]).toEqual(['no data', true]);
          for (const slot of missing) expect(read.has(slot)).toBe(false);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('has parts whose squares add up to the doubt', () => {
    fc.assert(
      fc.property(taken, (all) => {
        for (const { u = 0, parts } of assess(engine, readingsOf(all)).sizes.values())
          expect(Math.hypot(...parts.map((part) => part.sensitivity * (part.u ?? 0)))).toBeCloseTo(u, 12);
      }),
      { numRuns: 40 },
    );
  });
});
