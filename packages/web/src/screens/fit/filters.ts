import type { VerdictWord } from '@gudgeon/core/assess';
import type { FindingView, FitView } from '@gudgeon/core/workbench';

/** Which rows are shown. No data is a group of its own: it never stands among what is good, nor hides among what is not. */
export interface Filter {
  readonly id: 'not-in' | 'unsure' | 'no-data' | 'all';
  readonly label: string;
  /** One key each, shown on the button. */
  readonly key: string;
  readonly holds: readonly VerdictWord[];
}
export const FILTERS: readonly Filter[] = [
  { id: 'not-in', label: 'Not in', key: '1', holds: ['out', 'near', 'check again'] },
  { id: 'unsure', label: 'Near, check again', key: '2', holds: ['near', 'check again'] },
  { id: 'no-data', label: 'No data', key: '3', holds: ['no data'] },
  { id: 'all', label: 'All', key: '4', holds: ['in', 'near', 'out', 'no data', 'check again'] },
];

export const countOf = ({ holds }: Filter, counts: FitView['counts']): number =>
  holds.reduce((sum, word) => sum + counts[word], 0);

/** What needs a look first; with nothing wrong, everything. */
export const firstFilter = (counts: FitView['counts']): Filter =>
  FILTERS.find((filter) => filter.id === 'not-in' && countOf(filter, counts) > 0) ?? (FILTERS.at(-1) as Filter);

/** Worst first, and among equals in the order of the engine. */
const RANK: readonly VerdictWord[] = ['out', 'check again', 'near', 'no data', 'in'];

export interface Group {
  readonly area: string;
  readonly title: string;
  readonly rows: readonly FindingView[];
}
export function shownGroups(findings: FitView['findings'], { holds }: Filter): readonly Group[] {
  return findings.flatMap(({ area, title, rows }) => {
    const kept = rows.filter(({ verdict }) => holds.includes(verdict));
    if (kept.length === 0) return [];
    return [{ area, title, rows: kept.toSorted((a, b) => RANK.indexOf(a.verdict) - RANK.indexOf(b.verdict)) }];
  });
}
