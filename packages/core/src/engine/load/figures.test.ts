import { describe, expect, it } from 'vitest';
import { FIGURE_KINDS, figureKey, figureKind } from '../index.js';
import { BASE, engineOf, faultsOf } from './try-sheets.suite.js';

const withFigures = (...rows: readonly string[]) => `${BASE}defaultFrom: manual page 3
figures:
${rows.map((row) => `  ${row}\n`).join('')}`;

describe('figures of the combination in a sheet', () => {
  it('keep their text, their value and where they come from', () => {
    const { figures } = engineOf(
      withFigures(
        'gasket-bore: 101.2 mm',
        'valve-angle@intake: { value: 23 deg, from: part maker card }',
        'chamber-area@3: 4600..4700 mm2',
        'crown: flat-crown',
      ),
    );
    expect(figures?.['gasket-bore']).toMatchObject({ text: '101.2 mm', from: { standing: 'manual' } });
    expect(figures?.['gasket-bore']?.value).toBeCloseTo(0.1012, 12);
    expect(figures?.['valve-angle@intake']?.from).toMatchObject({ standing: 'part-maker' });
    expect(figures?.['chamber-area@3']?.window).toEqual({ low: 4.6e-3, high: 4.7e-3 });
    expect(figures?.crown).toMatchObject({ text: 'flat-crown', value: 1 });
  });

  it.each([
    ['gasket-bor: 101 mm', 'did you mean "gasket-bore"?'],
    ['colour: red', 'known: '],
    ['bore: 100 mm', 'written at crankTrain.bore'],
    ['chamber-area@5: 4600 mm2', 'valid: 1, 2, 3, 4'],
    ['valve-angle@3: 20 deg', 'valid: intake, exhaust'],
    ['highest-speed@1: 6000 rpm', 'it holds for the whole engine'],
    ['gasket-bore: 101.2', 'has no unit'],
    ['gasket-bore: 0 mm', 'is not more than zero'],
    ['oil-mass: -1 g', 'is not zero or more'],
    ['crown: round', 'one of: parallel-pocket, flat-crown'],
    ['gasket-bore: { value: 100 mm, from: a friend }', 'does not say how far to trust'],
    ['gasket-bore: <= 100 mm', 'is open at one end'],
  ])('%s is refused with what is valid', (row, words) => {
    const faults = faultsOf(withFigures(row));
    expect(faults.map(({ message }) => message).join('\n')).toContain(words);
    expect(faults[0]?.line).toBe(9);
  });

  it('a piston proud of its deck and a dome are negative', () => {
    const { figures } = engineOf(withFigures('deck-clearance: -0.4 mm', 'piston-volume: -7.2 cm3'));
    expect(figures?.['deck-clearance']?.value).toBeCloseTo(-0.0004, 12);
    expect(figures?.['piston-volume']?.value).toBeCloseTo(-7.2e-6, 12);
  });
});

describe('the kinds of figures', () => {
  it('have each a key of their own, a title and a sentence', () => {
    expect(new Set(FIGURE_KINDS.map(({ key }) => key)).size).toBe(FIGURE_KINDS.length);
    for (const { key, title, meaning } of FIGURE_KINDS) {
      expect(key).toMatch(/^[a-z][a-z-]+$/);
      expect(title.length, key).toBeGreaterThan(2);
      expect(meaning, key).toMatch(/[.;]$|\.$/);
      expect(figureKind(key)?.key).toBe(key);
    }
  });
  it('write a place behind an @', () => {
    expect([figureKey('bore'), figureKey('bore', 3), figureKey('valve-angle', 'intake')]).toEqual([
      'bore',
      'bore@3',
      'valve-angle@intake',
    ]);
  });
});
