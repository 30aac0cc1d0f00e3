import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gudgeon } from '../memory-io.suite.js';

const v8 = readFileSync(new URL('../../../../sheets/quernside-51-v8.yaml', import.meta.url), 'utf8');
const files = { v8 };
/** Fills the value column of an empty worksheet. */
const filled = (csv: string, value: (row: number) => string): string =>
  csv
    .split('\n')
    .map((line, row) => (row === 0 ? line : line.replace(/,,,(in|mm),/, `,${value(row)},,$1,`)))
    .join('\n');
const worksheet = async (...more: readonly string[]) =>
  (await gudgeon(['worksheet', 'v8', 'main-journal', ...more], files)).out;

describe('gudgeon inspect', () => {
  it('lists what there is to measure, with places, counts and gauges', async () => {
    const said = await gudgeon(['inspect', 'v8'], files);
    expect(said).toMatchObject({ code: 0, err: [] });
    expect(said.out).toMatch(/^Quernside 51, pushrod V8: \d+ features, 1\d{3} readings$/m);
    expect(said.out).toMatch(/cylinder-bore +Cylinder bores: 8 places, 48 readings; bore gauge/);
  });
  it('answers with one JSON object that adds up', async () => {
    const plan = JSON.parse((await gudgeon(['inspect', 'v8', '--json'], files)).out);
    const sum = plan.features.reduce((all: number, one: { readings: number }) => all + one.readings, 0);
    expect(plan.readings).toBe(sum);
    const bores = plan.features.find((one: { id: string }) => one.id === 'cylinder-bore');
    expect(bores.places).toHaveLength(8);
    expect(bores.places[0].readings).toHaveLength(6);
  });
  it('refuses a sheet with faults, line by line', async () => {
    const said = await gudgeon(['inspect', '-'], { '-': 'just a sentence' });
    expect(said.code).toBe(2);
    expect(said.err[0]).toMatch(/^standard input:1: /);
  });
});

describe('gudgeon worksheet', () => {
  it('writes an empty worksheet of one feature', async () => {
    const rows = (await worksheet('--display', 'inch')).split(/\r?\n/);
    expect(rows[0]).toBe('feature,place,reading,value,second value,unit,instrument,by,at,struck');
    expect(rows).toHaveLength(1 + 20);
    expect(rows[1]).toMatch(/^Main journals,main 1,.*,,,in,,,,$/);
    expect((await worksheet('--delimiter', 'semicolon')).split('\n')[0]).toContain('feature;place;reading');
  });
  it('names what is valid for a wrong feature or word', async () => {
    const said = await gudgeon(['worksheet', 'v8', 'paint'], files);
    expect(said.code).toBe(2);
    expect(said.err).toEqual([expect.stringMatching(/^worksheet: "paint" is nothing to measure .*cylinder-bore/)]);
    for (const [flag, word] of [
      ['--delimiter', 'pipe'],
      ['--display', 'feet'],
    ] as const) {
      const wrong = await gudgeon(['worksheet', 'v8', flag, word], files);
      expect(wrong.code).toBe(2);
      expect(wrong.err.join(' ')).toMatch(/Valid: /);
    }
  });
});

describe('gudgeon assess', () => {
  // Main journals of the invented sheet: 63.472 to 63.490 mm new.
  const good = async () => filled(await worksheet(), () => '63.480');

  it('judges readings against the limits of the sheet, each with where it comes from', async () => {
    const csv = await good();
    const said = await gudgeon(['assess', 'v8', 'csv'], { ...files, csv });
    expect(said).toMatchObject({ code: 0, err: [] });
    expect(said.out).toMatch(/^Quernside 51, pushrod V8: 20 readings$/m);
    expect(said.out).toMatch(/IN +main 1, .*63\.480 mm.*63\.472 to 63\.490 mm/);
    expect(said.out).not.toMatch(/^ {2}OUT/m);
  });
  it('answers with one JSON object; what was not read is no data and never good', async () => {
    const csv = await good();
    const answer = JSON.parse((await gudgeon(['assess', 'v8', 'csv', '--json'], { ...files, csv })).out);
    expect(answer.readings).toBe(20);
    expect(answer.questions).toEqual([]);
    expect(answer.verdicts.out).toBe(0);
    expect(answer.verdicts.in).toBeGreaterThan(0);
    const bore = answer.findings.find((one: { key: string }) => one.key.startsWith('cylinder-bore.diameter'));
    expect(bore).toMatchObject({ verdict: 'no data', value: '' });
    const all: number = (Object.values(answer.verdicts) as number[]).reduce((sum, one) => sum + one, 0);
    expect(answer.findings).toHaveLength(all);
  });
  it('finds a worn journal, and asks about a slip with its line', async () => {
    const csv = filled(await worksheet(), (row) => (row <= 4 ? '63.400' : row === 18 ? '63.840' : '63.480'));
    const said = await gudgeon(['assess', 'v8', 'csv'], { ...files, csv });
    expect(said.code).toBe(0);
    expect(said.out).toMatch(/^ {2}OUT +main 1, /m);
    expect(said.out).toMatch(/csv:19: 63\.840 mm\? Expected .*two digits swapped\? 63\.480 mm would fit/);
  });
  it('reads inches, a decimal comma and standard input', async () => {
    const csv = filled(await worksheet('--display', 'inch', '--delimiter', 'comma'), () => '"2,4992"');
    const said = await gudgeon(['assess', 'v8', '-', '--decimal', 'comma', '--display', 'inch'], {
      ...files,
      '-': csv,
    });
    expect(said).toMatchObject({ code: 0, err: [] });
    expect(said.out).toMatch(/main 1, .*2\.4992 in/);
  });
  it('refuses every bad row by its line, and computes nothing', async () => {
    const csv = filled(await worksheet(), (row) => (row === 3 ? '634.80' : row === 5 ? 'x' : '63.480'));
    const said = await gudgeon(['assess', 'v8', 'csv'], { ...files, csv });
    expect(said.code).toBe(2);
    expect(said.out).toBe('');
    expect(said.err.map((one) => one.split(': ')[0])).toEqual(['csv:4', 'csv:6']);
  });
  it('needs two different inputs, and says when a file is not there', async () => {
    const both = await gudgeon(['assess', '-', '-'], { '-': v8 });
    expect(both).toMatchObject({ code: 2, err: ['assess: only one of the two can be standard input'] });
    expect(await gudgeon(['assess', 'v8', 'none'], files)).toMatchObject({ code: 2, err: ['none: no such file'] });
    const wrong = await gudgeon(['assess', 'v8', 'csv', '--decimal', 'dot'], { ...files, csv: '' });
    expect(wrong.code).toBe(2);
  });
});
