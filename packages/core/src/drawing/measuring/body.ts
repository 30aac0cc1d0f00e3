import { textWidth } from '../extent.js';
import type { Point, Shape } from '../figure.js';
import { at } from '../geometry.js';
import { label } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';
import type { PlaceShown, StationShown } from './place-shown.js';

/** What a part's drawing gives: its lines, and where each station lies, in the order of the stations. */
export interface Body {
  readonly shapes: readonly Shape[];
  readonly spots: readonly Point[];
  /** What is drawn, in one sentence for those who do not see it. */
  readonly words: string;
}
/** Draws a part for the stations of a place. Not to scale: lengths are in units of a sheet 300 wide. */
export type DrawBody = (place: PlaceShown, scale: Scale) => Body;

/** Width of the sheet that every body fills. */
export const SHEET = 300;

/** One line of a grid of stations: a height or plane, or a direction. */
export interface Lane {
  readonly index: number;
  readonly name: string;
}
export interface StationGrid {
  readonly heights: readonly Lane[];
  readonly directions: readonly Lane[];
  /** Lane numbers of each station, counted from 0 within the lists above. */
  readonly of: readonly { readonly height: number; readonly direction: number }[];
}

/** "top, across the crank" is the height "top" and the direction "across the crank"; a height may have a comma of its own. */
const halves = (name: string): readonly [string, string] => {
  const comma = name.lastIndexOf(', ');
  return comma < 0 ? [name, name] : [name.slice(0, comma), name.slice(comma + 2)];
};

/**
 * Heights and directions of a place's stations. Stations without either, and points side by side that are no directions of one
 * height, stand one after the other, each a height of its own.
 */
export function gridOf(stations: readonly StationShown[]): StationGrid {
  const row = isRow(stations);
  const cells = stations.map((one, index) => ({
    height: row ? index : (one.height ?? 0),
    direction: row ? 0 : (one.direction ?? 0),
    name: one.name,
  }));
  const crossed = !row && cells.some((a) => a.direction !== cells[0]?.direction);
  const lanes = (which: 'height' | 'direction'): readonly Lane[] =>
    [...new Set(cells.map((cell) => cell[which]))]
      .sort((a, b) => a - b)
      .map((index) => {
        const name = cells.find((cell) => cell[which] === index)?.name ?? '';
        return { index, name: crossed ? halves(name)[which === 'height' ? 0 : 1] : name };
      });
  const [heights, directions] = [lanes('height'), lanes('direction')];
  const laneAt = (list: readonly Lane[], index: number) => list.findIndex((lane) => lane.index === index);
  return {
    heights,
    directions,
    of: cells.map((cell) => ({ height: laneAt(heights, cell.height), direction: laneAt(directions, cell.direction) })),
  };
}
/** Points along a part; "middle, first diameter" beside "middle, at right angles" are two directions of one height instead. */
function isRow(stations: readonly StationShown[]): boolean {
  if (stations.every((one) => one.height === undefined && one.direction === undefined)) return true;
  const heights = new Set(stations.map((one) => one.height ?? 0));
  const names = new Set(stations.map((one) => halves(one.name)[0]));
  return stations.length > 1 && heights.size === 1 && names.size > 1;
}

/** The names of lanes only where there is more than one: a single one needs no telling apart. */
export const told = (lanes: readonly Lane[]): readonly Lane[] => (lanes.length > 1 ? lanes : []);

/** Middle of one of `count` equal pieces from `from` to `to`. */
export const pieceOf = (from: number, to: number, index: number, count: number): number =>
  from + ((to - from) * (index + 0.5)) / Math.max(1, count);

/** Points spread over a line, one for each station. */
export const spreadOn = (stations: readonly unknown[], from: Point, to: Point): readonly Point[] =>
  stations.map((_, i) => at(pieceOf(from.x, to.x, i, stations.length), pieceOf(from.y, to.y, i, stations.length)));

/** Words in at most two lines of a width; what is longer is cut with an ellipsis. */
function twoLines(text: string, width: number, size: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  const [first = '', ...rest] = lines;
  return rest.length === 0
    ? [fitted(first, width, size)]
    : [first, rest.join(' ')].map((each) => fitted(each, width, size));
}
const LEADING = 1.15;

/** Words centred over a point in at most two lines of the given width. */
export const stacked = (text: string, centre: Point, width: number, size: number): readonly Shape[] =>
  twoLines(text, width, size).map((each, i, all) =>
    label(at(centre.x, centre.y + (i - (all.length - 1) / 2) * size * LEADING), each, size),
  );
/** Words cut to a width, with an ellipsis where something is left out. */
export function fitted(text: string, width: number, size: number): string {
  const letters = Math.max(1, Math.floor(width / textWidth('m', size)));
  return text.length <= letters ? text : `${text.slice(0, Math.max(1, letters - 1)).trimEnd()}…`;
}
/** Names beside the rows of a body: whole where they fit a third of the sheet, else without what follows their first comma. */
export function rowWords(
  lanes: readonly Lane[],
  size: number,
): { readonly names: readonly string[]; readonly width: number } {
  const widest = (names: readonly string[]) => Math.max(0, ...names.map((name) => textWidth(name, size))) + size;
  const whole = lanes.map((lane) => lane.name);
  const names = widest(whole) <= SHEET / 3 ? whole : whole.map((name) => name.split(', ')[0] ?? name);
  return { names, width: lanes.length === 0 ? 0 : Math.min(SHEET / 3, widest(names)) };
}

/** Row names at the left of a body, each at its height. */
export const rowNames = (
  { names, width }: ReturnType<typeof rowWords>,
  y: (index: number) => number,
  size: number,
): readonly Shape[] =>
  names.flatMap((name, i) =>
    twoLines(name, width - size * 0.5, size).map((each, line, all) =>
      label(at(0, y(i) + (line - (all.length - 1) / 2) * size * LEADING), each, size, { anchor: 'start' }),
    ),
  );
