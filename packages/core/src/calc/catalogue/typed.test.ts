/** Inputs as hands and files write them: with spaces, signs, units beside the number, doubts, and lists in one text. */
import { describe, expect, it } from 'vitest';
import { celsius, mm } from '../../quantity/index.js';
import { answer, conflict, defineCalculation, describeCalcFault, runDeclared } from './index.js';
import { length } from './plate.suite.js';

/** Gives back what it was given. */
const echo = defineCalculation({
  id: 'test.echo',
  subject: 'test',
  title: 'Echo',
  summary: 'For the tests of reading.',
  inputs: {
    size: { ...length, symbol: 'a', meaning: 'size', default: mm(2.5) },
    sizes: { ...length, symbol: 'b', meaning: 'sizes', list: true, optional: true },
    rate: { kind: 'ratio', unit: '', symbol: 'r', meaning: 'rate', range: { from: 0, to: 10 }, optional: true },
    warm: {
      kind: 'temperature',
      unit: 'degC',
      symbol: 't',
      meaning: 'warmth',
      range: { from: celsius(-50), to: celsius(300) },
      optional: true,
    },
    turns: { kind: 'count', symbol: 'n', meaning: 'turns', range: { from: -9, to: 9 }, list: true, optional: true },
    side: { kind: 'choice', symbol: 's', meaning: 'side', choices: ['up', 'down'], optional: true },
    word: {
      kind: 'text',
      symbol: 'w',
      meaning: 'word',
      expected: 'a word',
      read: (text: string) => (text === '' ? undefined : text),
      optional: true,
    },
  },
  outputs: {
    size: { kind: 'length', symbol: 'a', meaning: 'size', unit: 'mm', places: 3 },
    warm: { kind: 'temperature', symbol: 't', meaning: 'warmth', unit: 'degC', places: 1 },
  },
  formula: 'a',
  assumptions: ['none'],
  sources: ['derived-here'],
  example: { inputs: {}, outputs: {}, from: '' },
  compute: ({ size, rate, warm }) => {
    if (rate === 9) return conflict(['size', 'rate'], 'no size at nine', { input: 'size', above: mm(25.4) });
    return answer({ size, warm: warm ?? celsius(20) });
  },
});
const run = (inputs: Readonly<Record<string, unknown>>, uncertainty = false) =>
  runDeclared(echo, inputs, uncertainty ? { uncertainty: { trials: 50, seed: 1 } } : {});
function read(inputs: Readonly<Record<string, unknown>>, symbol: string): string | undefined {
  const found = run(inputs);
  if (!found.ok) throw new Error(found.fault.map(describeCalcFault).join('\n'));
  return found.value.working.find((line) => line.part === 'input' && line.symbol === symbol)?.text;
}
const refusal = (inputs: Readonly<Record<string, unknown>>): string => {
  const found = run(inputs);
  return found.ok ? '' : found.fault.map(describeCalcFault).join('\n');
};

describe('a number with its unit beside it', () => {
  it.each([
    [{ value: 5, unit: 'mm' }, '5 mm'],
    [{ value: '5.00', unit: 'mm' }, '5.00 mm'],
    [{ value: 5, unit: 'mm', plusMinus: 0 }, '5 ±0 mm'],
    [{ value: 5, unit: 'mm', plusMinus: 0.1 }, '5 ±0.1 mm'],
    [' 5 mm ', '5 mm'],
  ])('%j is %s', (given, text) => expect(read({ size: given }, 'a')).toBe(text));

  it.each([
    { value: 5, unit: 'mm', plusMinus: -0.1 },
    { value: 5, unit: 'mm', plusMinus: 'x' },
    { value: 5, unit: 'mm', plusMinus: Number.POSITIVE_INFINITY },
    { value: Number.NaN, unit: 'mm' },
    { value: 5 },
    { value: 5, unit: 3 },
    { value: 5, unit: 'mm', colour: 'red' },
    { unit: 'mm' },
  ])('%j is no size', (given) =>
    expect(refusal({ size: given })).toMatch(/^size: .* given; needed is a value with its unit such as mm/),
  );
  it('of no length is refused by its unit', () => {
    expect(refusal({ size: { value: 5, unit: 'kg' } })).toContain('"kg" is not a unit of length');
  });
  it('may be left out of a ratio, and of nothing else', () => {
    expect(read({ rate: { value: 1.5 } }, 'r')).toBe('1.5');
    expect(read({ rate: { value: 1.5, plusMinus: 0.25 } }, 'r')).toBe('1.5 ±0.25');
    expect(read({ rate: 1.25 }, 'r')).toBe('1.25');
    expect(read({ rate: { value: '1.50' } }, 'r')).toBe('1.50');
    expect(refusal({ rate: Number.NaN })).toMatch(/^rate: .*needed is a plain number/);
  });
  it('has the doubt of a difference: ±9 °F is ±5 °C', () => {
    const found = run({ warm: { value: 50, unit: 'degF', plusMinus: 9 } }, true);
    if (!found.ok) throw new Error('refused');
    expect(found.value.outputs.warm?.uncertainty).toMatchObject({ standard: expect.closeTo(5, 9), text: '±9.0 °F' });
  });
});

describe('a list in one text', () => {
  it.each([
    ['1 mm; 2 mm', '1 mm, 2 mm'],
    ['1 mm;2 mm', '1 mm, 2 mm'],
    ['1 mm,  2 mm', '1 mm, 2 mm'],
    [' 1 mm; 2 mm; ', '1 mm, 2 mm'],
    ['1,5 mm', '1,5 mm'],
    ['3 mm', '3 mm'],
  ])('of sizes: "%s" is %s', (given, text) => expect(read({ sizes: given }, 'b')).toBe(text));
  it.each([
    ['1-3-4-2', '1, 3, 4, 2'],
    ['1 - 3 - 4', '1, 3, 4'],
    ['1,3;4', '1, 3, 4'],
    [' 1  3 ', '1, 3'],
    ['+3', '3'],
  ])('of whole numbers: "%s" is %s', (given, text) => expect(read({ turns: given }, 'n')).toBe(text));
  it.each(['3x', 'x3', '3.5', '1234567890'])('of whole numbers: "%s" is none', (given) =>
    expect(refusal({ turns: given })).toMatch(/^turns, value 1: .*needed is a whole number/),
  );
  it('may hold 5000 values and no more', () => {
    expect(refusal({ sizes: Array.from({ length: 5000 }, () => '1 mm') })).toBe('');
    expect(refusal({ sizes: Array.from({ length: 5001 }, () => '1 mm') })).toBe(
      'sizes: 5001 values given; valid is at most 5000',
    );
  });
  it('that is empty is no list', () => expect(refusal({ sizes: ' ; ' })).toMatch(/^sizes: the list is empty/));
});

describe('what is left out, chosen or said', () => {
  it('stands with its usual value and its unit', () => {
    expect(read({}, 'a')).toBe('2.5 mm (not given, assumed)');
    expect(read({}, 'b')).toBeUndefined();
    expect(read({ size: null }, 'a')).toBe('2.5 mm (not given, assumed)');
  });
  it('is read without the spaces round it; a number may be a word', () => {
    expect(read({ side: ' down ' }, 's')).toBe('down');
    expect(read({ word: ' x ' }, 'w')).toBe('x');
    expect(read({ word: 10 }, 'w')).toBe('10');
    expect(refusal({ word: '' })).toMatch(/^word: .*needed is a word/);
    expect(refusal({ side: 3 })).toBe('side: "3" given; valid is one of up, down');
  });
});

describe('inputs that contradict each other', () => {
  it('are named with their figures, and the limit in the unit that was typed', () => {
    expect(refusal({ size: '0.5 in', rate: 9 })).toBe('size 0.5 in, rate 9: no size at nine; size must be above 1 in');
    expect(refusal({ size: '5 mm', rate: 9 })).toBe('size 5 mm, rate 9: no size at nine; size must be above 25.4 mm');
  });
});

describe('inputs without a doubt', () => {
  const cautions = (inputs: Readonly<Record<string, unknown>>) => {
    const found = run(inputs, true);
    return found.ok ? found.value.cautions.map(({ code, text }) => [code, text]) : [];
  };
  it('are said to be taken as exact; a count and a word never had one', () => {
    expect(cautions({ size: '5 ±0.1 mm', rate: 2, turns: '3', word: 'x' })).toEqual([
      ['taken-as-exact', 'taken as exact, as they state no uncertainty: rate'],
    ]);
    expect(cautions({ size: '5 mm' })).toEqual([
      ['taken-as-exact', 'no input states an uncertainty (such as 4.030 ±0.0005 in): that of the result is not known'],
    ]);
    expect(cautions({ size: '5 ±0.1 mm' })).toEqual([]);
  });
});
