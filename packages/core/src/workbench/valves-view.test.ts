import { describe, expect, it } from 'vitest';
import { valvesOf } from '../engine/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import { hereView, openBench, propose, valvesView } from './index.js';

const bare = (sheet: string) => openBench(engineOf(sheet), []);

describe('setting the valves of a pushrod V8', () => {
  it('takes two stops one turn apart, eight valves at each (common practice, no source)', () => {
    const { stops, refused } = valvesView(bare(SHEETS.v8));
    expect(stops.map((stop) => stop.crankDegrees)).toEqual([0, 360]);
    expect(stops.map((stop) => stop.valves.length)).toEqual([8, 8]);
    expect(refused).toEqual([]);
  });

  it('sets every one of the sixteen valves at one stop only', () => {
    const { stops } = valvesView(bare(SHEETS.v8));
    const keys = stops.flatMap((stop) => stop.valves.map((valve) => valve.key));
    expect(new Set(keys).size).toBe(16);
    expect(keys).toHaveLength(16);
  });

  it('at the firing dead centre of the first cylinder its running mate rocks', () => {
    const [first] = valvesView(bare(SHEETS.v8)).stops;
    // Order 1-5-7-2-6-8-4-3: the mate of 1 stands half an order later, 6.
    expect(first?.sight.join(' ')).toMatch(/valves of cylinder 6 rock/);
  });

  it('turns preload into plunger travel for the thread and ratio of this engine', () => {
    const { rule } = valvesView(bare(SHEETS.v8));
    expect(rule.intake).toBe('5/8 turn past zero lash');
    // 0.625 x 1.25 mm x (1 + 1/1.55) = 1.285 mm, by hand.
    expect(rule.working.join(' ')).toContain('(1.29 mm) of plunger travel');
  });

  it('refuses a valve that the cam holds open and says which event is how near', () => {
    const bench = bare(SHEETS.v8);
    // Crank at cylinder 6's overlap, that is cylinder 1's firing dead centre.
    const result = propose(bench, {
      kind: 'valve-set',
      data: {
        valve: { cylinder: 6, kind: 'intake', index: 1 },
        method: 'crank-here',
        crankDegrees: 0,
        adjustment: 'preload',
        turns: 0.625,
        condition: 'cold',
      },
    });
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.fault).toMatch(/cylinder 6 intake may not be set here.*opened 18 degrees ago/);
  });

  it('asks for the look after two turns only when every valve is set', () => {
    const scribe = new Scribe(engineOf(SHEETS.v8));
    const valves = valvesOf(scribe.engine);
    for (const valve of valves.slice(1)) setValve(scribe, valve);
    expect(valvesView(scribe.bench).recheck.due).toBe(false);
    setValve(scribe, valves[0]!);
    const view = valvesView(scribe.bench);
    expect(view.recheck.due).toBe(true);
    expect(view.finished).toBe(false);
    for (const valve of valves)
      scribe.write({ kind: 'valve-rechecked', data: { valve, result: 'good', seen: 'pushrod spins' } });
    expect(valvesView(scribe.bench).finished).toBe(true);
  });
});

function setValve(scribe: Scribe, valve: ReturnType<typeof valvesOf>[number]): void {
  const stop = valvesView(scribe.bench).stops.find((one) =>
    one.valves.some((each) => each.key === `${valve.cylinder}-${valve.kind}-1`),
  );
  scribe.write({
    kind: 'valve-set',
    data: {
      valve,
      method: 'stop',
      crankDegrees: stop?.crankDegrees ?? 0,
      adjustment: 'preload',
      turns: 0.625,
      condition: 'cold',
    },
  });
}

describe('the crank is here', () => {
  it('splits all valves into those that may be set and those that may not, with a reason each', () => {
    const here = hereView(bare(SHEETS.v8), 0);
    expect((here?.may.length ?? 0) + (here?.mayNot.length ?? 0)).toBe(16);
    for (const one of here?.mayNot ?? []) expect(one.reason).toMatch(/degrees/);
  });

  it('may set no fewer valves than the plan gives to the same place', () => {
    const bench = bare(SHEETS.six);
    for (const stop of valvesView(bench).stops) {
      const may = new Set(hereView(bench, stop.crankDegrees)?.may.map((one) => one.key));
      for (const valve of stop.valves) expect(may).toContain(valve.key);
    }
  });
});

describe('shims', () => {
  it('chooses nothing until every gap is measured: one choice over all valves buys the fewest', () => {
    const view = valvesView(bare(SHEETS.four));
    expect(view.rule.adjustment).toBe('shim');
    expect(view.shims?.choices).toEqual([]);
    expect(view.shims?.hindrances.join(' ')).toMatch(/Measure every gap/);
  });

  it('buys nothing when every gap already lies in its window', () => {
    const scribe = new Scribe(engineOf(SHEETS.four));
    const gear = scribe.engine.valveGear!;
    for (const valve of valvesOf(scribe.engine)) {
      const window = gear.lash![valve.kind].cold!.window;
      const gap = (window.low! + window.high!) / 2;
      scribe.write({
        kind: 'shim-measured',
        data: {
          valve,
          lash: { text: `${(gap * 1000).toFixed(3)} mm`, value: gap, unit: 'm' },
          shim: { text: gear.shims!.thinnest.text, value: gear.shims!.thinnest.value, unit: 'm' },
        },
      });
    }
    const shims = valvesView(scribe.bench).shims!;
    expect(shims.hindrances).toEqual([]);
    expect(shims.buy).toEqual([]);
    expect(shims.choices.every((choice) => choice.from === 'its own shim stays')).toBe(true);
  });

  it('takes a spare from the box before it buys, and buys again when the spare is struck out', () => {
    const scribe = new Scribe(engineOf(SHEETS.four));
    const gear = scribe.engine.valveGear!;
    const old = gear.shims!.thinnest.value + 4 * gear.shims!.step.value;
    const metres = (value: number) => ({ text: `${(value * 1000).toFixed(3)} mm`, value, unit: 'm' as const });
    valvesOf(scribe.engine).forEach((valve, place) => {
      const { low, high } = gear.lash![valve.kind].cold!.window;
      // One valve is out by four steps; all others lie in the middle of their window.
      const gap = (low! + high!) / 2 + (place === 0 ? 4 * gear.shims!.step.value : 0);
      scribe.write({ kind: 'shim-measured', data: { valve, lash: metres(gap), shim: metres(old) } });
    });
    expect(valvesView(scribe.bench).shims?.buy).toHaveLength(1);
    const spare = scribe.append({
      kind: 'spare-shim',
      data: { shim: metres(old + 4 * gear.shims!.step.value) },
    });
    const shims = valvesView(scribe.bench).shims!;
    expect(shims.buy).toEqual([]);
    expect(shims.choices[0]?.from).toBe('a spare from the box');
    scribe.write({ kind: 'struck-out', data: { entry: spare, reason: 'lost' } });
    expect(valvesView(scribe.bench).shims?.buy).toHaveLength(1);
  });
});
