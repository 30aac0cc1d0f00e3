/** The printed chart: which shell grade goes with the marks of housing and journal, and whether it can give the printed clearance. */
import { agreement, worstCaseClearance } from '../../calc/bearings/index.js';
import type { GradeChart, ShellStock } from '../../engine/index.js';
import type { Length } from '../../quantity/index.js';
import { propertiesOfLimit } from '../limits/index.js';
import type { Assessment } from '../model.js';
import { chartsOf, type Group, shellsOf } from './bearings-of.js';
import { type Closed, closed } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { ShellPlace } from './shell-positions.js';
import { wallOf } from './shell-walls.js';
import { type ChosenPair, fitted } from './shells-search.js';

interface Mark {
  readonly mark: string;
  readonly window: Closed;
}
export interface ChartReading {
  readonly pairs: readonly ChosenPair[];
  /** Bearings for which the chart gives nothing, with the reason. */
  readonly against: readonly string[];
}

/** Sizes of the marks that the sheet prints for a property. */
function marksOf({ engine }: Assessment, property: string): readonly Mark[] {
  return engine.limits.flatMap((limit) => {
    const mark = limit.applies?.grade;
    const window = limit.whenNew && closed(limit.whenNew.window);
    return mark !== undefined && window && propertiesOfLimit(limit).includes(property) ? [{ mark, window }] : [];
  });
}

/**
 * Shells that the chart gives for housings and journals as measured: each mark is the one in whose printed range the size lies.
 * Undefined where the sheet has no chart for this group. Marks stamped on used parts are not taken: they say what was new.
 */
export function byChart(
  assessment: Assessment,
  group: Group,
  places: readonly ShellPlace[],
  words: LengthWords,
): ChartReading | undefined {
  const [chart] = chartsOf(assessment.engine, group);
  if (chart === undefined) return undefined;
  const [housings, journals] = [
    marksOf(assessment, `${group.housing}.diameter`),
    marksOf(assessment, `${group.journal}.diameter`),
  ];
  if (housings.length === 0 || journals.length === 0)
    return {
      pairs: [],
      against: ['The sheet prints no sizes for the marks of the chart: read the marks on the parts.'],
    };
  const shells = shellsOf(assessment.engine, group);
  const read = places.map((place) => pairAt(chart, { housings, journals, shells }, place, words));
  return {
    pairs: read.filter((one) => typeof one !== 'string'),
    against: read.filter((one) => typeof one === 'string'),
  };
}

interface Marked {
  readonly housings: readonly Mark[];
  readonly journals: readonly Mark[];
  readonly shells: readonly ShellStock[];
}
function pairAt(chart: GradeChart, marked: Marked, place: ShellPlace, words: LengthWords): ChosenPair | string {
  const housing = markOf(marked.housings, place.housing.value);
  const journal = markOf(marked.journals, place.journal.value);
  const name = place.place.name;
  if (housing === undefined)
    return `${name}: its housing, ${words.length(place.housing.value)}, lies in no range of the chart.`;
  if (journal === undefined)
    return `${name}: its journal, ${words.length(place.journal.value)}, lies in no range of the chart.`;
  const row = chart.rows.find((one) => one.housing === housing && one.journal === journal);
  if (row === undefined) return `${name}: the chart has no row for housing ${housing} with journal ${journal}.`;
  const shell = marked.shells.find((one) => one.grade === row.shell);
  return shell === undefined ? `${name}: shell ${row.shell} is not in stock.` : fitted(place, shell, shell);
}

/** The mark in whose range a size lies; at a border that two share, the first printed. */
const markOf = (marks: readonly Mark[], size: number): string | undefined =>
  marks.find(({ window }) => size >= window.low - NANOMETRE && size <= window.high + NANOMETRE)?.mark;
const NANOMETRE = 1e-9;

/** Rows of a chart that cannot, or cannot always, give the printed clearance: misprinted, misread, or meant with a choice. */
export function chartFaults(
  assessment: Assessment,
  group: Group,
  asked: Closed,
  words: LengthWords,
): readonly string[] {
  const housings = marksOf(assessment, `${group.housing}.diameter`);
  const journals = marksOf(assessment, `${group.journal}.diameter`);
  return chartsOf(assessment.engine, group).flatMap(({ rows }) =>
    rows.flatMap((row) => {
      const housing = housings.find(({ mark }) => mark === row.housing)?.window;
      const journal = journals.find(({ mark }) => mark === row.journal)?.window;
      const shell = shellsOf(assessment.engine, group).find(({ grade }) => grade === row.shell);
      if (housing === undefined || journal === undefined || shell === undefined) return [];
      const wall = sizes(wallOf(shell));
      const found = worstCaseClearance(sizes(housing), { upper: wall, lower: wall }, sizes(journal));
      const verdict = agreement(found, sizes(asked));
      if (verdict === 'equal' || verdict === 'inside') return [];
      return [
        `Chart, housing ${row.housing} with journal ${row.journal}: shell ${row.shell} gives ${words.window(found)}, printed ${words.window(asked)}.`,
      ];
    }),
  );
}
const sizes = ({ low, high }: Closed) => ({ low: low as Length, high: high as Length });
