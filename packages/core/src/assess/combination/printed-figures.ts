/** Sizes that the sheet prints as inspection limits: a window with two ends says what a new part is, a height where a spring is tested. */
import type { Engine, InspectionLimit, Window } from '../../engine/index.js';
import { figureKey } from '../../engine/index.js';
import { fromHalfWidth } from '../../quantity/index.js';
import { type LimitPlace, limitsOf, loadHeight, newWindow } from '../limits/index.js';
import type { GivenFigure } from './model.js';
import { CYLINDER_SIZES, type SizeAsFigure, VALVE_KINDS, VALVE_SIZES } from './sizes-as-figures.js';

/** New window of all rows that hold at a place; grades together are as wide as the widest. Undefined with an open end. */
function windowAt(rows: readonly InspectionLimit[]): { readonly low: number; readonly high: number } | undefined {
  const windows = rows.flatMap((row) => newWindow(row) ?? []);
  if (windows.length === 0 || !windows.every(isClosed)) return undefined;
  return { low: Math.min(...windows.map(({ low }) => low!)), high: Math.max(...windows.map(({ high }) => high!)) };
}
const isClosed = ({ low, high }: Window<number>): boolean => low !== undefined && high !== undefined;

function printed(engine: Engine, size: SizeAsFigure, place: LimitPlace, key: string): readonly GivenFigure[] {
  const rows = limitsOf(engine, size.property, place);
  const window = windowAt(rows);
  if (window === undefined) return [];
  const value = (size.sign ?? 1) * ((window.low + window.high) / 2);
  const from = `${rows[0]!.from.text}, middle of the printed window`;
  return [{ key, value, u: fromHalfWidth((window.high - window.low) / 2), origin: 'sheet', from }];
}

/** Heights on the tester, from the words of the rows: "load at 42.0 mm". */
function loadHeights(engine: Engine, place: LimitPlace, kind: string): readonly GivenFigure[] {
  return (['closed', 'open'] as const).flatMap((which) => {
    const row = limitsOf(engine, `spring-load-${which}.load`, place)[0];
    const height = row && loadHeight(row);
    if (row === undefined || height === undefined) return [];
    const key = figureKey(`spring-load-${which}-height`, kind);
    return [{ key, value: height.value, u: 0, origin: 'sheet', from: row.from.text } as const];
  });
}

/** Room under the retainer that the maker wants at full lift. */
function retainerRoom(engine: Engine, place: LimitPlace, kind: string): readonly GivenFigure[] {
  return limitsOf(engine, 'retainer-to-guide.room', place).flatMap((row) => {
    const low = /full lift/i.test(row.what) ? newWindow(row)?.low : undefined;
    if (low === undefined) return [];
    return [{ key: figureKey('retainer-room-least', kind), value: low, origin: 'sheet', from: row.from.text } as const];
  });
}

/** Figures from the limits of a sheet, cylinder by cylinder and for both kinds of valve. */
export function printedFigures(engine: Engine): readonly GivenFigure[] {
  const cylinders = engine.layout.cylinders.flatMap(({ number, bank }) =>
    CYLINDER_SIZES.flatMap((size) => printed(engine, size, { cylinder: number, bank }, figureKey(size.figure, number))),
  );
  const first = engine.layout.cylinders[0]?.number ?? 1;
  const valves = VALVE_KINDS.flatMap((kind) => {
    const place: LimitPlace = { valve: { cylinder: first, kind, index: 1 } };
    return [
      ...VALVE_SIZES.filter(({ figure }) => figure !== 'retainer-room').flatMap((size) =>
        printed(engine, size, place, figureKey(size.figure, kind)),
      ),
      ...loadHeights(engine, place, kind),
      ...retainerRoom(engine, place, kind),
    ];
  });
  return [...cylinders, ...valves];
}
