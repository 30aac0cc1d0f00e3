import type { SourceKey } from '../../sources/index.js';

/** One row of a printed table: smallest gap in in per in of bore. */
export interface GapFactors {
  readonly top: number;
  readonly second: number;
}

/** Tables in print; they disagree, and the maker of the ring at hand decides. */
export const GAP_TABLES = {
  'five applications': {
    source: 'ring-gap-table-five',
    rows: {
      street: { top: 0.004, second: 0.005 },
      'modified or nitrous': { top: 0.005, second: 0.0055 },
      racing: { top: 0.0055, second: 0.0053 },
      'racing nitrous or turbo': { top: 0.006, second: 0.0057 },
      'racing blown': { top: 0.007, second: 0.0063 },
    },
  },
  'four applications': {
    source: 'ring-gap-table-four',
    // This table gives the second ring as 1.25 times the top.
    rows: {
      street: { top: 0.0045, second: 0.005625 },
      'moderate boost': { top: 0.005, second: 0.00625 },
      'drag or oval': { top: 0.0055, second: 0.006875 },
      'race boost': { top: 0.0065, second: 0.008125 },
    },
  },
} as const satisfies Record<string, { source: SourceKey; rows: Readonly<Record<string, GapFactors>> }>;

export type GapTable = keyof typeof GAP_TABLES;

/** The row of a table by its application, or undefined. */
export function gapFactors(table: GapTable, application: string): GapFactors | undefined {
  const rows: Readonly<Record<string, GapFactors>> = GAP_TABLES[table].rows;
  return Object.hasOwn(rows, application) ? rows[application] : undefined;
}
