/** Uncertainty of a result of the catalogue from the standard uncertainties of its inputs. */
import { type Propagated, propagateBy } from '../numeric/index.js';
import type { AnyValues, Calculation } from './calculation.js';
import { type Doubtful, numbersAt, placeName } from './compute.js';

export type { Propagated };

/** Standard uncertainty of each number of an answer; see `propagateBy`. No input is moved beyond its valid range. */
export function propagate(
  calc: Calculation,
  values: AnyValues,
  centre: ReadonlyMap<string, number>,
  doubtful: readonly Doubtful[],
): ReadonlyMap<string, Propagated> {
  const named = doubtful.map((doubt) => ({
    name: placeName(doubt.name, doubt.at),
    value: doubt.value,
    standard: doubt.standard,
    doubt,
  }));
  return propagateBy(({ doubt }, to) => numbersAt(calc, values, [doubt], [to]), centre, named);
}
