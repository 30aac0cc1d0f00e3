import type { Figure, Point, Shape } from '../figure.js';
import { polar } from '../geometry.js';
import { DASHES, isWide, LAYOUT_FLUID, type Theme } from './theme.js';

/** One SVG element as data: the string pen writes it, a screen renders it. */
export interface SvgElement {
  readonly tag: 'path' | 'circle' | 'text';
  readonly attributes: Readonly<Record<string, string>>;
  readonly text?: string;
}
export interface SvgStyle {
  /** Absent: layout fluid. */
  readonly theme?: Theme;
  /**
   * `steady`: line widths in CSS pixels whatever the size shown, for screens. A number: the width in mm at which the
   * figure will be printed; lines are then 0.5 and 0.25 mm wide on that paper. Absent: `steady`.
   */
  readonly strokes?: 'steady' | number;
}

/** Rounded to 0.01 mm, without trailing zeros. */
export const figures = (value: number): string => String(Math.round(value * 100) / 100 + 0);
const spot = (p: Point): string => `${figures(p.x)} ${figures(p.y)}`;

/** Every shape of a figure as an SVG element, in drawing order. Look is in plain attributes, so a style sheet may override it. */
export function svgElements(figure: Figure, style: SvgStyle = {}): readonly SvgElement[] {
  const theme = style.theme ?? LAYOUT_FLUID;
  const strokes = style.strokes ?? 'steady';
  const millimetre = strokes === 'steady' ? 0 : figure.bounds.width / strokes;
  return figure.shapes.map((shape) => {
    const drawn = outline(shape);
    return {
      ...drawn,
      attributes: { class: classes(shape), ...marked(shape), ...drawn.attributes, ...look(shape, theme, millimetre) },
    };
  });
}
const classes = (shape: Shape): string => {
  const role =
    shape.kind === 'label' ? ['label'] : [`line-${shape.role}`, ...(shape.fill ? [`fill-${shape.fill}`] : [])];
  return [...role, ...(shape.state ? [`state-${shape.state}`] : [])].join(' ');
};
const marked = (shape: Shape): Record<string, string> => (shape.part === undefined ? {} : { 'data-part': shape.part });

function outline(shape: Shape): SvgElement {
  switch (shape.kind) {
    case 'line':
      return { tag: 'path', attributes: { d: `M${spot(shape.from)}L${spot(shape.to)}` } };
    case 'polyline': {
      const d = `M${shape.points.map(spot).join('L')}${shape.closed ? 'Z' : ''}`;
      return { tag: 'path', attributes: { d } };
    }
    case 'circle':
      return {
        tag: 'circle',
        attributes: { cx: figures(shape.centre.x), cy: figures(shape.centre.y), r: figures(shape.radius) },
      };
    case 'arc':
      return { tag: 'path', attributes: { d: arcPath(shape) } };
    case 'label':
      return {
        tag: 'text',
        attributes: {
          x: figures(shape.at.x),
          // Capitals are about 0.7 of the size: the baseline lies half of that below their middle.
          y: figures(shape.at.y + shape.size * 0.35),
          'font-size': figures(shape.size),
          'text-anchor': shape.anchor,
        },
        text: shape.text,
      };
  }
}
function arcPath({ centre, radius, startDegrees, endDegrees }: Extract<Shape, { kind: 'arc' }>): string {
  const point = (degrees: number) => polar(centre, radius, degrees + 90);
  const r = figures(radius);
  const to = (degrees: number, large: boolean) => `A${r} ${r} 0 ${large ? 1 : 0} 1 ${spot(point(degrees))}`;
  const span = endDegrees - startDegrees;
  // One SVG arc cannot close on itself.
  if (span >= 359.9) return `M${spot(point(0))}${to(180, false)}${to(360, false)}`;
  return `M${spot(point(startDegrees))}${to(endDegrees, span > 180)}`;
}

/** @param millimetre drawing units in one millimetre of paper; 0 for widths in CSS pixels. */
function look(shape: Shape, theme: Theme, millimetre: number): Record<string, string> {
  const stateColour = shape.state === undefined ? undefined : theme.states[shape.state];
  if (shape.kind === 'label') return letters(stateColour ?? theme.letters, theme, millimetre);
  const width = (isWide(shape.role) ? 2 : 1) * (millimetre === 0 ? 1 : 0.25 * millimetre);
  const dashes = DASHES[shape.role]?.map((part) => figures(part * width)).join(' ');
  const filled = shape.fill === 'mark' && stateColour !== undefined ? stateColour : theme.fills[shape.fill ?? 'none'];
  return {
    fill: filled,
    stroke: stateColour ?? theme.lines[shape.role],
    'stroke-width': figures(width),
    'stroke-linejoin': 'round',
    ...(dashes === undefined ? {} : { 'stroke-dasharray': dashes }),
    ...(millimetre === 0 ? { 'vector-effect': 'non-scaling-stroke' } : {}),
  };
}
/** Letters on the screen stand on a narrow band of paper colour, so that a line behind them does not hide them. */
function letters(colour: string, theme: Theme, millimetre: number): Record<string, string> {
  const plain = { fill: colour, 'font-family': 'system-ui, sans-serif', 'font-weight': '600' };
  if (millimetre !== 0) return plain;
  return {
    ...plain,
    stroke: theme.paper,
    'stroke-width': '3',
    'stroke-linejoin': 'round',
    'paint-order': 'stroke',
    'vector-effect': 'non-scaling-stroke',
  };
}
export const viewBox = ({ bounds }: Figure): string =>
  [bounds.left, bounds.top, bounds.width, bounds.height].map(figures).join(' ');
