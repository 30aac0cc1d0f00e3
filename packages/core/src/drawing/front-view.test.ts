import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure, Point, Shape } from './figure.js';
import { anyCrank, anyWish, degrees } from './figures.suite.js';
import { frontView } from './front-view.js';
import { at, distance, headingFrom, signed } from './geometry.js';
import { INVENTED_ENGINES, inventedEngine } from './test-engines.suite.js';

const v8 = inventedEngine(INVENTED_ENGINES.v8!);
const four = inventedEngine(INVENTED_ENGINES.i4!);
const circlesOf = (figure: Figure, part: string) =>
  figure.shapes.filter(
    (shape): shape is Extract<Shape, { kind: 'circle' }> => shape.kind === 'circle' && shape.part === part,
  );
const textsOf = (figure: Figure) => figure.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []));
/** Piston pin and crankpin of a cylinder drawn in section: the first circle is the pin, the next the big end. */
const rodOf = (figure: Figure, cylinder: number): { pin: Point; crankpin: Point } => {
  const [pin, bigEnd] = circlesOf(figure, `cylinder ${cylinder}`);
  return { pin: pin!.centre, crankpin: bigEnd!.centre };
};
const CENTRE = at(0, 0);

describe('front view', () => {
  it('draws the piston where the slider-crank puts it: throw 45, rod 150, 90 degrees is 51.9 mm down', () => {
    // Height 143.0909 mm of the pin: hand arithmetic, sqrt(150^2 - 45^2); top 195 mm.
    const engine = inventedEngine({ form: 'inline', cylinders: 1, stroke: 90, bore: 90 });
    const rod = { text: '150 mm', value: 0.15, from: { standing: 'invented', text: '' } } as never;
    const figure = frontView({ ...engine, crankTrain: { ...engine.crankTrain, rodLength: rod } }, degrees(90));
    expect(rodOf(figure, 1).pin.y).toBeCloseTo(-143.0909, 3);
    expect(figure.description).toContain('piston 51.9 mm down');
  });
  it('keeps the rod as long as it is and the crankpin on its circle, at any angle of any engine', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, (wish, crank) => {
        const engine = inventedEngine({ ...wish, bare: false });
        const figure = frontView(engine, crank);
        for (const part of figure.touches) {
          const { pin, crankpin } = rodOf(figure, Number(part.part.split(' ')[1]));
          expect(distance(pin, crankpin)).toBeCloseTo((engine.crankTrain.rodLength?.value ?? 0) * 1000, 6);
          expect(distance(crankpin, CENTRE)).toBeCloseTo((engine.crankTrain.stroke?.value ?? 0) * 500, 6);
        }
      }),
      { numRuns: 40 },
    );
  });
  it('points the crankpin of cylinder 1 along its bank at its firing top dead centre', () => {
    // The left bank of the engine leans to the right for a person who stands before it.
    const { crankpin } = rodOf(frontView(v8, degrees(0)), 1);
    expect(headingFrom(CENTRE, crankpin)).toBeCloseTo(45, 9);
  });
  it('turns clockwise or anticlockwise as the sheet says', () => {
    const turned = (rotation: 'clockwise' | 'anticlockwise') => {
      const engine = inventedEngine({ form: 'inline', cylinders: 1, rotation });
      return signed(headingFrom(CENTRE, rodOf(frontView(engine, degrees(30)), 1).crankpin));
    };
    expect(turned('clockwise')).toBeCloseTo(30, 9);
    expect(turned('anticlockwise')).toBeCloseTo(-30, 9);
  });
  it('hangs both cylinders of a vee pair on one crankpin where the firing order says so', () => {
    // Order 1-8-4-3-6-5-7-2 of a 90 degree V8 with pins 1-2, 3-4, 5-6, 7-8: common practice, no source.
    const figure = frontView(v8, degrees(123));
    expect(distance(rodOf(figure, 1).crankpin, rodOf(figure, 2).crankpin)).toBeCloseTo(0, 6);
    expect(textsOf(figure)).toEqual(expect.arrayContaining(['3 4', '5 6', '7 8']));
  });
  it('names the cylinder at firing top dead centre, or the next to get there', () => {
    // An inline four of order 1-3-4-2 fires every 180 degrees: definition of the order.
    expect(textsOf(frontView(four, degrees(180)))).toContain('3 at firing TDC');
    expect(textsOf(frontView(four, degrees(200)))).toContain('next firing TDC: 4, in 160\u00b0');
    expect(textsOf(frontView(four, degrees(720)))).toContain('1 at firing TDC');
  });
  it('says which stroke each cylinder shown is in', () => {
    const words = [10, 200, 400, 600].map((crank) => frontView(four, degrees(crank)).description);
    ['power stroke', 'exhaust stroke', 'intake stroke', 'compression stroke'].forEach((stroke, i) => {
      expect(words[i]).toContain(`Cylinder 1: piston`);
      expect(words[i]).toContain(stroke);
    });
  });
  it('shows the row of the cylinder asked for', () => {
    expect(frontView(v8, degrees(0), { cylinder: 6 }).touches.map((touch) => touch.part)).toEqual([
      'cylinder 5',
      'cylinder 6',
    ]);
  });
  it('brings the damper notch to the pointer at top dead centre of cylinder 1', () => {
    const lean = (crank: number) => {
      const figure = frontView(v8, degrees(crank));
      const notch = figure.shapes.find(
        (shape) => shape.part === 'damper' && shape.kind === 'line' && shape.state === 'lit',
      );
      const pointer = figure.shapes.find((shape) => shape.part === 'pointer' && shape.kind === 'polyline');
      if (notch?.kind !== 'line' || pointer?.kind !== 'polyline') throw new Error('no notch or no pointer');
      return signed(headingFrom(CENTRE, notch.from) - headingFrom(CENTRE, pointer.points[0]!));
    };
    expect(lean(0)).toBeCloseTo(0, 9);
    expect(lean(360)).toBeCloseTo(0, 9);
    expect(lean(90)).toBeCloseTo(90, 9);
  });
  it('says what it had to assume when the sheet has no sizes and no firing order', () => {
    const { description } = frontView(inventedEngine(INVENTED_ENGINES.bare!), degrees(0));
    expect(description).toContain('bore, stroke, rod length');
    expect(description).toContain('The firing order is not stated');
    expect(description).not.toContain('stroke.'); // no stroke of the cycle is claimed
  });
  it('does not draw a rod that could not turn', () => {
    const engine = inventedEngine({ form: 'inline', cylinders: 1, stroke: 90 });
    const rod = { text: '40 mm', value: 0.04, from: { standing: 'invented', text: '' } } as never;
    const figure = frontView({ ...engine, crankTrain: { ...engine.crankTrain, rodLength: rod } }, degrees(90));
    expect(figure.description).toContain('not given or not fitting in the sheet: rod length');
  });
});
