import { describe, expect, it } from 'vitest';
import type { Figure } from '../figure.js';
import { figureToSvg } from './svg.js';
import { svgElements } from './svg-elements.js';
import { figureToText } from './text.js';
import { LAYOUT_FLUID, PRINT } from './theme.js';

const figure: Figure = {
  title: 'Head <left> & "right"',
  description: 'Two holes.',
  bounds: { left: -1.005, top: 0, width: 200, height: 100.123456 },
  shapes: [
    { kind: 'line', from: { x: 0, y: 1 / 3 }, to: { x: 10, y: -0.0001 }, role: 'visible', part: 'hole 1' },
    { kind: 'circle', centre: { x: 5, y: 5 }, radius: 2, role: 'hidden', fill: 'void', state: 'next' },
    { kind: 'arc', centre: { x: 0, y: 0 }, radius: 10, startDegrees: 0, endDegrees: 270, role: 'centre' },
    {
      kind: 'polyline',
      points: [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
        { x: 1, y: 1 },
      ],
      closed: true,
      role: 'thin',
    },
    { kind: 'label', at: { x: 5, y: 5 }, text: '7 < 8', size: 4, anchor: 'middle' },
  ],
  touches: [{ part: '7', name: 'hole 7, done', centre: { x: 5, y: 5 }, reach: 3 }],
};
/** Luminance and contrast as WCAG 2.2 defines them (relative luminance, contrast ratio). */
const luminance = (hex: string): number => {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const part = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

describe('SVG pen', () => {
  it('rounds to a hundredth of a millimetre and never writes -0', () => {
    const svg = figureToSvg(figure);
    expect(svg).toContain('d="M0 0.33L10 0"');
    expect(svg).not.toMatch(/\d\.\d{3}|-0[^.\d]/);
  });
  it('carries title and description for those who do not see it, under ids of its own', () => {
    const svg = figureToSvg(figure, { id: 'head' });
    expect(svg).toContain('role="img" aria-labelledby="head-title head-words"');
    expect(svg).toContain('<title id="head-title">Head &lt;left&gt; &amp; &quot;right&quot;</title>');
    expect(svg).toContain('<desc id="head-words">Two holes.</desc>');
    expect(svg).toContain('>7 &lt; 8</text>');
  });
  it('draws an arc the long way round when it spans more than half a turn', () => {
    const [, , arc] = svgElements(figure);
    expect(arc?.attributes.d).toBe('M10 0A10 10 0 1 1 0 -10');
  });
  it('closes a whole turn, which one SVG arc cannot', () => {
    const whole = { ...figure, shapes: [{ ...figure.shapes[2]!, endDegrees: 360 } as Figure['shapes'][number]] };
    expect(svgElements(whole)[0]?.attributes.d?.match(/A/g)).toHaveLength(2);
  });
  it('makes visible edges twice as wide as narrow lines, and dashes hidden and centre lines', () => {
    // ISO 128-2: ratio of line widths wide to narrow 2:1; 02 dashed for hidden edges, 04 long-dashed dotted for centres (from memory).
    const [visible, hidden, centre, thin] = svgElements(figure, { theme: PRINT, strokes: 100 });
    const width = (element: typeof visible) => Number(element?.attributes['stroke-width']);
    expect(width(visible)).toBe(2 * width(thin));
    expect(visible?.attributes['stroke-dasharray']).toBeUndefined();
    expect(hidden?.attributes['stroke-dasharray']?.split(' ')).toHaveLength(2);
    expect(centre?.attributes['stroke-dasharray']?.split(' ')).toHaveLength(4);
  });
  it('keeps half a millimetre of ink for a visible edge at the printed width', () => {
    // 200 mm of drawing on 100 mm of paper: a 0.5 mm line is 1 mm of drawing.
    expect(svgElements(figure, { strokes: 100 })[0]?.attributes['stroke-width']).toBe('1');
    expect(svgElements(figure)[0]?.attributes['vector-effect']).toBe('non-scaling-stroke');
  });
  it('prints black on white', () => {
    expect(PRINT.paper).toBe('#ffffff');
    for (const colour of [...Object.values(PRINT.states), ...Object.values(PRINT.lines), PRINT.letters]) {
      expect(contrast(colour, PRINT.paper)).toBeGreaterThanOrEqual(7);
    }
  });
  it('keeps letters and marks bright enough on layout fluid', () => {
    // 7:1 for text and marks: WCAG 2.2, 1.4.6.
    for (const colour of [...Object.values(LAYOUT_FLUID.states), LAYOUT_FLUID.letters]) {
      expect(contrast(colour, LAYOUT_FLUID.paper)).toBeGreaterThanOrEqual(7);
    }
  });
  it('writes the same text for the same figure', () => {
    expect(figureToSvg(figure)).toBe(figureToSvg(figure));
  });
});

describe('text pen', () => {
  it('lists title, description and every place to choose', () => {
    expect(figureToText(figure)).toBe('Head <left> & "right"\nTwo holes.\n  - hole 7, done');
  });
  it('breaks long descriptions to the width of the terminal', () => {
    const long = figureToText({ ...figure, description: 'word '.repeat(60).trim() }, 40);
    expect(Math.max(...long.split('\n').map((row) => row.length))).toBeLessThanOrEqual(40);
  });
});
