/** Parts of the sheet's stock that turn the cam. */
import type { TimingPart } from '../../assess/index.js';
import type { CamOffsetStock, Engine } from '../../engine/index.js';
import { degreesText } from './degreeing-shown.js';

/** Ids of the stock and those of parts that a person typed are kept apart. */
const MARK = 'stock ';
const partOf = ({ id, name, partNumber, offset }: CamOffsetStock): TimingPart => ({
  id: `${MARK}${id}`,
  name: `${partNumber === undefined ? name : `${name} ${partNumber}`}, ${degreesText(offset)}`,
  angle: offset,
  marked: 'crank',
});
const offsetsOf = ({ stock }: Engine): readonly CamOffsetStock[] =>
  (stock?.camOffsets ?? []).filter(({ count }) => count !== 0);

const angleOf = (part: TimingPart): number | undefined =>
  'angle' in part ? part.angle * (part.marked === 'cam' ? 2 : 1) : undefined;
const ALIKE = 1e-9;

/** What lies here, what a person typed, and last what must be bought; nothing is bought that does what another part at hand does. */
export function timingParts(engine: Engine, typed: readonly TimingPart[]): readonly TimingPart[] {
  const all = offsetsOf(engine);
  const here = [...all.filter(({ count }) => count !== undefined).map(partOf), ...typed];
  const bought = all.filter(
    ({ count, offset }) =>
      count === undefined && here.every((one) => Math.abs((angleOf(one) ?? Number.POSITIVE_INFINITY) - offset) > ALIKE),
  );
  return [...here, ...bought.map(partOf)];
}

/** "must be bought, price 14"; undefined where it lies here or is none of the stock. */
export function toBuy(engine: Engine, id: string | undefined): string | undefined {
  const part = offsetsOf(engine).find((one) => `${MARK}${one.id}` === id);
  if (part === undefined || part.count !== undefined) return undefined;
  return part.price === undefined ? 'must be bought' : `must be bought, price ${part.price}`;
}

/** The list as the screen shows it. */
export const timingStock = (engine: Engine): readonly string[] =>
  offsetsOf(engine).map((part) => {
    const { name } = partOf(part);
    return part.count === undefined ? `${name}: ${toBuy(engine, partOf(part).id)}` : `${name}: ${part.count} here`;
  });
