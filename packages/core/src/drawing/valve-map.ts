import type { Engine } from '../engine/index.js';
import { compose } from './compose.js';
import type { Figure, Shape } from './figure.js';
import { at, plus } from './geometry.js';
import { markShapes, stateSentences } from './marks.js';
import type { Marks, Shown } from './options.js';
import { label } from './shapes.js';
import { type Cell, cellTouch, type Grid, markAt, valveGrid, valveLetter } from './valve-grid.js';

/**
 * All valves of the engine in plan by bank, front at the top, each with its mark. `marks` by `valveKey`.
 * Valve places come from the heads of the sheet; where it gives none the order is assumed and the description says so.
 */
export function valveMap(engine: Engine, marks: Marks = {}, options: Shown = {}): Figure {
  const grid = valveGrid(engine, marks, options);
  return compose({
    title: `${engine.name}: valves from above`,
    description: [
      'All valves in plan, front of the engine at the top; I intake, E exhaust.',
      stateSentences(grid.cells),
      grid.cells.length === 0 ? 'The sheet gives no valves.' : '',
      grid.note,
    ],
    shapes: [...grid.frame, ...grid.cells.flatMap((cell) => valveShapes(engine, cell, grid))],
    touches: grid.cells.map((cell) => cellTouch(cell, grid.scale)),
    margin: grid.scale.margin,
    leastWidth: grid.leastWidth,
  });
}
function valveShapes(engine: Engine, cell: Cell, { scale }: Grid): readonly Shape[] {
  const letter = valveLetter(engine, cell.valve);
  const place = plus(cell.centre, at(scale.px * 12, 0));
  return [
    ...markShapes(markAt(cell, scale), scale.mark * 1.1, cell.state, cell.key),
    label(place, letter, scale.text, { anchor: 'start', part: cell.key, state: cell.state }),
  ];
}
