import { describe, expect, it } from 'vitest';
import { toUnit } from '../../quantity/index.js';
import { BASE, engineOf, faultsOf, read } from './try-sheets.suite.js';

const RUNNING = `fuel: petrol
defaultFrom: manual p. 1
runIn:
  - { text: idle, time: 10 min, speed: 700..900 rpm, load: none }
  - { text: drive, speed: below 3500 rpm }
running:
  ignition: { staticAdvance: 8 deg, fullAdvance: 34 deg, fullAdvanceSpeed: 2800 rpm, rotor: clockwise, postOfFirst: 30 deg, from: manual p. 9 }
  oilPressure:
    - { pressure: { value: 1.8..4.0 bar, from: manual p. 12 }, speed: 2000 rpm, temperature: 100 degC }
    - { pressure: ">= 0.7 bar" }
  idleSpeed: 900..1100 rpm
  fullLoadSpeed: 2850 rpm
  exhaustMost: 550 degC
  oilTemperatureMost: 120 degC
  coolantMost: 98 degC
  stopWithoutPressure: 8 s
  compression: { share: 75 %, floor: 100 psi, printed: 130..160 psi, crankingSpeed: 250 rpm, from: memory }
  leakageMost: 25 %
  headAgain: { when: never, text: used once }
  service: [{ what: oil, hours: 50 h, months: 12, distance: 1000 km }]
`;
const spoiled = (was: string, is: string) => faultsOf(`${BASE}${RUNNING.replace(was, is)}`);

describe('a sheet about the running engine', () => {
  it('gives limits in SI, each with its own origin or that of its section', () => {
    const { running, fuel } = engineOf(`${BASE}${RUNNING}`);
    expect(fuel).toBe('petrol');
    expect(running?.ignition?.fullAdvance).toMatchObject({ text: '34 deg', from: { text: 'manual p. 9' } });
    expect(running?.oilPressure[0]?.pressure).toMatchObject({ window: { low: 180_000, high: 400_000 } });
    expect(running?.oilPressure[0]?.speed?.from.text).toBe('manual p. 12');
    expect(running?.oilPressure[1]?.pressure.window).toEqual({ low: 70_000 });
    expect(running?.exhaustMost?.value).toBeCloseTo(823.15, 9);
    expect(running?.compression?.share?.value).toBe(0.75);
    expect(running?.compression?.floor).toMatchObject({ from: { standing: 'memory' } });
    expect(running?.service[0]?.hours?.value).toBe(180_000);
    expect(running?.idleSpeed?.from.text).toBe('manual p. 1');
  });

  it('reads the speed of a run-in line as a window, and keeps "below" as printed', () => {
    const { runIn } = engineOf(`${BASE}${RUNNING}`);
    expect(toUnit('angular-speed', runIn[0]!.speed!.window.low!, 'rpm')).toBeCloseTo(700, 9);
    expect(runIn[0]?.load).toBe('none');
    expect(runIn[1]?.speed?.text).toBe('below 3500 rpm');
    expect(runIn[1]?.speed?.window.low).toBeUndefined();
    expect(toUnit('angular-speed', runIn[1]!.speed!.window.high!, 'rpm')).toBeCloseTo(3500, 9);
  });

  it('leaves unknown what it does not say', () => {
    const { running, fuel } = engineOf(BASE);
    expect([running, fuel]).toEqual([undefined, undefined]);
    expect(engineOf(`${BASE}running: {}\n`).running).toEqual({ oilPressure: [], service: [] });
  });

  it.each([
    ['fuel: petrol', 'fuel: diesel', 'no-spark'],
    ['fullAdvance: 34 deg', 'fullAdvance: 6 deg', 'less-than-static'],
    ['staticAdvance: 8 deg', 'staticAdvance: 98 deg', 'not-an-advance'],
    ['postOfFirst: 30 deg', 'postOfFirst: 380 deg', 'not-a-direction'],
    ['share: 75 %', 'share: 7.5', 'more-than-all'],
    ['leakageMost: 25 %', 'leakageMost: 0 %', 'not-positive'],
    ['stopWithoutPressure: 8 s', 'stopWithoutPressure: 8 min', 'too-long-dry'],
    ['hours: 50 h, months: 12, distance: 1000 km', 'from: memory', 'never-due'],
    ['time: 10 min', 'time: 0 min', 'not-positive'],
    ['speed: below 3500 rpm', 'speed: gently', 'not-a-number'],
    ['service: [', 'service: [{ what: oil, months: 3 }, ', 'name-twice'],
  ])('refuses "%s" written as "%s" with one clear line', (was, is, code) => {
    const faults = spoiled(was, is);
    expect(faults.map((one) => one.code)).toContain(code);
    for (const one of faults) expect(one.line, one.message).toBeGreaterThan(0);
  });

  it('asks where the words call it a diesel and the field says petrol', () => {
    const codes = (text: string) => engineOf(text).cautions.map((one) => one.code);
    expect(codes(`${BASE.replace('name: Four', 'name: Four, a diesel')}fuel: petrol\n`)).toEqual(['fuel-disagrees']);
    expect(codes(`${BASE.replace('name: Four', 'name: Four, a diesel')}fuel: diesel\n`)).toEqual([]);
  });

  it('asks where bolts used once and turned by angle are to be tightened again', () => {
    const four = read('sheets/pellgarth-t4-twin-cam.yaml');
    const hot = four.replace('headAgain: { when: never', 'headAgain: { when: hot-after-first-heat');
    expect(engineOf(hot).cautions.map((one) => one.code)).toContain('again-on-stretched');
    expect(engineOf(four).cautions.map((one) => one.code)).not.toContain('again-on-stretched');
  });

  it('asks where the least of any cylinder is above what a sound engine reads', () => {
    const text = `${BASE}${RUNNING.replace('floor: 100 psi', 'floor: 140 psi')}`;
    expect(engineOf(text).cautions.map((one) => one.code)).toEqual(['floor-above-printed']);
  });
});
