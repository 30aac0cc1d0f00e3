import { describe, expect, it } from 'vitest';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { mm } from '../../quantity/index.js';
import { alternativeOf, assessed, decisionOf, figureOf, four } from './bench.suite.js';
import { heightAfter } from './face-cut.js';

const V8 = engineOf(read('sheets/quernside-51-v8.yaml'));
const FLAT = {
  'deck-flatness': '0.02 mm',
  'deck-height': '231.20 mm',
  'deck-clearance': '0.40 mm',
  'head-flatness': '0.02 mm',
  'head-thickness': '118.05 mm',
};

describe('the deck of a bank', () => {
  it('is left alone while it is flat, square and high enough: metal left on can still be cut', () => {
    const decision = decisionOf(assessed(V8, FLAT), 'deck-cut', 'left');
    expect(decision.recommended).toBe('leave');
    expect(decision.proof).toContain('Nothing that is measured asks for a cut');
  });
  it('that is out of flat is cut by what the straight edge shows, and more at a corner that stands higher', () => {
    const sizes = {
      ...FLAT,
      'deck-flatness/left': '0.14 mm',
      'deck-height/left': { 'front-outer-side': '231.23 mm', rest: '231.20 mm' },
    };
    const decision = decisionOf(assessed(V8, sizes), 'deck-cut', 'left');
    expect(decision.recommended).toBe('clean-up');
    expect(figureOf(decision, 'clean-up', 'cut')).toBe(
      '0.140 mm (gap under the straight edge) at the lowest corner, 0.170 mm at the highest',
    );
    expect(figureOf(decision, 'clean-up', 'deck height left')).toBe('231.060 mm');
    const [height, flat] = alternativeOf(decision, 'clean-up').orders;
    expect(height?.target?.low).toBeCloseTo(mm(231.06 - 0.0254), 8);
    expect(height?.finish).toBe('Ra 1.6 to 3.2 micrometres');
    expect(flat).toMatchObject({ property: 'deck-flatness.gap', target: { high: mm(0.04) } });
  });
  it('may not be cut below the least height of the sheet', () => {
    const sizes = { ...FLAT, 'deck-flatness/left': '0.14 mm', 'deck-height/left': '230.95 mm' };
    const cut = alternativeOf(decisionOf(assessed(V8, sizes), 'deck-cut', 'left'), 'clean-up');
    expect(cut).toMatchObject({ possible: false, orders: [] });
    expect(cut.against[0]).toContain('leaves less than 230.85 mm');
  });
  it('goes down to the printed deck clearance by what each cylinder asks for', () => {
    const sizes = { ...FLAT, 'deck-clearance': '0.70 mm', 'deck-clearance/3': '0.72 mm', 'deck-height': '231.30 mm' };
    // Middle of 0.20..0.60 is 0.40: 0.30 at three cylinders, 0.32 at cylinder 3.
    expect(figureOf(decisionOf(assessed(V8, sizes), 'deck-cut', 'left'), 'to-clearance', 'cut')).toContain(
      'cylinder 3 0.320 mm',
    );
  });
  it('takes the intake face with it on a vee: at 45 degrees and a face square to the deck as much as was cut', () => {
    const sizes = { ...FLAT, 'deck-flatness/left': '0.14 mm' };
    const decision = decisionOf(assessed(V8, sizes), 'deck-cut', 'left');
    // x = m · sin 45° / cos 45° = m; drop = m · cos 0° / cos 45° = 1.414 m
    expect(figureOf(decision, 'clean-up', 'intake face of the head, square to the deck')).toBe('take off 0.140 mm');
    expect(figureOf(decision, 'clean-up', 'manifold comes down by')).toBe('0.198 mm');
  });
  it('says that what is left is not known where the height is not measured', () => {
    const { 'deck-height': _, ...rest } = FLAT;
    const cut = alternativeOf(
      decisionOf(assessed(V8, { ...rest, 'deck-flatness/left': '0.14 mm' }), 'deck-cut', 'left'),
      'clean-up',
    );
    expect(cut).toMatchObject({ verdict: 'no data', possible: true });
    expect(cut.against.join()).toContain('not known before the deck height is measured');
  });
  it('waits for the straight edge', () => {
    expect(decisionOf(assessed(V8, {}), 'deck-cut', 'right').missing).toEqual([
      'flatness of the right deck: measure it',
    ]);
  });
});

describe('the face of a head', () => {
  it('is cut by what the straight edge shows, if enough is left', () => {
    const decision = decisionOf(assessed(V8, { ...FLAT, 'head-flatness/left': '0.15 mm' }), 'head-cut', 'left');
    expect(decision.recommended).toBe('clean-up');
    expect(figureOf(decision, 'clean-up', 'thickness left at the thinnest')).toBe('117.900 mm');
  });
  it('is not cut through its least thickness', () => {
    const sizes = { ...FLAT, 'head-flatness/left': '0.15 mm', 'head-thickness/left': '117.60 mm' };
    const decision = decisionOf(assessed(V8, sizes), 'head-cut', 'left');
    expect(alternativeOf(decision, 'clean-up')).toMatchObject({ possible: false });
    expect(decision.recommended).toBe('leave');
    expect(alternativeOf(decision, 'leave').verdict).toBe('out');
  });
  it('of an engine without a vee moves no intake face', () => {
    const inline = four(
      `crankTrain: { bore: 90 mm, stroke: 90 mm }\nlimits:\n  - { part: cylinder head, what: flatness, whenNew: <= 0.05 mm }\n`,
    );
    const figures = alternativeOf(
      decisionOf(assessed(inline, { 'head-flatness': '0.10 mm' }), 'head-cut'),
      'clean-up',
    ).figures;
    expect(figures.map(({ name }) => name).join()).not.toContain('intake face');
    // π/4 · 90² · 0.10 mm = 0.636 cm³, which no chamber exceeds
    expect(figures.find(({ name }) => name.startsWith('space taken'))?.text).toBe('0.64 cm3');
  });
});

describe('the height after a cut', () => {
  it('never lies below what must be left', () => {
    expect(heightAfter(0.1, 0.09999)).toEqual({ low: 0.09999, high: 0.1 + 0.0000254 });
    expect(heightAfter(0.1, undefined).low).toBeCloseTo(0.1 - 0.0000254, 9);
  });
});
