import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { toUnit } from '../quantity/index.js';
import { SOURCE_KEYS } from '../sources/index.js';
import { isQuantity } from './catalogue/spec.js';
import { catalogue, describeCalcFault, inputSchema, pageOf, runCalculation, workingText } from './index.js';

/** One walk over every entry: a part that is missing, or an example that does not compute, fails here by name. */
describe.each(catalogue.map((calc) => [calc.id, calc] as const))('the data sheet of %s', (_, calc) => {
  it('has every part', () => {
    expect(calc.id).toMatch(/^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$/);
    expect(calc.id.startsWith(`${calc.subject}.`)).toBe(true);
    for (const text of [calc.title, calc.summary, calc.formula, calc.example.from]) expect(text.trim()).not.toBe('');
    expect(calc.assumptions.length).toBeGreaterThan(0);
    for (const key of calc.sources) expect(SOURCE_KEYS).toContain(key);
    expect(Object.keys(calc.inputs).length).toBeGreaterThan(0);
    expect(Object.keys(calc.outputs).length).toBeGreaterThan(0);
  });

  it('says symbol, meaning, unit and range of each input and output', () => {
    for (const spec of [...Object.values(calc.inputs), ...Object.values(calc.outputs)]) {
      expect(spec.symbol.trim()).not.toBe('');
      expect(spec.meaning.trim()).not.toBe('');
    }
    for (const spec of Object.values(calc.inputs)) {
      if (!isQuantity(spec)) continue;
      expect(Number.isFinite(toUnit(spec.kind, 1, spec.unit))).toBe(true);
      const { above, from, to, below } = spec.range;
      expect(above ?? from, 'lower end').toBeDefined();
      expect(to ?? below, 'upper end').toBeDefined();
    }
    for (const spec of Object.values(calc.outputs)) {
      if (isQuantity(spec)) expect(Number.isFinite(toUnit(spec.kind, 1, spec.unit))).toBe(true);
    }
  });

  it('shows its working: every input, the formula, every result', () => {
    const run = runCalculation(calc.id, calc.example.inputs);
    if (!run.ok) throw new Error('the example is refused');
    const lines = run.value.working.map(workingText);
    expect(lines).toContain(calc.formula);
    for (const [name, output] of Object.entries(run.value.outputs)) {
      expect(
        lines.some((line) => line.includes(output.text)),
        name,
      ).toBe(true);
    }
    expect(run.value.working.filter((line) => line.part === 'input').length).toBeGreaterThan(0);
    expect(run.value.sources.length).toBe(calc.sources.length);
  });

  it('refuses nothing at all with one line for each input that it cannot do without', () => {
    const run = runCalculation(calc.id, {});
    const needed = pageOf(calc).inputs.filter((input) => input.required);
    expect(run.ok).toBe(false);
    if (run.ok) return;
    expect(run.fault.map((fault) => 'input' in fault && fault.input)).toEqual(needed.map((input) => input.name));
    for (const fault of run.fault) expect(describeCalcFault(fault)).not.toMatch(/\n|undefined|NaN|object Object/);
  });

  it('refuses a bare number where a unit is needed, naming the input', () => {
    for (const [name, spec] of Object.entries(calc.inputs)) {
      if (!isQuantity(spec) || spec.kind === 'ratio') continue;
      const run = runCalculation(calc.id, { ...calc.example.inputs, [name]: spec.list ? [4] : 4 });
      expect(run.ok, name).toBe(false);
      if (!run.ok) expect(describeCalcFault(run.fault[0]!)).toMatch(new RegExp(`^${name}.*has no unit`));
    }
  });

  it('has a schema that names every input and requires what is needed', () => {
    const schema = inputSchema(calc);
    expect(Object.keys(schema.properties as object)).toEqual(Object.keys(calc.inputs));
    expect(schema.required).toEqual(
      pageOf(calc)
        .inputs.filter((one) => one.required)
        .map((one) => one.name),
    );
    expect(JSON.parse(JSON.stringify(pageOf(calc)))).toEqual(pageOf(calc));
  });
});

describe('the catalogue', () => {
  const room = (subject: string) => readFileSync(new URL(`./${subject}/cases.test.ts`, import.meta.url), 'utf8');

  it('has its examples and every file of reference rows computed in the rooms they belong to', () => {
    const folder = new URL('../../../../cases/', import.meta.url);
    const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
    let rows = 0;
    for (const file of files) {
      const { cases } = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
      for (const { calculation } of Array.isArray(cases) ? cases : []) {
        if (calculation === undefined) continue;
        expect(room(calculation.split('.')[0]), file).toContain(`cases/${file}'`);
        rows += 1;
      }
    }
    expect(rows).toBeGreaterThan(600);
    for (const { subject } of catalogue) expect(room(subject)).toContain('proveEntries');
  });

  it('names no calculation twice', () => {
    expect(new Set(catalogue.map((calc) => calc.id)).size).toBe(catalogue.length);
  });

  it('answers an unknown name with those that come near', () => {
    const run = runCalculation('crank.stroke-motion', {});
    expect(run.ok).toBe(false);
    if (!run.ok) expect(describeCalcFault(run.fault[0]!)).toContain('crank.motion');
    const far = runCalculation('?', {});
    expect(!far.ok && far.fault.map(describeCalcFault)).toEqual(['no calculation is named "?"']);
  });
});
