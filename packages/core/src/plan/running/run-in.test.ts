import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterRunIn,
  judgeGauge,
  limitShown,
  meaningOfStop,
  type RunningFact,
  type RunningFactOf,
  runInClock,
  scheduleOf,
  stopNow,
} from './index.js';
import { BASE, engineOf, fact, gauge, minute, sheetText } from './running.suite.js';

/** TM 5-3895-376-14&P p. 6-2, a small diesel (reference engine-cases-head-torque, "Run-in schedule"). */
const SMALL_DIESEL = `${BASE}fuel: diesel
runIn:
  - { text: "idle, no load", time: 10 min, speed: 900..1100 rpm, load: none }
  - { text: "half speed, half load", time: 10 min, load: half }
  - { text: "full speed, full load", time: 20 min, speed: 2850 rpm, load: full }
  - { text: idle, time: 2 min, speed: 900..1100 rpm }
  - { text: service the oil }
running:
  idleSpeed: 900..1100 rpm
  fullLoadSpeed: 2850 rpm
  exhaustMost: 550 degC
  oilTemperatureMost: 120 degC
  oilPressure: [{ pressure: 1.8..4.0 bar, temperature: 100 degC }]
`;
const diesel = engineOf(SMALL_DIESEL);
const begun = (at: number, step?: number) => fact('run-in-begun', step === undefined ? {} : { step }, at);
const stopped = (at: number, why = 'the step is over') => fact('run-in-stopped', { why }, at);
const judge = (read: RunningFact, others: readonly RunningFact[] = [], step = 1) =>
  judgeGauge(diesel, [...others, read], read as RunningFactOf<'running-read'>, scheduleOf(diesel).steps[step - 1]);

describe('the run-in of a small diesel as its technical manual prints it', () => {
  it('is 10, 10, 20 and 2 minutes, 42 in all, then the oil', () => {
    const { steps, fromSheet } = scheduleOf(diesel);
    expect(steps.map(({ seconds }) => seconds)).toEqual([600, 600, 1200, 120, undefined]);
    expect(runInClock(scheduleOf(diesel), [], minute(0)).ofSeconds).toBe(42 * 60);
    expect(fromSheet).toBe(true);
    expect(steps[2]).toMatchObject({ load: 'full', words: 'full speed, full load' });
  });

  it.each([
    ['exhaust-temperature', '550 °C', 'near', undefined],
    ['exhaust-temperature', '551 °C', 'out', undefined],
    ['exhaust-temperature', '480 °C', 'in', undefined],
    ['oil-temperature', '120 °C', 'near', undefined],
    ['oil-temperature', '121 °C', 'out', 'oil temperature 1 K above the high end'],
    ['oil-temperature', '90 °C', 'in', undefined],
    ['coolant-temperature', '90 °C', 'no data', undefined],
  ] as const)('%s of %s is %s', (what, text, verdict, stop) => {
    const judged = judge(gauge(what, text));
    expect(judged.verdict).toBe(verdict);
    expect(judged.stop).toBe(stop);
  });

  it('idles at 900 to 1100 rpm, and runs at 2850 rpm under full load', () => {
    expect(judge(gauge('speed', '1000 rpm')).verdict).toBe('in');
    expect(judge(gauge('speed', '880 rpm')).verdict).toBe('out');
    expect(judge(gauge('speed', '2850 rpm'), [], 3).verdict).toBe('in');
    expect(judge(gauge('speed', '2600 rpm'), [], 3).verdict).toBe('out');
    expect(judge(gauge('speed', '2600 rpm'), [], 2).verdict).toBe('no data');
  });

  it('reads 1.8 to 4.0 bar with the oil at 100 °C; with cold oil that window says nothing', () => {
    const hot = [gauge('oil-temperature', '98 °C')];
    expect(judge(gauge('oil-pressure', '2.6 bar'), hot)).toMatchObject({
      verdict: 'in',
      says: '0.8 bar above the low end',
    });
    expect(judge(gauge('oil-pressure', '1.7 bar'), hot)).toMatchObject({
      verdict: 'out',
      stop: 'oil pressure 0.1 bar below the low end',
    });
    expect(judge(gauge('oil-pressure', '4.3 bar'), hot).stop).toBeUndefined();
    expect(judge(gauge('oil-pressure', '4.3 bar'), hot).verdict).toBe('out');
    expect(judge(gauge('oil-pressure', '5.2 bar'), [gauge('oil-temperature', '40 °C')]).verdict).toBe('no data');
    expect(judge(gauge('oil-pressure', '2.6 bar')).says).toContain('read oil temperature too');
  });

  it('a gauge at zero stops it, whatever the sheet says', () => {
    expect(judge(gauge('oil-pressure', '0 bar')).stop).toBe('no oil pressure');
    const bare = engineOf(BASE);
    const facts = [begun(0), gauge('oil-pressure', '0 bar', 1)];
    expect(stopNow(bare, facts, undefined)).toEqual(['no oil pressure']);
    expect(stopNow(bare, [...facts, stopped(2)], undefined)).toEqual([]);
    expect(stopNow(bare, [...facts, gauge('oil-pressure', '3 bar', 2)], undefined)).toEqual([]);
  });
});

describe('oil pressure of the invented V8', () => {
  const v8 = engineOf(sheetText('quernside-51-v8'));
  const at = (pressure: string, speed: string, temperature?: string) => {
    const read = gauge('oil-pressure', pressure, 5);
    const facts = [gauge('speed', speed, 5), ...(temperature ? [gauge('oil-temperature', temperature, 4)] : []), read];
    return judgeGauge(v8, facts, read as RunningFactOf<'running-read'>, undefined);
  };

  it('a floor printed at 600 rpm and 90 °C also holds faster and colder', () => {
    expect(at('0.5 bar', '600 rpm', '88 °C').verdict).toBe('out');
    expect(at('0.5 bar', '1400 rpm', '40 °C').verdict).toBe('out');
    expect(at('0.5 bar', '1400 rpm').stop).toBe('oil pressure 0.2 bar below the low end');
    expect(at('2.0 bar', '1400 rpm', '88 °C').verdict).toBe('in');
  });
  it('a window printed at 2000 rpm holds near that speed only', () => {
    expect(at('2.0 bar', '2000 rpm', '88 °C').verdict).toBe('out');
    expect(at('3.4 bar', '2050 rpm', '93 °C').verdict).toBe('in');
    expect(at('2.0 bar', '500 rpm', '88 °C').verdict).toBe('no data');
  });
  it('a speed read four minutes before says nothing of now', () => {
    const read = gauge('oil-pressure', '3.4 bar', 9);
    const facts = [gauge('speed', '2000 rpm', 5), gauge('oil-temperature', '90 °C', 8), read];
    expect(judgeGauge(v8, facts, read as RunningFactOf<'running-read'>, undefined).says).toContain('read speed too');
  });
  it('shows all its windows before anything is read', () => {
    expect(limitShown(v8, 'oil-pressure', undefined)?.text).toBe(
      '>= 0.7 bar at 600 rpm oil 90 degC; 2.8..4.2 bar at 2000 rpm oil 90 degC',
    );
  });
});

describe('a run-in where the sheet prints none', () => {
  const gear = (follower: string) =>
    `valveGear: { kind: pushrod, follower: ${follower}, adjustment: mechanical, valvesPerCylinder: { intake: 1, exhaust: 1 }, adjuster: { place: valve-end-screw } }\n`;

  it('flat followers: straight to 1,800 to 2,500 rpm for 20 minutes or more, no idling; common practice', () => {
    const schedule = scheduleOf(engineOf(`${BASE}fuel: petrol\n${gear('flat')}`));
    expect(schedule).toMatchObject({ fromSheet: false, flat: true });
    expect(schedule.steps[0]).toMatchObject({ seconds: 1200, origin: 'common practice, no source' });
    expect(schedule.steps[0]?.speed?.text).toBe('1800 to 2500 rpm');
    expect(schedule.steps[0]?.words).toContain('do not let it idle');
  });
  it('rollers: to temperature with changing speed', () => {
    const schedule = scheduleOf(engineOf(`${BASE}fuel: petrol\n${gear('roller')}`));
    expect(schedule.flat).toBe(false);
    expect(schedule.steps[0]?.words).toContain('working temperature');
  });
  it('a diesel by load in steps, in the shape of the manual that was read', () => {
    const { steps, origin } = scheduleOf(engineOf(`${BASE}fuel: diesel\n${gear('roller')}`));
    expect(steps.map(({ seconds, load }) => [seconds, load])).toEqual([
      [600, 'none'],
      [600, 'half'],
      [1200, 'full'],
      [120, 'none'],
    ]);
    expect(origin).toContain('TM 5-3895-376-14&P');
  });
  it('where nobody says which followers it has, the careful way', () => {
    expect(scheduleOf(engineOf(BASE)).flat).toBe(true);
  });
});

describe('the clock of the run-in', () => {
  const schedule = scheduleOf(diesel);
  const clock = (facts: readonly RunningFact[], at: number) => runInClock(schedule, facts, minute(at));

  it('stands before it is begun, with the first step to begin with', () => {
    expect(clock([], 5)).toMatchObject({ state: 'not-begun', step: { number: 1 }, stepSeconds: 0, totalSeconds: 0 });
  });
  it('counts what was run of a step and what is left', () => {
    expect(clock([begun(0)], 4)).toMatchObject({ state: 'running', stepSeconds: 240, leftSeconds: 360 });
  });
  it('goes beyond the time of a step until the person goes on, and then says by how much', () => {
    expect(clock([begun(0)], 12)).toMatchObject({ step: { number: 1 }, leftSeconds: -120, totalSeconds: 600 });
    expect(clock([begun(0), begun(12)], 13)).toMatchObject({ step: { number: 2 }, stepSeconds: 60, totalSeconds: 660 });
  });
  it('keeps the time run when it is broken off, and goes on with what is left', () => {
    const facts = [begun(0), stopped(4, 'knock or tapping')];
    expect(clock(facts, 30)).toMatchObject({
      state: 'stopped',
      step: { number: 1 },
      stepSeconds: 240,
      leftSeconds: 360,
    });
    expect(clock([...facts, begun(30)], 31)).toMatchObject({ state: 'running', stepSeconds: 300 });
    expect(clock(facts, 30).stops[0]).toMatchObject({ early: true, ranSeconds: 240, step: 1 });
  });
  it('is finished once every timed step has run and the engine stands', () => {
    const all = [begun(0), begun(10), begun(20), begun(40), stopped(42)];
    expect(clock(all, 50)).toMatchObject({
      state: 'finished',
      totalSeconds: 2520,
      done: [true, true, true, true, false],
    });
    expect(clock(all.slice(0, 4), 42).state).toBe('running');
    expect(clock([begun(0), stopped(1)], 2).state).toBe('stopped');
  });
  it('a line without a time is over when the plan has its answer', () => {
    const all = [begun(0), begun(10), begun(20), begun(40), stopped(42)];
    expect(runInClock(schedule, all, minute(60), new Set([5])).done.at(-1)).toBe(true);
  });
  it('asks for the gauges at the beginning, then every five minutes', () => {
    expect(clock([begun(0)], 0).nextReadingSeconds).toBe(0);
    expect(clock([begun(0), gauge('oil-temperature', '60 °C', 1)], 3).nextReadingSeconds).toBe(180);
    expect(clock([begun(0), gauge('oil-temperature', '60 °C', 1)], 8).nextReadingSeconds).toBe(-120);
    expect(clock([begun(0), stopped(3)], 8).nextReadingSeconds).toBeUndefined();
  });
  it('broken off on new flat lobes, it goes straight back to speed; on rollers it just goes on', () => {
    const facts = [begun(0), stopped(7, 'leak of fuel, oil or coolant')];
    const meaning = (flat: boolean) => meaningOfStop(clock(facts, 9).stops[0]!, { ...schedule, flat });
    expect(meaning(true)).toBe(
      'Broken off after 7 of 10 min; the time run counts. Close the leak; dry all round, so that a new one is seen. New flat lobes are not bedded yet: see each lifter turn, then start straight to the speed of this step and run the rest in one go, no idling.',
    );
    expect(meaning(false)).toContain('Go on with the same step for what is left of it.');
    expect(meaningOfStop(clock([begun(0), stopped(11)], 12).stops[0]!, schedule)).toBe('Go on with the next line.');
  });

  it('never counts more than the time that went by, nor less than before', () => {
    const acts = fc.array(fc.tuple(fc.constantFrom('begin', 'stop', 'next'), fc.integer({ min: 0, max: 9 })), {
      maxLength: 20,
    });
    fc.assert(
      fc.property(acts, (plan) => {
        let now = 0;
        const facts: RunningFact[] = [];
        let before = 0;
        for (const [act, wait] of plan) {
          now += wait;
          if (act === 'stop') facts.push(stopped(now));
          else facts.push(act === 'next' ? begun(now, Math.min(4, 1 + (facts.length % 4))) : begun(now));
          const { ran, totalSeconds, ofSeconds } = clock(facts, now);
          const sum = ran.reduce((one, other) => one + other, 0);
          expect(sum).toBeLessThanOrEqual(now * 60);
          expect(sum).toBeGreaterThanOrEqual(before);
          expect(totalSeconds).toBeLessThanOrEqual(Math.min(sum, ofSeconds));
          before = sum;
        }
      }),
    );
  });
});

describe('after the run-in', () => {
  const of = (name: string) => new Map(afterRunIn(engineOf(sheetText(name))).map((one) => [one.id, one]));
  it('head bolts are turned again only where the gasket maker says so', () => {
    expect(of('quernside-51-v8').get('head')?.do).toBe('never');
    expect(of('tollbarrow-6w-diesel-six').get('head')).toMatchObject({ do: 'do' });
    expect(new Map(afterRunIn(engineOf(BASE)).map((one) => [one.id, one])).get('head')?.do).toBe('look-up');
  });
  it('hydraulic lifters are not set again, a diesel has no spark to read', () => {
    expect(of('quernside-51-v8').get('lash')?.do).toBe('never');
    expect(of('tollbarrow-6w-diesel-six').get('lash')?.do).toBe('do');
    expect(of('tollbarrow-6w-diesel-six').has('spark')).toBe(false);
    expect(of('quernside-51-v8').get('spark')?.words).toContain('8 deg');
  });
  it('oil is drained and the filter cut open, whatever the sheet says', () => {
    for (const name of ['quernside-51-v8', 'pellgarth-t4-twin-cam', 'tollbarrow-6w-diesel-six'])
      expect(of(name).get('oil-and-filter')?.words).toContain('magnet');
  });
});
