/** The number gate as the screens ask it: sheets, plan, gauges and the readings in the log. */
import { describe, expect, it } from 'vitest';
import { chance } from '../assess/gates/slips.suite.js';
import { type Instrument, type Measured, placesOfStep, type Readings, type SlotReading } from '../assess/index.js';
import { formatNumber, fromUnit, toUnit } from '../quantity/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import { gateQuestion, judgeKeyed, judgeWith } from './reading-gate.js';
import { type SlotPlace, slotName, slotsOf } from './slot-names.js';

/** Metric gauges of a well-kept box, invented: unit, step, and how far good parts lie about their size [SI]. */
const GAUGES: Readonly<Record<Measured, { unit: string; fine: number; coarse: number; scatter: number }>> = {
  length: { unit: 'mm', fine: 0.001, coarse: 0.01, scatter: 30e-6 },
  volume: { unit: 'cm3', fine: 0.1, coarse: 0.1, scatter: 0.5e-6 },
  mass: { unit: 'g', fine: 0.1, coarse: 0.1, scatter: 1e-3 },
  force: { unit: 'N', fine: 1, coarse: 1, scatter: 15 },
  angle: { unit: 'deg', fine: 1, coarse: 1, scatter: 0.01 },
  torque: { unit: 'N·m', fine: 1, coarse: 1, scatter: 1 },
};
interface Entry {
  readonly at: SlotPlace;
  readonly digits: string;
  readonly value: number;
  readonly gauge: Instrument;
  readonly places: number;
}
/** Every reading of a plan in its order: near the size that the sheet expects, parts scattering more than their own stations. */
function honest(engine: ReturnType<typeof engineOf>, seed: number): readonly Entry[] {
  const next = chance(seed);
  const parts = new Map<string, number>();
  return [...slotsOf(engine).values()].flatMap((at): readonly Entry[] => {
    const { kind } = at.feature;
    const { expected } = at.place;
    if (expected === undefined) return [];
    const { unit, fine, coarse, scatter } = GAUGES[kind.measured];
    const { low = expected.nominal, high = expected.nominal } = expected.usual;
    const reach = Math.min(scatter, 0.25 * Math.min(expected.nominal - low, high - expected.nominal));
    const key = `${kind.id}/${at.place.id}`;
    const part = parts.get(key) ?? (2 * next() - 1) * reach;
    parts.set(key, part);
    const step = kind.resolution < 5e-6 ? fine : coarse;
    const places = placesOfStep(step);
    const value = expected.nominal + part + (2 * next() - 1) * 0.4 * reach;
    const digits = formatNumber(toUnit(kind.measured, value, unit), places);
    const gauge = { id: 'g', name: 'the gauge', kind: kind.instrument, measured: kind.measured, unit };
    const resolution = fromUnit(kind.measured, step, unit);
    return [
      { at, digits, value: fromUnit(kind.measured, Number(digits), unit), gauge: { ...gauge, resolution }, places },
    ];
  });
}
/** Walks through a plan and judges at each reading what `keyed` makes of it, with the right figures of those before. */
function walk(engine: ReturnType<typeof engineOf>, keyed: (entry: Entry) => readonly string[]) {
  const bySlot = new Map<string, readonly SlotReading[]>();
  const caught: string[] = [];
  const passed: string[] = [];
  for (const entry of honest(engine, 42)) {
    const { at, digits, value, gauge } = entry;
    const readings: Readings = {
      bySlot,
      before: new Map(),
      instruments: new Map([['g', gauge]]),
      checks: [],
      choices: [],
      occasions: new Map(),
    };
    for (const text of keyed(entry)) {
      const { level } = judgeWith(engine, readings, at.slot, `${text} ${gauge.unit}`, { instrument: 'g' });
      (level === 'fine' ? passed : caught).push(`${at.slot}: ${text} for ${digits}`);
    }
    const read = { slot: at.slot, entry: '', text: `${digits} ${gauge.unit}`, value, occasion: 1, at: '', by: '' };
    bySlot.set(at.slot, [read]);
  }
  return { caught, passed };
}

/** So many readings a plan has at least: one cylinder is soon read. */
const LEAST: Readonly<Record<string, number>> = { [SHEETS.single]: 200 };

describe.each(Object.entries(SHEETS))('every reading of the plan of the %s', (_, sheet) => {
  const engine = engineOf(sheet);
  const moved = ({ digits, places }: Entry, by: 1 | -1) =>
    formatNumber(Number(digits) * 10 ** by, Math.max(0, places - by));

  it('is asked about at most twice in a hundred where it is right', () => {
    const { caught, passed } = walk(engine, ({ digits }) => [digits]);
    expect(passed.length).toBeGreaterThan(LEAST[sheet] ?? 900);
    expect(caught.length / (caught.length + passed.length)).toBeLessThanOrEqual(0.02);
  });
  it('is never let through with its point one place to the right or left', () => {
    expect(walk(engine, (entry) => [moved(entry, 1), moved(entry, -1)]).passed).toEqual([]);
  });
  // An inch gauge shows one place more than a metric one of the same step, 0.0001 in for 0.001 mm, and 0.001 in for 0.01 mm.
  it('is never let through as the figure of the other unit, as the other gauge shows it', () => {
    const lengths = (entry: Entry) => entry.gauge.measured === 'length';
    const other = (entry: Entry) => {
      const number = Number(entry.digits);
      return [
        formatNumber(number * 25.4, Math.max(0, entry.places - 1)),
        formatNumber(number / 25.4, entry.places + 1),
      ];
    };
    expect(walk(engine, (entry) => (lengths(entry) ? other(entry) : [])).passed).toEqual([]);
  });
});

describe('a figure keyed at the bench', () => {
  const scribe = new Scribe(engineOf(SHEETS.v8));
  const slots = [...slotsOf(scribe.engine).values()].filter((at) => at.feature.kind.id === 'cylinder-bore');
  const first = (cylinder: number) => slots.find((at) => at.place.cylinder === cylinder)!.slot;
  scribe.append({
    kind: 'instrument-kept',
    data: {
      id: 'gauge',
      name: 'bore gauge',
      kind: 'bore-gauge',
      measured: 'length',
      unit: 'mm',
      resolution: { text: '0.001 mm', value: 1e-6, unit: 'm' },
    },
  });
  const read = (cylinder: number, digits: string) =>
    scribe.append({
      kind: 'measured',
      data: {
        slot: first(cylinder),
        occasion: 1,
        reading: { text: `${digits} mm`, value: Number(digits) / 1000, unit: 'm' },
        repeat: false,
        source: 'keyed',
      },
    });
  for (const [cylinder, digits] of [
    [1, '98.612'],
    [3, '98.614'],
    [5, '98.611'],
  ] as const) {
    read(cylinder, digits);
  }
  const judged = (cylinder: number, text: string, instrument?: string) =>
    judgeKeyed(scribe.bench, first(cylinder), text, instrument === undefined ? {} : { instrument });

  it('is compared with the other cylinders', () => {
    expect(judged(7, '98.613 mm', 'gauge')).toEqual({ level: 'fine' });
    expect(judged(7, '98.163 mm', 'gauge')).toMatchObject({
      level: 'unlikely',
      expected: 'about 98.612 mm, as the other cylinders',
      hint: 'two digits swapped? 98.613 mm would fit.',
    });
  });
  it('makes one line of its question', () => {
    expect(gateQuestion('98.163 mm', judged(7, '98.163 mm', 'gauge'))).toBe(
      '98.163 mm? Expected about 98.612 mm, as the other cylinders. Was it two digits swapped? 98.613 mm would fit.',
    );
    expect(gateQuestion('98.613 mm', { level: 'fine' })).toBeUndefined();
  });
  it('has the places of the gauge, else those of the readings before it', () => {
    expect(judged(7, '98.61 mm')).toMatchObject({ expected: '3 decimal places, as the readings before it' });
    expect(judged(7, '98.61 mm', 'gauge')).toMatchObject({ expected: '3 decimal places, as bore gauge' });
  });
  it('taken a second time is not compared with the first: it is to be read unseen', () => {
    read(7, '98.640');
    expect(judged(7, '98.613 mm', 'gauge')).toEqual({ level: 'fine' });
  });
  it('is refused off the plan, with a gauge that nobody keeps, or one of another kind', () => {
    expect(judgeKeyed(scribe.bench, 'piston-skirt/99/x', '1 mm')).toEqual({
      level: 'impossible',
      reason: '"piston-skirt/99/x" is nothing to measure on this engine.',
    });
    expect(judged(7, '98.613 mm', 'scale')).toMatchObject({ reason: 'No instrument "scale" in this record.' });
    const mass = [...slotsOf(scribe.engine).values()].find((at) => at.feature.kind.measured === 'mass')!;
    expect(judgeKeyed(scribe.bench, mass.slot, '600.0 g', { instrument: 'gauge' })).toMatchObject({
      reason: 'bore gauge measures length; mass is wanted here.',
    });
  });
});

describe('the name of a reading', () => {
  const engine = engineOf(SHEETS.v8);
  it('says what, of which place, and where', () => {
    expect(slotName(engine, 'crank-end-float/crankshaft/x')).toBe('crank end float crankshaft x');
    const [bore] = [...slotsOf(engine).values()].filter((at) => at.feature.kind.id === 'cylinder-bore');
    expect(slotName(engine, bore!.slot)).toMatch(/^bore of cylinder 1, top,? .*thrust/);
  });
});

describe('the crown of a lifter face', () => {
  it('that is worn flat reads nothing: asked about, since the sheet wants a crown, and never refused', () => {
    const { bench } = new Scribe(engineOf(SHEETS.v8));
    const slot = [...slotsOf(bench.engine).keys()].find((one) => one.startsWith('lifter-crown/')) ?? '';
    expect(judgeKeyed(bench, slot, '0.040 mm').level).toBe('fine');
    expect(judgeKeyed(bench, slot, '0.000 mm').level).toBe('unlikely');
    expect(judgeKeyed(bench, slot, '-0.010 mm').level).toBe('impossible');
  });
});
