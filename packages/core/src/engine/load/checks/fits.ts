import type { BuiltLimit } from '../build/limits.js';
import { FITS, type FitRule, fitsWords, type Words } from './fit-table.js';
import { type FitVerdict, fitVerdict, leftOver, type PointSlip, pointSlip, type Range, rangeOf } from './ranges.js';
import { type Aspect, canMeet, type RowWords, sizeStepOf, textOf, wordsOf } from './row-words.js';

/** A printed clearance held against the parts that make it. */
export interface FitJudgement {
  readonly rule: FitRule;
  readonly gap: BuiltLimit;
  /** The whole first, then what is taken from it. */
  readonly parts: readonly BuiltLimit[];
  /** What the printed ranges of the parts give, and what is printed: clearance positive, in SI. */
  readonly found: Range;
  readonly printed: Range;
  readonly verdict: FitVerdict;
  /** The decimal point of the print, or of one part, stands in the wrong place. */
  readonly slip?: PointSlip;
  readonly partSlip?: { readonly part: BuiltLimit; readonly factor: number };
}

/** A row with what its words say, read once. */
interface Sized {
  readonly row: BuiltLimit;
  readonly words: RowWords;
}
/** More rows for one part, or more clearances of one kind, than any engine has: bounds the work on a hostile sheet. */
const MOST_CANDIDATES = 24;
const MOST_GAPS = 100;

/** Every printed clearance whose parts are printed too, with the verdict for each set of parts that belong together. */
export function judgeFits(limits: readonly BuiltLimit[]): readonly FitJudgement[] {
  const sizes = limits
    .filter((each) => rangeOf(each) !== undefined && sizeStepOf(each.limit) === undefined)
    .map((row) => ({ row, words: wordsOf(row.limit) }));
  const named = (words: Words) => sizes.filter((each) => fitsWords(each.row.limit, words));
  return FITS.flatMap((rule) => {
    const terms = [rule.whole, ...rule.taken.map((each) => each.words)].map(named);
    if (terms.some((rows) => rows.length === 0)) return [];
    return named(rule.gap)
      .slice(0, MOST_GAPS)
      .flatMap((gap) => judgeGap(rule, gap, terms));
  });
}

const SCOPES: readonly Aspect[] = ['cylinders', 'bank', 'grade'];

function judgeGap(rule: FitRule, gap: Sized, terms: readonly (readonly Sized[])[]): readonly FitJudgement[] {
  const printed = printedGap(gap.row);
  if (printed === undefined) return [];
  const aspects = [...SCOPES, ...rule.aspects];
  const sets = setsOf(
    terms.map((rows) => candidates(rows, gap, aspects)),
    aspects,
  );
  return sets.map((parts) =>
    judge(
      rule,
      gap.row,
      parts.map((each) => each.row),
      printed,
    ),
  );
}

/** Rows that can be this part. Where the maker grades it, the row of all grades together says nothing more. */
function candidates(rows: readonly Sized[], gap: Sized, aspects: readonly Aspect[]): readonly Sized[] {
  const meet = rows.filter((each) => each.row !== gap.row && canMeet(each.words, gap.words, aspects));
  const graded = meet.filter((each) => each.words.grade !== undefined);
  return (graded.length > 0 ? graded : meet).slice(0, MOST_CANDIDATES);
}

/** One row for each term, all of which can meet. */
function setsOf(terms: readonly (readonly Sized[])[], aspects: readonly Aspect[]): readonly (readonly Sized[])[] {
  return terms.reduce<readonly (readonly Sized[])[]>(
    (sets, rows) =>
      sets
        .flatMap((set) =>
          rows
            .filter((row) => set.every((each) => canMeet(each.words, row.words, aspects)))
            .map((row) => [...set, row]),
        )
        .slice(0, MOST_CANDIDATES ** 2),
    [[]],
  );
}

function judge(rule: FitRule, gap: BuiltLimit, parts: readonly BuiltLimit[], printed: Range): FitJudgement {
  const ranges = parts.map((each) => rangeOf(each)!);
  const found = leftOfFit(rule, ranges);
  const allowed = allowedFor(rule, gap, parts);
  const verdict = fitVerdict(found, printed, allowed);
  const fit = { rule, gap, parts, found, printed, verdict };
  if (verdict !== 'disagrees') return fit;
  const slip = pointSlip(found, printed, allowed);
  if (slip !== undefined) return { ...fit, slip };
  const partSlip = slippedPart(rule, parts, ranges, printed, allowed);
  return partSlip === undefined ? fit : { ...fit, partSlip };
}

function leftOfFit(rule: FitRule, [whole, ...taken]: readonly Range[]): Range {
  return leftOver(
    whole!,
    taken.map((range, index) => ({ range, times: rule.taken[index]!.times })),
  );
}

/** A part whose printed size is ten times too large or too small: with its decimal point moved the clearance would agree. */
function slippedPart(
  rule: FitRule,
  parts: readonly BuiltLimit[],
  ranges: readonly Range[],
  printed: Range,
  allowed: number,
): FitJudgement['partSlip'] {
  for (const factor of [0.1, 10]) {
    for (const [index, part] of parts.entries()) {
      const moved = ranges.map((each, at) =>
        at === index ? { low: each.low * factor, high: each.high * factor } : each,
      );
      if (fitVerdict(leftOfFit(rule, moved), printed, allowed) !== 'disagrees') return { part, factor };
    }
  }
  return undefined;
}

/** Half of the last printed place; where the rows are in two units, also half of that of each part, which was rounded by itself. */
function allowedFor(rule: FitRule, gap: BuiltLimit, parts: readonly BuiltLimit[]): number {
  const own = 0.51 * gap.step;
  if (parts.every((each) => each.unit === gap.unit)) return own;
  const times = [1, ...rule.taken.map((each) => each.times)];
  return own + parts.reduce((total, each, index) => total + 0.51 * each.step * times[index]!, 0);
}

/** Interference is printed without a sign: as a clearance it is negative. */
function printedGap(gap: BuiltLimit): Range | undefined {
  const range = rangeOf(gap);
  if (range === undefined || !/interference/.test(textOf(gap.limit)) || range.low < 0) return range;
  return { low: -range.high, high: -range.low };
}
