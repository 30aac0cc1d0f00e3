import { describe, expect, it } from 'vitest';
import { engineOf } from '../../engine/load/try-sheets.suite.js';
import { alternativeOf, assessed, decisionOf, figureOf, four } from './bench.suite.js';

const wet = (rest: string) => four(`crankTrain: { bore: 91 mm, stroke: 73 mm, wetLiners: true }\n${rest}`);
/** Row O-39: target upper protrusion 0.23 mm, seals 0.102 and 0.122 mm; neighbours at most 0.04 mm apart. */
const O39 = wet(`limits:
  - { part: cylinder liner, what: protrusion, whenNew: 0.16..0.23 mm }
  - { part: cylinder liner, what: difference of protrusion between neighbours, whenNew: <= 0.04 mm }
stock:
  linerShims:
    - { id: blue, name: liner seal, thickness: 0.087 mm }
    - { id: white, name: liner seal, thickness: 0.102 mm, count: 3 }
    - { id: red, name: liner seal, thickness: 0.122 mm }
`);
const BARE = { 'liner-protrusion': '0.08 mm', 'liner-protrusion/1': '0.10 mm' };

describe('shims under wet liners', () => {
  it('are the thickest that keep every liner below the highest protrusion: 0.23 − 0.10 asks for 0.122 (O-39)', () => {
    const decision = decisionOf(assessed(O39, BARE), 'liner-shims');
    // The printed choice is one seal for all: 0.10 + 0.122 = 0.222 and 0.08 + 0.122 = 0.202.
    const printed = alternativeOf(decision, 'same-for-all-from-the-rest');
    expect(figureOf(decision, printed.id, 'cylinder 1')).toMatch(/^0\.122 mm: stands 0\.2220 ±0\.008/);
    expect(figureOf(decision, printed.id, 'cylinder 2')).toMatch(/^0\.122 mm: stands 0\.2020/);
    expect(figureOf(decision, printed.id, 'largest step between neighbours')).toBe('0.020 mm');
    // It is not the recommended one: 0.222 lies nearer to 0.23 than the dial can tell. A seal of its own each is surely inside.
    expect(printed).toMatchObject({ possible: true, verdict: 'near' });
    expect(decision.recommended).toBe('one-each');
    expect(alternativeOf(decision, 'one-each').verdict).toBe('in');
    expect(figureOf(decision, 'one-each', 'cylinder 1')).toMatch(/^0\.102 mm: stands 0\.2020/);
  });
  it('say so when there are not enough of a size, and what the others can do', () => {
    // 0.115 + 0.102 = 0.217 for four liners; the thicker seal would pass 0.23, and of this one there are three.
    const decision = decisionOf(assessed(O39, { 'liner-protrusion': '0.115 mm' }), 'liner-shims');
    expect(alternativeOf(decision, 'one-each')).toMatchObject({
      possible: false,
      against: ['takes 4 of liner seal 0.102 mm, there are 3'],
    });
    expect(figureOf(decision, 'one-each-from-the-rest', 'cylinder 1')).toMatch(/^0\.087 mm: stands 0\.202/);
    expect(decision.recommended).toBe('one-each-from-the-rest');
    expect(alternativeOf(decision, 'one-each-from-the-rest').buys).toEqual([
      expect.objectContaining({ size: '0.087 mm', count: 4 }),
    ]);
  });
  it('count a step between neighbours that is too large as out', () => {
    const decision = decisionOf(
      assessed(O39, { 'liner-protrusion': '0.17 mm', 'liner-protrusion/2': '0.22 mm' }),
      'liner-shims',
    );
    expect(alternativeOf(decision, 'as-is')).toMatchObject({
      verdict: 'out',
      against: ['neighbours stand further apart than the sheet allows'],
    });
  });
  it('keep the step that is printed for their own bank', () => {
    const engine = engineOf(`gudgeon: 1
name: Vee four
layout:
  form: vee
  banks: { left: 45 deg, right: -45 deg }
  cylinders: { left: [1, 3], right: [2, 4] }
  crankpins:
    - { cylinders: [1, 2], at: 0 deg }
    - { cylinders: [3, 4], at: 180 deg }
crankTrain: { bore: 91 mm, stroke: 73 mm, wetLiners: true }
limits:
  - { part: cylinder liner, what: protrusion, whenNew: 0.16..0.23 mm }
  - { part: cylinder liner, what: protrusion of neighbours, whenNew: <= 0.04 mm, scope: { bank: left } }
  - { part: cylinder liner, what: protrusion of neighbours, whenNew: <= 0.02 mm, scope: { bank: right } }
`);
    const low = { 'liner-protrusion/1': '0.18 mm', 'liner-protrusion/2': '0.18 mm' };
    const assessment = assessed(engine, { ...low, 'liner-protrusion': '0.21 mm' });
    expect(decisionOf(assessment, 'liner-shims', 'left').working.join()).toContain('at most 0.040 mm');
    expect(alternativeOf(decisionOf(assessment, 'liner-shims', 'left'), 'as-is').against).toEqual([]);
    expect(alternativeOf(decisionOf(assessment, 'liner-shims', 'right'), 'as-is').verdict).toBe('out');
  });
  it('cannot bring down a liner that stands too high: its ledge is cut', () => {
    const decision = decisionOf(
      assessed(O39, { 'liner-protrusion': '0.20 mm', 'liner-protrusion/3': '0.30 mm' }),
      'liner-shims',
    );
    const [line] = alternativeOf(decision, 'deeper-ledge').orders;
    expect(line).toMatchObject({ property: 'liner-protrusion.height', places: ['3'] });
    // to the middle of 0.16..0.23: 0.300 − 0.195 = 0.105
    expect(line?.notes[0]).toContain('0.105 mm deeper');
    expect(alternativeOf(decision, 'one-each').against.join()).toContain('cylinder 3');
  });
  it('wait for the readings', () => {
    expect(decisionOf(assessed(O39, {}), 'liner-shims').missing.join()).toContain('liner protrusion');
  });
});

/** Invented figures of the catalogue's example (metrology.gasket-grade): tops 0.60, 0.70, 0.80 mm. */
const graded = (rule = '') =>
  four(`crankTrain: { bore: 91 mm, stroke: 95 mm }
limits:
  - { part: piston, what: protrusion, whenNew: 0.50..0.80 mm }
${rule}stock:
  headGaskets:
    - { id: n1, name: one notch, thickness: 1.15 mm, protrusion: 0.50..0.60 mm }
    - { id: n2, name: two notches, thickness: 1.25 mm, protrusion: 0.60..0.70 mm }
    - { id: n3, name: three notches, thickness: 1.35 mm, protrusion: 0.70..0.80 mm }
`);
const HEIGHTS = {
  'piston-protrusion/1': '0.62 mm',
  'piston-protrusion/2': '0.66 mm',
  'piston-protrusion/3': '0.64 mm',
  'piston-protrusion/4': '0.66 mm',
};

describe('the head gasket of a diesel', () => {
  it('is the one for the protrusion that decides, with the room that it leaves', () => {
    const decision = decisionOf(assessed(graded(), HEIGHTS), 'gasket-grade');
    expect(decision.recommended).toBe('n2');
    // 1.25 − 0.66
    expect(figureOf(decision, 'n2', 'least room from piston to head face')).toBe('0.590 mm');
    expect(alternativeOf(decision, 'n1')).toMatchObject({
      possible: false,
      against: ['the pistons stand too high for it'],
    });
    expect(decision.proof).toContain('the sheet does not say which figure decides');
  });
  it('is the thicker one at the border of two grades, and the border is said', () => {
    const decision = decisionOf(assessed(graded(), { 'piston-protrusion': '0.70 mm' }), 'gasket-grade');
    expect(decision.recommended).toBe('n3');
    expect(alternativeOf(decision, 'n2')).toMatchObject({ possible: true, verdict: 'near' });
    expect(decision.cautions.join(' ')).toContain('border of two grades');
  });
  it('depends on what the maker calls the figure: by the mean of all another one', () => {
    // Highest 0.71, mean of all (0.71 + 3 · 0.61)/4 = 0.635.
    const uneven = { 'piston-protrusion': '0.61 mm', 'piston-protrusion/2': '0.71 mm' };
    const silent = decisionOf(assessed(graded(), uneven), 'gasket-grade');
    expect(silent.recommended).toBe('n3');
    expect(silent.cautions.join(' ')).toContain('choose different gaskets');
    expect(silent.working.join(' ')).toContain('mean of all pistons: 0.635 mm, two notches');
  });
  it('cannot be one of which too few lie there', () => {
    const few = four(`crankTrain: { bore: 91 mm, stroke: 95 mm }
stock:
  headGaskets: [{ id: n2, name: two notches, thickness: 1.25 mm, protrusion: 0.60..0.70 mm, count: 0 }]
`);
    const withRow = { ...few, limits: graded().limits };
    expect(alternativeOf(decisionOf(assessed(withRow, HEIGHTS), 'gasket-grade'), 'n2')).toMatchObject({
      possible: false,
      against: ['takes 1 of two notches 1.250 mm, there are 0'],
    });
  });
  it('waits for every piston', () => {
    expect(decisionOf(assessed(graded(), { 'piston-protrusion/1': '0.62 mm' }), 'gasket-grade').missing).toHaveLength(
      3,
    );
  });
});
