/**
 * Lists printed in service manuals (cases/valve-sets.json, each with its address). Windows: the default ones, and
 * 30/70/70/30 and 12/52/52/12 as in reference mechanism-open.md section 8.
 */
import { degrees } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import published from '../../../../../cases/valve-sets.json' with { type: 'json' };
import { permittedAt, planValveStops, type ValveSide, type ValveTiming, valveTiming } from './index.js';

const card = (io: number, ic: number, eo: number, ec: number) =>
  ({
    basis: 'seat',
    events: {
      intakeOpens: degrees(io),
      intakeCloses: degrees(ic),
      exhaustOpens: degrees(eo),
      exhaustCloses: degrees(ec),
    },
  }) as const;
const windows = [
  ['no cam card', undefined],
  ['30/70/70/30', card(30, 70, 70, 30)],
  ['12/52/52/12', card(12, 52, 52, 12)],
] as const;

function engine(firingOrder: readonly number[], cam?: ReturnType<typeof card>): ValveTiming {
  const timing = valveTiming({ firingOrder, ...(cam ? { cam } : {}) });
  if (!timing.ok) throw new Error(JSON.stringify(timing.fault));
  return timing.value;
}
const named = (valves: readonly { valve: ValveSide; cylinder: number }[], side: ValveSide) =>
  valves.filter((one) => one.valve === side).map((one) => one.cylinder);

function planned(timing: ValveTiming, stops?: readonly number[]) {
  const plan = planValveStops(timing, stops ? { stops } : {});
  if (!plan.ok) throw new Error(JSON.stringify(plan.fault));
  return plan.value;
}

describe.each(windows)('with %s', (_, cam) => {
  it.each(published.cases)('$case: every valve that the manual sets at a stop is permitted there', (row) => {
    const timing = engine(row.order, cam);
    for (const stop of row.stops) {
      const here = permittedAt(timing, stop.crankDegrees).permitted;
      expect(named(here, 'intake')).toEqual(expect.arrayContaining(stop.intake));
      expect(named(here, 'exhaust')).toEqual(expect.arrayContaining(stop.exhaust));
    }
  });

  const twoStop = published.cases.filter((row) => row.twoStopPlanPrintedInFull);
  it.each(twoStop)('$case: the plan found is the printed two-stop list, valve for valve', (row) => {
    const { stops, refused } = planned(engine(row.order, cam));
    const found = stops.map(({ crankDegrees, set }) => ({
      crankDegrees,
      intake: named(set, 'intake'),
      exhaust: named(set, 'exhaust'),
    }));
    expect(found).toEqual(row.stops);
    expect(refused).toEqual([]);
  });

  it.each(published.cases)('$case: the stops of the manual set every valve exactly once', (row) => {
    const { stops, refused } = planned(
      engine(row.order, cam),
      row.stops.map((stop) => stop.crankDegrees),
    );
    const all = stops.flatMap(({ set }) => set.map(({ valve, cylinder }) => `${valve} ${cylinder}`));
    expect(new Set(all).size).toBe(all.length);
    expect(all.length).toBe(2 * row.order.length);
    expect(refused).toEqual([]);
  });
});

describe('a V8 set at three stops (V5)', () => {
  const order = [1, 3, 7, 2, 6, 5, 4, 8];

  it('permits the exhaust valve of 2 at the second stop while it opens less than 85 degrees before bottom dead centre', () => {
    const here = permittedAt(engine(order, card(30, 70, 85, 30)), 360);
    expect(here.permitted).toContainEqual({
      cylinder: 2,
      valve: 'exhaust',
      phase: 90,
      degrees: 5,
      nearest: 'opening',
    });
  });

  it('refuses it when the exhaust opens 95 degrees before, and says why', () => {
    const here = permittedAt(engine(order, card(30, 70, 95, 30)), 360);
    expect(here.refused).toContainEqual({
      cylinder: 2,
      valve: 'exhaust',
      code: 'open',
      phase: 90,
      degrees: -5,
      nearest: 'opening',
      crankDegrees: 360,
      marginDegrees: 5,
    });
  });

  it('needs no third stop with an ordinary cam', () => {
    expect(planned(engine(order)).stops.map(({ crankDegrees }) => crankDegrees)).toEqual([0, 360]);
  });
});

it('leaves to the second stop what every manual leaves there, though a short cam would permit it at the first (V1)', () => {
  const timing = engine([1, 8, 4, 3, 6, 5, 7, 2], card(12, 52, 52, 12));
  const [first] = planned(timing).stops;
  expect(named(first!.permitted, 'exhaust')).toContain(2);
  expect(named(first!.permitted, 'intake')).toContain(8);
  expect(named(first!.set, 'exhaust')).not.toContain(2);
  expect(named(first!.set, 'intake')).not.toContain(8);
});

/** Windows of the reference cases: intake shut from 600 to 300, exhaust shut from 420 to 100 (engine-cases-valve-sets). */
it.each(published.cases)('$case holds with intake shut from 600 to 300 and exhaust shut from 420 to 100', (row) => {
  const timing = valveTiming({ firingOrder: row.order, cam: card(60, 60, 80, 60), margin: degrees(0) });
  if (!timing.ok) throw new Error(JSON.stringify(timing.fault));
  for (const stop of row.stops) {
    const here = permittedAt(timing.value, stop.crankDegrees).permitted;
    expect(named(here, 'intake')).toEqual(expect.arrayContaining(stop.intake));
    expect(named(here, 'exhaust')).toEqual(expect.arrayContaining(stop.exhaust));
  }
});

/**
 * Twelve-cylinder column of a table of valves to set at the firing and the overlap dead centre of cylinder A1, read at
 * https://manualshive.com/en/manual/mtu/12-v-2000-m92/1852631?page=74. Side A is 1 to 6 here, side B 7 to 12. The table
 * prints no firing order: A1-B5-A5-B3-A3-B6-A6-B2-A2-B4-A4-B1 with 30 and 90 degrees in turn (90 degree vee) is from memory.
 */
describe('a vee of twelve that fires unevenly', () => {
  const firing = {
    firingOrder: [1, 11, 5, 9, 3, 12, 6, 8, 2, 10, 4, 7],
    firingIntervals: Array.from({ length: 12 }, (_, place) => degrees(place % 2 === 0 ? 30 : 90)),
  };

  it.each(windows)('is set at two dead centres as printed, valve for valve, with %s', (_, cam) => {
    const timing = valveTiming({ ...firing, ...(cam ? { cam } : {}) });
    if (!timing.ok) throw new Error(JSON.stringify(timing.fault));
    const { stops, refused } = planned(timing.value, [0, 360]);
    expect(refused).toEqual([]);
    expect(stops.map(({ set }) => [named(set, 'intake'), named(set, 'exhaust')])).toEqual([
      [
        [1, 2, 4, 7, 10, 11],
        [1, 3, 5, 9, 11, 12],
      ],
      [
        [3, 5, 6, 8, 9, 12],
        [2, 4, 6, 7, 8, 10],
      ],
    ]);
  });
});
