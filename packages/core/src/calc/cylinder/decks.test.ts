import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionsOf, numberOf, outputOf, refusalOf, run } from './run.suite.js';

describe('deck', () => {
  const stack = 'cylinder.deck-stack';
  const full = { deckHeight: 230, rodLength: 150, compressionHeight: 34, deckClearance: 1 };
  const typed = (sizes: Partial<typeof full>) =>
    Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, `${size} mm`]));

  it.each(Object.keys(full))('works out %s from the other three', (name) => {
    const { [name as keyof typeof full]: left, ...others } = full;
    expect(numberOf(stack, { stroke: '90 mm', ...typed(others) }, name)).toBeCloseTo(left, 9);
  });

  it('refuses none and two left out, and a part without height', () => {
    expect(refusalOf(stack, { stroke: '90 mm', ...typed(full) })).toMatch(/exactly one/);
    expect(refusalOf(stack, { stroke: '90 mm', deckHeight: '230 mm', rodLength: '150 mm' })).toMatch(/exactly one/);
    const low = { stroke: '90 mm', deckHeight: '60 mm', deckClearance: '0 mm' };
    expect(refusalOf(stack, { ...low, rodLength: '20 mm' })).toMatch(/no height is left for the part/);
    expect(refusalOf(stack, { ...low, compressionHeight: '20 mm' })).toMatch(/no height is left for the part/);
  });

  it('agrees with the forward calculation', () => {
    const inputs = {
      deckHeights: ['230 mm'],
      strokes: ['90 mm'],
      rodLengths: ['150 mm'],
      compressionHeights: ['34 mm', '34.1 mm'],
    };
    const { deckClearances, least, most } = run('cylinder.deck-clearance', inputs).outputs;
    expect(Number([deckClearances?.value].flat()[0])).toBeCloseTo(1, 9);
    expect([Number(least?.value), Number(most?.value)].map((one) => Number(one.toFixed(6)))).toEqual([0.9, 1]);
    const uneven = { ...inputs, rodLengths: ['150 mm', '150 mm', '150 mm'] };
    expect(refusalOf('cylinder.deck-clearance', uneven)).toMatch(
      /compressionHeights .*each list needs one value, or 3/,
    );
  });

  it('cancels piston rock by the mean of two sides', () => {
    const readings = { firstSide: ['0.10 mm'], secondSide: ['-0.04 mm'] };
    const { deckClearances, tilts } = run('cylinder.deck-readings', readings).outputs;
    expect([deckClearances?.value, tilts?.value].flat().map((one) => Number(Number(one).toFixed(9)))).toEqual([
      0.03, 0.14,
    ]);
    expect(refusalOf('cylinder.deck-readings', { ...readings, secondSide: ['1 mm', '2 mm'] })).toMatch(/two readings/);
  });
});

describe('deck cut', () => {
  const id = 'cylinder.deck-cut';
  const bank = { deckClearances: ['0.6 mm', '0.5 mm'], target: '0.2 mm' };

  it('leaves the target everywhere', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 2, noNaN: true }), { minLength: 1, maxLength: 8 }), (list) => {
        const cuts = outputOf(
          id,
          { deckClearances: list.map((value) => ({ value, unit: 'mm' })), target: '-0.1 mm' },
          'cuts',
        );
        [cuts].flat().forEach((cut, at) => {
          expect((list[at] as number) - Number(cut)).toBeCloseTo(-0.1, 9);
        });
      }),
    );
  });

  it.each<[object, string]>([
    [{}, 'can be cut'],
    [{ deckHeight: '230 mm', leastDeckHeight: '229.6 mm' }, 'can be cut'],
    [{ deckHeight: '230 mm', leastDeckHeight: '229.7 mm' }, 'cannot be cut: the deck height left is too small'],
    [{ alreadyCut: '0.2 mm', mostCut: '0.6 mm' }, 'can be cut'],
    [{ alreadyCut: '0.2 mm', mostCut: '0.5 mm' }, 'cannot be cut: more comes off in all than is allowed'],
    [{ target: '0.55 mm' }, 'cannot be cut: a place is already below the target'],
  ])('with %j says: %s', (change, words) => {
    expect(outputOf(id, { ...bank, ...change }, 'verdict')).toBe(words);
  });

  it('says the deck height left only where it knows it', () => {
    expect(outputOf(id, bank, 'deckHeightLeft')).toBeUndefined();
    expect(numberOf(id, { ...bank, deckHeight: '230 mm' }, 'deckHeightLeft')).toBeCloseTo(229.6, 9);
    expect(refusalOf(id, { ...bank, leastDeckHeight: '229 mm' })).toMatch(/says nothing without the deck height now/);
  });
});

describe('quench', () => {
  const id = 'cylinder.quench';
  const pistons = { deckClearances: ['0.1 mm', '0.3 mm'], gasketThickness: '1 mm' };

  it.each<[object, string]>([
    [{}, 'no limit given'],
    [{ least: '1.1 mm' }, 'within'],
    [{ least: '1.2 mm' }, 'too small'],
    [{ most: '1.3 mm' }, 'within'],
    [{ most: '1.2 mm' }, 'too large'],
    [{ least: '1.1 mm', most: '1.3 mm' }, 'within'],
    [{ least: '1.2 mm', most: '1.25 mm' }, 'too small'],
  ])('against %j is %s', (window, verdict) => {
    expect(outputOf(id, { ...pistons, ...window }, 'verdict')).toBe(verdict);
  });

  it('chooses the thinnest gasket that is thick enough, and one that fits exactly', () => {
    const inputs = { deckClearances: ['-0.10 mm', '0.05 mm'], least: '1.00 mm' };
    const choose = 'cylinder.gasket-for-quench';
    expect(outputOf(choose, inputs, 'chosen')).toBeUndefined();
    expect(numberOf(choose, inputs, 'needed')).toBeCloseTo(1.1, 9);
    const offer = { ...inputs, thicknesses: ['1.40 mm', '1.10 mm', '1.00 mm'] };
    expect(numberOf(choose, offer, 'chosen')).toBeCloseTo(1.1, 9);
    expect(numberOf(choose, offer, 'largestQuench')).toBeCloseTo(1.15, 9);
    expect(refusalOf(choose, { ...inputs, thicknesses: ['1.00 mm'] })).toMatch(/none on offer is thick enough/);
  });

  it('is eaten up by rod stretch, play, rock and growth at speed', () => {
    const hot = 'cylinder.hot-quench';
    const rod = {
      quench: '1 mm',
      stroke: '90 mm',
      rodLength: '150 mm',
      crankSpeed: '6000 rpm',
      mass: '800 g',
      rodSection: '200 mm2',
      rodModulus: '207 GPa',
    };
    expect(numberOf(hot, { ...rod, crankSpeed: '0 rpm' }, 'hotQuench')).toBeCloseTo(1, 12);
    const bare = numberOf(hot, rod, 'hotQuench');
    const more = { bearingPlay: '0.1 mm', rock: '0.05 mm', growth: '0.02 mm' };
    expect(bare - numberOf(hot, { ...rod, ...more }, 'hotQuench')).toBeCloseTo(0.17, 9);
    // A third of the stiffness stretches three times as far.
    const soft = numberOf(hot, { ...rod, rodModulus: '69 GPa' }, 'stretch');
    expect(soft / numberOf(hot, rod, 'stretch')).toBeCloseTo(3, 9);
    expect(cautionsOf(hot, rod)).toEqual([]);
    expect(cautionsOf(hot, { ...rod, quench: '0.05 mm' })).toEqual(['contact']);
    expect(refusalOf(hot, { ...rod, rodLength: '40 mm' })).toMatch(/could not turn/);
  });
});
