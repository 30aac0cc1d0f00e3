import type { Engine } from '../engine/index.js';
import { compose } from './compose.js';
import type { Figure, MarkState, Shape } from './figure.js';
import { at, plus } from './geometry.js';
import { markShapes, stateSentences } from './marks.js';
import type { Marks, Shown } from './options.js';
import { circle, label, polygon, roundedRectangle } from './shapes.js';
import { type Cell, cellTouch, type Grid, markAt, valveGrid, valveLetter } from './valve-grid.js';

export type TrayPart = 'lifter' | 'pushrod' | 'rocker' | 'follower' | 'shim';

/**
 * A tray with a pocket for one kind of part (lifter, pushrod, rocker, follower or shim) of every valve, laid out as the engine is, front at the top, so
 * that each part goes back to its own place. `marks` by `valveKey`.
 */
export function registerTray(engine: Engine, part: TrayPart, marks: Marks = {}, options: Shown = {}): Figure {
  const grid = valveGrid(engine, marks, options);
  const filled = grid.cells.filter((cell) => cell.state === 'done').length;
  return compose({
    title: `${engine.name}: tray for the ${part}s`,
    description: [
      `A pocket for the ${part} of every valve, laid out as the engine is, front at the top; I intake, E exhaust.`,
      `${filled} of ${grid.cells.length} done.`,
      stateSentences(grid.cells),
      grid.note,
    ],
    shapes: [...grid.frame, ...grid.cells.flatMap((cell) => pocket(engine, part, cell, grid))],
    touches: grid.cells.map((cell) => {
      const touch = cellTouch(cell, grid.scale);
      return { ...touch, name: `${part}, ${touch.name}` };
    }),
    margin: grid.scale.margin,
    leastWidth: grid.leastWidth,
  });
}
function pocket(engine: Engine, part: TrayPart, cell: Cell, { scale, column }: Grid): readonly Shape[] {
  const letter = valveLetter(engine, cell.valve);
  const place = plus(cell.centre, at(scale.px * 12, 0));
  const mark = markAt(cell, scale);
  return [
    ...outline(part, cell, scale.px, column * 0.92),
    ...(cell.state === 'idle' ? [] : markShapes(mark, scale.mark, cell.state, cell.key)),
    label(place, letter, scale.text, { anchor: 'start', part: cell.key, state: cell.state }),
  ];
}
/** The pocket has the shape of its part seen from above: round, long and thin, or a body with two ends. */
function outline(part: TrayPart, cell: Cell, px: number, widest: number): readonly Shape[] {
  const look: { part: string; state: MarkState; fill: 'void' } = { part: cell.key, state: 'idle', fill: 'void' };
  const mark = plus(cell.centre, at(-px * 14, 0));
  const width = Math.min(76 * px, widest);
  const box = (height: number, radius: number): Shape =>
    polygon(
      roundedRectangle(cell.centre.x - width / 2, cell.centre.y - (height / 2) * px, width, height * px, radius * px),
      'visible',
      look,
    );
  if (part === 'lifter' || part === 'follower') return [circle(mark, 19 * px, 'visible', look)];
  if (part === 'shim') return [circle(mark, 14 * px, 'visible', look)];
  if (part === 'pushrod') return [box(28, 14)];
  return [box(40, 8)];
}
