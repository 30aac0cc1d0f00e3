/** Wet liners of one bank as they stand without shims, and the rules that they must keep. */
import type { LinerRules } from '../../calc/selection/index.js';
import type { Length } from '../../quantity/index.js';
import { limitsOf, newWindow, wearWindow } from '../limits/index.js';
import type { Assessment, Place, Size } from '../model.js';
import { type Asked, limitAt, origin, sizeAt } from './decision.js';

export const HEIGHT = 'liner-protrusion.height';
const NEIGHBOURS = 'liner-protrusion.neighbours';

export interface Liner {
  readonly place: Place;
  readonly size: Size;
}
export interface Bank {
  readonly liners: readonly Liner[];
  readonly asked: Asked;
  readonly rules: LinerRules;
  /** Narrower by the uncertainty of a reading, so that what is chosen is surely inside. */
  readonly sure: LinerRules;
}

/** Largest difference between neighbours that the sheet prints for the bank; undefined where it prints none. */
export function neighbourLimit(
  { engine }: Assessment,
  { bank }: Place,
): { readonly step: Length; readonly from: string } | undefined {
  for (const row of limitsOf(engine, NEIGHBOURS, bank === undefined ? {} : { bank })) {
    const step = (newWindow(row) ?? wearWindow(row, 'hole'))?.high;
    if (step !== undefined) return { step: step as Length, from: origin(row) };
  }
  return undefined;
}

export function bankOf(assessment: Assessment, places: readonly Place[]): Bank | undefined {
  const liners = places.flatMap((place) => {
    const size = sizeAt(assessment, HEIGHT, place.id);
    return size === undefined ? [] : [{ place, size }];
  });
  const [first] = places;
  if (first === undefined) return undefined;
  const asked = limitAt(assessment, HEIGHT, first.id, 'new');
  const high = asked?.window.high as Length | undefined;
  if (asked === undefined || high === undefined || liners.length < places.length) return undefined;
  const low = asked.window.low as Length | undefined;
  const step = neighbourLimit(assessment, first)?.step;
  const rules = {
    high,
    ...(low === undefined ? {} : { low }),
    ...(step === undefined ? {} : { stepLimit: step }),
    oneWay: false,
  };
  const doubt = 2 * Math.max(...liners.map(({ size }) => size.u ?? 0));
  const narrow = {
    ...rules,
    high: (high - doubt) as Length,
    ...(low === undefined ? {} : { low: (low + doubt) as Length }),
  };
  return { liners, asked, rules, sure: narrow.low !== undefined && narrow.low > narrow.high ? rules : narrow };
}
