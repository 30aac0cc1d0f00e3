import { mm } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import { type Calculation, describeCalcFault, runDeclared } from '../../catalogue/index.js';
import { springShims } from '../spring-shims.js';
import { selectionCalculations } from './index.js';
import { planAnswer } from './spring-inputs.js';

const found = (id: string): Calculation => selectionCalculations.find((one) => one.id === `selection.${id}`)!;

type Change = Readonly<Record<string, unknown>>;
function runOf(id: string, change: Change) {
  const calc = found(id);
  const inputs = Object.entries({ ...calc.example.inputs, ...change }).filter(([, value]) => value !== undefined);
  return runDeclared(calc, Object.fromEntries(inputs));
}
function refusalOf(id: string, change: Change): string {
  const run = runOf(id, change);
  return run.ok ? '' : run.fault.map(describeCalcFault).join('\n');
}
function outputsOf(id: string, change: Change) {
  const run = runOf(id, change);
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return Object.fromEntries(Object.entries(run.value.outputs).map(([name, { value }]) => [name, value]));
}
const many = (text: string, count: number) => Array.from({ length: count }, () => text);

describe('what cannot stand together is refused:', () => {
  it.each<[string, Change, RegExp]>([
    ['parts-to-places', { lowest: '0.05 mm', highest: '0.03 mm' }, /low end is above the high end/],
    ['parts-to-places', { places: many('80 mm', 101) }, /at most 100 values/],
    ['parts-to-places', { lowest: '0.5 mm' }, /place 1 can take no part inside the window/],
    [
      'parts-to-places',
      { lowest: '0.039 mm', highest: '0.04 mm', places: many('80.010 mm', 2) },
      /place 1, 2 can take only part 2/,
    ],
    ['extra-part', { lowest: '0.05 mm', highest: '0.03 mm' }, /low end is above the high end/],
    ['extra-part', { onOffer: many('80 mm', 101) }, /onOffer.*at most 100 values/],
    ['extra-part', { lowest: '0.5 mm' }, /place 1 can take no part/],
    ['parts-with-shop', { lowest: '0.05 mm' }, /low end is above the high end/],
    ['parts-with-shop', { parts: many('80 mm', 101) }, /parts.*at most 100/],
    ['parts-with-shop', { prices: [1, 2, 3] }, /one price for all sizes, or one for each/],
    ['parts-with-shop', { prices: [1e6], lowest: '-2 m', highest: '2 m' }, /cannot be weighed exactly/],
    ['shells-to-journals', { lowest: '0.05 mm' }, /low end is above the high end/],
    ['shells-to-journals', { journals: ['60 mm'] }, /one housing and one journal a position/],
    ['shells-to-journals', { stock: [1] }, /one number of halves a class/],
    ['shells-to-journals', { housings: many('64 mm', 21), journals: many('60 mm', 21) }, /at most 20 positions/],
    ['shells-to-journals', { walls: many('2 mm', 13), stock: undefined }, /at most 12 classes/],
    ['spring-shims', { wanted: ['1.8 in', '1.8 in'] }, /one wanted height for all valves, or one for each/],
    ['spring-shims', { stock: [1] }, /one number of shims a thickness/],
    ['spring-shims', { heights: many('1.8 in', 65) }, /at most 64 valves/],
    ['spring-shims', { shims: many('0.015 in', 40), most: 5 }, /more than 5000 different stacks/],
    ['spring-load-shims', { loads: ['100 lbf'] }, /one load a valve/],
    ['spring-load-shims', { rates: ['300 lbf/in', '300 lbf/in', '300 lbf/in'] }, /one rate for all or one for each/],
    ['spring-load-shims', { stock: [1] }, /one number of shims a thickness/],
    ['spring-load-shims', { shims: many('0.015 in', 40), most: 5 }, /more than 5000 different stacks/],
    ['common-spring-height', { lowest: '1.9 in', highest: '1.8 in' }, /low end is above the high end/],
    ['common-spring-height', { heights: many('1.8 in', 65) }, /at most 64 valves/],
    ['common-spring-height', { shims: many('0.015 in', 40), most: 5 }, /more than 5000 different stacks/],
    ['common-spring-height', { lowest: '1.82 in' }, /some valve has no accepted height/],
    ['liner-seals', { lowest: '0.3 mm' }, /low end is above the high end/],
    ['liner-seals', { lowest: '0.22 mm', seals: ['0.122 mm'] }, /no seal brings liner 2 into the window/],
    ['liner-seals', { bare: ['0.10 mm', '0.05 mm'] }, /rules between neighbours/],
    ['mass-groups', { size: 4 }, /8 parts are needed/],
    ['mass-groups', { masses: many('500 g', 101) }, /at most 100/],
    ['mass-pairs', { second: ['100 g'] }, /at least as many second parts/],
    ['mass-pairs', { second: many('100 g', 101) }, /at most 100/],
    ['table-assignment', { costs: [1, 2, 3, 4], rows: 3 }, /must fill whole rows/],
    ['table-assignment', { costs: [1, 2, 3], rows: 3 }, /at least as many columns as rows/],
    ['table-assignment', { most: -1 }, /row 1 may take no column/],
    ['extra-shim', { old: ['2.65 mm'] }, /one value a valve/],
    ['extra-shim', { wanted: ['0.2 mm', '0.2 mm'] }, /one value a valve/],
    ['extra-shim', { step: '0.0001 mm' }, /more than 1000 sizes/],
  ])('%s with %j', (id, change, words) => {
    expect(refusalOf(id, change)).toMatch(words);
  });
});

describe('pistons and bores on the bench', () => {
  it('come with the proof that belongs to the goal', () => {
    const proofs = ['least-total', 'smallest-worst', 'least-spread'].map(
      (goal) => outputsOf('parts-to-places', { goal }).proof,
    );
    expect(proofs[0]).toMatch(/^exact assignment/);
    expect(proofs[1]).toBe('for a smaller worst deviation place 3 could take no part');
    expect(proofs[2]).toMatch(/^for every smallest fit/);
  });

  it('say so when for a smaller worst deviation a bore could take no piston, and name the piston left over', () => {
    const found = outputsOf('parts-to-places', { places: ['80.010 mm'], goal: 'smallest-worst' });
    expect(found).toMatchObject({ partOf: [2], left: [1, 3] });
    expect(found.proof).toBe('for a smaller worst deviation place 1 could take no part');
    const two = outputsOf('parts-to-places', { places: ['80.010 mm', '80.010 mm'], goal: 'smallest-worst' });
    expect(two.proof).toBe('for a smaller worst deviation place 1, 2 could take only part 2');
  });

  it('need no other piston when none on offer is better', () => {
    const found = outputsOf('extra-part', { onOffer: ['79.900 mm'] });
    expect([found.size, found.gain]).toEqual([undefined, 0]);
  });

  it('with a part missing get the one on offer, whose gain has no number', () => {
    const found = outputsOf('extra-part', { parts: ['79.970 mm'] });
    expect(found.size).toBeCloseTo(79.981, 9);
    expect(found.gain).toBe(undefined);
  });

  it('are bought for without a price list as few parts as possible', () => {
    const found = outputsOf('parts-with-shop', { prices: undefined, budget: undefined });
    expect(found).toMatchObject({ unserved: 0, bought: 2, spent: 2 });
    expect(found.nextSpent).toBe(undefined);
    expect(found.assignments).toEqual([
      'place 1: part 1 on hand, leaves 0.0400 mm',
      'place 2: buy 79.9800 mm, leaves 0.0400 mm',
      'place 3: buy 79.9900 mm, leaves 0.0400 mm',
    ]);
  });

  it('stay without where there is nothing on hand and nothing for sale', () => {
    const found = outputsOf('parts-with-shop', { parts: undefined, shopSizes: undefined });
    expect(found).toMatchObject({
      unserved: 3,
      bought: 0,
      spent: 0,
      assignments: ['place 1: nothing', 'place 2: nothing', 'place 3: nothing'],
    });
    expect(refusalOf('parts-with-shop', { shopSizes: undefined, prices: [1, 2] })).toBe('');
  });
});

describe('bearing halves on the bench', () => {
  it('name a position that stays without, and what has to be bought for it', () => {
    const short = outputsOf('shells-to-journals', { stock: [1, 1] });
    expect(short).toMatchObject({ unserved: 1, bought: 0 });
    expect((short.assignments as string[]).filter((line) => line.endsWith('none'))).toHaveLength(1);
    const bought = outputsOf('shells-to-journals', { stock: [1, 1], buying: 'allowed' });
    expect(bought).toMatchObject({ unserved: 0, bought: 2 });
    expect(outputsOf('shells-to-journals', { stock: undefined }).proof).toMatch(/^no other choice/);
  });

  it('come with the bound when there are too many ways to try them all', () => {
    const count = 20;
    const housings = Array.from({ length: count }, (_, i) => `${64.006 + (i % 7) * 0.0007} mm`);
    const walls = Array.from({ length: 12 }, (_, i) => `${2.006 + i * 0.0011} mm`);
    const found = outputsOf('shells-to-journals', {
      housings,
      journals: many('59.964 mm', count),
      walls,
      stock: Array.from({ length: 12 }, () => 4),
      widestMix: '0.004 mm',
    });
    expect(found.proof).toMatch(/^(no other choice|search ended early: no choice is better than 0 without, 0 bought)/);
  });
});

describe('valve springs on the bench', () => {
  it('that nothing fits are named', () => {
    const found = outputsOf('spring-shims', {
      below: '0.002 in',
      above: '0.001 in',
      heights: ['1.815 in', '1.810 in'],
    });
    expect(found.assignments).toEqual(['valve 1: 0.3810 mm leaves 45.7200 mm', 'valve 2: nothing fits']);
    expect(found).toMatchObject({ unserved: 1 });
  });

  it('take their shims from the box', () => {
    const found = outputsOf('spring-shims', { stock: [0, 1, 0], most: 1 });
    expect(found.assignments).toEqual([
      'valve 1: no shim leaves 46.1010 mm',
      'valve 2: 0.7620 mm leaves 45.7708 mm',
      'valve 3: no shim leaves 45.7454 mm',
    ]);
  });

  it('come with the bound when the search ended early', () => {
    const input = {
      heights: [mm(46.4), mm(46.4)],
      wanted: [mm(46), mm(46)],
      sizes: [mm(0.4)],
      stock: [1],
      most: 1,
      window: {},
    };
    const plan = springShims(input, 0);
    const answer = plan.ok ? planAnswer(plan.value, input.sizes).proof : '';
    expect(answer).toBe('search ended early: with as few left without, no choice has a total below 0.0000 mm');
  });

  it('get a wanted load each from one box', () => {
    const found = outputsOf('spring-load-shims', { stock: [1, 1], rates: ['300 lbf/in', '300 lbf/in'], most: 0 });
    expect(found.loads).toHaveLength(2);
  });
});

describe('liners, tables and boxes of shims', () => {
  it('get a seal each where one for all would not do', () => {
    expect(outputsOf('liner-seals', { lowest: '0.15 mm', stepLimit: undefined, choice: 'one-each' }).sealOf).toEqual([
      2, 3,
    ]);
  });

  it('find the greatest total too', () => {
    const found = outputsOf('table-assignment', { goal: 'greatest-total' });
    expect(found.total).toBe(11);
    expect(found.proof).toBe('prices of rows and columns add up to 11, and no pair beats its two prices');
  });

  it('prove a smallest worst cost by rows that would be short, and a least spread by all that were refused', () => {
    expect(outputsOf('table-assignment', { goal: 'smallest-worst' }).proof).toMatch(/^with smaller costs only, row/);
    const single = outputsOf('table-assignment', { goal: 'smallest-worst', costs: [3], rows: 1 });
    expect(single.proof).toBe('with smaller costs only, row 1 could take no column');
    expect(outputsOf('table-assignment', { goal: 'least-spread' })).toMatchObject({ spread: 1 });
    expect(outputsOf('table-assignment', { costs: [0], rows: 1 }).total).toBe(0);
    expect(refusalOf('table-assignment', { costs: [1, 9, 1, 9], rows: 2, most: 1 })).toMatch(
      /row 1, 2 may take only column 1/,
    );
  });

  it('name no shim when none in the box would help', () => {
    const found = outputsOf('extra-shim', { measured: ['0.20 mm'], old: ['2.65 mm'], spares: ['2.65 mm'] });
    expect(found).toEqual({ fewerUnserved: 0, fewerBought: 0, lessDeviation: 0 });
  });
});
