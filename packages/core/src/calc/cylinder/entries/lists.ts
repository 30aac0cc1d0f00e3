/** Lists with one value a cylinder, or one value for all of them. */
import { done, type Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';

/** Brings lists to one length: a single value stands for every cylinder. Refuses lists of other lengths by name. */
export function sameLength<T extends Readonly<Record<string, readonly number[] | undefined>>>(
  lists: T,
): Outcome<
  { readonly count: number; readonly at: <N extends keyof T>(name: N, place: number) => Member<T[N]> },
  Conflict
> {
  const given = Object.entries(lists).flatMap(([name, list]) =>
    list === undefined ? [] : [{ name, size: list.length }],
  );
  const count = Math.max(...given.map(({ size }) => size));
  const wrong = given.filter(({ size }) => size !== 1 && size !== count).map(({ name }) => name);
  if (wrong.length > 0) return conflict(wrong, `each list needs one value, or ${count}: one for each place`);
  const at = <N extends keyof T>(name: N, place: number) => {
    const list = lists[name];
    return (list?.length === 1 ? list[0] : list?.[place]) as Member<T[N]>;
  };
  return done({ count, at });
}

type Member<L> = L extends readonly (infer V)[] ? V : undefined;
