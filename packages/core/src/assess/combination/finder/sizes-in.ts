/** Every size that a combination rests on, with its place, and the same combination with some of them elsewhere. */
import type { Option, Size } from './model.js';
import type { World } from './world.js';

/** Steps down to a size: names of fields, places in lists. The first is `fixed` or the key of a choice. */
export type Place = readonly string[];
export interface SizeAt {
  readonly name: string;
  readonly place: Place;
  readonly value: number;
  readonly u: number | undefined;
}

const isSize = (given: unknown): given is Exclude<Size, number> =>
  typeof given === 'object' && given !== null && 'value' in given && typeof given.value === 'number';
/** Numbers that are names, and readings of a table, which are taken as exact. */
const NO_SIZES = new Set(['number', 'angles', 'lifts', 'exponents']);

function walk(given: unknown, place: Place): readonly SizeAt[] {
  const name = place.join(' ');
  if (typeof given === 'number') return [{ name, place, value: given, u: undefined }];
  if (isSize(given)) return [{ name, place, value: given.value, u: given.u }];
  if (typeof given !== 'object' || given === null) return [];
  return Object.entries(given).flatMap(([key, own]) => (NO_SIZES.has(key) ? [] : walk(own, [...place, key])));
}

/** All sizes of the fixed engine and of what is picked. */
export const sizesIn = ({ fixed, picked }: World): readonly SizeAt[] => [
  ...walk(fixed, ['fixed']),
  ...[...picked].flatMap(([key, { sizes }]) => Object.entries(sizes).flatMap(([size, own]) => walk(own, [key, size]))),
];

/** A copy with one size elsewhere; what does not lie on the way is shared. */
function put<T>(given: T, place: Place, value: number): T {
  const [step, ...rest] = place;
  if (step === undefined) return value as T;
  if (Array.isArray(given)) {
    const copy = [...given];
    copy[Number(step)] = put(copy[Number(step)], rest, value);
    return copy as T;
  }
  const own = given as Record<string, unknown>;
  return { ...own, [step]: put(own[step], rest, value) } as T;
}

/** The combination with sizes at some places given other values. */
export function movedTo(world: World, places: readonly Place[], values: readonly number[]): World {
  let { fixed } = world;
  const picked = new Map<string, Option>(world.picked);
  for (const [at, [root, ...rest]] of places.entries()) {
    if (root === 'fixed') fixed = put(fixed, rest, values[at]!);
    else {
      const option = picked.get(root!)!;
      picked.set(root!, { ...option, sizes: put(option.sizes, rest, values[at]!) });
    }
  }
  return { fixed, picked };
}
