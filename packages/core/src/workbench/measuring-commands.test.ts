/** What a person keys, reads or chooses under Measure and Fit, and what is recorded of it. */
import { beforeEach, describe, expect, it } from 'vitest';
import { celsius } from '../quantity/index.js';
import type { NewEntry } from '../record/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import {
  assessmentOf,
  decisionsAt,
  occasionOf,
  type Proposal,
  propose,
  proposeCheck,
  proposeDecided,
  proposeInstrument,
  proposeMeasured,
  proposeReturned,
  proposeTemperature,
  readingsOf,
  recordView,
  slotsOf,
} from './index.js';

const engine = engineOf(SHEETS.v8);
const bores = [...slotsOf(engine).values()].filter((at) => at.feature.kind.id === 'cylinder-bore');
const slotOf = (cylinder: number, station = 0) => bores.filter((at) => at.place.cylinder === cylinder)[station]!.slot;
const micrometer = {
  id: 'gauge',
  name: 'bore gauge',
  kind: 'bore-gauge',
  measured: 'length',
  unit: 'mm',
  resolution: '0.001 mm',
  low: '50 mm',
  high: '150 mm',
  expanded: '0.004 mm',
} as const;

let scribe: Scribe;
beforeEach(() => {
  scribe = new Scribe(engine);
});
const written = (proposal: Proposal): readonly NewEntry[] => {
  if (!proposal.ok) throw new Error(proposal.fault);
  for (const entry of proposal.value) scribe.append(entry);
  return proposal.value;
};
const line = (proposal: Proposal) => (proposal.ok ? undefined : proposal.fault);
const keyed = (cylinder: number, text: string, over: object = {}) =>
  proposeMeasured(scribe.bench, { slot: slotOf(cylinder), text, source: 'keyed', ...over });

describe('a reading', () => {
  it('is recorded as typed, with its value, gauge, occasion and temperature', () => {
    written(proposeInstrument(scribe.bench, micrometer));
    const [entry] = written(keyed(3, '98.614 mm', { instrument: 'gauge', temperature: '22.5 °C' }));
    expect(entry).toEqual({
      kind: 'measured',
      data: {
        slot: slotOf(3),
        occasion: 1,
        reading: { text: '98.614 mm', value: 0.098614, unit: 'm' },
        repeat: false,
        source: 'keyed',
        instrument: 'gauge',
        temperature: { text: '22.5 °C', value: celsius(22.5), unit: 'K' },
      },
    });
    expect(readingsOf(scribe.bench).bySlot.get(slotOf(3))).toHaveLength(1);
  });
  it('that the gate asks about is recorded only with its question answered, and the record says so', () => {
    for (const [cylinder, text] of [
      [1, '98.612 mm'],
      [3, '98.614 mm'],
      [5, '98.611 mm'],
    ] as const)
      written(keyed(cylinder, text));
    const question = line(keyed(7, '98.163 mm'));
    expect(question).toMatch(/^98\.163 mm\? Expected about 98\.612 mm/);
    expect(line(keyed(7, '98.163 mm', { answered: ['another question'] }))).toBe(question);
    const [entry] = written(keyed(7, '98.163 mm', { answered: [question] }));
    expect(entry?.data).toMatchObject({ answered: [question] });
    const rows = recordView(scribe.bench).sections.find((section) => section.key === 'measured')!.rows;
    expect(rows).toHaveLength(4);
    expect(rows[3]).toMatchObject({ what: expect.stringMatching(/^bore of cylinder 7, /), by: 'Ada' });
    expect(rows[3]!.value).toContain('asked "98.163 mm? Expected');
    const open = recordView(scribe.bench).sections.find((section) => section.key === 'measured')!.open;
    expect(open).toEqual([expect.stringMatching(/^measuring: 4 of \d+ readings taken$/)]);
  });
  it.each([
    ['9861.4 mm', /cannot be: bore of cylinder 3 is/],
    ['98.614', /unit/],
    ['98.614 kg', /mm/],
    ['98..614 mm', /one value is needed/],
  ])('%s is refused in one line', (text, words) => {
    expect(line(keyed(3, text))).toMatch(words);
  });
  it('is refused off the plan, with an unknown gauge, beyond the gauge, and as another figure of the same slot', () => {
    written(proposeInstrument(scribe.bench, { ...micrometer, high: '90 mm' }));
    expect(line(proposeMeasured(scribe.bench, { slot: 'a/b/c', text: '1 mm', source: 'keyed' }))).toBe(
      '"a/b/c" is nothing to measure on this engine.',
    );
    expect(line(keyed(3, '98.614 mm', { instrument: 'none' }))).toBe('No instrument "none" in this record.');
    expect(line(keyed(3, '98.614 mm', { instrument: 'gauge' }))).toBe(
      '98.614 mm: bore gauge reads 50.000 mm to 90.000 mm.',
    );
    written(keyed(3, '98.614 mm'));
    expect(keyed(3, '98.614 mm')).toEqual({ ok: true, value: [] });
    expect(line(keyed(3, '98.615 mm'))).toMatch(/reads 98\.614 mm already; strike that out first/);
    written(keyed(3, '98.615 mm', { repeat: true }));
    expect(readingsOf(scribe.bench).bySlot.get(slotOf(3))).toHaveLength(2);
  });
  it('with a comma is read by the mark that is fixed, and asked about where none is', () => {
    expect(line(keyed(3, '98,614 mm'))).toMatch(/98\.614/);
    const [entry] = written(keyed(3, '98,614 mm', { decimalMark: ',' }));
    expect(entry?.data).toMatchObject({ reading: { text: '98,614 mm', value: 0.098614 } });
  });
  it('whose text and value say different things is not taken from anywhere', () => {
    const data = {
      slot: slotOf(3),
      occasion: 1,
      repeat: false,
      source: 'keyed',
      reading: { text: '98.614 mm', value: 0.0986, unit: 'm' },
    } as const;
    expect(line(propose(scribe.bench, { kind: 'measured', data }))).toMatch(/is not the value beside it/);
    const mass = { ...data, reading: { text: '98 g', value: 0.098, unit: 'kg' } } as const;
    expect(line(propose(scribe.bench, { kind: 'measured', data: mass }))).toMatch(/a length is wanted/);
  });
});

describe('work that came back', () => {
  it('opens the next occasion for its places; the readings before it stay for comparison', () => {
    written(keyed(3, '98.614 mm'));
    written(proposeReturned(scribe.bench, { feature: 'cylinder-bore', places: ['3'], why: 'bored' }));
    expect(occasionOf(scribe.bench, slotOf(3))).toBe(2);
    expect(occasionOf(scribe.bench, slotOf(1))).toBe(1);
    written(keyed(3, '99.112 mm'));
    const { bySlot, before } = readingsOf(scribe.bench);
    expect(bySlot.get(slotOf(3))?.map((one) => one.text)).toEqual(['99.112 mm']);
    expect(before.get(slotOf(3))?.map((one) => one.text)).toEqual(['98.614 mm']);
  });
  it('names features and places of the plan', () => {
    const back = (feature: string, ...places: string[]) =>
      line(proposeReturned(scribe.bench, { feature, places, why: 'bored' }));
    expect(back('flywheel', '1')).toBe('"flywheel" is nothing to measure on this engine.');
    expect(back('cylinder-bore', '1', '9')).toMatch(/^Cylinder bores has no place "9"; it has 1, 3, 5/);
  });
});

describe('gauges and temperatures', () => {
  it('are kept from what was typed', () => {
    written(proposeInstrument(scribe.bench, micrometer));
    written(
      proposeCheck(scribe.bench, { instrument: 'gauge', moment: 'start', standard: '100 mm', reading: '100.002 mm' }),
    );
    written(proposeTemperature(scribe.bench, { room: '18 °C', part: '64 °F' }));
    written(keyed(3, '98.614 mm'));
    const readings = readingsOf(scribe.bench);
    expect(readings.instruments.get('gauge')).toMatchObject({ resolution: 1e-6, range: { low: 0.05, high: 0.15 } });
    expect(readings.checks[0]).toMatchObject({ standard: 0.1, read: 0.100002, moment: 'start' });
    const [reading] = readings.bySlot.get(slotOf(3))!;
    expect(reading!.temperature).toBeCloseTo(290.93, 2);
    expect(reading!.room).toBe(celsius(18));
    const view = recordView(scribe.bench).sections.find((section) => section.key === 'instruments')!;
    expect(view.rows.map((row) => row.value)).toEqual([
      'bore gauge, reads 0.001 mm, 50 mm to 150 mm, uncertainty ±0.004 mm (k = 2)',
      'reads 100.002 mm',
      'room 18 °C, part 64 °F',
    ]);
  });
  it('that cannot be read are refused with the field', () => {
    expect(line(proposeInstrument(scribe.bench, { ...micrometer, resolution: '1' }))).toMatch(/^resolution: /);
    expect(line(proposeInstrument(scribe.bench, { ...micrometer, high: 'far' }))).toMatch(/^high: /);
    expect(line(proposeInstrument(scribe.bench, { ...micrometer, unit: 'kg' }))).toMatch(/length is wanted/);
    const check = { instrument: 'none', moment: 'end', standard: '1 mm', reading: '1 mm' } as const;
    expect(line(proposeCheck(scribe.bench, check))).toMatch(/No instrument none in this record; none is kept yet/);
    expect(line(proposeCheck(scribe.bench, { ...check, standard: 'x' }))).toMatch(/^standard: /);
    expect(line(proposeCheck(scribe.bench, { ...check, reading: '2' }))).toMatch(/^reading: /);
    expect(line(proposeTemperature(scribe.bench, { room: '20' }))).toMatch(/^room: /);
    expect(line(proposeTemperature(scribe.bench, {}))).toBe('Give the temperature of the room or of the part.');
    expect(line(keyed(3, '98.614 mm', { temperature: 'warm' }))).toBeDefined();
  });
});

describe('a decision', () => {
  it('is not taken when the engine has none of that name, or it was not shown', () => {
    const wish = { decision: 'paint', scope: 'all', alternative: 'red', reason: 'fast' };
    expect(line(proposeDecided(scribe.bench, [], wish))).toBe('That alternative is not among those shown.');
    const data = { ...wish, words: '', figures: [], orders: [], buys: [] };
    expect(line(propose(scribe.bench, { kind: 'decided', data }))).toBe(
      'There is no decision "paint" about "all" on this engine.',
    );
  });
  it('is not taken while figures for it are missing', () => {
    const open = decisionsAt(scribe.bench, { length: 'mm' }).find((one) => one.missing.length > 0);
    if (open === undefined) throw new Error('a bare engine leaves no decision open');
    const { id: decision, scope } = open;
    const data = { decision, scope, alternative: 'x', words: '', figures: [], orders: [], buys: [], reason: 'r' };
    expect(line(propose(scribe.bench, { kind: 'decided', data }))).toMatch(/cannot be decided yet/);
    expect(assessmentOf(scribe.bench).readings.choices).toEqual([]);
  });
});
