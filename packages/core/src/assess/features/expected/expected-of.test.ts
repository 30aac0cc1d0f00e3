import { describe, expect, it } from 'vitest';
import { limitsOf } from '../../limits/index.js';
import { SHEETS, sheet } from '../../limits/limit.suite.js';
import { newWindow, wearWindow } from '../../limits/windows.js';
import type { Expected, FeatureKind, Place } from '../../model.js';
import { inspectionPlan } from '../index.js';

interface Row {
  readonly name: string;
  readonly kind: FeatureKind;
  readonly place: Place;
  readonly expected: Expected | undefined;
}
const rowsOf = (engine: (typeof SHEETS)[number][1]): readonly Row[] =>
  inspectionPlan(engine).features.flatMap(({ kind, places }) =>
    places.map((place) => ({ name: `${kind.id} of ${place.name}`, kind, place, expected: place.expected })),
  );
const inside = (value: number, { low = -Infinity, high = Infinity }: Expected['usual']) =>
  low <= value && value <= high;
const SLIPS = [10, 0.1, 25.4, 1 / 25.4];
const V8 = sheet('quernside');
const of = (id: string, place: string) =>
  rowsOf(V8).find((each) => each.kind.id === id && each.place.id === place)?.expected;

describe.each(SHEETS)('what is to be expected in %s', (_path, engine) => {
  const rows = rowsOf(engine);
  /** Sizes that the sheet allows at the place, new or worn. */
  const allowed = (kind: FeatureKind, place: Place): readonly number[] =>
    limitsOf(engine, kind.sizes[0]?.property ?? '', place)
      .flatMap((limit) => [newWindow(limit), wearWindow(limit, kind.sense)])
      .flatMap((window) => [window?.low, window?.high])
      .filter((end) => end !== undefined);
  const allowsTenTimes = (kind: FeatureKind, place: Place) => {
    const ends = allowed(kind, place);
    return ends.length > 0 && Math.max(...ends) > 9.8 * Math.min(...ends);
  };

  it('is known and explained for every place', () => {
    expect(
      rows.filter(({ expected }) => expected === undefined || expected.why === '').map(({ name }) => name),
    ).toEqual([]);
  });

  it('leaves every slip of ten times and of inch for millimetre outside, unless the sheet itself allows sizes ten times apart', () => {
    const caught = rows.filter(
      ({ kind, place, expected }) => (expected?.usual.low ?? 0) > 0 && !allowsTenTimes(kind, place),
    );
    expect(caught.length).toBeGreaterThan(0.7 * rows.length);
    for (const { name, expected } of caught) {
      const { low = 0, high = 0 } = expected?.usual ?? {};
      const slipped = [0, 0.25, 0.5, 0.75, 1].flatMap((share) =>
        SLIPS.map((slip) => (low + share * (high - low)) * slip),
      );
      expect([name, slipped.filter((value) => inside(value, { low, high }))]).toEqual([name, []]);
    }
  });

  it('holds every size that the sheet allows, new or worn', () => {
    const asked = rows.flatMap(({ name, kind, place, expected }) =>
      allowed(kind, place)
        .filter((end) => !inside(end, expected?.usual ?? {}))
        .map((end) => `${name}: ${end}`),
    );
    expect(asked).toEqual([]);
  });

  it('has its middle inside, and what is possible around it', () => {
    for (const { name, expected } of rows) {
      const { nominal = Number.NaN, usual = {}, possible = {} } = expected ?? {};
      expect([name, inside(nominal, usual)]).toEqual([name, true]);
      expect([name, (possible.low ?? 0) <= (usual.low ?? 0), (possible.high ?? 0) >= (usual.high ?? 0)]).toEqual([
        name,
        true,
        true,
      ]);
    }
  });
});

describe('what is to be expected in the invented V8', () => {
  it('of a bore: worn out by the book, or bored to the largest piston that can be bought', () => {
    expect(inside(0.0988, of('cylinder-bore', '1')?.usual ?? {})).toBe(true);
    expect(inside(0.09961, of('cylinder-bore', '1')?.usual ?? {})).toBe(true);
    expect(inside(0.0896, of('cylinder-bore', '1')?.usual ?? {})).toBe(false);
    expect(of('cylinder-bore', '1')?.why).toContain('98.600..98.618 mm new, wear of 0.15 mm');
  });

  it('of a journal: ground to the smallest shell that can be bought', () => {
    expect(inside(0.06298, of('main-journal', 'main-1')?.usual ?? {})).toBe(true);
  });

  it('of a deck clearance without limit: the stack of the sheet', () => {
    const bare = { ...V8, limits: [] };
    const expected = inspectionPlan(bare).features.find(({ kind }) => kind.id === 'deck-clearance')?.places[0]
      ?.expected;
    // 231.20 − 87.4/2 − 151.5 − 35.60 = 0.40 mm, by hand.
    expect(expected?.nominal).toBeCloseTo(0.0004, 9);
  });

  it('of a run-out: from nothing, so that only the large slips are outside', () => {
    expect(of('pushrod-runout', '1-intake-1')?.usual.low).toBe(0);
    expect(inside(0.25e-3 * 10, of('pushrod-runout', '1-intake-1')?.usual ?? {})).toBe(false);
  });
});
