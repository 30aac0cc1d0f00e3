/** How one figure follows from the readings of a place: its value, and which readings decide it. */
import {
  mean,
  ROUND_RULES,
  type RoundRule,
  roundShares,
  spread,
  TAPER_RULES,
  type TaperRule,
  taperShares,
} from '../../calc/metrology/index.js';
import type { SizeRule, Station } from '../model.js';

export type Form = SizeRule['form'];
/** A form fitted to the stations of a place: what depends on no reading. */
export interface FittedForm {
  readonly form: Form;
  /** Places in the list of stations that it needs, in their order. */
  readonly stations: readonly number[];
  /** Of a shape: places in the list of its readings, a list for each direction from the first height to the last. */
  readonly columns: readonly (readonly number[])[];
  readonly rule: RoundRule | TaperRule | undefined;
  /** Of a mean and of one reading: the same weight for each. */
  readonly even: readonly number[];
  /** In words, for the working: "mean of 6"; empty for one reading as it stands. */
  readonly words: string;
}
export interface Formed {
  readonly value: number;
  /** Change of the value for one unit of each reading. */
  readonly by: readonly number[];
}

const ENDS_ONLY: ReadonlySet<string> = new Set<TaperRule>(['ends', 'ends-signed-mean', 'top-pair-less-bottom-pair']);
const isRound = (rule: string): rule is RoundRule => (ROUND_RULES as readonly string[]).includes(rule);
const isTaper = (rule: string): rule is TaperRule => (TAPER_RULES as readonly string[]).includes(rule);

/** Whether a maker's rule is one of this shape. */
export const isRuleOf = (form: 'out-of-round' | 'taper', rule: string): rule is RoundRule | TaperRule =>
  form === 'out-of-round' ? isRound(rule) : isTaper(rule);

/**
 * A form fitted to stations. A shape goes by the maker's rule where that is one of it, else by the usual one: the same height,
 * the ends. A taper by its ends needs no reading between them. Undefined where the stations cannot give it: an out-of-round of one
 * direction, a taper of one height, a grid with holes.
 */
export function fitForm(
  form: Form,
  stations: readonly Station[],
  chosen: readonly number[],
  stated: string | undefined,
): FittedForm | undefined {
  if (chosen.length === 0) return undefined;
  if (form !== 'out-of-round' && form !== 'taper') {
    const needed = form === 'single' ? chosen.slice(0, 1) : chosen;
    return { ...evenForm(form, needed.length), stations: needed, words: wordsFor(form, needed.length) };
  }
  const byMaker = stated !== undefined && isRuleOf(form, stated);
  const rule = byMaker ? stated : form === 'out-of-round' ? 'same-height' : 'ends';
  const needed = form === 'taper' && ENDS_ONLY.has(rule) ? atEnds(stations, chosen) : chosen;
  const columns = columnsOf(needed.map((at) => stations[at]!));
  const enough = form === 'taper' ? (columns[0]?.length ?? 0) > 1 : columns.length > 1;
  if (!enough) return undefined;
  return {
    form,
    stations: needed,
    columns,
    rule,
    even: [],
    words: `${WORDS[rule]}, ${byMaker ? 'the maker’s' : 'the usual'} rule`,
  };
}

/** A form of so many values that belong to no stations. */
export const evenForm = (form: Form, count: number): FittedForm => ({
  form,
  stations: [],
  columns: [],
  rule: undefined,
  even: new Array<number>(count).fill(1 / count),
  words: '',
});

function wordsFor(form: Form, count: number): string {
  if (count === 1 && form !== 'spread') return '';
  return form === 'spread' ? 'largest less smallest' : `${form} of ${count}`;
}

function atEnds(stations: readonly Station[], chosen: readonly number[]): readonly number[] {
  const heights = chosen.map((at) => stations[at]!.height ?? 0);
  const [first, last] = [Math.min(...heights), Math.max(...heights)];
  return chosen.filter((_, index) => heights[index] === first || heights[index] === last);
}

/** Stations by direction, each list in the order of the heights; empty where a direction lacks a height of another. */
function columnsOf(stations: readonly Station[]): readonly (readonly number[])[] {
  const columns = new Map<number, { height: number; at: number }[]>();
  stations.forEach(({ height = 0, direction = 0 }, at) => {
    const column = columns.get(direction) ?? [];
    column.push({ height, at });
    columns.set(direction, column);
  });
  const sorted = [...columns.values()].map((column) => column.sort((a, b) => a.height - b.height));
  const heights = sorted[0]?.map(({ height }) => height) ?? [];
  const whole = sorted.every(
    (column) => column.length === heights.length && column.every(({ height }, row) => height === heights[row]),
  );
  return whole ? sorted.map((column) => column.map(({ at }) => at)) : [];
}

const WORDS: Readonly<Record<RoundRule | TaperRule, string>> = {
  'same-height': 'largest difference of directions at one height',
  'same-height-radial': 'half of the largest difference of directions at one height',
  'across-heights': 'largest of one direction less smallest of another, at any heights',
  'worst-of-all': 'largest less smallest of all',
  ends: 'largest difference between the ends in one direction',
  'ends-signed-mean': 'mean of the first end less mean of the last',
  spread: 'largest less smallest along one direction',
  'top-pair-less-bottom-pair': 'largest of the first end less largest of the last',
  'spread-of-means': 'largest less smallest of the means of the heights',
};

/** The figure of a fitted form from its readings. */
export function formed({ form, columns, rule, even }: FittedForm, values: readonly number[]): Formed {
  if (form === 'out-of-round' || form === 'taper') return ofGrid(form, columns, rule!, values);
  if (form === 'spread') return apart(values);
  if (values.length === 1) return { value: values[0]!, by: even };
  if (form === 'mean') return { value: mean(values), by: even };
  const at = extreme(values, form === 'smallest' ? -1 : 1);
  return { value: values[at]!, by: values.map((_, index) => (index === at ? 1 : 0)) };
}

/** Largest less smallest; of values all alike the first and the last. */
function apart(values: readonly number[]): Formed {
  const high = extreme(values, 1);
  const low = extreme(values, -1);
  const other = high === low ? values.length - 1 : low;
  return { value: spread(values), by: values.map((_, at) => (at === high ? 1 : 0) - (at === other ? 1 : 0)) };
}
/** Place of the largest (sense 1) or smallest (−1); the first of equal ones. */
function extreme(values: readonly number[], sense: 1 | -1): number {
  let best = 0;
  for (let at = 1; at < values.length; at += 1) if (sense * values[at]! > sense * values[best]!) best = at;
  return best;
}

function ofGrid(
  form: 'out-of-round' | 'taper',
  columns: readonly (readonly number[])[],
  rule: RoundRule | TaperRule,
  values: readonly number[],
): Formed {
  const grid = columns.map((column) => column.map((at) => values[at]!));
  const shares = form === 'out-of-round' ? roundShares(grid, rule as RoundRule) : taperShares(grid, rule as TaperRule);
  const by = new Array<number>(values.length).fill(0);
  let value = 0;
  for (const { direction, height, share } of shares) {
    by[columns[direction]![height]!]! += share;
    value += share * grid[direction]![height]!;
  }
  return { value, by };
}
