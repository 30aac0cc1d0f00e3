import type { Figure } from '../figure.js';
import { figures, type SvgStyle, svgElements, viewBox } from './svg-elements.js';
import { LAYOUT_FLUID } from './theme.js';

export interface SvgTextStyle extends SvgStyle {
  /** Prefix of the ids inside, to be unlike for each figure on a page. Absent: `figure`. */
  readonly id?: string;
  /** Width and height attributes are written for this width; absent: the figure fills its place. */
  readonly width?: number;
  /** Draws the background; absent: true. */
  readonly paper?: boolean;
}
const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => ESCAPES[letter] ?? letter);
const tag = (name: string, attributes: Readonly<Record<string, string>>, inside?: string): string => {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
  return inside === undefined ? `<${name}${written.join('')}/>` : `<${name}${written.join('')}>${inside}</${name}>`;
};

/**
 * A figure as one SVG document in text, with its title and description for those who do not see it. Numbers are rounded to
 * 0.01 mm; the same figure gives the same text.
 */
export function figureToSvg(figure: Figure, style: SvgTextStyle = {}): string {
  const id = style.id ?? 'figure';
  const theme = style.theme ?? LAYOUT_FLUID;
  const { left, top, width, height } = figure.bounds;
  const size = style.width;
  const frame = { x: figures(left), y: figures(top), width: figures(width), height: figures(height) };
  const body = svgElements(figure, style).map(({ tag: name, attributes, text }) =>
    tag(name, attributes, text === undefined ? undefined : escaped(text)),
  );
  return tag(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: viewBox(figure),
      ...(size === undefined ? {} : { width: figures(size), height: figures((size * height) / width) }),
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-words`,
    },
    [
      tag('title', { id: `${id}-title` }, escaped(figure.title)),
      tag('desc', { id: `${id}-words` }, escaped(figure.description)),
      ...(style.paper === false ? [] : [tag('rect', { class: 'paper', ...frame, fill: theme.paper })]),
      ...body,
    ].join('\n'),
  );
}
