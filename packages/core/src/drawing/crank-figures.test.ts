import { describe, expect, it } from 'vitest';
import { camDial } from './cam-dial.js';
import type { Figure, Point } from './figure.js';
import { degrees } from './figures.suite.js';
import { at, headingFrom, within } from './geometry.js';
import { stopFigure } from './stop-figure.js';
import { INVENTED_ENGINES, inventedEngine, MILD_CAM } from './test-engines.suite.js';

const four = inventedEngine(INVENTED_ENGINES.i4!);
const CENTRE = at(0, 0);
const textAt = (figure: Figure, text: string): Point => {
  const found = figure.shapes.find((shape) => shape.kind === 'label' && shape.text === text);
  if (found?.kind !== 'label') throw new Error(`no label ${text}`);
  return found.at;
};
const texts = (figure: Figure) => figure.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []));
const turnOf = (figure: Figure, text: string) => within(headingFrom(CENTRE, textAt(figure, text)));

describe('damper at a stop', () => {
  it('brings the mark of the crank angle under the pointer', () => {
    expect(turnOf(stopFigure(four, { crankAngle: degrees(90) }), '90\u00b0')).toBeCloseTo(0, 6);
    expect(turnOf(stopFigure(four, { crankAngle: degrees(630) }), '270\u00b0')).toBeCloseTo(0, 6);
  });
  it('moves the timing mark on in the running sense', () => {
    const anti = inventedEngine({ form: 'inline', cylinders: 4, rotation: 'anticlockwise', firingOrder: [1, 3, 4, 2] });
    expect(turnOf(stopFigure(four, { crankAngle: degrees(90) }), 'TDC')).toBeCloseTo(90, 6);
    expect(turnOf(stopFigure(anti, { crankAngle: degrees(90) }), 'TDC')).toBeCloseTo(270, 6);
  });
  it('says how far to turn, forward only', () => {
    const words = (from: number, to: number) =>
      texts(stopFigure(four, { crankAngle: degrees(to), previous: degrees(from) }));
    expect(words(0, 180)).toContain('turn on 180\u00b0');
    expect(words(630, 90)).toContain('turn on 180\u00b0');
    expect(words(90, 450)).toContain('turn on one whole turn');
    expect(words(100, 90)).toContain('turn on one whole turn and 350\u00b0');
    expect(words(90, 90)).toContain('leave the crank where it is');
  });
  it('tells the two turns of the cycle apart, which look alike on the damper', () => {
    expect(texts(stopFigure(four, { crankAngle: degrees(0) }))).toContain('TDC mark at the pointer, first turn');
    expect(texts(stopFigure(four, { crankAngle: degrees(360) }))).toContain('TDC mark at the pointer, second turn');
    expect(texts(stopFigure(four, { crankAngle: degrees(360) }))).toContain('4 at firing TDC');
  });
});

describe('cam dial', () => {
  it('sets each cylinder at its own place in the cycle: one turn of the dial is two of the crank', () => {
    // Order 1-3-4-2, even: at crank 90 the cylinders are at 90, 630, 450 and 270 degrees of their cycles. Definition.
    const figure = camDial(four, degrees(90), MILD_CAM, degrees(10));
    const places = { 1: 45, 3: 315, 4: 225, 2: 135 };
    for (const [cylinder, turn] of Object.entries(places)) {
      const touch = figure.touches.find((each) => each.part === cylinder)!;
      expect(within(headingFrom(CENTRE, touch.centre))).toBeCloseTo(turn, 6);
    }
  });
  it('says which valves may be set, with the margin counted as inside', () => {
    // Intake closes 54 ABDC, at 594: with a margin of 36 it may be set from 630 on.
    const at630 = camDial(four, degrees(630), MILD_CAM, degrees(36)).description;
    const at629 = camDial(four, degrees(629), MILD_CAM, degrees(36)).description;
    expect(at630).toContain('Cylinder 1, 630\u00b0 after firing TDC, compression stroke: intake may be set');
    expect(at629).toContain(
      'Cylinder 1, 629\u00b0 after firing TDC, compression stroke: intake is too near its window',
    );
    expect(camDial(four, degrees(468), MILD_CAM, degrees(36)).description).toContain('intake stroke: intake is open');
  });
  it('draws the window of each valve from its opening to its closing', () => {
    const figure = camDial(four, degrees(0), MILD_CAM, degrees(0));
    expect(figure.description).toContain('Intake open from 342\u00b0 to 594\u00b0');
    expect(figure.description).toContain('Exhaust open from 122\u00b0 to 374\u00b0');
    const window = figure.shapes.find((shape) => shape.kind === 'polyline' && shape.part === 'intake window');
    const first = window?.kind === 'polyline' ? window.points[0]! : CENTRE;
    expect(within(headingFrom(CENTRE, first))).toBeCloseTo(171, 6);
  });
  it('claims no window where the cam is not known', () => {
    const figure = camDial(four, degrees(0), undefined, degrees(10));
    expect(figure.description).toContain('The cam events are not stated');
    expect(figure.description).not.toContain('may be set');
    expect(figure.shapes.some((shape) => shape.part === 'intake window')).toBe(false);
  });
  it('keeps cylinders apart that stand at one place of the cycle', () => {
    const twin = inventedEngine({ form: 'inline', cylinders: 2, firingOrder: [1, 2] });
    const together = { ...twin, layout: { ...twin.layout, firingIntervals: [degrees(0), degrees(720)] } };
    const [one, two] = camDial(together, degrees(0), MILD_CAM, degrees(5)).touches;
    expect(one?.centre).not.toEqual(two?.centre);
  });
});
