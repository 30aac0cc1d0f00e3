import { describe, expect, it } from 'vitest';
import { valvesOf } from '../engine/index.js';
import { degrees } from '../quantity/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import {
  crankApproach,
  judgeGap,
  lengthGate,
  openBench,
  preloadTravel,
  propose,
  recordView,
  turnCount,
  turnsForTypedTravel,
  usualGap,
  usualShim,
  valveAsk,
  valveResume,
  valvesView,
  valveTask,
} from './index.js';

const v8 = engineOf(SHEETS.v8);
const six = engineOf(SHEETS.six);
const four = engineOf(SHEETS.four);
const intake = { cylinder: 1, kind: 'intake', index: 1 } as const;

describe('what one valve asks for', () => {
  it('is the turns past zero lash that the sheet prints', () => {
    const ask = valveAsk(v8, intake, 'cold');
    expect([ask.number, ask.unit, ask.turns]).toEqual(['5/8', 'turn', 0.625]);
  });
  it('is the window for the gap, cold and hot apart', () => {
    expect(valveAsk(six, intake, 'cold')).toMatchObject({ number: '0.28 to 0.33', unit: 'mm' });
    expect(valveAsk(six, intake, 'hot')).toMatchObject({ number: '0.25', unit: 'mm' });
  });
  it('is no figure at all where the sheet prints none, never a usual one', () => {
    const { lash: _, ...gear } = six.valveGear!;
    expect(valveAsk({ ...six, valveGear: gear }, intake, 'cold')).toMatchObject({ number: '', unit: '' });
  });
});

// Window of the invented six: 0.28 to 0.33 mm cold; both ends count as inside.
describe('a measured gap against its window', () => {
  it.each([
    ['0.30 mm', 'in'],
    ['0.27 mm', 'out'],
    ['0.34 mm', 'out'],
    ['0.33 mm', 'near'],
    ['0.28 mm', 'near'],
    ['0.012 in', 'in'],
    ['0.015 in', 'out'],
  ])('%s is %s', (text, state) => {
    expect(judgeGap(six, intake, 'cold', text).state).toBe(state);
  });
  it('names the distance to the limit and where the limit comes from', () => {
    expect(judgeGap(six, intake, 'cold', '0.36 mm')).toMatchObject({ distance: '0.030 mm too wide', nearEnd: 'high' });
    expect(judgeGap(six, intake, 'cold', '0.36 mm').limit).toContain('0.28..0.33 mm');
  });
  it('is no data where the sheet prints no such figure', () => {
    expect(judgeGap(four, intake, 'hot', '0.20 mm').state).toBe('no-data');
  });
  // Slips: bench-ergonomics.md section 11, test 6.
  it.each(['3.0 mm', '9.0 mm', '7.62 mm'])('asks about or refuses %s', (text) => {
    expect(lengthGate('gap', text, usualGap(six, intake), 'mm').level).not.toBe('fine');
  });
  it('tells a slip by ten from an honest reading', () => {
    const gate = lengthGate('gap', '3.00 mm', usualGap(six, intake), 'mm');
    expect(gate).toMatchObject({ level: 'unlikely', hint: expect.stringContaining('0.300 mm would fit') });
    expect(lengthGate('gap', '0.36 mm', usualGap(six, intake), 'mm').level).toBe('fine');
  });
  it('knows what a shim of this engine can be', () => {
    expect(lengthGate('shim', '2.50 mm', usualShim(four), 'mm').level).toBe('fine');
    expect(lengthGate('shim', '0.25 mm', usualShim(four), 'mm')).toMatchObject({ level: 'unlikely' });
    expect(lengthGate('shim', '25.0 mm', usualShim(four), 'mm').level).toBe('impossible');
  });
});

describe('turns and plunger travel of this engine', () => {
  it('goes both ways through pitch and ratio', () => {
    // By hand: 0.625 x 1.25 mm x (1 + 1/1.55) = 1.2853 mm.
    expect(preloadTravel(v8, 0.625).reading?.value).toBeCloseTo(1.2853e-3, 7);
    // By hand: 1.00 / (1.25 x 1.64516) = 0.486 turn.
    expect(turnsForTypedTravel(v8, '1.00 mm')).toContain('0.49 turn');
  });
  it('says whether the travel lies where the sheet asks for it', () => {
    expect(preloadTravel(v8, 0.625).words).toMatch(/0\.9\.\.1\.6 mm.*inside/);
    expect(preloadTravel(v8, 1).words).toMatch(/outside/);
  });
  it('does not make a travel up where the pitch is unknown', () => {
    const { pitch: _, ...adjuster } = v8.valveGear!.adjuster;
    const bare = { ...v8, valveGear: { ...v8.valveGear!, adjuster } };
    expect(preloadTravel(bare, 0.5).reading).toBeUndefined();
  });
});

function set(scribe: Scribe, key: string): void {
  const stop = valvesView(scribe.bench).stops.find((one) => one.valves.some((valve) => valve.key === key))!;
  const { valve } = stop.valves.find((one) => one.key === key)!;
  const { crankDegrees } = stop;
  scribe.write({
    kind: 'valve-set',
    data: { valve, method: 'stop', crankDegrees, adjustment: 'preload', turns: 0.625, condition: 'cold' },
  });
}

describe('what of the valve setting comes next', () => {
  it('is the first stop with a valve that is not set', () => {
    const scribe = new Scribe(v8);
    const [first, second] = valvesView(scribe.bench).stops;
    for (const valve of first!.valves) set(scribe, valve.key);
    const task = valveTask(valvesView(scribe.bench));
    expect(task.phase).toBe('set');
    expect(task.stops.map((one) => one.place)).toEqual([1]);
    expect(task.stops[0]?.left).toHaveLength(second!.valves.length);
  });
  it('after two turns begins where the crank stands: the stop that was set last', () => {
    const scribe = new Scribe(v8);
    for (const stop of valvesView(scribe.bench).stops) for (const valve of stop.valves) set(scribe, valve.key);
    const view = valvesView(scribe.bench);
    const task = valveTask(view, 360);
    expect([task.phase, ...task.stops.map((one) => one.stop.crankDegrees)]).toEqual(['look-again', 360, 0]);
    const approach = crankApproach(scribe.bench, task.stops[0]!.stop, 360, true);
    expect(approach.turnDegrees).toBe(720);
    expect(approach.words).toMatch(/two whole turns/);
  });
  it('sends a valve that was found bad back to be set', () => {
    const scribe = new Scribe(v8);
    for (const stop of valvesView(scribe.bench).stops) for (const valve of stop.valves) set(scribe, valve.key);
    scribe.write({ kind: 'valve-rechecked', data: { valve: intake, result: 'bad', seen: 'play' } });
    const task = valveTask(valvesView(scribe.bench));
    expect(task.phase).toBe('set');
    expect(task.stops.flatMap((one) => one.left.map((valve) => valve.key))).toEqual(['1-intake-1']);
  });
  it('measures every gap of a shim engine before any shim is chosen', () => {
    const task = valveTask(valvesView(openBench(four, [])));
    expect(task.phase).toBe('measure');
    expect(task.stops.reduce((sum, one) => sum + one.left.length, 0)).toBe(valvesOf(four).length);
  });
  it('turns only forward, and from where the crank stands', () => {
    const bench = openBench(six, []);
    const { stops } = valvesView(bench);
    const approach = crankApproach(bench, stops[0]!, stops.at(-1)!.crankDegrees, false);
    expect(approach.turnDegrees).toBeGreaterThan(0);
    expect(approach.turnDegrees).toBeLessThan(720);
  });
});

// How turns of a nut are counted at the bench: common practice, no source.
describe('turns of the nut in words', () => {
  it.each([
    [0.125, '1/8'],
    [0.5, '1/2'],
    [0.625, '5/8'],
    [1, '1'],
    [1.25, '1 1/4'],
    [0, '0'],
    [0.7, '0.7'],
  ])('%f is %s', (turns, words) => expect(turnCount(turns)).toBe(words));
});

describe('coming back to the valves', () => {
  it('goes three valves back, the last one last', () => {
    const scribe = new Scribe(v8);
    expect(valveResume(scribe.bench, valvesView(scribe.bench))).toBeUndefined();
    const keys = valvesView(scribe.bench).stops[0]!.valves.map((one) => one.key);
    for (const key of keys.slice(0, 5)) set(scribe, key);
    const resume = valveResume(scribe.bench, valvesView(scribe.bench));
    expect(resume?.verify.map((one) => one.key)).toEqual(keys.slice(2, 5));
  });
});

describe('a part that was tagged as worn', () => {
  it('does not go back, until it is tagged anew', () => {
    const scribe = new Scribe(v8);
    const fit = { kind: 'part-fitted', data: { part: 'lifter', to: intake, from: intake } } as const;
    scribe.write({ kind: 'part-tagged', data: { part: 'lifter', valve: intake, condition: 'not to be used again' } });
    const refusal = propose(scribe.bench, fit);
    expect(refusal.ok ? '' : refusal.fault).toMatch(/cylinder 1 intake.*a new one goes here/);
    expect(propose(scribe.bench, { kind: 'part-fitted', data: { ...fit.data, from: 'new' } }).ok).toBe(true);
    scribe.write({ kind: 'part-tagged', data: { part: 'lifter', valve: intake, condition: 'used, good' } });
    expect(propose(scribe.bench, fit).ok).toBe(true);
  });
});

describe('a gap outside of its window', () => {
  it('may be recorded, and the record says OUT beside it', () => {
    const scribe = new Scribe(six);
    const lash = { text: '0.36 mm', value: 0.36e-3, unit: 'm' } as const;
    scribe.write({
      kind: 'valve-set',
      data: { valve: intake, method: 'stop', crankDegrees: 0, adjustment: 'lash', lash, condition: 'cold' },
    });
    const rows = recordView(scribe.bench).sections.flatMap((section) => section.rows);
    expect(rows.map((row) => row.value).join()).toContain('gap 0.36 mm cold (OUT: 0.030 mm too wide)');
  });
});

describe('one valve at a time, by its neighbour', () => {
  const set = { valve: intake, method: 'neighbour', adjustment: 'preload', turns: 0.625, condition: 'cold' } as const;
  it('is refused where the valve would stand too near to its own lobe', () => {
    // By hand: an exhaust that opens 178 degrees before and an intake that closes 179 degrees after bottom dead centre leave
    // 360 - 178 - 179 = 3 degrees between the closing of the intake and the opening of the exhaust: less than the margin of 5.
    const events = { ...v8.cam!.events!, exhaustOpens: degrees(178), intakeCloses: degrees(179) };
    const { advertisedDuration: _, ...card } = v8.cam!;
    const bench = openBench({ ...v8, cam: { ...card, events } }, []);
    const intakes = valvesView(bench).neighbour.filter((one) => one.valve.kind === 'intake');
    expect(intakes.map((one) => [one.permitted, one.marginDegrees])).toEqual(intakes.map(() => [false, 3]));
    const answer = propose(bench, { kind: 'valve-set', data: set });
    expect(answer.ok ? '' : answer.fault).toMatch(/too near to its own lobe/);
    expect(propose(openBench(v8, []), { kind: 'valve-set', data: set }).ok).toBe(true);
  });
  it('is all that is left where the sheet gives no firing order, and it claims no margin', () => {
    const bare = { ...v8, layout: { ...v8.layout, firingOrder: [] } };
    const view = valvesView(openBench(bare, []));
    expect(view.stops).toEqual([]);
    expect(view.hindrances.join(' ')).toMatch(/no firing order/);
    expect(view.neighbour).toHaveLength(16);
    expect(view.neighbour[0]?.marginDegrees).toBeUndefined();
    expect(view.neighbour[0]?.words).toMatch(/exhaust valve of cylinder 1 just begins to open/);
  });
});
