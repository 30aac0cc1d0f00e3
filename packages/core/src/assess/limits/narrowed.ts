import type { BankId, CylinderNumber, Engine, InspectionLimit, ValveKind } from '../../engine/index.js';
import { camJournals, mainJournals } from '../features/journals.js';
import { indexOfLimits } from './index-of-limits.js';
import { journalsNamed, kindsNamed } from './scope-words.js';

/** A row of the sheet with the places it is narrowed to, read once from its scope and words; absent means all. */
export interface Narrowed {
  readonly limit: InspectionLimit;
  readonly cylinders?: readonly CylinderNumber[];
  readonly bank?: BankId;
  readonly kind?: ValveKind;
  readonly journals?: readonly number[];
}

const READ = new WeakMap<Engine, ReadonlyMap<string, readonly Narrowed[]>>();

/** Rows that limit a size, each with where it holds. An engine does not change: its rows are read once. */
export function narrowedRows(engine: Engine, property: string): readonly Narrowed[] {
  let rows = READ.get(engine);
  if (rows === undefined) {
    rows = new Map(
      [...indexOfLimits(engine)].map(([name, limits]) => {
        const last = (name.startsWith('cam-') ? camJournals(engine) : mainJournals(engine)).count;
        return [name, limits.map((limit) => narrowed(limit, last))];
      }),
    );
    READ.set(engine, rows);
  }
  return rows.get(property) ?? [];
}

function narrowed(limit: InspectionLimit, last: number): Narrowed {
  const { cylinders, bank } = limit.applies ?? {};
  const kinds = kindsNamed(limit);
  const journals = journalsNamed(limit, last);
  return {
    limit,
    ...(cylinders === undefined ? {} : { cylinders }),
    ...(bank === undefined ? {} : { bank }),
    ...(kinds.length === 1 && kinds[0] !== undefined ? { kind: kinds[0] } : {}),
    ...(journals === undefined ? {} : { journals }),
  };
}
