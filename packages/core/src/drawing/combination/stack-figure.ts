/** The room over a piston at the top as a drawn stack: each part as high as its share, from the head down. */
import { compose } from '../compose.js';
import type { Figure, Fill, Point, Shape } from '../figure.js';
import { at } from '../geometry.js';
import type { Shown } from '../options.js';
import { label, line, polygon, rectangle } from '../shapes.js';
import { type Scale, scaleFor } from '../sheet-scale.js';

export interface StackedPart {
  /** `chamber`, `gasket`, ...: names the place in the figure. */
  readonly part: string;
  readonly name: string;
  /** Any unit, alike for all; what fills room is negative. Absent: not known. */
  readonly volume?: number;
  /** "1.20 mm, 10.2 cm3, 13 %". */
  readonly words: string;
}
export interface StackShown {
  readonly title: string;
  /** From the head down. */
  readonly parts: readonly StackedPart[];
  /** "together 78.4 cm3", or that it is not known. */
  readonly whole: string;
}

const WIDTH = 300;
const COLUMN = 66;
const LETTERS = 84;
const LEAST_HEIGHT = 150;
/** In letter heights: room for the two lines of a part. */
const ROW = 3;
const FILLS: Readonly<Record<string, Fill>> = { gasket: 'gasket', chamber: 'water', deck: 'void', piston: 'oil' };

/** Parts that make room stand on each other; what fills room (a dome, a piston proud of the deck) rises from below with a broken edge. */
export function stackFigure(shown: StackShown, options: Shown = {}): Figure {
  const scale = scaleFor(WIDTH, options);
  const rows = shown.parts.map((_, row) => (row + 0.5) * ROW * scale.text);
  const height = Math.max(LEAST_HEIGHT, shown.parts.length * ROW * scale.text);
  const bands = bandsOf(shown.parts, height);
  return compose({
    title: shown.title,
    description: words(shown),
    shapes: [
      ...headAbove(),
      ...bands.flatMap(({ shape }) => shape),
      ...pistonBelow(height, shown.whole, scale),
      ...shown.parts.flatMap((part, row) => lettersOf(part, bands[row]!.middle, rows[row]!, scale)),
    ],
    margin: scale.margin,
    leastWidth: WIDTH,
  });
}

interface Band {
  readonly shape: readonly Shape[];
  /** Where its leader begins; absent for a part that is not known or is nothing. */
  readonly middle?: number;
}

function bandsOf(parts: readonly StackedPart[], height: number): readonly Band[] {
  const room = parts.reduce((sum, { volume = 0 }) => sum + Math.max(0, volume), 0);
  let top = 0;
  let filled = height;
  return parts.map(({ part, volume = 0 }): Band => {
    const tall = room > 0 ? (Math.abs(volume) / room) * height : 0;
    if (tall === 0) return { shape: [] };
    const fills = volume < 0;
    const from = fills ? filled - tall : top;
    if (fills) filled = from;
    else top += tall;
    const fill = fills ? 'metal' : (FILLS[part] ?? 'none');
    const [left, wide] = fills ? [COLUMN * 0.2, COLUMN * 0.6] : [0, COLUMN];
    return {
      shape: [polygon(rectangle(left, from, wide, tall), fills ? 'hidden' : 'visible', { fill, part })],
      middle: from + tall / 2,
    };
  });
}

/** The head over the stack. */
function headAbove(): readonly Shape[] {
  return [polygon(rectangle(-8, -12, COLUMN + 16, 12), 'visible', { fill: 'metal', part: 'head' })];
}

/** The piston under the stack with two rings, and the cylinder walls beside it. */
function pistonBelow(height: number, whole: string, scale: Scale): readonly Shape[] {
  const skirt = 40;
  const wall = (x: number): Shape => line(at(x, 0), at(x, height + skirt), 'visible');
  const ring = (down: number): Shape => line(at(0, height + down), at(COLUMN, height + down), 'thin');
  return [
    polygon(rectangle(0, height, COLUMN, skirt), 'visible', { fill: 'metal', part: 'piston' }),
    ring(9),
    ring(15),
    wall(-4),
    wall(COLUMN + 4),
    label(at(LETTERS, height + skirt / 2), whole, scale.text, { anchor: 'start', part: 'whole' }),
  ];
}

function lettersOf(
  { part, name, words: text, volume }: StackedPart,
  middle: number | undefined,
  row: number,
  scale: Scale,
): readonly Shape[] {
  const look = { anchor: 'start', part, ...(volume === undefined && { state: 'missing' as const }) } as const;
  const place = (down: number): Point => at(LETTERS, row + down * scale.text);
  return [
    ...(middle === undefined ? [] : [line(at(COLUMN, middle), at(LETTERS - 3, row), 'thin', { part })]),
    label(place(-0.6), name, scale.text, look),
    label(place(0.6), text, scale.small, look),
  ];
}

function words({ parts, whole }: StackShown): readonly string[] {
  return [
    'The room over the piston at its highest place, from the head down.',
    ...parts.map(({ name, words: text, volume = 0 }) => `${name}: ${text}${volume < 0 ? ', fills room' : ''}.`),
    `${whole}.`,
  ];
}
