import { formatQuantity, toUnit } from '../../../quantity/index.js';
import type { BuiltLimit } from '../build/limits.js';
import type { SheetReader } from '../reader.js';
import { FITS, type FitRule, fitsWords, type Words } from './fit-table.js';
import { type FitVerdict, fitVerdict, leftOver, type PointSlip, pointSlip, type Range, rangeOf } from './ranges.js';
import { type Aspect, canMeet, sizeStepOf, textOf, wordsOf } from './row-words.js';

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

/** Every printed clearance whose parts are printed too, with the verdict for each set of parts that belong together. */
export function judgeFits(limits: readonly BuiltLimit[]): readonly FitJudgement[] {
  const sizes = limits.filter((each) => rangeOf(each) !== undefined && sizeStepOf(each.limit) === undefined);
  return FITS.flatMap((rule) =>
    sizes.filter((gap) => fitsWords(gap.limit, rule.gap)).flatMap((gap) => judgeGap(rule, gap, sizes)),
  );
}

/** Cautions where parts from the printed ranges cannot give the printed clearance, or only when matched to each other. */
export function checkFits(limits: readonly BuiltLimit[], reader: SheetReader): void {
  for (const fit of judgeFits(limits)) {
    if (fit.verdict === 'agrees') continue;
    const code =
      fit.verdict === 'selective'
        ? 'selective-fit'
        : fit.slip === undefined && fit.partSlip === undefined
          ? 'fit-disagrees'
          : 'ten-times-off';
    reader.caution(code, fit.gap.path, sentence(fit));
  }
}

const SCOPES: readonly Aspect[] = ['cylinders', 'bank', 'grade'];

function judgeGap(rule: FitRule, gap: BuiltLimit, sizes: readonly BuiltLimit[]): readonly FitJudgement[] {
  const printed = printedGap(gap);
  if (printed === undefined) return [];
  const terms = [rule.whole, ...rule.taken.map((each) => each.words)];
  const aspects = [...SCOPES, ...rule.aspects];
  return setsOf(
    terms.map((words) => candidates(words, gap, sizes, aspects)),
    aspects,
  ).map((parts) => judge(rule, gap, parts, printed));
}

/** Rows that can be this part. Where the maker grades it, the row of all grades together says nothing more. */
function candidates(
  words: Words,
  gap: BuiltLimit,
  sizes: readonly BuiltLimit[],
  aspects: readonly Aspect[],
): readonly BuiltLimit[] {
  const meet = sizes.filter(
    (each) => fitsWords(each.limit, words) && canMeet(wordsOf(each.limit), wordsOf(gap.limit), aspects),
  );
  const graded = meet.filter((each) => wordsOf(each.limit).grade !== undefined);
  return graded.length > 0 ? graded : meet;
}

/** One row for each term, all of which can meet. */
function setsOf(
  terms: readonly (readonly BuiltLimit[])[],
  aspects: readonly Aspect[],
): readonly (readonly BuiltLimit[])[] {
  return terms.reduce<readonly (readonly BuiltLimit[])[]>(
    (sets, rows) =>
      sets.flatMap((set) =>
        rows
          .filter((row) => set.every((each) => canMeet(wordsOf(each.limit), wordsOf(row.limit), aspects)))
          .map((row) => [...set, row]),
      ),
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

function sentence(fit: FitJudgement): string {
  const { gap, parts } = fit;
  const name = `${gap.limit.part}, ${gap.limit.what}`;
  const made = parts
    .map((each, index) => {
      const twice = index > 0 && fit.rule.taken[index - 1]!.times === 2 ? 'twice ' : '';
      return `${twice}${each.limit.part} ${each.limit.what}${gradeWords(each)} ${each.limit.whenNew?.text}`;
    })
    .join(', ');
  const head = `${name}: ${made} give ${rangeText(fit.found, gap, parts)}`;
  const print = gap.limit.whenNew?.text;
  if (fit.verdict === 'selective')
    return `${head}, and the printed ${print} lies within: a selective fit, parts must be matched to each other`;
  const tail = slipTail(fit) ?? 'does not agree; judge by measured parts';
  return `${head}, but ${print} is printed: ${tail}`;
}

const gradeWords = ({ limit }: BuiltLimit) => (limit.applies?.grade === undefined ? '' : ` (${limit.applies.grade})`);

function slipTail({ slip, partSlip }: FitJudgement): string | undefined {
  if (partSlip !== undefined) {
    const times = partSlip.factor < 1 ? 'a tenth' : 'ten times';
    return `${times} of ${partSlip.part.limit.whenNew?.text} would agree; a slip of the decimal point`;
  }
  if (slip === undefined) return undefined;
  const end = slip.low === slip.high ? '' : slip.low === 1 ? ' at its upper end' : ' at its lower end';
  const factor = (slip.low === 1 ? slip.high : slip.low) < 1 ? 'a tenth of it' : 'ten times it';
  return `${factor}${end} would agree; a slip of the decimal point`;
}

/** In the unit of the clearance, with the places of the finest part. */
function rangeText(range: Range, gap: BuiltLimit, parts: readonly BuiltLimit[]): string {
  const { unit } = gap;
  const finest = Math.min(gap.step, ...parts.map((each) => each.step));
  const places = Math.min(6, Math.max(0, Math.ceil(-Math.log10(toUnit('length', finest as never, unit)) - 1e-6)));
  const low = formatQuantity('length', range.low, unit, places);
  const high = formatQuantity('length', range.high, unit, places);
  return `${low} to ${high}`;
}
