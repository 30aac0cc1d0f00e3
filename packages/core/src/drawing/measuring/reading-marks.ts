import type { Point, Shape } from '../figure.js';
import { at, plus, polar, times } from '../geometry.js';
import { arrow, circle, line, polygon } from '../shapes.js';
import type { StationShown } from './place-shown.js';

type Way = (x: number, y: number) => Point;

/**
 * The mark of a station. Shape before colour: not read = an open ring; read = a filled disc; in = disc with a tick; near = diamond
 * with an arrow to the end of the limit; out = square with a cross; readings that disagree = two arrows apart. The station asked for now
 * wears a second ring with four pointer lines.
 */
export function readingMark(centre: Point, radius: number, station: StationShown, current: boolean): readonly Shape[] {
  const spot: Way = (x, y) => plus(centre, times(at(x, y), radius));
  const mark = shapesOf(spot, centre, radius, station);
  return current ? [...pointer(centre, radius, station.slot), ...mark] : mark;
}
/** How far a mark reaches from its centre, in radii: alone, and with the pointer lines of the one asked for now. */
export const READING_REACH = 1.6;
export const POINTER_REACH = 2.3;

function shapesOf(spot: Way, centre: Point, radius: number, station: StationShown): readonly Shape[] {
  const part = station.slot;
  const full = { part, fill: 'mark' } as const;
  const cut = (points: readonly Point[]): Shape => polygon(points, 'thin', { part, fill: 'void' });
  switch (station.state) {
    case 'empty':
      return [circle(centre, radius, 'visible', { part, fill: 'void' })];
    case 'read':
      return [circle(centre, radius, 'visible', full)];
    case 'in':
      return [circle(centre, radius, 'visible', full), cut(TICK.map(([x, y]) => spot(x, y)))];
    case 'near': {
      const up = station.nearEnd === 'low' ? -1 : 1;
      return [
        polygon([spot(0, -1.3), spot(1.3, 0), spot(0, 1.3), spot(-1.3, 0)], 'visible', full),
        cut(ARROW.map(([x, y]) => spot(x, y * up))),
      ];
    }
    case 'out':
      return [
        polygon([spot(-1, -1), spot(1, -1), spot(1, 1), spot(-1, 1)], 'visible', { ...full, state: 'wrong' }),
        cut(CROSS.map(([x, y]) => spot(x, y))),
      ];
    case 'disagrees':
      return [
        circle(centre, radius * 1.15, 'thin', { part, fill: 'void' }),
        ...arrow(spot(-0.2, 0), spot(-1, 0), radius * 0.85, { part }),
        ...arrow(spot(0.2, 0), spot(1, 0), radius * 0.85, { part }),
      ];
  }
}
type Outline = readonly (readonly [number, number])[];
const TICK: Outline = [
  [-0.62, 0.02],
  [-0.4, -0.2],
  [-0.13, 0.1],
  [0.42, -0.56],
  [0.66, -0.36],
  [-0.11, 0.58],
];
const ARROW: Outline = [
  [0, -0.85],
  [0.55, -0.15],
  [0.18, -0.15],
  [0.18, 0.75],
  [-0.18, 0.75],
  [-0.18, -0.15],
  [-0.55, -0.15],
];
const CROSS: Outline = [
  [0, -0.26],
  [0.42, -0.68],
  [0.68, -0.42],
  [0.26, 0],
  [0.68, 0.42],
  [0.42, 0.68],
  [0, 0.26],
  [-0.42, 0.68],
  [-0.68, 0.42],
  [-0.26, 0],
  [-0.68, -0.42],
  [-0.42, -0.68],
];

function pointer(centre: Point, radius: number, part: string): readonly Shape[] {
  const look = { part, state: 'lit' } as const;
  return [
    circle(centre, radius * READING_REACH, 'visible', look),
    ...[45, 135, 225, 315].map((turn) =>
      line(polar(centre, radius * READING_REACH, turn), polar(centre, radius * POINTER_REACH, turn), 'visible', look),
    ),
  ];
}

/** The state in words, behind a name. */
export function readingWords({ state, text, nearEnd }: StationShown): string {
  const value = text === undefined ? '' : `${text}, `;
  switch (state) {
    case 'empty':
      return 'not read';
    case 'read':
      return text ?? 'read';
    case 'in':
      return `${value}in`;
    case 'near':
      return `${value}near the ${nearEnd === 'low' ? 'low' : 'high'} end`;
    case 'out':
      return `${value}out`;
    case 'disagrees':
      return `${value}readings disagree`;
  }
}
