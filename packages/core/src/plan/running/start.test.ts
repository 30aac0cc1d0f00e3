import { describe, expect, it } from 'vitest';
import { rimDistance } from '../../calc/crank/index.js';
import { valvesOf } from '../../engine/index.js';
import { type Angle, degrees, mm } from '../../quantity/index.js';
import { addMonths, bodyTurn, ignitionPlan, judgeStart, oneTooth, readyItems, reminders, stopRule } from './index.js';
import { BASE, engineOf, fact, pressure, sheetText, V8 } from './running.suite.js';

const inDegrees = (angle: Angle) => Math.round((angle * 180e6) / Math.PI) / 1e6;
const v8 = engineOf(sheetText('quernside-51-v8'));
const six = engineOf(sheetText('tollbarrow-6w-diesel-six'));

describe('ready to start', () => {
  const good = (words: string) => ({ result: 'good' as const, words });

  it('nothing is ready before it was answered, and bad is not ready', () => {
    const items = readyItems(v8, [], new Map([['extinguisher-held', { result: 'bad', words: 'charge is gone' }]]));
    expect(items.find(({ id }) => id === 'extinguisher')).toMatchObject({
      state: 'not-ready',
      words: 'charge is gone',
    });
    expect(items.filter(({ state }) => state === 'ready')).toEqual([]);
  });
  it('asks for firing dead centre of cylinder one and not the overlap, extinguisher and second person', () => {
    const ids = readyItems(v8, [], new Map()).map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['firing-centre', 'extinguisher', 'second-person', 'oil', 'coolant']));
  });
  it('leaves spark out on a diesel and injection out on petrol; both stay where the fuel is unknown', () => {
    const ids = (engine: typeof v8) => readyItems(engine, [], new Map()).map(({ id }) => id);
    expect(ids(six)).toContain('injection');
    expect(ids(six)).not.toContain('spark');
    expect(ids(v8)).not.toContain('injection');
    expect(ids(engineOf(BASE))).toEqual(expect.arrayContaining(['spark', 'injection']));
  });
  it('counts oil at each rocker, whether it was seen here or answered in the plan', () => {
    const valves = valvesOf(v8);
    const seen = valves.slice(1).map((valve) => fact('oil-seen', { valve }));
    const item = (answers = new Map<string, { result: 'good'; words: string }>()) =>
      readyItems(v8, seen, answers).find(({ id }) => id === 'oil-at-valves');
    expect(item()).toMatchObject({ state: 'open', words: `${valves.length - 1} of ${valves.length} seen` });
    const { cylinder, kind, index } = valves[0]!;
    expect(item(new Map([[`oil-at-valve@${cylinder}-${kind}-${index}`, good('came')]]))?.state).toBe('ready');
  });
});

describe('the first start', () => {
  it('is stopped after the seconds of the sheet, else eight by common practice', () => {
    expect(stopRule(six)).toMatchObject({ seconds: 10 });
    expect(stopRule(engineOf(BASE))).toEqual({ seconds: 8, origin: 'common practice, no source' });
  });
  const tried = (data: object) =>
    judgeStart(v8, { crankedSeconds: 4, outcome: 'runs', ...data } as Parameters<typeof judgeStart>[1]);
  it('pressure in time is in, late or none is out, unread is no data', () => {
    expect(tried({ pressureAfterSeconds: 8, pressure: pressure('3 bar') }).verdict).toBe('in');
    expect(tried({ pressureAfterSeconds: 8.5 })).toMatchObject({ verdict: 'out' });
    expect(tried({ pressure: pressure('0 bar') })).toMatchObject({ verdict: 'out' });
    expect(tried({}).verdict).toBe('no data');
    expect(tried({ pressure: pressure('3 bar') })).toMatchObject({
      verdict: 'no data',
      says: 'There is oil pressure; after how many seconds nobody said.',
    });
  });
  it('pressure in time that is less than the sheet allows at any speed is out', () => {
    const floor = v8.running!.oilPressure!.map(({ pressure: window }) => ({ pressure: window })).slice(0, 1);
    const anySpeed = { ...v8, running: { ...v8.running!, oilPressure: floor } };
    const read = { crankedSeconds: 4, outcome: 'runs', pressure: pressure('0.2 bar') } as const;
    expect(judgeStart(anySpeed, { ...read, pressureAfterSeconds: 3 }).verdict).toBe('out');
    expect(judgeStart(anySpeed, read).verdict).toBe('out');
    expect(judgeStart(anySpeed, { ...read, pressureAfterSeconds: 3, pressure: pressure('1 bar') }).verdict).toBe('in');
  });
  it('long cranking without a start is a warning of its own', () => {
    expect(tried({ outcome: 'no-start', crankedSeconds: 15 })).toMatchObject({ verdict: 'out' });
    expect(tried({ outcome: 'no-start', crankedSeconds: 5 }).verdict).toBe('no data');
  });
});

describe('cap, rotor and body of the distributor', () => {
  const plan = (text: string) => {
    const read = ignitionPlan(engineOf(text));
    if (!read.ok) throw new Error(read.fault.code);
    return read.value;
  };
  it('1-3-4-2: cylinder 3 stands 90° past cylinder 1, the way the rotor turns', () => {
    const { posts } = plan(`${BASE}running: { ignition: { rotor: clockwise, postOfFirst: 30 deg } }\n`);
    expect(posts.map(({ cylinder, past }) => [cylinder, inDegrees(past)])).toEqual([
      [1, 0],
      [3, 90],
      [4, 180],
      [2, 270],
    ]);
    expect(posts.map(({ fromFront }) => inDegrees(fromFront!))).toEqual([30, 120, 210, 300]);
  });
  it('with the rotor running anticlockwise the same order lies the other way round', () => {
    const { posts } = plan(`${BASE}running: { ignition: { rotor: anticlockwise, postOfFirst: 30 deg } }\n`);
    expect(posts.map(({ fromFront }) => inDegrees(fromFront!))).toEqual([30, 300, 210, 120]);
  });
  it('1-8-4-3-6-5-7-2: the leads lie in firing order, 45° apart', () => {
    const { posts, even } = plan(`${V8}running: { ignition: { rotor: clockwise } }\n`);
    expect(posts.map(({ cylinder }) => cylinder)).toEqual([1, 8, 4, 3, 6, 5, 7, 2]);
    expect(posts.map(({ past }) => inDegrees(past))).toEqual([0, 45, 90, 135, 180, 225, 270, 315]);
    expect(even).toBe(true);
    expect(posts[0]).not.toHaveProperty('fromFront');
  });
  it('an uneven vee twin has its posts as uneven as its firing: half of 270° is 135°', () => {
    const twin = `gudgeon: 1
name: Twin
defaultFrom: manual
layout:
  form: vee
  banks: { front: 45 deg, rear: -45 deg }
  cylinders: { front: [1], rear: [2] }
  crankpins: [{ cylinders: [1, 2], at: 0 deg }]
  firingOrder: 1-2
  firingIntervals: [270 deg, 450 deg]
running: { ignition: { rotor: clockwise } }
`;
    const { posts, even } = plan(twin);
    expect(posts.map(({ past }) => inDegrees(past))).toEqual([0, 135]);
    expect(even).toBe(false);
  });
  it('a diesel has none, and what the sheet leaves out is unknown', () => {
    const why = (text: string) => {
      const read = ignitionPlan(engineOf(text));
      return read.ok ? '' : read.fault.code;
    };
    expect(why(sheetText('tollbarrow-6w-diesel-six'))).toBe('no-spark');
    expect(why(BASE)).toBe('not-in-sheet');
    expect(why(`${BASE.replace('  firingOrder: 1-3-4-2\n', '')}running: { ignition: {} }\n`)).toBe('no-firing-order');
  });
  it('4° more on the crank is 2° of the body against the rotor; less is with it', () => {
    const more = bodyTurn(degrees(4), degrees(8), 'clockwise');
    expect([inDegrees(more.angle), more.sense]).toEqual([2, 'anticlockwise']);
    const less = bodyTurn(degrees(12), degrees(8), 'clockwise');
    expect([inDegrees(less.angle), less.sense]).toEqual([2, 'clockwise']);
    expect(bodyTurn(degrees(4), degrees(8), 'anticlockwise').sense).toBe('clockwise');
  });
  it('34° on a damper of 6.75 in is 2.003 in along the rim (worked: π·6.75·34/360)', () => {
    expect(rimDistance((6.75 * 0.0254) as never, degrees(34)) / 0.0254).toBeCloseTo(2.0028, 3);
    expect(rimDistance(mm(180), degrees(360)) * 1000).toBeCloseTo(Math.PI * 180, 9);
  });
  it('one tooth of thirteen is 27.7° of the distributor and 55.4° of the crank (worked: 360/13)', () => {
    const { distributor, crank } = oneTooth(13);
    expect([inDegrees(distributor), inDegrees(crank)]).toEqual([27.692308, 55.384615]);
  });
});

describe('reminders', () => {
  const rows = (facts: Parameters<typeof reminders>[1], today = '2026-06-01', signed?: string) =>
    new Map(reminders(v8, facts, today, signed).items.map((one) => [one.what, one]));
  const hours = (count: number) => fact('hours-noted', { hours: count });

  it('the oil of the sheet is due at 10 h: coming at 3, due at 9, overdue beyond', () => {
    const at = (count: number) => rows([hours(count)]).get('oil and filter');
    expect(at(3)).toMatchObject({ state: 'coming', leftHours: 7, origin: expect.stringContaining('invented') });
    expect(at(9)?.state).toBe('due');
    expect(at(10)?.state).toBe('due');
    expect(at(10.5)?.state).toBe('overdue');
  });
  it('is unknown until somebody notes the hours, and by months until a day is known to count from', () => {
    expect(rows([]).get('oil and filter')).toMatchObject({ state: 'no data', missing: ['the running hours'] });
    expect(rows([]).get('coolant')?.state).toBe('no data');
    expect(rows([], '2026-06-01', '2026-05-02').get('coolant')).toMatchObject({
      state: 'coming',
      dueDate: '2028-05-02',
    });
  });
  it('a counter that stood at 3200 h before the first start counts from there', () => {
    const start = fact('start-tried', { crankedSeconds: 3, pressureAfterSeconds: 2, outcome: 'runs' });
    const at = (count: number) => rows([hours(3200), start, hours(count)]).get('oil and filter');
    expect(at(3203)).toMatchObject({ state: 'coming', dueHours: 3210, leftHours: 7 });
    expect(at(3209)?.state).toBe('due');
    expect(at(3211)?.state).toBe('overdue');
  });
  it('by date it is due two weeks before and overdue the day after', () => {
    const at = (today: string) => rows([], today, '2026-05-02').get('coolant')?.state;
    expect([at('2028-04-17'), at('2028-04-18'), at('2028-05-02'), at('2028-05-03')]).toEqual([
      'coming',
      'due',
      'due',
      'overdue',
    ]);
  });
  it('what was done is done; planned anew under the same name it is due again', () => {
    const done = fact('service-done', { what: 'oil and filter', hours: 10 });
    expect(rows([hours(11), done]).get('oil and filter')?.state).toBe('done');
    const again = fact('service-planned', { what: 'oil and filter', dueHours: 60, from: 'own rule' });
    expect(rows([hours(11), done, again]).get('oil and filter')).toMatchObject({
      state: 'coming',
      leftHours: 49,
      planned: true,
    });
  });
  it('months keep the day, or the last of a shorter month', () => {
    expect(addMonths('2026-01-31', 1)).toBe('2026-02-28');
    expect(addMonths('2027-11-15', 3)).toBe('2028-02-15');
    expect(addMonths('2028-01-31', 1)).toBe('2028-02-29');
  });
});
