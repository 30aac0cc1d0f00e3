import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, mm, type Outcome, parseQuantity, toUnit, unitsOf } from '../../quantity/index.js';
import { catalogue, runCalculation } from '../index.js';
import {
  answer,
  type CalcFault,
  type CalcResult,
  conflict,
  defineCalculation,
  describeCalcFault,
  holds,
  inputSchema,
  nextEven,
  nextNormal,
  type OutputUncertainty,
  runDeclared,
  seeded,
} from './index.js';
import { length, plate } from './plate.suite.js';
import { isQuantity } from './spec.js';

const value = (run: Outcome<CalcResult, readonly CalcFault[]>): CalcResult => {
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return run.value;
};
const faults = (inputs: unknown): readonly string[] => {
  const run = runDeclared(plate, inputs);
  return run.ok ? [] : run.fault.map(describeCalcFault);
};
const good = { long: '30 mm', wide: '20 mm' };

describe('inputs of a calculation', () => {
  it('are read as text, as value with unit, as a list, and by default', () => {
    const { outputs, working } = value(
      runDeclared(plate, {
        long: { value: 3, unit: 'cm' },
        wide: { value: '20.0', unit: 'mm' },
        strips: ['1 mm', { value: 4, unit: 'mm' }],
        name: 'x',
      }),
    );
    expect(outputs.area).toMatchObject({ unit: 'mm2', text: expect.stringContaining('500') });
    expect(outputs.area?.value).toBeCloseTo(500, 9);
    expect(outputs.each?.value).toEqual([1, 4]);
    expect(outputs.says?.value).toBe('up x');
    expect(working.find((line) => line.symbol === 'n')?.text).toBe('1 (not given, assumed)');
  });

  it('are shown back in the unit in which they were typed', () => {
    const run = value(runDeclared(plate, { long: '2 in', wide: '1 in', strips: ['0.125 in'] }));
    expect(run.outputs.area?.text).toBe('1.8750 in2');
    expect(run.outputs.each?.text).toBe('0.1250 in');
    expect(
      value(runDeclared(plate, { long: '2 in', wide: '1 in', strips: ['0.125 in'] }, { system: 'metric' })).outputs.each
        ?.text,
    ).toBe('3.18 mm');
  });

  it.each<[string, unknown, string]>([
    ['a negative length', { ...good, long: '-3 mm' }, 'long: -3 mm given; valid is above 0 mm and at most 1000 mm'],
    [
      'zero where it must be above',
      { ...good, long: '0 mm' },
      'long: 0 mm given; valid is above 0 mm and at most 1000 mm',
    ],
    [
      'a limit in the unit that was typed',
      { ...good, long: '40 in' },
      'long: 40 in given; valid is above 0 in and at most 39.3701 in',
    ],
    [
      'a missing unit',
      { ...good, long: '30' },
      'long: "30" has no unit: a length needs one, such as mm, in, thou, µm.',
    ],
    ['a bare number', { ...good, long: 30 }, 'long: "30" has no unit: a length needs one, such as mm, in, thou, µm.'],
    [
      'a number that is none',
      { ...good, long: Number.NaN },
      'long: NaN given; needed is a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'a unit of another kind',
      { ...good, long: { value: 3, unit: 'deg' } },
      'long: "deg" is not a unit of length: use mm, in, thou, µm.',
    ],
    [
      'a value that is no number',
      { ...good, long: { value: null, unit: 'mm' } },
      'long: {"value":null,"unit":"mm"} given; needed is a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'a field that nobody knows',
      { ...good, long: { value: 3, unit: 'mm', colour: 1 } },
      'long: {"value":3,"unit":"mm","colour":1} given; needed is a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'a negative uncertainty',
      { ...good, long: { value: 3, unit: 'mm', plusMinus: -1 } },
      'long: {"value":3,"unit":"mm","plusMinus":-1} given; needed is a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'an input left out',
      { long: '30 mm' },
      'wide: missing; needed is a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'an input that nobody asked for',
      { ...good, depth: '3 mm' },
      'depth: no such input; this calculation takes long, wide, strips, count, side, name',
    ],
    [
      'an empty list',
      { ...good, strips: [] },
      'strips: the list is empty; needed is a list, each a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'a list of nothing but signs',
      { ...good, strips: ' ; ' },
      'strips: the list is empty; needed is a list, each a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'a list where one value is taken',
      { ...good, long: ['3 mm'] },
      'long: ["3 mm"] given; needed is a value with its unit such as mm, above 0 mm and at most 1000 mm',
    ],
    [
      'a place in a list',
      { ...good, strips: ['3 mm', '-3 mm'] },
      'strips, value 2: -3 mm given; valid is above 0 mm and at most 1000 mm',
    ],
    [
      'part of a thing',
      { ...good, count: 1.5 },
      'count: 1.5 given; needed is a whole number, at least 1 and at most 9',
    ],
    ['too many things', { ...good, count: '10' }, 'count: 10 given; valid is at least 1 and at most 9'],
    ['a choice that is none', { ...good, side: 'left' }, 'side: "left" given; valid is one of up, down'],
    ['a text that means nothing', { ...good, name: '' }, 'name:  given; needed is a word'],
    [
      'inputs that cannot stand together',
      { ...good, strips: ['20 mm', '10 mm'] },
      'long 30 mm, strips 20 mm, 10 mm: nothing is left; long must be above 30 mm',
    ],
    ['an answer that is not finite', { long: '20 mm', wide: '20 mm' }, 'inverse: these inputs have no finite answer'],
    ['no object at all', null, 'the inputs must be one object of names and values, such as { "stroke": "3.480 in" }'],
    [
      'a list in place of an object',
      [1],
      'the inputs must be one object of names and values, such as { "stroke": "3.480 in" }',
    ],
  ])('are refused with one clear line for %s', (_, inputs, line) => {
    expect(faults(inputs)).toEqual([line]);
  });

  it('are refused with every problem at once', () => {
    expect(faults({ long: '-1 mm', wide: 3, count: 0 })).toHaveLength(3);
  });

  it('keep foreign text on one line and short', () => {
    for (const line of faults({
      [`x\n${'y'.repeat(500)}`]: 1,
      long: `a\u2028\n${'b'.repeat(500)}`,
      wide: `${'9'.repeat(70)}\n mm`,
    })) {
      expect(line).not.toMatch(/[\n\u2028]/);
      expect(line.length).toBeLessThan(260);
    }
  });

  it('are limited in number', () => {
    expect(faults({ ...good, strips: Array.from({ length: 5001 }, () => '1 µm') })).toEqual([
      'strips: 5001 values given; valid is at most 5000',
    ]);
  });
});

describe('every calculation, whatever it is given', () => {
  const anything = fc.oneof(
    fc.anything(),
    fc.constantFrom(
      '1 mm',
      '-1 mm',
      '1e9 mm',
      '0 deg',
      '90 deg',
      '1 rpm',
      '0.15',
      '5 kN',
      '60 N·m',
      'M10 x 1.5',
      'NaN',
      '',
    ),
    fc.record({ value: fc.oneof(fc.double(), fc.string()), unit: fc.constantFrom('mm', 'in', 'deg', 'N', '') }),
  );

  it('answers or refuses with lines of text; it neither throws nor says NaN', () => {
    for (const calc of catalogue) {
      const names = Object.keys(calc.inputs);
      const values = fc.record(
        Object.fromEntries(names.map((name) => [name, fc.oneof(fc.constant(calc.example.inputs[name]), anything)])),
      );
      fc.assert(
        fc.property(values, (inputs) => {
          const run = runCalculation(calc.id, inputs);
          if (run.ok) expect(numbersIn(run.value.outputs).every(Number.isFinite)).toBe(true);
          else expect(run.fault.map(describeCalcFault).join('')).toMatch(/^[^\n]+$/);
        }),
        { numRuns: 60 },
      );
    }
  });

  it('answers the same whichever unit its inputs are written in', () => {
    for (const calc of catalogue) {
      const plain = value(runCalculation(calc.id, calc.example.inputs));
      fc.assert(
        fc.property(fc.integer({ min: 0, max: 1000 }), (pick) => {
          const swapped = value(runCalculation(calc.id, inOtherUnits(calc, pick)));
          for (const [name, output] of Object.entries(plain.outputs))
            expectAlike(swapped.outputs[name]?.value, output.value, `${calc.id} ${name}`);
        }),
        { numRuns: 10 },
      );
    }
  });
});

const numbersIn = (outputs: CalcResult['outputs']): readonly number[] =>
  Object.values(outputs)
    .flatMap((output) => output.value)
    .filter((one) => typeof one === 'number');

/** The example of a calculation with each quantity in some other unit of its kind. */
function inOtherUnits(calc: (typeof catalogue)[number], pick: number): Record<string, unknown> {
  const swap = (name: string, text: unknown): unknown => {
    const spec = calc.inputs[name];
    if (!spec || !isQuantity(spec)) return text;
    if (Array.isArray(text)) return text.map((one) => swap(name, one));
    const typed = parseQuantity(spec.kind, String(text));
    if (!typed.ok) throw new Error(`${name}: ${text}`);
    const units = unitsOf(spec.kind);
    const unit = units[pick % units.length]!.name;
    return { value: toUnit(spec.kind, typed.value.value, unit), unit };
  };
  return Object.fromEntries(Object.entries(calc.example.inputs).map(([name, text]) => [name, swap(name, text)]));
}

function expectAlike(found: unknown, wanted: unknown, where: string): void {
  if (Array.isArray(wanted)) {
    for (const [at, one] of wanted.entries()) expectAlike((found as unknown[])[at], one, where);
  } else if (typeof wanted === 'number')
    expect(Math.abs(Number(found) - wanted), where).toBeLessThanOrEqual(1e-9 + 1e-8 * Math.abs(wanted));
  else expect(found, where).toBe(wanted);
}

describe('doubt of a result', () => {
  const doubtful = { long: '100.0 ±0.2 mm', wide: '50.0 ±0.5 mm', strips: ['10 ±0.3 mm', '5 mm'] };
  const run = (seed: number) => value(runDeclared(plate, doubtful, { uncertainty: { seed, trials: 20_000 } }));

  it('adds the effects in squares (JCGM 100, 5.1.2; hand arithmetic)', () => {
    const doubt = run(1).outputs.area?.uncertainty;
    if (!doubt || !('standard' in doubt)) throw new Error('no doubt');
    const by = { long: 50 * 0.2, wide: 85 * 0.5, strip: 50 * 0.3 };
    expect(doubt.standard).toBeCloseTo(Math.hypot(by.long, by.wide, by.strip), 5);
    expect(doubt.text).toBe('±46 mm2');
    expect(doubt.contributions.map((one) => one.input)).toEqual(['wide', 'strips[1]', 'long']);
    expect(doubt.contributions.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 9);
  });

  it('agrees between derivatives and trials', () => {
    const doubt = run(2).outputs.area?.uncertainty;
    if (!doubt || !('standard' in doubt)) throw new Error('no doubt');
    expect(doubt.monteCarlo.standard / doubt.standard).toBeCloseTo(1, 1);
    expect(doubt.monteCarlo.mean).toBeCloseTo(4250, -1);
    expect((doubt.monteCarlo.high - doubt.monteCarlo.low) / (2 * 1.96 * doubt.standard)).toBeCloseTo(1, 1);
  });

  it('is the same for the same seed and another for another', () => {
    expect(run(3)).toEqual(run(3));
    expect(run(3).outputs.area).not.toEqual(run(4).outputs.area);
  });

  it('comes a value for a list, with null where nothing is doubtful about it', () => {
    const doubt = run(1).outputs.each?.uncertainty;
    expect(doubt).toMatchObject([{ text: '±0.30 mm' }, { standard: 0 }]);
  });

  it('is not stated when no input states one, and says so', () => {
    const found = value(runDeclared(plate, { long: '30 mm', wide: '20 mm' }, { uncertainty: {} }));
    expect(found.outputs.area?.uncertainty).toBeUndefined();
    expect(found.cautions[0]?.text).toContain('not known');
  });

  it('names the inputs that were taken as exact', () => {
    const found = value(runDeclared(plate, { long: '30 ±1 mm', wide: '20 mm' }, { uncertainty: {} }));
    expect(found.cautions.map((one) => one.text)).toEqual(['taken as exact, as they state no uncertainty: wide']);
  });

  it('counts trials that leave the valid range instead of using them', () => {
    const found = value(runDeclared(plate, { long: '30 mm', wide: '1.0 ±1.0 mm' }, { uncertainty: { trials: 2000 } }));
    // A normal distribution lies below its mean minus one standard deviation 15.87 % of the time.
    expect((found.trials?.refused ?? 0) / 2000).toBeCloseTo(0.1587, 1);
  });
});

/** The hotter of a part and its stand, at rest and warmed up: every kind of answer that may not be known. */
const bench = defineCalculation({
  id: 'test.bench',
  subject: 'test',
  title: 'Bench',
  summary: 'For the tests of the machinery.',
  inputs: {
    part: { kind: 'temperature', symbol: 'T', meaning: 'part', unit: '°C', range: {} },
    film: { kind: 'length', symbol: 'h', meaning: 'film', unit: 'm', range: { from: 0, to: mm(10) } },
    only: { ...length, symbol: 'x', meaning: 'a size that has one value', optional: true },
    tries: { kind: 'count', symbol: 'n', meaning: 'tries', range: { above: 0, below: 9 }, default: 1 },
  },
  outputs: {
    again: { kind: 'temperature', symbol: 'T', meaning: 'part again', unit: '°C', places: 1 },
    twice: { kind: 'length', symbol: '2h', meaning: 'film twice', unit: 'm', places: 3 },
    same: { kind: 'length', symbol: 'x', meaning: 'the size again', unit: 'mm', places: 1, list: true, optional: true },
    notes: { kind: 'text', symbol: 'notes', meaning: 'notes', list: true },
  },
  formula: 'T = T',
  assumptions: ['at rest'],
  sources: ['derived-here'],
  example: { inputs: {}, outputs: {}, from: '' },
  compute: (v) => {
    if (v.only !== undefined && v.only !== mm(5))
      return conflict(['only'], 'it is 5 mm', { input: 'only', from: mm(5) });
    if (v.tries === 7) return conflict(['tries'], 'seven is unlucky', { input: 'tries', below: 7 });
    if (v.tries === 8) return conflict(['film'], 'a film is needed', { input: 'only', above: mm(5) });
    if (v.tries === 6) return conflict(['film'], 'nothing helps', { input: 'nothing', above: 0 });
    return answer({
      again: v.part,
      twice: (2 * v.film) as typeof v.film,
      same: v.only === undefined ? undefined : [v.only],
      notes: ['one', 'two'],
    });
  },
});
const doubtOf = (run: CalcResult, name: string): OutputUncertainty | undefined => {
  const doubt = run.outputs[name]?.uncertainty;
  return doubt && 'standard' in doubt ? doubt : undefined;
};

describe('doubt that is special', () => {
  const still = { part: '20 °C', film: '0.001 m' };

  it('of a temperature is a difference: 9 °F of doubt are 5 K, not -12.8 °C', () => {
    const run = value(runDeclared(bench, { ...still, part: '68 ±9 °F' }, { uncertainty: {} }));
    expect(doubtOf(run, 'again')).toMatchObject({ text: '±9.0 °F' });
    expect(doubtOf(run, 'again')?.standard).toBeCloseTo(5, 9);
  });

  it('far below what is printed is still not zero', () => {
    const run = value(
      runDeclared(bench, { ...still, film: { value: 0.001, unit: 'm', plusMinus: 1e-12 } }, { uncertainty: {} }),
    );
    expect(doubtOf(run, 'twice')?.text).toBe('±0.000000000 m');
    expect(doubtOf(run, 'twice')?.standard).toBeCloseTo(2e-12, 15);
  });

  it('at a limit of the range is taken from the one side that is valid', () => {
    for (const film of ['0 ±0.0001 m', '0.01 ±0.0001 m']) {
      const run = value(runDeclared(bench, { ...still, film }, { uncertainty: {} }));
      expect(doubtOf(run, 'twice')?.standard).toBeCloseTo(2e-4, 9);
    }
  });

  it('is not known where the input can have no other value', () => {
    const run = value(runDeclared(bench, { ...still, only: '5 ±0.1 mm' }, { uncertainty: {} }));
    expect(run.outputs.same?.uncertainty).toEqual([null]);
    expect(doubtOf(run, 'twice')).toBeUndefined();
    expect(run.trials?.refused).toBe(run.trials?.trials);
  });

  it('is not stated from a single trial', () => {
    const run = value(runDeclared(bench, { ...still, film: '0.001 ±0.0001 m' }, { uncertainty: { trials: 1 } }));
    expect(doubtOf(run, 'twice')).toBeUndefined();
  });

  it('may be typed beside value and unit', () => {
    const film = { value: 1, unit: 'mm', plusMinus: 0.1 };
    const run = value(runDeclared(bench, { ...still, film }, { uncertainty: {} }));
    expect(doubtOf(run, 'twice')?.standard).toBeCloseTo(2e-4, 9);
    const odd = runDeclared(bench, { ...still, film: { ...film, plusMinus: 'much' } });
    expect(odd.ok).toBe(false);
  });
});

describe('a declaration', () => {
  const lines = (inputs: unknown) => {
    const run = runDeclared(bench, inputs);
    return run.ok ? [] : run.fault.map(describeCalcFault);
  };

  it('without limits takes any value, and says so', () => {
    expect(lines({ film: '1 mm' })).toEqual(['part: missing; needed is a value with its unit such as °C, any value']);
  });

  it('gives open and closed limits of a count to the schema', () => {
    const schema = JSON.stringify(inputSchema(bench));
    expect(schema).toContain('"exclusiveMinimum":0,"exclusiveMaximum":9');
  });

  it('says the limit that an input would have to keep, also of a count, and of one that was left out', () => {
    const still = { part: '20 °C', film: '1 mm' };
    expect(lines({ ...still, tries: 7 })).toEqual(['tries 7: seven is unlucky; tries must be below 7']);
    expect(lines({ ...still, tries: 8 })).toEqual(['film 1 mm: a film is needed; only must be above 5 mm']);
    expect(lines({ ...still, tries: 6 })).toEqual(['film 1 mm: nothing helps']);
  });

  it('refuses what no text can show', () => {
    expect(lines({ part: '20 °C', film: 10n })).toEqual([
      'film: something that is not JSON given; needed is a value with its unit such as m, at least 0 m and at most 0.01 m',
    ]);
  });
});

describe('seeded random numbers', () => {
  const draw = (next: typeof nextEven, count: number, seed: number): number[] => {
    const found: number[] = [];
    let state = seeded(seed);
    for (let at = 0; at < count; at += 1) {
      const [number, after] = next(state);
      found.push(number);
      state = after;
    }
    return found;
  };
  const mean = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0) / numbers.length;

  it('spread evenly between 0 and 1', () => {
    const numbers = draw(nextEven, 100_000, 5);
    expect(Math.min(...numbers.slice(0, 50_000))).toBeGreaterThan(0);
    expect(Math.max(...numbers.slice(0, 50_000))).toBeLessThan(1);
    expect(mean(numbers)).toBeCloseTo(0.5, 2);
    expect(mean(numbers.map((one) => (one - 0.5) ** 2))).toBeCloseTo(1 / 12, 2);
  });

  it('have the mean, spread and tails of the normal distribution', () => {
    const numbers = draw(nextNormal, 100_000, 6);
    expect(mean(numbers)).toBeCloseTo(0, 1);
    expect(mean(numbers.map((one) => one ** 2))).toBeCloseTo(1, 1);
    // 95 % lie within 1.960 (tables of the normal distribution).
    expect(numbers.filter((one) => Math.abs(one) < 1.95996).length / 100_000).toBeCloseTo(0.95, 2);
  });
});

describe('a range', () => {
  it('takes its closed ends in and leaves its open ends out', () => {
    expect([holds({ from: 1 }, 1), holds({ above: 1 }, 1), holds({ to: 2 }, 2), holds({ below: 2 }, 2)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
    expect(holds({}, Number.NaN)).toBe(false);
  });
});

describe('types of a declaration', () => {
  it('make a wrong answer not compile', () => {
    const wrong = defineCalculation({
      ...plate,
      inputs: { turn: { kind: 'angle', symbol: 'φ', meaning: 'turn', unit: 'deg', range: {} } },
      outputs: { far: { kind: 'length', symbol: 's', meaning: 'far', unit: 'mm', places: 1 } },
      // @ts-expect-error: an angle is no length
      compute: (v: { readonly turn: Angle }) => answer({ far: v.turn }),
    });
    expect(wrong.id).toBe('test.plate');
  });
});
