import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Figure, figureToText } from '../index.js';
import { fromDeadCentre } from './dead-centre-words.js';
import { degreeWheel } from './degree-wheel.js';
import { rockerSweep } from './rocker-sweep.js';
import { timingDiagram } from './timing-diagram.js';

const MM = { name: 'mm', places: 1, mm: 1 };
const labelsOf = ({ shapes }: Figure) => shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : []));
const textsOf = (figure: Figure) => labelsOf(figure).map(({ text }) => text);

describe('words of a crank angle', () => {
  // Hand arithmetic: 118° after the firing top is 62° before the bottom at 180°.
  it.each([
    [118, '62° before bottom'],
    [342, '18° before top'],
    [382, '22° after top'],
    [598, '58° after bottom'],
    [360, 'at top'],
    [-3.5, '3.5° before top'],
  ])('%s° after the firing top is %s', (degrees, words) => expect(fromDeadCentre(degrees).words).toBe(words));
});

describe('timing diagram', () => {
  // Invented card 18-58 / 62-22: intake 342° to 598°, exhaust 118° to 382°, both open for 40°.
  const arcs = [
    { kind: 'intake', opens: 342, closes: 598, basis: 'from seat to seat' },
    { kind: 'exhaust', opens: 118, closes: 382, basis: 'from seat to seat' },
  ] as const;
  const card = { title: 'timing', rotation: 'clockwise', arcs, overlap: { from: 342, to: 382 } } as const;

  it('names every event by its distance from the nearest dead centre, and the overlap', () => {
    const texts = textsOf(timingDiagram(card));
    expect(texts).toEqual(expect.arrayContaining(['IO 18°', 'IC 58°', 'EO 62°', 'EC 22°', 'overlap', '40°']));
  });
  it('says in words what it draws', () => {
    const { description } = timingDiagram(card);
    expect(description).toContain('opens 62° before bottom, closes 22° after top, open for 264°');
    expect(description).toContain('together for 40°');
  });
  it('draws an engine that turns the other way in a mirror', () => {
    const [one, other] = [timingDiagram(card), timingDiagram({ ...card, rotation: 'anticlockwise' })];
    const band = ({ shapes }: Figure) => shapes.find((shape) => shape.part === 'intake open');
    const [a, b] = [band(one), band(other)];
    if (a?.kind !== 'polyline' || b?.kind !== 'polyline') throw new Error('no band');
    a.points.forEach((point, n) => {
      expect(b.points[n]!.x).toBeCloseTo(-point.x, 9);
      expect(b.points[n]!.y).toBeCloseTo(point.y, 9);
    });
  });
  it('says that nothing is known rather than drawing a guess', () => {
    const figure = timingDiagram({ title: 'timing', rotation: 'clockwise', arcs: [] });
    expect(figure.description).toContain('not known');
    expect(figure.shapes.some(({ part }) => part === 'intake open')).toBe(false);
  });
  it('names no overlap where both valves are closed between', () =>
    expect(timingDiagram({ title: 'timing', rotation: 'clockwise', arcs }).description).toContain(
      'never open together',
    ));
});

describe('degree wheel', () => {
  const wheel = { title: 'wheel', rotation: 'clockwise', marks: [] } as const;
  const numberAt = (figure: Figure, text: string) => labelsOf(figure).find((one) => one.text === text)!.at;

  it('stands with the number that is read under the pointer, for either sense of turning', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0, 30, 60, 120, 210, 330),
        fc.constantFrom('clockwise', 'anticlockwise'),
        (reading, rotation) => {
          const { x, y } = numberAt(degreeWheel({ ...wheel, rotation, reading }), String(reading));
          expect(x).toBeCloseTo(0, 9);
          expect(y).toBeLessThan(0);
        },
      ),
    );
  });
  it('brings the higher numbers to the pointer as the crank turns in its sense', () => {
    const clockwise = degreeWheel({ ...wheel, reading: 60 });
    // The crank turns clockwise: the number that comes next stands left of the pointer.
    expect(numberAt(clockwise, '90').x).toBeLessThan(0);
    expect(numberAt(degreeWheel({ ...wheel, rotation: 'anticlockwise', reading: 60 }), '90').x).toBeGreaterThan(0);
  });
  it('puts the piston at its highest where the wheel reads its true top', () => {
    const pistonTop = (reading: number) => {
      const piston = degreeWheel({ ...wheel, reading, top: 3.5, throwOverRod: 0.3 }).shapes.find(
        (s) => s.part === 'piston',
      );
      return piston?.kind === 'polyline' ? Math.min(...piston.points.map(({ y }) => y)) : Number.NaN;
    };
    for (const reading of [-40, -10, 0, 20, 90, 180]) expect(pistonTop(3.5)).toBeLessThan(pistonTop(reading));
  });
  it('draws no piston before the top was found, and says so', () => {
    const figure = degreeWheel({ ...wheel, reading: 20, throwOverRod: 0.3 });
    expect(figure.shapes.some(({ part }) => part === 'piston')).toBe(false);
    expect(figure.description).toContain('not found yet');
  });
  it('crosses readings that look wrong and names the places that help most', () => {
    const marks = [
      { reading: 40, kind: 'read' },
      { reading: 50, kind: 'off' },
      { reading: 70, kind: 'next' },
    ] as const;
    const { description, shapes } = degreeWheel({ ...wheel, reading: 50, marks });
    expect(description).toContain('1 of them look wrong');
    expect(description).toContain('help most: 70°');
    expect(shapes.some(({ state }) => state === 'wrong')).toBe(true);
  });
});

describe('rocker sweep', () => {
  const trials = [
    { length: 199.5, width: 1.6, offset: 0.9 },
    { length: 196.5, width: 2.6, offset: -1.2 },
    { length: 201, width: 2.4, offset: 3.9 },
  ];
  const figure = rockerSweep({ title: 'marks', stem: 8, unit: MM, trials, narrowest: 199.4 });
  it('lays the trials out from the shortest pushrod to the longest', () =>
    expect(textsOf(figure).slice(0, 3)).toEqual(['196.5', '199.5', '201.0']));
  it('draws the marks to the scale of the stem', () => {
    const marks = figure.shapes.flatMap((s) => (s.part === 'mark' && s.kind === 'polyline' ? [s.points] : []));
    const high = marks.map((points) => Math.max(...points.map(({ y }) => y)) - Math.min(...points.map(({ y }) => y)));
    expect(high[0]! / high[1]!).toBeCloseTo(2.6 / 1.6, 6);
  });
  it('says which mark runs over the edge of the stem', () => {
    expect(figure.description).toMatch(/201\.0 mm: mark 2\.4 mm wide, 3\.9 mm outward, over the edge/);
    expect(figure.description).not.toMatch(/199\.5 mm: [^.]*\.?\d* ?mm[^.]*over the edge/);
  });
  it('marks the narrowest', () => expect(figure.shapes.filter(({ part }) => part === 'narrowest')).toHaveLength(1));
  it('can be read as text', () => expect(figureToText(figure).replace(/\s+/g, ' ')).toContain('narrowest at 199.4 mm'));
});
