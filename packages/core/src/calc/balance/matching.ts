import type { Mass } from '../../quantity/index.js';

/**
 * What to take off each piece so that all weigh what the lightest does [kg]: mi − least m. Source: common practice.
 *
 * Example: 583.9, 585.1, 584.2 g: 0, 1.2, 0.3 g.
 */
export const removals = (masses: readonly Mass[], to: Mass): readonly Mass[] =>
  masses.map((one) => Math.max(0, one - to) as Mass);

export interface Pairing {
  /** Place in the second list, from 0, for each of the first. */
  readonly partner: readonly number[];
  readonly sums: readonly Mass[];
}

/**
 * Pairs two lists of one length so that the sums lie as close together as pairing alone can bring them: the heaviest of
 * one with the lightest of the other. An exchange argument shows that this makes the largest sum least and the smallest
 * sum greatest at once, so the spread is the least there is.
 *
 * Example: 580, 584 and 120, 125 g: 580 + 125 and 584 + 120. Source: derived.
 */
export function pairOpposite(first: readonly Mass[], second: readonly Mass[]): Pairing {
  const order = (list: readonly number[]) =>
    list.map((_, at) => at).sort((a, b) => (list[a] as number) - (list[b] as number));
  const falling = order(second).reverse();
  const partner = new Array<number>(first.length);
  for (const [rank, place] of order(first).entries()) partner[place] = falling[rank] as number;
  const sums = first.map((one, place) => (one + (second[partner[place] as number] as Mass)) as Mass);
  return { partner, sums };
}
