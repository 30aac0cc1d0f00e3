import type { Anatomy } from '../anatomy.js';
import type { Typical } from './typical.js';

type Stock = NonNullable<Anatomy['engine']['stock']>;

/** Features that the machine shop makes larger or smaller, with what can be bought for it. */
const LARGER: Readonly<Record<string, (stock: Stock) => readonly number[]>> = {
  'cylinder-bore': ({ pistons }) => pistons.map(({ oversize }) => oversize),
  'piston-skirt': ({ pistons }) => pistons.map(({ oversize }) => oversize),
  'main-shell': ({ mainShells }) => mainShells.map(({ undersize }) => undersize / 2),
  'rod-shell': ({ rodShells }) => rodShells.map(({ undersize }) => undersize / 2),
};
const SMALLER: Readonly<Record<string, (stock: Stock) => readonly number[]>> = {
  'main-journal': ({ mainShells }) => mainShells.map(({ undersize }) => undersize),
  crankpin: ({ rodShells }) => rodShells.map(({ undersize }) => undersize),
};

/** An engine may have been bored or ground before, and comes back so from the machine shop: its part is still a right one. */
export function reworked({ engine }: Anatomy, feature: string, range: Typical): Typical {
  if (engine.stock === undefined) return range;
  const more = Math.max(0, ...(LARGER[feature]?.(engine.stock) ?? []));
  const less = Math.max(0, ...(SMALLER[feature]?.(engine.stock) ?? []));
  if (more === 0 && less === 0) return range;
  return {
    ...range,
    low: range.low - less,
    high: range.high + more,
    why: `${range.why}; also the other sizes that can be bought`,
  };
}
