/** The bore in which a ring or piston will run: as measured, or as it comes back from the shop. */
import type { Window } from '../../engine/index.js';
import type { Assessment, Place } from '../model.js';
import { stillAtShop } from './back-from-shop.js';
import { sizeAt } from './decision.js';
import { closed, middle } from './judged.js';

export interface FinishedBore {
  readonly value: number;
  readonly u?: number;
  readonly from: 'measured' | 'as ordered';
}
const PROPERTY = 'cylinder-bore.diameter';

/**
 * Bore of one place [m]: what the standing order asks for as long as the work is not back (middle of its window), else as
 * measured. Undefined where neither is known.
 */
export function finishedBore(assessment: Assessment, place: Place): FinishedBore | undefined {
  const away = stillAtShop(assessment, 'cylinder-bore').some(({ id }) => id === place.id);
  const ordered = away ? orderedBore(assessment, place.id) : undefined;
  if (ordered !== undefined) return { value: ordered, from: 'as ordered' };
  const size = sizeAt(assessment, PROPERTY, place.id);
  return size && { value: size.value, ...(size.u === undefined ? {} : { u: size.u }), from: 'measured' };
}

function orderedBore({ readings }: Assessment, place: string): number | undefined {
  const windows = readings.choices
    .flatMap(({ orders }) => orders)
    .filter((line) => line.property === PROPERTY && line.places.includes(place))
    .flatMap((line): readonly Window<number>[] => {
      const own = line.targets?.find((one) => one.place === place)?.window ?? line.target;
      return own === undefined ? [] : [own];
    });
  const ends = windows.at(-1) && closed(windows.at(-1) ?? {});
  return ends && middle(ends);
}
