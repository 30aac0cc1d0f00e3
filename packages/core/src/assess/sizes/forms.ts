/** How one figure follows from the readings of a place: its value, and which readings decide it. */
import {
  mean,
  outOfRound,
  ROUND_RULES,
  type RoundRule,
  spread,
  TAPER_RULES,
  type TaperRule,
  taper,
} from '../../calc/metrology/index.js';
import type { SizeRule, Station } from '../model.js';

export type Form = SizeRule['form'];
export interface Formed {
  readonly value: number;
  /** Change of the value for one unit of each reading, in the order of the stations. */
  readonly by: readonly number[];
  /** In words, for the working: "mean of 6", "largest". */
  readonly words: string;
}
/** Stations in rows of equal height, columns of equal direction; as places in the list of stations. */
interface Grid {
  /** One list for each direction, from the first height to the last. */
  readonly columns: readonly (readonly number[])[];
}

const ENDS_ONLY: ReadonlySet<string> = new Set<TaperRule>(['ends', 'ends-signed-mean', 'top-pair-less-bottom-pair']);
const isRound = (rule: string): rule is RoundRule => (ROUND_RULES as readonly string[]).includes(rule);
const isTaper = (rule: string): rule is TaperRule => (TAPER_RULES as readonly string[]).includes(rule);

/** The maker's rule where it is one of that form, else the usual: the same height, and the ends. */
export function ruleFor(
  form: 'out-of-round' | 'taper',
  stated: string | undefined,
): { readonly rule: RoundRule | TaperRule; readonly stated: boolean } {
  if (stated !== undefined && (form === 'out-of-round' ? isRound(stated) : isTaper(stated)))
    return { rule: stated as RoundRule | TaperRule, stated: true };
  return { rule: form === 'out-of-round' ? 'same-height' : 'ends', stated: false };
}

/** Stations that a form needs: all, but for a taper by its ends those of the first and the last height. */
export function stationsNeeded(form: Form, stations: readonly Station[], rule: string | undefined): readonly Station[] {
  if (form === 'single') return stations.slice(0, 1);
  if (form !== 'taper' || !ENDS_ONLY.has(ruleFor('taper', rule).rule)) return stations;
  const heights = stations.map(({ height = 0 }) => height);
  const [first, last] = [Math.min(...heights), Math.max(...heights)];
  return stations.filter(({ height = 0 }) => height === first || height === last);
}

function gridOf(stations: readonly Station[]): Grid | undefined {
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
  return whole ? { columns: sorted.map((column) => column.map(({ at }) => at)) } : undefined;
}

/** Whether stations can give a form: no out-of-round of one direction, no taper of one height, no grid with holes. */
export function canForm(form: Form, stations: readonly Station[]): boolean {
  if (stations.length === 0) return false;
  if (form !== 'out-of-round' && form !== 'taper') return true;
  const columns = gridOf(stations)?.columns ?? [];
  return form === 'taper' ? (columns[0]?.length ?? 0) > 1 : columns.length > 1;
}

/** Figure of a form from readings, one for each station; the stations can form it (`canForm`). */
export function formed(
  form: Form,
  stations: readonly Station[],
  values: readonly number[],
  rule: string | undefined,
): Formed {
  switch (form) {
    case 'single':
      return { value: values[0]!, by: [1], words: '' };
    case 'mean':
      return {
        value: values.length === 1 ? values[0]! : mean(values),
        by: values.map(() => 1 / values.length),
        words: values.length === 1 ? '' : `mean of ${values.length}`,
      };
    case 'largest':
    case 'smallest': {
      const at = extreme(values, form);
      return {
        value: values[at]!,
        by: only(values.length, [at, 1]),
        words: values.length === 1 ? '' : `${form} of ${values.length}`,
      };
    }
    case 'spread': {
      const [high, low] = [extreme(values, 'largest'), extreme(values, 'smallest')];
      return {
        value: spread(values),
        by:
          high === low
            ? only(values.length, [0, 1], [values.length - 1, -1])
            : only(values.length, [high, 1], [low, -1]),
        words: 'largest less smallest',
      };
    }
    case 'out-of-round':
    case 'taper':
      return ofGrid(form, stations, values, rule);
  }
}

/** Place of the largest or smallest; the first of equal ones. */
function extreme(values: readonly number[], which: 'largest' | 'smallest'): number {
  let best = 0;
  for (let at = 1; at < values.length; at += 1)
    if (which === 'largest' ? values[at]! > values[best]! : values[at]! < values[best]!) best = at;
  return best;
}
function only(count: number, ...given: readonly (readonly [at: number, by: number])[]): readonly number[] {
  const by = new Array<number>(count).fill(0);
  for (const [at, one] of given) by[at]! += one;
  return by;
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

function ofGrid(
  form: 'out-of-round' | 'taper',
  stations: readonly Station[],
  values: readonly number[],
  stated: string | undefined,
): Formed {
  const columns = gridOf(stations)?.columns ?? [];
  const { rule, stated: byMaker } = ruleFor(form, stated);
  const figure = (of: readonly number[]): number => {
    const lists = columns.map((column) => column.map((at) => of[at]!));
    return form === 'out-of-round' ? outOfRound(lists, rule as RoundRule) : taper(lists, rule as TaperRule);
  };
  return {
    value: figure(values),
    by: slopes(figure, values),
    words: `${WORDS[rule]}${byMaker ? ', the maker’s rule' : ', the usual rule'}`,
  };
}

/** Shares of the largest reading: apart enough to break ties, and a step far smaller than that. */
const APART = 1e-9;
const STEP = 1e-10;

/**
 * Slopes of a figure that is made of straight pieces (differences, largest, smallest, means). Readings alike to the last digit are
 * first set apart by a billionth, in their order, so that one of them decides instead of none or all.
 */
function slopes(figure: (values: readonly number[]) => number, values: readonly number[]): readonly number[] {
  const scale = Math.max(...values.map(Math.abs)) || 1;
  const apart = values.map((one, at) => one + APART * scale * at);
  const here = figure(apart);
  return values.map((_, at) => {
    const kept = apart[at]!;
    apart[at] = kept + STEP * scale;
    const slope = (figure(apart) - here) / (STEP * scale);
    apart[at] = kept;
    return Math.round(slope * ROUND) / ROUND;
  });
}
/** Slopes are sums of ±1, ±1/2 and shares of a mean; rounding of the arithmetic is taken off. */
const ROUND = 1e4;
