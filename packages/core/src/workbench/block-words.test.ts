import { describe, expect, it } from 'vitest';
import type { Block } from '../plan/index.js';
import { blockHindrances } from './block-words.js';

const missing = (...holes: readonly string[]): readonly Block[] =>
  holes.map((hole) => ({ code: 'fastener-missing', hole, instance: 1 }));
const words = (...blocks: readonly Block[]) => blockHindrances(blocks).map((one) => one.words);

describe('what stands in the way of tightening', () => {
  it('names one hole by itself', () => {
    expect(words(...missing('7'))).toEqual(['Hole 7: no fastener recorded. Place it in the fastener map first.']);
  });
  it('says the same of twenty empty holes once, and how many there are', () => {
    const holes = Array.from({ length: 20 }, (_, at) => `${at + 1}`);
    expect(words(...missing(...holes))).toEqual([
      'Holes 1, 2, 3, 4, 5 and 15 more: no fastener recorded. Place them in the fastener map first.',
    ]);
  });
  it('keeps different reasons apart, in the order in which they come first', () => {
    const used: Block = { code: 'fastener-not-new', hole: '2', instance: 1 };
    const bad: Block = { code: 'gasket-bad', head: 'left', item: 'dowels', seen: 'one is bent' };
    expect(words(...missing('1'), used, bad, ...missing('3'))).toEqual([
      'Holes 1, 3: no fastener recorded. Place them in the fastener map first.',
      'Hole 2: a new fastener is due, and the one recorded is used.',
      'Gasket: dowels was found bad (one is bent). Put it right and check it again first.',
    ]);
  });
});
