/** Pistons of the sheet's stock that a search may choose: of the oversize that the bores have, and enough of them for all cylinders. */
import { type Option, type PistonOffered, type Size, sizeValue } from '../../assess/combination/finder/index.js';
import { figure, makeupOf } from '../../assess/index.js';
import type { Engine, PistonStock } from '../../engine/index.js';
import type { ShownIn } from '../measure-views.js';
import { shownQuantity } from './shown.js';
import type { Tried } from './tried.js';

/** Grades of one form are one choice: which grade goes into which bore is decided when they are fitted. */
export interface PistonChoice {
  /** That of the first grade. */
  readonly id: string;
  readonly grades: readonly PistonStock[];
  readonly height: Size;
  readonly crown: Size;
  /** For all cylinders; the dearest of the grades that are bought. */
  readonly price?: number;
}
export interface PistonsOfStock {
  readonly offered: readonly PistonChoice[];
  /** Each of the others with the reason. */
  readonly left: readonly string[];
}

const kept = new WeakMap<Tried, PistonsOfStock>();
/** Pistons on offer for what is tried, and those left out with the reason of each; worked out once for each scratch copy. */
export function pistonsOfStock(tried: Tried): PistonsOfStock {
  const known = kept.get(tried) ?? sorted(tried);
  kept.set(tried, known);
  return known;
}

function sorted(tried: Tried): PistonsOfStock {
  const { engine, pistonSize } = tried;
  const pistons = engine.stock?.pistons ?? [];
  if (pistons.length === 0) return { offered: [], left: [] };
  if (pistonSize.kind === 'several')
    return { offered: [], left: ['The bores are decided for two sizes: no one set of pistons serves all of them.'] };
  const judged = byForm(pistons).map((grades) => choiceOf(engine, grades, pistonSize.oversize));
  return {
    offered: judged.filter((one) => typeof one !== 'string'),
    left: judged.filter((one) => typeof one === 'string'),
  };
}

const formOf = ({ oversize, form, compressionHeight, crownVolume, pocketDeeper, mass }: PistonStock): string =>
  JSON.stringify([oversize.toFixed(9), form, compressionHeight, crownVolume, pocketDeeper, mass]);

function byForm(pistons: readonly PistonStock[]): readonly (readonly PistonStock[])[] {
  const groups = new Map<string, PistonStock[]>();
  for (const one of pistons) groups.set(formOf(one), [...(groups.get(formOf(one)) ?? []), one]);
  return [...groups.values()];
}

/** The choice, or why it is none. */
function choiceOf(engine: Engine, grades: readonly PistonStock[], oversize: number): PistonChoice | string {
  const [first] = grades;
  const words = nameOf(grades);
  if (Math.abs(first!.oversize - oversize) > SAME)
    return `${words}: ${sizeWords(first!.oversize)}, the bores are for ${oversize === 0 ? 'standard' : sizeWords(oversize)}.`;
  const [height, crown] = [heightOf(engine, first!), crownOf(engine, first!)];
  if (height === undefined) return `${words}: its compression height is not stated.`;
  if (crown === undefined) return `${words}: its crown volume is not stated.`;
  const needed = engine.layout.cylinders.length;
  const pieces = grades.reduce((sum, { count = Number.POSITIVE_INFINITY }) => sum + count, 0);
  if (pieces < needed) return `${words}: there are ${pieces}, ${needed} are needed.`;
  const price = priceOf(grades, needed);
  return { id: first!.id, grades, height, crown, ...(price !== undefined && { price }) };
}
/** A nanometre. */
const SAME = 1e-9;
const sizeWords = (oversize: number): string =>
  oversize === 0 ? 'standard' : `${shownQuantity('length', oversize, { length: 'mm' })} oversize`;

/** A piston of the maker's form that states no size of its own is as the engine's were made. */
const heightOf = (engine: Engine, { compressionHeight, form }: PistonStock): Size | undefined =>
  compressionHeight ?? (form === undefined ? asMade(engine, 'compression-height') : undefined);
const crownOf = (engine: Engine, { crownVolume, form }: PistonStock): Size | undefined =>
  crownVolume ?? (form === undefined ? asMade(engine, 'piston-volume') : undefined);
function asMade(engine: Engine, key: string): Size | undefined {
  const found = figure(makeupOf(engine), key, engine.layout.cylinders[0]?.number);
  if (found === undefined) return undefined;
  return found.u === undefined ? found.value : { value: found.value, u: found.u };
}

/** What lies on the bench costs nothing more; the rest is bought, at the dearest of its grades. */
function priceOf(grades: readonly PistonStock[], needed: number): number | undefined {
  const lying = grades.reduce((sum, { count = 0 }) => sum + count, 0);
  const missing = Math.max(0, needed - lying);
  const prices = grades.filter(({ count }) => count === undefined).map(({ price }) => price);
  if (missing === 0) return 0;
  return prices.includes(undefined) ? undefined : missing * Math.max(...(prices as readonly number[]));
}

/** "flat piston PT4-22", of several grades "piston PT4-21A or PT4-21B". */
function nameOf(grades: readonly PistonStock[]): string {
  const numbers = grades.flatMap(({ partNumber }) => partNumber ?? []);
  const name = grades[0]!.name;
  return numbers.length === 0 ? name : `${name} ${numbers.join(' or ')}`;
}

/** "piston A-12, compression height 35.600 mm, crown 4.0 cm3, price 38"; what the sheet does not give is not named. */
export function pistonWords({ grades, price }: PistonChoice, shownIn: ShownIn): string {
  const { compressionHeight, crownVolume } = grades[0]!;
  return [
    nameOf(grades),
    ...(compressionHeight === undefined
      ? []
      : [`compression height ${shownQuantity('length', compressionHeight, shownIn)}`]),
    ...(crownVolume === undefined ? [] : [`crown ${shownQuantity('volume', crownVolume, shownIn)}`]),
    ...(compressionHeight === undefined && crownVolume === undefined ? ['as the maker fits it'] : []),
    ...(price === undefined ? [] : [price === 0 ? 'all of them lie here' : `the set ${price}`]),
  ].join(', ');
}

/** As the finder takes it. */
export function pistonOffered({ grades, height, crown, price }: PistonChoice): PistonOffered {
  const { pocketDeeper } = grades[0]!;
  return {
    name: nameOf(grades),
    compressionHeight: height,
    crownVolume: crown,
    ...(pocketDeeper !== undefined && { pocketDeeper }),
    ...(price !== undefined && { price }),
  };
}

/** Mass of a piston that was found, where it is one of the stock. */
export const massOfFound = (tried: Tried, { name, sizes }: Option): number | undefined =>
  pistonsOfStock(tried).offered.find(
    ({ grades, height, crown }) =>
      nameOf(grades) === name && same(height, sizes.compressionHeight) && same(crown, sizes.crownVolume),
  )?.grades[0]?.mass;
const same = (a: Size, b: Size | undefined): boolean => b !== undefined && sizeValue(a) === sizeValue(b);
