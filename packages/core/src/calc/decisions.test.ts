import { describe, expect, it } from 'vitest';
import { decisions, findCalculation } from './index.js';

describe('the decisions of a builder', () => {
  it('are the sixty-four of the trade map, each once', () => {
    const keys = Array.from({ length: 64 }, (_, place) => `D${String(place + 1).padStart(2, '0')}`);
    expect(Object.keys(decisions)).toEqual(keys);
  });
  it.each(Object.entries(decisions))('%s rests on calculations that exist, or says why on none', (_, decision) => {
    for (const id of decision.calculations) expect(findCalculation(id), id).toBeDefined();
    if (decision.calculations.length === 0) expect(decision.note).toMatch(/\w/);
  });
});
