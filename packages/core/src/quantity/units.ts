import { type Exact, exactDecimal, exactProduct, exactQuotient, toNumber } from './exact.js';
import { QUANTITY_KINDS, type QuantityKind, type QuantityOf } from './kinds.js';
import { UNIT_ROWS, type UnitRow, type UnitSystem } from './unit-table.js';

/** A unit of one kind, ready to convert: SI value = `zero` + number x `times` / `per`. */
export interface Unit {
  readonly kind: QuantityKind;
  /** The unit's own spelling, used wherever a value is printed. */
  readonly name: string;
  /** Printed instead of `name` when the magnitude is above one. */
  readonly plural: string;
  readonly system: UnitSystem;
  /** Exact size in the SI unit, and exact SI value at 0 on its scale (0 but for °C and °F). */
  readonly size: Exact;
  readonly zero: Exact;
  readonly times: number;
  readonly per: number;
  readonly offset: number;
}

const product = (text: string): Exact => text.split('*').map(exactDecimal).reduce(exactProduct);

function makeUnit(kind: QuantityKind, [name, size, system, , more]: UnitRow): Unit {
  const [times = '1', per = '1'] = size.split('/');
  const [zeroTimes = '0', zeroPer = '1'] = (more?.zero ?? '0').split('/');
  const zero = exactQuotient(product(zeroTimes), product(zeroPer));
  return {
    kind,
    name,
    plural: more?.plural ?? name,
    system,
    size: exactQuotient(product(times), product(per)),
    zero,
    times: toNumber(product(times)),
    per: toNumber(product(per)),
    offset: toNumber(zero),
  };
}

/** One spelling for every way to type a unit: `N.m`, `N-m`, `N m` and `N·m` are one, `mm²` is `mm2`, µ and μ are u. */
const fold = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[µμ]/g, 'u')
    .replace(/[º˚]/g, '°')
    .replace(/²|\^2/g, '2')
    .replace(/³|\^3/g, '3')
    .trim()
    .replace(/\s*[·.*⋅•×∙-]\s*/g, '·')
    .replace(/\s+/g, ' ');

const spellings = ([name, , , also = '', more]: UnitRow): string[] =>
  [name, more?.plural ?? name, ...also.split('|')].filter((word, at) => at === 0 || word !== '').map(fold);

const makeKind = (kind: QuantityKind) => {
  const list = UNIT_ROWS[kind].map((row) => makeUnit(kind, row));
  const byWord = new Map<string, Unit>();
  UNIT_ROWS[kind].forEach((row, at) => {
    byWord.set(row[0], list[at]!);
    for (const word of spellings(row)) byWord.set(word, list[at]!).set(word.replaceAll('·', ' '), list[at]!);
  });
  return { list, byWord };
};

const KINDS = new Map(QUANTITY_KINDS.map((kind) => [kind, makeKind(kind)]));

/** The units of a kind, the usual engineering unit first. */
export const unitsOf = (kind: QuantityKind): readonly Unit[] => KINDS.get(kind)!.list;

/** The unit of this kind that a text spells, or undefined. Letter case, µ/μ, superscripts and N.m/N-m/N·m are all read. */
export function findUnit(kind: QuantityKind, text: string): Unit | undefined {
  const { byWord } = KINDS.get(kind)!;
  return byWord.get(text) ?? byWord.get(fold(text));
}

/** The kinds in which a text is a unit: `N·m` is one of torque. Used to say what a wrong unit is. */
export const kindsOfUnit = (text: string): readonly QuantityKind[] =>
  QUANTITY_KINDS.filter((kind) => findUnit(kind, text) !== undefined);

/** SI value of a number on a unit's scale. */
export const numberToSi = ({ times, per, offset }: Unit, number: number): number => (number * times) / per + offset;

/** Number on a unit's scale of an SI value. */
export const siToNumber = ({ times, per, offset }: Unit, value: number): number => ((value - offset) * per) / times;

/** The unit of this kind that a text spells. Throws RangeError when there is none: a defect of the caller. */
export function unitOrThrow(kind: QuantityKind, unit: string): Unit {
  const found = findUnit(kind, unit);
  if (found === undefined) throw new RangeError(`"${unit}" is no unit of ${kind}`);
  return found;
}

/**
 * SI value of a number in a unit, e.g. `fromUnit('length', 4.03, 'in')`. For temperatures the scale's zero is counted in;
 * for a difference use the kind `temperature-difference`.
 * Throws RangeError when the kind has no such unit: text from outside goes through `parseQuantity` or `findUnit` first.
 */
export function fromUnit<K extends QuantityKind>(kind: K, number: number, unit: string): QuantityOf<K> {
  return numberToSi(unitOrThrow(kind, unit), number) as QuantityOf<K>;
}

/** Number of an SI value in a unit; the inverse of `fromUnit`, with the same refusal. */
export function toUnit<K extends QuantityKind>(kind: K, value: number, unit: string): number {
  return siToNumber(unitOrThrow(kind, unit), value);
}
