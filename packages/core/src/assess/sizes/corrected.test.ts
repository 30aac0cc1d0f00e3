import { describe, expect, it } from 'vitest';
import { assess } from '../assess.js';
import { EXACT, EXACT_GAUGE, engineWith, readAll, reading, readingsOf, si } from '../assess.suite.js';
import type { Instrument, InstrumentCheck, Size, SlotReading } from '../model.js';
import { USUAL_HABITS } from './usual-doubt.js';

const engine = engineWith(
  [],
  'inspection: { materials: { block: cast-iron, piston: aluminium, crankshaft: steel } }\n',
);
const SLOT = 'piston-skirt/1/skirt';
const mic: Instrument = { ...EXACT_GAUGE, id: 'mic', name: 'micrometer' };
const check = (
  moment: InstrumentCheck['moment'],
  hour: string,
  read: string,
  standard = '100.000 mm',
): InstrumentCheck => ({
  instrument: 'mic',
  moment,
  standard: si(standard),
  read: si(read),
  at: `2026-03-02T${hour}:00+00:00`,
  entry: `${moment} ${hour} ${read}`,
});
const at = (hour: string, text = '98.500 mm', more: Partial<SlotReading> = {}) =>
  reading(SLOT, text, { instrument: 'mic', at: `2026-03-02T${hour}:00+00:00`, ...more });
const skirt = (
  taken: readonly SlotReading[],
  checks: readonly InstrumentCheck[] = [],
  instruments = [mic],
  habits = EXACT,
): Size => assess(engine, readingsOf(taken, { instruments, checks }), habits).sizes.get('piston-skirt.diameter@1')!;

describe('a gauge against its standard', () => {
  it('takes off what the gauge reads high', () => {
    expect(skirt([at('10:00')], [check('start', '09:00', '100.004 mm')]).value).toBeCloseTo(si('98.496 mm'), 12);
  });
  it('lets the error drift evenly between the checks at start and end', () => {
    const checks = [check('start', '08:00', '100.000 mm'), check('end', '12:00', '100.008 mm')];
    // 9:00 is a quarter of the session: 0.002 mm; after the end the last check holds.
    expect(skirt([at('09:00')], checks).value).toBeCloseTo(si('98.498 mm'), 12);
    expect(skirt([at('13:00')], checks).value).toBeCloseTo(si('98.492 mm'), 12);
  });
  it('has the doubt of the drift, |d|/√12, as the calculation of the catalogue', () => {
    const checks = [check('start', '08:00', '100.000 mm'), check('end', '12:00', '100.008 mm')];
    expect(skirt([at('09:00')], checks).u).toBeCloseTo(si('0.008 mm') / Math.sqrt(12), 12);
  });
  it('says so where the gauge drifted by more than it can be trusted to', () => {
    const drifted = [check('start', '08:00', '100.000 mm'), check('end', '12:00', '100.020 mm')];
    const kept = [check('start', '08:00', '100.000 mm'), check('end', '12:00', '100.002 mm')];
    const said = (checks: readonly InstrumentCheck[]) =>
      skirt([at('09:00')], checks, [mic], USUAL_HABITS).cautions.join();
    expect(said(drifted)).toContain('drifted');
    expect(said(kept)).not.toContain('drifted');
  });
  it('begins a new session where the gauge was set anew', () => {
    const checks = [
      check('start', '08:00', '100.004 mm'),
      check('end', '09:00', '100.004 mm'),
      check('start', '10:00', '100.000 mm'),
    ];
    expect(skirt([at('08:30')], checks).value).toBeCloseTo(si('98.496 mm'), 12);
    expect(skirt([at('10:30')], checks).value).toBeCloseTo(si('98.500 mm'), 12);
  });
  it('goes by the standard nearest in size', () => {
    const checks = [check('start', '08:00', '25.010 mm', '25.000 mm'), check('start', '08:01', '100.002 mm')];
    expect(skirt([at('09:00')], checks).value).toBeCloseTo(si('98.498 mm'), 12);
  });
  it('trusts a gauge that was checked three times more than one that was never checked', () => {
    const { expanded: _, ...unknown } = mic;
    const checks = ['09:00', '09:01', '09:02'].map((hour) => check('start', hour, '100.000 mm'));
    const never = skirt([at('10:00')], [], [unknown], USUAL_HABITS);
    const set = skirt([at('10:00')], checks, [unknown], USUAL_HABITS);
    expect(never.cautions.join()).toContain('not checked');
    expect(set.cautions.join()).not.toContain('not checked');
    expect(set.u).toBeLessThan(never.u!);
  });
  it('has more doubt where the checks of the standard scatter', () => {
    const steady = ['100.000 mm', '100.000 mm'].map((read, n) => check('start', `09:0${n}`, read));
    const unsteady = ['99.990 mm', '100.010 mm'].map((read, n) => check('start', `09:0${n}`, read));
    expect(skirt([at('10:00')], unsteady).u).toBeGreaterThan(skirt([at('10:00')], steady).u!);
  });
});

describe('doubt of a reading', () => {
  it('of a micrometer that nobody described is that of the trade map: 0.0002 in at k = 2, without its step', () => {
    const habits = { ...USUAL_HABITS, workshop: 0, apart: 0 };
    const size = skirt([reading(SLOT, '98.500 mm')], [], [], habits);
    const step = 2.54e-6 / Math.sqrt(12);
    expect(size.u).toBeCloseTo(Math.hypot(0.0001 * 0.0254, step), 12);
    expect(size.cautions).toContain('no gauge noted: the usual one is assumed');
  });
  it('does not shrink to nothing because two readings happen to be equal', () => {
    const once = skirt([at('10:00')], [], [mic], USUAL_HABITS);
    const twice = skirt([at('10:00'), at('10:05')], [], [mic], USUAL_HABITS);
    expect(twice.u).toBeLessThan(once.u!);
    expect(twice.u).toBeGreaterThan(once.u! / 2);
  });
  it('cancels what a gauge shares in a difference, and keeps it in a mean', () => {
    const gauge: Instrument = { ...EXACT_GAUGE, id: 'bore', name: 'bore gauge', expanded: si('0.010 mm') };
    const taken = readAll(engine, 'cylinder-bore', '1', '98.600 mm', { instrument: 'bore' });
    const { sizes } = assess(engine, readingsOf(taken, { instruments: [gauge] }), EXACT);
    expect(sizes.get('cylinder-bore.diameter@1')?.u).toBeCloseTo(si('0.005 mm'), 12);
    expect(sizes.get('cylinder-bore.out-of-round@1')?.u).toBeCloseTo(0, 12);
    expect(sizes.get('cylinder-bore.taper@1')?.u).toBeCloseTo(0, 12);
  });
});

describe('temperature', () => {
  it('corrects only the difference of part and gauge where both lay together', () => {
    // Steel gauge 11.5, piston alloy 19.4 ppm/K: 98.5 mm · 7.9e-6 · 10 K = 0.0078 mm.
    const size = skirt([at('10:00', '98.500 mm', { temperature: 303.15 })]);
    expect(si('98.500 mm') - size.value).toBeCloseTo(7.78e-6, 8);
  });
  it('corrects the whole growth of the part where the room, and so the gauge, is at 20 °C', () => {
    // 98.5 mm · 19.4e-6 · 10 K = 0.0191 mm.
    const size = skirt([at('10:00', '98.500 mm', { temperature: 303.15, room: 293.15 })]);
    expect(si('98.500 mm') - size.value).toBeCloseTo(19.1e-6, 7);
  });
  it('without a note corrects nothing, says so, and adds a doubt', () => {
    const habits = { ...EXACT, workshop: USUAL_HABITS.workshop };
    const size = skirt([at('10:00')], [], [mic], habits);
    expect(size.value).toBe(si('98.500 mm'));
    expect(size.cautions).toContain('no temperature noted: not corrected to 20 °C');
    // 98.5 mm · (19.4 − 11.5)e-6 · 5 K/√3
    expect(size.u).toBeCloseTo((0.0985 * 7.9e-6 * 5) / Math.sqrt(3), 10);
  });
  it('leaves an iron bore and an iron gauge nearly alone, and an aluminium piston not', () => {
    const habits = { ...EXACT, workshop: USUAL_HABITS.workshop };
    const taken = [...readAll(engine, 'cylinder-bore', '1', '98.600 mm', { instrument: 'mic' }), at('10:00')];
    const { sizes } = assess(engine, readingsOf(taken, { instruments: [mic] }), habits);
    const u = (key: string) => sizes.get(key)!.u!;
    expect(u('piston-skirt.diameter@1')).toBeGreaterThan(5 * u('cylinder-bore.diameter@1'));
    // One unknown temperature of the workshop moves both: their errors add with their signs, not in squares.
    const apart = 0.0985 * (19.4 - 11.5) + 0.0986 * (11.5 - 11);
    expect(u('piston.clearance@1')).toBeCloseTo((apart * 1e-6 * 5) / Math.sqrt(3), 10);
  });
  it('names the material that it takes where the sheet does not', () => {
    const silent = engineWith([]);
    const taken = [at('10:00', '98.500 mm', { temperature: 303.15 })];
    const size = assess(silent, readingsOf(taken, { instruments: [mic] }), EXACT).sizes.get('piston-skirt.diameter@1');
    expect(size?.cautions).toContain('the sheet names no material of the piston: aluminium taken');
  });
});
