import { cubicCentimetres, mm } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import { veeEight } from './example.suite.js';
import { advance, answerOf, beginSearch, type Chances, chancesOf, type FinderInput } from './index.js';

const chances = (input: FinderInput, picked: readonly number[], options = {}): Chances => {
  const found = chancesOf(input, picked, options);
  if (!found.ok) throw new Error(found.fault.code);
  return found.value;
};
/** Deck clearance 0.2 mm ± 0.03 and gasket 0.8 mm ± 0.04: quench 1.00 mm with a doubt of 0.05 mm. */
const quench: FinderInput = {
  fixed: {
    stroke: mm(88),
    cylinders: [{ number: 1, bank: 'only', bore: mm(102), deckClearance: { value: mm(0.2), u: mm(0.03) } }],
    piston: { crownVolume: { value: 0, u: 0 } },
  },
  offer: { gaskets: { options: [{ thickness: { value: mm(0.8), u: mm(0.04) }, bore: mm(104) }] } },
  wanted: { quench: { low: mm(0.95), high: mm(2) } },
  keep: 1,
};

describe('the chance that a limit holds', () => {
  it('is that of the normal distribution for a sum: one doubt above the limit 84.13 %', () => {
    const [limit] = chances(quench, [0], { trials: 20_000 }).limits;
    expect(limit?.u).toBeCloseTo(mm(0.05), 9);
    // Tables of the normal distribution: 0.8413 below one deviation.
    expect(limit?.byDerivatives).toBeCloseTo(0.8413, 4);
    expect(limit?.byTrials).toBeCloseTo(0.8413, 1);
  });

  it('is the same with the same seed, and follows another one', () => {
    expect(chances(quench, [0], { seed: 4 })).toEqual(chances(quench, [0], { seed: 4 }));
    expect(chances(quench, [0], { seed: 4 })).not.toEqual(chances(quench, [0], { seed: 5 }));
  });

  it('is certain one way or the other without doubts', () => {
    const sure = (gasket: number): FinderInput => ({
      ...quench,
      fixed: { ...quench.fixed, cylinders: [{ ...quench.fixed.cylinders[0]!, deckClearance: { value: 0, u: 0 } }] },
      offer: { gaskets: { options: [{ thickness: { value: gasket, u: 0 }, bore: mm(104) }] } },
    });
    expect(chances(sure(mm(0.95)), [0]).together).toEqual({ byDerivatives: 1, byTrials: 1 });
    expect(chances(sure(mm(0.94)), [0]).together).toEqual({ byDerivatives: 0, byTrials: 0 });
  });

  it('names the sizes that matter and whose doubt nobody stated', () => {
    const open: FinderInput = {
      ...quench,
      fixed: { ...quench.fixed, cylinders: [{ ...quench.fixed.cylinders[0]!, chamber: cubicCentimetres(68) }] },
      wanted: { ...quench.wanted, ratio: { low: 9 } },
    };
    expect(chances(open, [0]).unstated).toEqual([
      'stroke',
      'bore, cylinder 1',
      'chamber volume, cylinder 1',
      'head gasket bore',
    ]);
    expect(chances(quench, [0]).unstated).toEqual([]);
  });
});

describe('the chance of all limits of a vee eight', () => {
  const begun = beginSearch(veeEight);
  if (!begun.ok) throw new Error('refused');
  advance(begun.value, 1e9);
  const [best] = answerOf(begun.value).best['most-margin'];
  const found = chances(veeEight, best!.picked, { trials: 3000 });

  it('by derivatives and by trials differ by no more than the trials can', () => {
    for (const { byDerivatives = Number.NaN, byTrials } of [...found.limits, found.together])
      expect(Math.abs(byDerivatives - byTrials)).toBeLessThan(0.03);
  });
  it('is at most that of the worst one, and at least what the others leave', () => {
    const single = found.limits.map(({ byTrials }) => byTrials);
    expect(found.together.byTrials).toBeLessThanOrEqual(Math.min(...single));
    expect(found.together.byTrials).toBeGreaterThanOrEqual(1 - single.reduce((sum, one) => sum + 1 - one, 0) - 1e-9);
  });
  it('says that the doubt of bought sizes was not stated', () => {
    expect(found.unstated).toEqual(
      expect.arrayContaining(['rocker ratio', 'cam advance', 'pushrod', 'piston compression height']),
    );
  });
  it('is asked of the figures that the search found', () => {
    expect(found.limits.map(({ key, value }) => [key, value])).toEqual(
      best!.figures.map(({ key, value }) => [key, expect.closeTo(value, 9)]),
    );
  });
});
