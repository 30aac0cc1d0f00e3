/** Options that nobody offers yet: even rows of sizes that could be bought, cut or moved. */
import { cubicCentimetres, degrees, mm, type QuantityKind } from '../../../quantity/index.js';
import { sizeValue } from './choices.js';
import type { Choice, ChoiceKind, FoundAddition, Option } from './model.js';

/** One row of sizes for one choice; the other sizes of the part stay as those of a part on offer. */
export interface Candidates {
  /** Place of the choice. */
  readonly choice: number;
  readonly size: string;
  readonly quantity: QuantityKind;
  readonly step: number;
  readonly beside: Readonly<Record<string, number>>;
  readonly options: readonly Option[];
}

interface Row {
  readonly size: string;
  readonly quantity: QuantityKind;
  /** How far beyond what is on offer is looked, and in which steps. */
  readonly beyond: number;
  readonly step: number;
  readonly least: number;
}
const ROWS: Readonly<Record<ChoiceKind, readonly Row[]>> = {
  gasket: [{ size: 'thickness', quantity: 'length', beyond: mm(1.5), step: mm(0.01), least: mm(0.1) }],
  piston: [
    { size: 'compressionHeight', quantity: 'length', beyond: mm(2), step: mm(0.02), least: 0 },
    {
      size: 'crownVolume',
      quantity: 'volume',
      beyond: cubicCentimetres(20),
      step: cubicCentimetres(0.2),
      least: Number.NEGATIVE_INFINITY,
    },
  ],
  chamber: [{ size: 'value', quantity: 'volume', beyond: cubicCentimetres(20), step: cubicCentimetres(0.2), least: 0 }],
  'deck-cut': [{ size: 'value', quantity: 'length', beyond: mm(1), step: mm(0.01), least: 0 }],
  'head-cut': [{ size: 'value', quantity: 'length', beyond: mm(1.5), step: mm(0.01), least: 0 }],
  'cam-advance': [
    { size: 'value', quantity: 'angle', beyond: degrees(12), step: degrees(0.5), least: Number.NEGATIVE_INFINITY },
  ],
  'rocker-ratio': [{ size: 'value', quantity: 'ratio', beyond: 0.3, step: 0.02, least: 0.5 }],
  pushrod: [{ size: 'value', quantity: 'length', beyond: mm(3), step: mm(0.05), least: 0 }],
};

/** Rows for every choice: one for each size of it that could be other, and each different set of its other sizes. */
export const candidatesOf = (choices: readonly Choice[]): readonly Candidates[] =>
  choices.flatMap((choice, at) => ROWS[choice.kind].flatMap((row) => rowsOf(choice, at, row)));

/** Options that have such a size: parts that stay as they are have none. */
const sized = (options: readonly Option[], size: string) => options.filter(({ sizes }) => sizes[size] !== undefined);

function rowsOf(given: Choice, choice: number, row: Row): readonly Candidates[] {
  const { size, quantity, beyond, step, least } = row;
  const options = sized(given.options, size);
  if (options.length === 0) return [];
  const offered = options.map(({ sizes }) => sizeValue(sizes[size]!));
  // Whole steps, so that what is proposed reads as a size: 0.95 mm, not 0.9503.
  const from = Math.ceil(Math.max(least, Math.min(...offered) - beyond) / step);
  const to = Math.floor((Math.max(...offered) + beyond) / step);
  const values = Array.from({ length: Math.max(0, to - from + 1) }, (_, at) => (from + at) * step);
  const sets = new Map(options.map(({ sizes }) => [JSON.stringify(besideOf(sizes, size)), sizes]));
  return [...sets.values()].map((sizes) => ({
    choice,
    size,
    quantity,
    step,
    beside: besideOf(sizes, size),
    options: values.map((value) => ({ name: '', sizes: { ...sizes, [size]: value } })),
  }));
}

const besideOf = (sizes: Option['sizes'], size: string): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(sizes).flatMap(([name, own]) => (name === size ? [] : [[name, sizeValue(own)]])));

/** Stretches of a row that serve. */
export function additionsOf(
  { choice, size, quantity, step, beside, options }: Candidates,
  choices: readonly Choice[],
  serves: ArrayLike<number>,
): readonly FoundAddition[] {
  const { key, kind, title, options: offered } = choices[choice]!;
  const found: FoundAddition[] = [];
  let start: number | undefined;
  for (let at = 0; at <= options.length; at += 1) {
    if (serves[at] === 1) start ??= at;
    else if (start !== undefined) {
      const [from, to] = [start, at - 1].map((place) => sizeValue(options[place]!.sizes[size]!)) as [number, number];
      const nearest = nearestOf(sized(offered, size), size, from, to);
      found.push({ choice: key, kind, title, size, quantity, from, to, step, beside, ...(nearest && { nearest }) });
      start = undefined;
    }
  }
  return found;
}

/** Well below a step of any row, in SI. */
const ALIKE = 1e-12;
/** What is on offer nearest to a stretch, where all of it lies beyond the same end. */
function nearestOf(options: readonly Option[], size: string, from: number, to: number): FoundAddition['nearest'] {
  const each = options.map(({ name, sizes }) => ({ name, value: sizeValue(sizes[size]!) }));
  const above = each.every(({ value }) => value > to + ALIKE);
  const below = each.every(({ value }) => value < from - ALIKE);
  const lies = above ? 'above' : below ? 'below' : undefined;
  if (lies === undefined) return undefined;
  const near = each.reduce((best, one) => ((lies === 'above') === one.value < best.value ? one : best));
  return { ...near, lies };
}
