/** Worksheets as CSV: out and in again, nothing guessed, nothing half taken. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { beforeAll, describe, expect, it } from 'vitest';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import { importWorksheet, proposeInstrument, proposeMeasured, readingsOf, slotsOf, worksheetTable } from './index.js';
import { COLUMNS, defused, restored } from './table-cells.js';
import { readTable } from './table-text.js';

const engine = engineOf(SHEETS.v8);
const bores = [...slotsOf(engine).values()].filter((at) => at.feature.kind.id === 'cylinder-bore');
const MM = { length: 'mm' } as const;
const HEAD = 'feature,place,reading,value,unit';
const [first, second] = bores;
const row = (value: string, unit = 'mm', at = first!) =>
  `${at.feature.kind.title},${at.place.name},"${at.station.name}",${value},${unit}`;
const table = (...lines: readonly string[]) => [HEAD, ...lines].join('\r\n');

let empty: Scribe;
let scribe: Scribe;
beforeAll(() => {
  empty = new Scribe(engine);
  scribe = new Scribe(engine);
  const write = (proposal: ReturnType<typeof proposeMeasured>) => {
    if (!proposal.ok) throw new Error(proposal.fault);
    for (const entry of proposal.value) scribe.append(entry);
  };
  write(
    proposeInstrument(scribe.bench, {
      id: '=gauge',
      name: '-the old one',
      kind: 'bore-gauge',
      measured: 'length',
      unit: 'mm',
      resolution: '0.001 mm',
    }),
  );
  const keyed = (text: string, at = first!, over = {}) =>
    write(proposeMeasured(scribe.bench, { slot: at.slot, text, source: 'keyed', instrument: '=gauge', ...over }));
  keyed('98.612 mm');
  keyed('98.613 mm', first, { repeat: true });
  keyed('98.620 mm', second);
  const wrong = [...scribe.bench.entries.values()].at(-1)!.id;
  scribe.write({ kind: 'struck-out', data: { entry: wrong, reason: '=misread' } });
  keyed('98.610 mm', second);
});
const faults = (text: string, style = {}) => {
  const read = importWorksheet(empty.bench, text, style);
  return read.ok ? [] : read.fault.map(({ line, words }) => `${line}: ${words}`);
};
const texts = (text: string, style = {}) => {
  const read = importWorksheet(empty.bench, text, style);
  if (!read.ok) throw new Error(JSON.stringify(read.fault));
  return read.value.entries.map((entry) => 'reading' in entry.data && entry.data.reading);
};

describe('a worksheet going out', () => {
  it('has one row for each reading, in the order of walking round, with plain words in its columns', () => {
    const rows = Papa.parse<string[]>(worksheetTable(scribe.bench, 'cylinder-bore', MM)).data;
    expect(rows[0]).toEqual([...COLUMNS]);
    expect(rows).toHaveLength(bores.length + 1);
    expect(rows[1]).toEqual([
      'Cylinder bores',
      'cylinder 1',
      first!.station.name,
      '98.612',
      '98.613',
      'mm',
      "'=gauge",
      'Ada',
      '2026-01-01 10:00',
      '',
    ]);
    expect(rows[2]!.at(-1)).toBe('98.620 mm (=misread)');
    expect(rows[3]!.slice(3)).toEqual(['', '', 'mm', '', '', '', '']);
  });
  it('keeps every reading of the engine where no feature is named', () => {
    const rows = Papa.parse<string[]>(worksheetTable(scribe.bench, undefined, { length: 'in' })).data;
    expect(rows).toHaveLength(slotsOf(engine).size + 1);
    expect(new Set(rows.slice(1).map((cells) => cells[5]))).toContain('in');
  });
  it('is written with the delimiter and the decimal mark asked for', () => {
    const text = worksheetTable(scribe.bench, 'cylinder-bore', { ...MM, delimiter: ';', decimalMark: ',' });
    expect(text.split('\r\n')[1]).toContain(';98,612;98,613;mm;');
  });
});

describe('a worksheet coming back', () => {
  it('adds nothing where it went out from, whatever it is written with', () => {
    for (const delimiter of [',', ';', '\t'] as const) {
      for (const decimalMark of ['.', ','] as const) {
        const text = worksheetTable(scribe.bench, undefined, { ...MM, delimiter, decimalMark });
        expect(importWorksheet(scribe.bench, text, { decimalMark })).toEqual({
          ok: true,
          value: { entries: [], questions: [] },
        });
      }
    }
  });
  it('brings what it holds into a record that has none of it', () => {
    const text = worksheetTable(scribe.bench, 'cylinder-bore', MM);
    const read = importWorksheet(empty.bench, text, { instruments: 'not read' });
    if (!read.ok) throw new Error(JSON.stringify(read.fault));
    const copy = new Scribe(engine);
    for (const entry of read.value.entries) copy.append(entry);
    const values = (one: Scribe) =>
      [...readingsOf(one.bench).bySlot].map(([slot, readings]) => [slot, readings.map(({ value }) => value)]);
    expect(values(copy)).toEqual(values(scribe));
    expect(read.value.entries.map((entry) => 'repeat' in entry.data && entry.data.repeat)).toEqual([
      false,
      true,
      false,
    ]);
    expect(read.value.entries[0]?.data).toMatchObject({ source: 'table', occasion: 1 });
  });
  it('takes its columns in any order, names by words or by ids, and leaves empty rows out', () => {
    const text = [
      'Unit;VALUE; reading ;place;Feature',
      `mm;98.612;${first!.station.id};1;cylinder-bore`,
      `mm;;${second!.station.name};Cylinder 1;CYLINDER BORES`,
      ';;;;',
      '',
    ].join('\n');
    expect(texts(text)).toEqual([{ text: '98.612 mm', value: 0.098612, unit: 'm' }]);
  });
  it('reads a decimal comma where the mark of the file is said, and asks where it is not', () => {
    expect(texts(table(row('"98,612"')), { decimalMark: ',' })).toMatchObject([{ value: 0.098612 }]);
    expect(faults(table(row('"98,612"')))).toEqual(
      ['2: value: "98,612" can be 98.612 or 98612: type it with a point or without the comma.'].map(() =>
        expect.stringMatching(/^2: value: .*98\.612.*98612/),
      ),
    );
  });
  it.each([
    ['a feature', table('Bores,1,x,1,mm'), /^2: feature "Bores" is not known; valid: /],
    ['a place', table('cylinder-bore,9,x,1,mm'), /^2: place "9" is not known; valid: cylinder 1; cylinder 3/],
    ['a reading', table('cylinder-bore,1,x,1,mm'), /^2: reading "x" is not known; valid: top/],
    ['a value', table(row('about one')), /^2: value: /],
    ['a value without a unit', table(row('98.612', '')), /^2: unit is missing; valid: mm/],
    ['a unit of another kind', table(row('98.612', 'kg')), /^2: value: /],
    ['what cannot be', table(row('986.12')), /^2: value: 986\.12 mm cannot be: bore of cylinder 1 is/],
    ['one reading twice', table(row('98.612'), row('98.612')), /^3: the same reading as on line 2/],
    ['an instrument', `${HEAD},instrument\n${row('98.612')},mike`, /^2: instrument "mike" is not known; none is kept/],
    ['a second value alone', `${HEAD},second value\n${row('')},98.612`, /^2: a second value needs a first one/],
    ['a cell too many', table(`${row('98.612')},more`), /^2: "more" stands under no column/],
    ['a cell too long', table(row('9'.repeat(300))), /^2: value has 300 signs; a cell has at most 200/],
    ['a header without a column', 'feature,place,value,unit\n', /^1: the first line must name the columns/],
    ['a column that nobody knows', `${HEAD},colour\n`, /^1: column "colour" is not known; there are feature/],
    ['a column twice', `${HEAD},unit\n`, /^1: column "unit" stands twice/],
    ['an open quote', table(`"${row('98.612')}`), /^2: a quoted cell is not closed/],
    ['nothing at all', '', /^1: the first line must name the columns/],
  ])('names the line of %s, and what is valid', (_, text, words) => {
    expect(faults(text)).toEqual([expect.stringMatching(words)]);
  });
  it('takes nothing when one row is bad, and names every bad row by its own line, quoted line ends counted', () => {
    const text = table(row('98.612'), '"cylinder-\nbore",1,x,1,mm', row('98.610', 'mm', second), 'Bores,1,x,1,mm');
    expect(faults(text).map((one) => one.split(':')[0])).toEqual(['3', '6']);
  });
  it('has limits to its size', () => {
    expect(faults(`${HEAD}\n${'a,1,x,1,mm\n'.repeat(15_001)}`)).toEqual(['1: more than 15000 rows']);
    expect(faults('x'.repeat(4_000_001))[0]).toMatch(/^1: the file has 4000001 signs/);
  });
  it('strikes nothing out and changes nothing that stands', () => {
    const read = importWorksheet(scribe.bench, table(row('98.700')));
    expect(read).toMatchObject({
      ok: false,
      fault: [{ line: 2, words: 'value 98.700 mm: 98.612 mm stands there already; strike that out first' }],
    });
    const later = importWorksheet(scribe.bench, `${HEAD},second value\n${row('98.612')},98.650`);
    expect(later).toMatchObject({ ok: false, fault: [{ line: 2 }] });
  });
  it('asks what the gate asks, row by row against the rows above, and keeps the question with the reading', () => {
    const same = bores.filter((at) => at.station.id === first!.station.id).slice(0, 4);
    const figures = ['98.612', '98.614', '98.611', '98.163'];
    const read = importWorksheet(empty.bench, table(...same.map((at, k) => row(figures[k]!, 'mm', at))));
    if (!read.ok) throw new Error(JSON.stringify(read.fault));
    expect(read.value.questions).toEqual([{ line: 5, words: expect.stringMatching(/^98\.163 mm\? Expected about/) }]);
    expect(read.value.entries[3]?.data).toMatchObject({ answered: [read.value.questions[0]!.words] });
  });
});

describe('cells in a spreadsheet', () => {
  it.each(['=1+1', '+cmd', '-2+3', '@SUM(A1)', '\t=1', '\r=1', "'quoted", '＝1', '-the old one'])(
    '%j is no formula',
    (text) => {
      expect(defused(text)).toBe(`'${text}`);
      expect(restored(defused(text))).toBe(text);
    },
  );
  it.each(['-0.25', '+1,5', '98.612', 'cylinder 1', '', "it's", '5-6'])('%j stays as it is', (text) => {
    expect(defused(text)).toBe(text);
    expect(restored(text)).toBe(text);
  });
  it('come back as they were, whatever they hold', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(restored(defused(text))).toBe(text);
        if (!/^[+-][\d.,]+$/.test(text)) expect(defused(text)).not.toMatch(/^[=+\-@\t\r\n]/);
      }),
    );
  });
});

describe('round trips and noise', () => {
  const figure = fc.integer({ min: 98_605, max: 98_617 }).map((n) => (n / 1000).toFixed(3));
  it('every table of honest readings comes back with the same figures', () => {
    const style = fc.record({
      delimiter: fc.constantFrom(',' as const, ';' as const, '\t' as const),
      decimalMark: fc.constantFrom('.' as const, ',' as const),
    });
    fc.assert(
      fc.property(fc.array(figure, { minLength: 1, maxLength: bores.length }), style, (figures, { ...how }) => {
        const read = importWorksheet(empty.bench, table(...figures.map((one, k) => row(one, 'mm', bores[k]))));
        if (!read.ok) throw new Error(JSON.stringify(read.fault));
        const one = new Scribe(engine);
        for (const entry of read.value.entries) one.append(entry);
        const again = importWorksheet(empty.bench, worksheetTable(one.bench, 'cylinder-bore', { ...MM, ...how }), how);
        if (!again.ok) throw new Error(JSON.stringify(again.fault));
        const value = (entries: typeof read.value.entries) =>
          entries.map(({ data }) => 'reading' in data && [data.reading?.value, 'slot' in data && data.slot]);
        expect(value(again.value.entries)).toEqual(value(read.value.entries));
      }),
      { numRuns: 25 },
    );
  });
  it('any text gives readings or lines, in any place of a good table, and never throws', () => {
    const good = worksheetTable(scribe.bench, 'cylinder-bore', MM);
    const noise = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      fc.constantFrom('"', ',', ';', '\n', '\r', '\t', '\0', '\uFEFF', "'", '=1+1', '9e99', '1,250'),
    );
    fc.assert(
      fc.property(fc.nat(good.length), fc.nat(20), noise, (at, cut, put) => {
        const text = good.slice(0, at) + put + good.slice(at + cut);
        const read = importWorksheet(scribe.bench, text);
        if (read.ok) return;
        expect(read.fault.length).toBeGreaterThan(0);
        for (const { line, words } of read.fault) {
          expect(line).toBeGreaterThanOrEqual(1);
          expect(words.length).toBeGreaterThan(5);
        }
      }),
      { numRuns: 300 },
    );
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => void readTable(text)));
  });
});
