/** What makes up a mass: one bar for each part, as long as its share. */
import { compose } from '../compose.js';
import type { Figure, Shape } from '../figure.js';
import { at } from '../geometry.js';
import type { Shown } from '../options.js';
import { label, line, polygon, rectangle } from '../shapes.js';
import { type Scale, scaleFor } from '../sheet-scale.js';

export interface ShareShown {
  readonly part: string;
  readonly name: string;
  /** 0 to 1. */
  readonly share: number;
  /** "512.0 g, 28 %". */
  readonly words: string;
}
export interface SharesShown {
  readonly title: string;
  readonly parts: readonly ShareShown[];
  readonly whole: string;
}
const WIDTH = 300;
const ROW = 3;

/** Bars side by side, the longest as wide as the figure; shares are numbers of one, words are shown as given. No parts: title and whole alone. */
export function sharesFigure(shown: SharesShown, options: Shown = {}): Figure {
  const scale = scaleFor(WIDTH, options);
  const most = Math.max(...shown.parts.map(({ share }) => share), 0.01);
  const end = shown.parts.length * ROW * scale.text;
  return compose({
    title: shown.title,
    description: [...shown.parts.map(({ name, words }) => `${name}: ${words}.`), `${shown.whole}.`],
    shapes: [
      ...shown.parts.flatMap((part, row) => barOf(part, row * ROW * scale.text, most, scale)),
      line(at(0, 0), at(0, end), 'visible'),
      label(at(scale.small * 0.4, end + scale.text), shown.whole, scale.text, { anchor: 'start', part: 'whole' }),
    ],
    margin: scale.margin,
    leastWidth: WIDTH,
  });
}

function barOf({ part, name, share, words }: ShareShown, top: number, most: number, scale: Scale): readonly Shape[] {
  const high = scale.text * 1.1;
  return [
    label(at(scale.small * 0.4, top + scale.text * 0.8), `${name}: ${words}`, scale.small, { anchor: 'start', part }),
    polygon(rectangle(0, top + scale.text * 1.5, (share / most) * WIDTH, high), 'visible', { fill: 'metal', part }),
  ];
}
