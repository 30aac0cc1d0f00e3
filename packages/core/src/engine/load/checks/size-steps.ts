import { formatQuantity, parseQuantity } from '../../../quantity/index.js';
import type { Engine, InspectionLimit, PistonStock, ShellStock, Stock } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';
import { type Range, rangeOf } from './ranges.js';
import { baseOf, sizeStepOf, textOf } from './row-words.js';

/** A row for an undersize or oversize part, and what the standard row moved by its step would be. */
export interface StepJudgement {
  readonly row: BuiltLimit;
  readonly standard: BuiltLimit;
  readonly wanted: Range;
  readonly printed: Range;
  readonly lowAgrees: boolean;
  readonly highAgrees: boolean;
}

/** Every undersize and oversize row whose words say how far it lies from a standard row of the same size. */
export function judgeSizeSteps(limits: readonly BuiltLimit[]): readonly StepJudgement[] {
  const standards = new Map<string, BuiltLimit>();
  for (const row of limits) {
    const base = baseOf(row.limit);
    if (sizeStepOf(row.limit) === undefined && !standards.has(base)) standards.set(base, row);
  }
  return limits.flatMap((row) => {
    const [shift, printed] = [shiftOf(row), rangeOf(row)];
    const standard = standards.get(baseOf(row.limit));
    const from = standard && rangeOf(standard);
    if (shift === undefined || printed === undefined || standard === undefined || from === undefined) return [];
    const wanted = { low: from.low + shift, high: from.high + shift };
    // The step is a round figure: only the two printed sizes were rounded.
    const allowed = 0.51 * (standard.unit === row.unit ? row.step : row.step + standard.step);
    const agrees = (end: keyof Range) => Math.abs(wanted[end] - printed[end]) <= allowed;
    return [{ row, standard, wanted, printed, lowAgrees: agrees('low'), highAgrees: agrees('high') }];
  });
}

/** Cautions where an undersize or oversize row is not the standard row moved by its step. */
export function checkSizeSteps(limits: readonly BuiltLimit[], reader: SheetReader): void {
  for (const { row, standard, wanted, lowAgrees, highAgrees } of judgeSizeSteps(limits)) {
    if (lowAgrees && highAgrees) continue;
    const { part, what, whenNew } = row.limit;
    const print = `${part}, ${what}: ${whenNew?.text} is printed for ${stepWords(row.limit)}`;
    const moved = `the standard ${standard.limit.whenNew?.text} moved by it is ${shown(wanted, row)}`;
    const only = lowAgrees === highAgrees ? '' : `; only the ${lowAgrees ? 'upper' : 'lower'} end is off`;
    reader.caution('step-disagrees', row.path, `${print}, but ${moved}${only}`);
  }
}

const differs = (a: Range, b: Range, allowed: number) =>
  Math.abs(a.low - b.low) > allowed || Math.abs(a.high - b.high) > allowed;

const stepWords = (limit: InspectionLimit) => {
  const step = sizeStepOf(limit);
  return `${step?.text} ${step?.direction}size`;
};
/** How far the words say that a row lies from standard, in SI; a shell wall grows by half of the undersize of its journal. */
function shiftOf(row: BuiltLimit): number | undefined {
  const step = sizeStepOf(row.limit);
  if (step?.text === undefined || row.limit.quantity !== 'length') return undefined;
  const read = parseQuantity('length', /[a-z]/i.test(step.text) ? step.text : `${step.text} ${row.unit}`);
  if (!read.ok) return undefined;
  if (/wall|(shell|bearing).*thickness/.test(textOf(row.limit))) return read.value.value / 2;
  return step.direction === 'over' ? read.value.value : -read.value.value;
}

function shown(range: Range, row: BuiltLimit): string {
  const places = /\.(\d+)/.exec(row.limit.whenNew?.text ?? '')?.[1]?.length ?? 3;
  const text = (value: number) => formatQuantity('length', value, row.unit, places);
  return `${text(range.low)} to ${text(range.high)}`;
}

/** A micrometre: finer than the last place in which pistons and shells are listed. */
const LISTED = 1e-6;

/** Listed pistons and shells are a standard one of the list moved by their step. */
export function checkStockSteps(engine: Engine, reader: SheetReader): void {
  const stock: Stock | undefined = engine.stock;
  if (stock === undefined) return;
  stock.pistons.forEach((each, index) => {
    compare(each, skirtOf, each.oversize, stock.pistons, (part) => part.oversize, ['stock', 'pistons', index], reader);
  });
  for (const list of ['mainShells', 'rodShells'] as const) {
    stock[list].forEach((each, index) => {
      const path: Path = ['stock', list, index];
      compare(each, wallOf, each.undersize / 2, stock[list], (part) => part.undersize, path, reader);
    });
  }
}

const skirtOf = (part: PistonStock) => part.skirt as Range | undefined;
const wallOf = (part: ShellStock) => part.wall as Range;

function compare<T extends PistonStock | ShellStock>(
  part: T,
  sizeOf: (part: T) => Range | undefined,
  shift: number,
  list: readonly T[],
  stepOf: (part: T) => number,
  path: Path,
  reader: SheetReader,
): void {
  const size = sizeOf(part);
  if (stepOf(part) === 0 || size === undefined) return;
  const standard = list
    .flatMap((each) => (stepOf(each) === 0 ? [sizeOf(each)] : []))
    .filter((each) => each !== undefined);
  if (standard.length === 0) return;
  if (standard.some((each) => !differs({ low: each.low + shift, high: each.high + shift }, size, LISTED))) return;
  const by = formatQuantity('length', shift, 'mm', 4);
  reader.caution(
    'step-disagrees',
    path,
    `${part.name}, ${part.id}: its size is no standard one of the list moved by ${by}`,
  );
}
