import { formatQuantity, toUnit } from '../../../quantity/index.js';
import type { BuiltLimit } from '../build/limits.js';
import type { SheetReader } from '../reader.js';
import { type FitJudgement, judgeFits } from './fits.js';
import type { Range } from './ranges.js';

/** Cautions where parts from the printed ranges cannot give the printed clearance, or only when matched to each other. */
export function checkFits(limits: readonly BuiltLimit[], reader: SheetReader): void {
  for (const fit of judgeFits(limits)) {
    if (fit.verdict !== 'agrees') reader.caution(codeOf(fit), fit.gap.path, sentence(fit));
  }
}

function codeOf({ verdict, slip, partSlip }: FitJudgement): string {
  if (verdict === 'selective') return 'selective-fit';
  return slip === undefined && partSlip === undefined ? 'fit-disagrees' : 'ten-times-off';
}

/** What the parts give, what is printed, and what follows. */
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
  const places = Math.min(6, Math.max(0, Math.ceil(-Math.log10(toUnit('length', finest, unit)) - 1e-6)));
  const low = formatQuantity('length', range.low, unit, places);
  const high = formatQuantity('length', range.high, unit, places);
  return `${low} to ${high}`;
}
