import type { Engine, InspectionLimit } from '../../engine/index.js';
import { engineOf, read, sheetsIn } from '../../engine/load/try-sheets.suite.js';

/** What the tests of limits share: rows by hand, and every sheet of the project. */
export const FROM = { standing: 'invented', text: 'invented' } as const;

export function row(part: string, what: string, more: Partial<InspectionLimit> = {}): InspectionLimit {
  return { part, what, quantity: 'length', from: FROM, ...more };
}

export const SHEETS: readonly (readonly [string, Engine])[] = ['sheets/', 'sheets/transcribed/']
  .flatMap(sheetsIn)
  .map((path) => [path, engineOf(read(path))]);

export function sheet(name: string): Engine {
  const found = SHEETS.find(([path]) => path.includes(name));
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found[1];
}

/** The same engine with other limits. */
export const withLimits = (engine: Engine, ...limits: readonly InspectionLimit[]): Engine => ({ ...engine, limits });
