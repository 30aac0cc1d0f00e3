/** An entry described as data: its schema, its page, its working, and the words of a name that is not there. */
import { describe, expect, it } from 'vitest';
import {
  answer,
  defineCalculation,
  describeCalcFault,
  inputSchema,
  pageOf,
  runDeclared,
  workingText,
} from './index.js';
import { plate } from './plate.suite.js';

const TEXT = { type: 'string', minLength: 1, maxLength: 64 };
const pair = (required: readonly string[], units: readonly string[]) => ({
  type: 'object',
  properties: {
    value: { type: ['number', 'string'] },
    unit: { type: 'string', examples: units },
    plusMinus: { type: 'number', minimum: 0, description: 'standard uncertainty in the same unit' },
  },
  required,
  additionalProperties: false,
});
const LENGTH = { anyOf: [TEXT, pair(['value', 'unit'], ['mm', 'in', 'thou', 'µm', 'cm', 'm', 'ft'])] };
const WHOLE = { type: 'string', pattern: '^\\s*[+-]?[0-9]+\\s*$' };

describe('the schema of a calculation', () => {
  it('is a JSON Schema of 2020-12 that says what each input takes', () => {
    expect(inputSchema(plate)).toEqual({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: 'gudgeon:calc/test.plate',
      title: 'Plate',
      description: 'For the tests of the machinery.',
      type: 'object',
      properties: {
        long: {
          description: 'length (a): a value with its unit such as mm, above 0 mm and at most 1000 mm',
          ...LENGTH,
        },
        wide: { description: 'width (b): a value with its unit such as mm, above 0 mm and at most 1000 mm', ...LENGTH },
        strips: {
          description:
            'strips cut off (c): a list, each a value with its unit such as mm, above 0 mm and at most 1000 mm',
          type: 'array',
          items: LENGTH,
          minItems: 1,
          maxItems: 5000,
        },
        count: {
          description: 'plates (n): a whole number, at least 1 and at most 9',
          anyOf: [{ type: 'integer', minimum: 1, maximum: 9 }, WHOLE],
        },
        side: { description: 'side (side): one of up, down', enum: ['up', 'down'] },
        name: { description: 'name (name): a word', type: ['string', 'number'], minLength: 1 },
      },
      required: ['long', 'wide'],
      additionalProperties: false,
    });
  });

  it('takes a plain number where a ratio is asked, leaves open ends open, and requires a text that must be given', () => {
    const strip = defineCalculation({
      ...plate,
      id: 'test.strip',
      inputs: {
        rate: { kind: 'ratio', unit: '', symbol: 'r', meaning: 'rate', range: { above: 0, below: 2 } },
        turns: { kind: 'count', symbol: 't', meaning: 'turns', range: { above: 0, below: 5 } },
        word: { kind: 'text', symbol: 'w', meaning: 'word', expected: 'a word', read: (text: string) => text },
        free: { kind: 'choice', symbol: 'f', meaning: 'free', choices: ['a'], optional: true },
      },
      outputs: { same: { kind: 'ratio', symbol: 's', meaning: 'rate again', unit: '', places: 2 } },
      compute: ({ rate }) => answer({ same: rate }),
    });
    expect(inputSchema(strip)).toMatchObject({
      properties: {
        rate: { anyOf: [TEXT, { type: 'number' }, { required: ['value'] }] },
        turns: { anyOf: [{ type: 'integer', exclusiveMinimum: 0, exclusiveMaximum: 5 }, WHOLE] },
      },
      required: ['rate', 'turns', 'word'],
    });
    const { turns } = inputSchema(strip).properties as { turns: { anyOf: readonly object[] } };
    expect(Object.keys(turns.anyOf[0]!)).toEqual(['type', 'exclusiveMinimum', 'exclusiveMaximum']);
    expect(pageOf(strip).inputs.map(({ takes }) => takes)).toEqual([
      'a plain number, above 0 and below 2',
      'a whole number, above 0 and below 5',
      'a word',
      'one of a',
    ]);
  });
});

describe('the page of a calculation', () => {
  it('has every input and output with its symbol, unit, and whether it may be left out or is a list', () => {
    const page = pageOf(plate);
    expect(page).toMatchObject({ id: 'test.plate', subject: 'test', title: 'Plate', formula: 'A = n·(a − Σc)·b' });
    expect(page.inputs.map(({ name, kind, symbol, list, required }) => [name, kind, symbol, list, required])).toEqual([
      ['long', 'length', 'a', false, true],
      ['wide', 'length', 'b', false, true],
      ['strips', 'length', 'c', true, false],
      ['count', 'count', 'n', false, false],
      ['side', 'choice', 'side', false, false],
      ['name', 'text', 'name', false, false],
    ]);
    expect(page.inputs[2]).toMatchObject({
      meaning: 'strips cut off',
      takes: 'a list, each a value with its unit such as mm, above 0 mm and at most 1000 mm',
    });
    expect(page.outputs).toEqual([
      { name: 'area', kind: 'area', symbol: 'A', meaning: 'area', list: false, unit: 'mm2' },
      { name: 'each', kind: 'length', symbol: 'c', meaning: 'strips again', list: true, unit: 'mm' },
      { name: 'says', kind: 'text', symbol: 'says', meaning: 'side and name', list: false, unit: '' },
      {
        name: 'inverse',
        kind: 'ratio',
        symbol: 'q',
        meaning: 'a number that has no value for squares',
        list: false,
        unit: '',
      },
    ]);
    expect(page.sources).toHaveLength(1);
    expect(page.schema).toEqual(inputSchema(plate));
  });
});

describe('the working of an answer', () => {
  it('goes from what went in by the formula to what came out with its doubt, and what was assumed', () => {
    const run = runDeclared(
      plate,
      { long: '30 mm', wide: '20 ±0.1 mm', strips: ['1 mm', '4 mm'], name: 'x' },
      { uncertainty: {} },
    );
    if (!run.ok) throw new Error('refused');
    const { working, outputs } = run.value;
    const doubt = outputs.area?.uncertainty;
    if (doubt === undefined || !('text' in doubt)) throw new Error('no doubt');
    expect(working.map(({ part }) => part)).toEqual([
      ...Array.from({ length: 6 }, () => 'input'),
      'formula',
      ...Array.from({ length: 4 }, () => 'output'),
      'assumption',
    ]);
    expect(working.map(workingText).slice(0, 9)).toEqual([
      'a = 30 mm   length',
      'b = 20 ±0.1 mm   width',
      'c = 1 mm, 4 mm   strips cut off',
      'n = 1 (not given, assumed)   plates',
      'side = up (not given, assumed)   side',
      'name = x   name',
      'A = n·(a − Σc)·b',
      `A = ${outputs.area?.text} ${doubt.text}   area`,
      `c = ${outputs.each?.text}   strips again`,
    ]);
    expect(working.at(-1)).toEqual({ part: 'assumption', symbol: '', text: 'flat', meaning: '' });
    expect(working[6]).toEqual({ part: 'formula', symbol: '', text: 'A = n·(a − Σc)·b', meaning: '' });
  });
});

describe('a name that is not in the catalogue', () => {
  it('is said with those that come near, if any, on one line and cut to 60 letters', () => {
    const unknown = (id: string, near: readonly string[]) =>
      describeCalcFault({ code: 'unknown-calculation', id, near });
    expect(unknown('crank.strok', ['crank.stroke', 'crank.motion'])).toBe(
      'no calculation is named "crank.strok"; near: crank.stroke, crank.motion',
    );
    expect(unknown('?', [])).toBe('no calculation is named "?"');
    expect(unknown('a\nb', [])).toBe('no calculation is named "a b"');
    expect(unknown('x'.repeat(60), [])).toBe(`no calculation is named "${'x'.repeat(60)}"`);
    expect(unknown('x'.repeat(61), [])).toBe(`no calculation is named "${'x'.repeat(60)}…"`);
  });
});
