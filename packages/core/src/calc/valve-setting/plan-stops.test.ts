import { degrees } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewest, firstSet } from './fewest-stops.js';
import {
  describePlanFault,
  describeRefusal,
  type PlanOptions,
  permittedAt,
  planValveStops,
  type ValvePlan,
  type ValveTiming,
  type ValveTimingInput,
  valveTiming,
} from './index.js';

function engine(input: ValveTimingInput): ValveTiming {
  const timing = valveTiming(input);
  if (!timing.ok) throw new Error(JSON.stringify(timing.fault));
  return timing.value;
}
function planned(timing: ValveTiming, options?: PlanOptions): ValvePlan {
  const plan = planValveStops(timing, options);
  if (!plan.ok) throw new Error(JSON.stringify(plan.fault));
  return plan.value;
}
interface Raw {
  readonly order: readonly number[];
  readonly intervals: readonly number[];
  readonly events: readonly [number, number, number, number];
  readonly margin: number;
}
const inputOf = ({ order, intervals, events: [io, ic, eo, ec], margin }: Raw): ValveTimingInput => ({
  firingOrder: order,
  firingIntervals: intervals.map(degrees),
  cam: {
    basis: 'seat',
    events: {
      intakeOpens: degrees(io),
      intakeCloses: degrees(ic),
      exhaustOpens: degrees(eo),
      exhaustCloses: degrees(ec),
    },
  },
  margin: degrees(margin),
});

/**
 * An independent reading of the rules, for whole degrees only: crank degrees are walked one by one from the place until
 * the window begins or ends. Shares no code with the planner.
 */
function reach(raw: Raw, cylinder: number, side: 'intake' | 'exhaust', crank: number): number {
  const place = raw.order.indexOf(cylinder);
  const fires = raw.intervals.slice(0, place).reduce((sum, one) => sum + one, 0);
  const [io, ic, eo, ec] = raw.events;
  const [opens, closes] = side === 'intake' ? [360 - io, 540 + ic] : [180 - eo, 360 + ec];
  const isEnd = (at: number) => [opens, closes].some((end) => (((at - fires - end) % 720) + 720) % 720 === 0);
  const isOpen = (at: number) => {
    const since = (((at - fires - opens) % 720) + 720) % 720;
    return since > 0 && since < closes - opens;
  };
  let away = 0;
  while (!isEnd(crank + away) && !isEnd(crank - away)) away += 1;
  return isOpen(crank) ? -away : away;
}
function subsets(places: readonly number[], size: number): number[][] {
  if (size === 0) return [[]];
  return places.flatMap((first, i) => subsets(places.slice(i + 1), size - 1).map((rest) => [first, ...rest]));
}
const sides = ['intake', 'exhaust'] as const;

/** Every set of places, smallest first: the first size that serves all valves, then the greatest smallest distance. */
function bruteForce(raw: Raw, places: readonly number[]) {
  const rows = raw.order
    .flatMap((cylinder) => sides.map((side) => places.map((place) => reach(raw, cylinder, side, place))))
    .filter((row) => row.some((distance) => distance >= raw.margin));
  const indices = places.map((_, i) => i);
  for (let size = 0; size <= places.length; size += 1) {
    const found = subsets(indices, size)
      .map((set) => ({ set, least: Math.min(...rows.map((row) => Math.max(...set.map((i) => row[i]!)))) }))
      .filter(({ least }) => least >= raw.margin);
    if (found.length === 0) continue;
    const least = Math.max(...found.map((one) => one.least));
    const first = found.find((one) => one.least === least)!;
    return { stops: first.set.map((i) => places[i]!), least, settable: rows.length };
  }
  throw new Error('unreachable: the set of all places serves every settable valve');
}
/** Marks as the rules name them, built without the planner: dead centres and one turn later, quarter turns, ten degrees. */
function usualPlaces(raw: Raw): number[][] {
  const fires = raw.order.map((_, i) => raw.intervals.slice(0, i).reduce((sum, one) => sum + one, 0));
  const steps = (step: number) => Array.from({ length: 720 / step }, (_, i) => i * step);
  const clean = (list: number[]) => [...new Set(list.map((at) => at % 720))].sort((a, b) => a - b);
  const marks = fires.flatMap((at) => [at, at + 360]);
  return [clean(marks), clean([...marks, ...steps(90)]), clean([...marks, ...steps(90), ...steps(10)])];
}

const order = (most: number) =>
  fc.integer({ min: 1, max: most }).chain((n) => {
    const cylinders = Array.from({ length: n }, (_, i) => i + 1);
    return fc.shuffledSubarray(cylinders, { minLength: n, maxLength: n });
  });
const intervalsFor = (n: number) =>
  fc.array(fc.integer({ min: 0, max: 720 }), { minLength: n - 1, maxLength: n - 1 }).map((cuts) => {
    const ends = [0, ...cuts.sort((a, b) => a - b), 720];
    return ends.slice(1).map((end, i) => end - ends[i]!);
  });
const event = fc.integer({ min: -20, max: 120 });
const raw = (most: number): fc.Arbitrary<Raw> =>
  order(most)
    .chain((cylinders) =>
      fc.record({
        order: fc.constant(cylinders),
        intervals: intervalsFor(cylinders.length),
        events: fc.tuple(event, event, event, event),
        margin: fc.integer({ min: 0, max: 40 }),
      }),
    )
    .filter(({ events: [io, ic, eo, ec], margin }) =>
      [io + ic, eo + ec].every((sum) => 180 + sum > 0 && 180 + sum < 720 - 2 * margin),
    );
const candidates = fc.uniqueArray(fc.integer({ min: 0, max: 719 }), { minLength: 1, maxLength: 9 });
const keyOf = (one: { valve: string; cylinder: number }) => `${one.valve} ${one.cylinder}`;

describe('a plan for any order, intervals and cam', () => {
  it('has the fewest stops, then the greatest smallest margin, then the first set turning forward (brute force)', () => {
    fc.assert(
      fc.property(raw(8), candidates, (one, places) => {
        const plan = planned(engine(inputOf(one)), { candidates: places });
        const ascending = [...places].sort((a, b) => a - b);
        const best = bruteForce(one, ascending);
        expect(plan.stops.map(({ crankDegrees }) => crankDegrees)).toEqual(best.stops);
        expect(plan.smallestDegrees).toBe(best.settable === 0 ? undefined : best.least);
        expect(plan.refused.length).toBe(2 * one.order.length - best.settable);
      }),
      { numRuns: 400 },
    );
  });

  it('has as few stops on the usual marks as brute force finds over all of them', () => {
    fc.assert(
      fc.property(raw(5), (one) => {
        const plan = planned(engine(inputOf(one)));
        fc.pre(plan.stops.length <= 2);
        const tiers = usualPlaces(one);
        const finest = bruteForce(one, tiers[2]!);
        const tier = tiers.find((places) => {
          const found = bruteForce(one, places);
          return found.settable === finest.settable && found.stops.length === finest.stops.length;
        })!;
        const best = bruteForce(one, tier);
        expect(plan.stops.map(({ crankDegrees }) => crankDegrees)).toEqual(best.stops);
        if (best.settable > 0) expect(plan.smallestDegrees).toBe(best.least);
      }),
      { numRuns: 60 },
    );
  });

  it('sets every valve exactly once or says why not, each where it is farthest from its window, turning only forward', () => {
    fc.assert(
      fc.property(raw(18), (one) => {
        const timing = engine(inputOf(one));
        const plan = planned(timing);
        const all = [...plan.stops.flatMap(({ set }) => set.map(keyOf)), ...plan.refused.map(keyOf)].sort();
        expect(all).toEqual(one.order.flatMap((c) => [`intake ${c}`, `exhaust ${c}`]).sort());
        const places = plan.stops.map(({ crankDegrees }) => crankDegrees);
        for (const stop of plan.stops) {
          expect(stop.set.length).toBeGreaterThan(0);
          for (const valve of stop.set) {
            const reaches = places.map((place) => reach(one, valve.cylinder, valve.valve, place));
            expect(valve.degrees).toBe(Math.max(...reaches));
            expect(valve.degrees).toBeGreaterThanOrEqual(one.margin);
            expect(reaches.indexOf(valve.degrees)).toBe(places.indexOf(stop.crankDegrees));
          }
        }
        expect(plan.stops.every(({ turnDegrees }, i) => turnDegrees > 0 || i === 0)).toBe(true);
        expect(plan.stops.reduce((sum, stop) => sum + stop.turnDegrees, 0)).toBe(places.at(-1) ?? 0);
      }),
      { numRuns: 150 },
    );
  });

  it('permits at a crank position exactly the valves that are a margin away from both of their events', () => {
    fc.assert(
      fc.property(raw(12), fc.integer({ min: -2000, max: 2000 }), (one, crank) => {
        const here = permittedAt(engine(inputOf(one)), crank);
        const expected = one.order.flatMap((cylinder) =>
          sides
            .filter((side) => reach(one, cylinder, side, crank) >= one.margin)
            .map((valve) => keyOf({ cylinder, valve })),
        );
        expect(here.permitted.map(keyOf).sort()).toEqual(expected.sort());
        expect(here.permitted.length + here.refused.length).toBe(2 * one.order.length);
      }),
    );
  });
});

const plain = (events: Raw['events'], margin: number): Raw => ({ order: [1], intervals: [720], events, margin });

describe('the margin', () => {
  it('belongs to the permitted side at both ends', () => {
    const timing = engine(inputOf(plain([12, 52, 52, 12], 5)));
    const may = (crank: number) => permittedAt(timing, crank).permitted.map(keyOf);
    expect(may(343)).toContain('intake 1');
    expect(may(343.001)).not.toContain('intake 1');
    expect(may(597)).toContain('intake 1');
    expect(may(596.999)).not.toContain('intake 1');
  });

  it('may be nothing: a valve that is just about to open may be set', () => {
    const timing = engine(inputOf(plain([12, 52, 52, 12], 0)));
    expect(permittedAt(timing, 128).permitted.map(keyOf)).toContain('exhaust 1');
    expect(permittedAt(timing, 129).permitted.map(keyOf)).not.toContain('exhaust 1');
  });
});

describe('stops', () => {
  it('are all a person gave, and no others', () => {
    const timing = engine({ firingOrder: [1, 3, 4, 2] });
    const plan = planned(timing, { stops: [540, 0, 0, 180, 360] });
    expect(plan.stops.map(({ crankDegrees, turnDegrees }) => [crankDegrees, turnDegrees])).toEqual([
      [0, 0],
      [180, 180],
      [360, 180],
      [540, 180],
    ]);
  });

  it('that leave a valve open everywhere refuse it with its best place', () => {
    const plan = planned(engine({ firingOrder: [1, 3, 4, 2] }), { stops: [0] });
    expect(plan.refused.map(describeRefusal)).toEqual([
      'exhaust 2 at crank 0 (phase 180): off its base circle, it opened 80 degrees ago',
      'intake 3 at crank 0 (phase 540): off its base circle, it closes in 75 degrees',
      'intake 4 at crank 0 (phase 360): off its base circle, it opened 35 degrees ago',
      'exhaust 4 at crank 0 (phase 360): off its base circle, it closes in 35 degrees',
    ]);
  });

  it('serve the valve that a wide margin leaves, and refuse the other by name (inclusive at the very middle)', () => {
    // Intake open 300 degrees, exhaust 260: half of the base circle is 210 and 230 degrees.
    const cam = [40, 80, 60, 20] as const;
    const at = (margin: number) => planned(engine(inputOf(plain(cam, margin))));
    expect(at(210)).toMatchObject({ refused: [] });
    expect(at(211).stops.flatMap((stop) => stop.set)).toMatchObject([{ valve: 'exhaust' }]);
    expect(at(211).refused).toMatchObject([{ valve: 'intake', code: 'too-near' }]);
    expect(at(231)).toMatchObject({ stops: [], refused: [{ valve: 'intake' }, { valve: 'exhaust' }] });
  });

  it('too near an end say which end and how near', () => {
    const near = permittedAt(engine(inputOf(plain([12, 52, 52, 12], 5))), 345).refused;
    expect(near.filter(({ valve }) => valve === 'intake').map(describeRefusal)).toEqual([
      'intake 1 at crank 345 (phase 345): opens in 3 degrees, the margin is 5 degrees',
    ]);
    const after = permittedAt(engine(inputOf(plain([12, 52, 52, 12], 5))), 594).refused;
    expect(after.map(describeRefusal)).toEqual([
      'intake 1 at crank 594 (phase 594): closed 2 degrees ago, the margin is 5 degrees',
    ]);
  });

  it.each([-1, 720, Number.NaN])('at %d degrees are refused', (stop) => {
    const plan = planValveStops(engine({ firingOrder: [1] }), { stops: [0, stop] });
    expect(!plan.ok && plan.fault).toEqual({ code: 'stop-out-of-range', given: stop });
    expect(!plan.ok && describePlanFault(plan.fault)).toContain('0 to below 720');
  });

  it('cannot be an empty list', () => {
    const timing = engine({ firingOrder: [1] });
    expect(planValveStops(timing, { stops: [] })).toEqual({ ok: false, fault: { code: 'no-stops' } });
    const none = planValveStops(timing, { candidates: [] });
    expect(!none.ok && describePlanFault(none.fault)).toBe('stops: none given; list crank degrees such as 0,360');
  });

  it('are none when there is no valve to set', () => {
    expect(fewest([], 72)).toBe(0);
    expect(firstSet([], 72, 0)).toEqual([]);
  });

  it('on a single cylinder are one: its firing dead centre', () => {
    const [stop, ...others] = planned(engine({ firingOrder: [1] })).stops;
    expect(stop).toMatchObject({ crankDegrees: 0, mark: 'dead-centre' });
    expect(others).toEqual([]);
  });

  it('are at dead centre marks when these reach the fewest, though finer marks would give more margin', () => {
    expect(planned(engine({ firingOrder: [1, 3, 4, 2] })).stops.map(({ mark }) => mark)).toEqual([
      'dead-centre',
      'dead-centre',
    ]);
  });

  it('use degree marks only when coarser marks need more stops: an uneven twin that one stop in degrees can serve', () => {
    const one: Raw = { order: [1, 2], intervals: [255, 465], events: [-10, 30, 30, -10], margin: 20 };
    expect(usualPlaces(one).map((places) => bruteForce(one, places).stops.length)).toEqual([2, 2, 1]);
    const plan = planned(engine(inputOf(one)));
    expect(plan.stops.map(({ mark }) => mark)).toEqual(['damper-degrees']);
  });
});
