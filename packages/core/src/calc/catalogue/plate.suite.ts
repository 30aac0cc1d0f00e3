/** For tests: an entry of no engine, with every kind of input and output. */
import { mm } from '../../quantity/index.js';
import { answer, conflict, defineCalculation } from './index.js';

export const length = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(1000) } } as const;

/** Area of a rectangle less a list of strips: one entry with every kind of input, for the machinery alone. */
export const plate = defineCalculation({
  id: 'test.plate',
  subject: 'test',
  title: 'Plate',
  summary: 'For the tests of the machinery.',
  inputs: {
    long: { ...length, symbol: 'a', meaning: 'length' },
    wide: { ...length, symbol: 'b', meaning: 'width' },
    strips: { ...length, symbol: 'c', meaning: 'strips cut off', list: true, optional: true },
    count: { kind: 'count', symbol: 'n', meaning: 'plates', range: { from: 1, to: 9 }, default: 1 },
    side: { kind: 'choice', symbol: 'side', meaning: 'side', choices: ['up', 'down'], default: 'up' },
    name: {
      kind: 'text',
      symbol: 'name',
      meaning: 'name',
      expected: 'a word',
      read: (text: string) => text || undefined,
      optional: true,
    },
  },
  outputs: {
    area: { kind: 'area', symbol: 'A', meaning: 'area', unit: 'mm2', places: 1 },
    each: { kind: 'length', symbol: 'c', meaning: 'strips again', unit: 'mm', places: 2, list: true },
    says: { kind: 'text', symbol: 'says', meaning: 'side and name' },
    inverse: { kind: 'ratio', symbol: 'q', meaning: 'a number that has no value for squares', unit: '', places: 3 },
  },
  formula: 'A = n·(a − Σc)·b',
  assumptions: ['flat'],
  sources: ['derived-here'],
  example: { inputs: {}, outputs: {}, from: '' },
  compute: (v) => {
    const left = (v.strips ?? []).reduce<number>((sum, one) => sum - one, v.long);
    if (left <= 0) return conflict(['long', 'strips'], 'nothing is left', { input: 'long', above: v.long - left });
    return answer({
      area: (v.count * left * v.wide) as never,
      each: v.strips ?? [],
      says: `${v.side} ${v.name ?? ''}`,
      inverse: (1 / (v.long - v.wide)) as never,
    });
  },
});
