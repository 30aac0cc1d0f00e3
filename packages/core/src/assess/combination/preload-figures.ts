/** Preload as the sheet asks for it. */
import type { Engine } from '../../engine/index.js';
import type { Length } from '../../quantity/index.js';
import type { GivenFigure } from './model.js';
import { sheetFigure } from './sheet-figures.js';

/** Turns past zero lash and the window of plunger travel. */
export function preloadFigures({ valveGear }: Engine): readonly GivenFigure[] {
  const travel = valveGear?.preload?.plungerTravel;
  const end = (key: string, value: Length | undefined): readonly GivenFigure[] =>
    value === undefined || travel === undefined ? [] : [{ key, value, u: 0, origin: 'sheet', from: travel.from.text }];
  return [
    ...sheetFigure('preload-turns', valveGear?.preload?.turns),
    ...end('lifter-preload-least', travel?.window.low),
    ...end('lifter-preload-most', travel?.window.high),
  ];
}
