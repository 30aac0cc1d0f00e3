/** Uncertainty of a result from the standard uncertainties of its inputs, by derivatives. */
import type { AnyValues, Calculation } from './calculation.js';
import { type Doubtful, numbersAt, placeName } from './compute.js';

export interface Contribution {
  /** Input by place: "rodLength" or "washers[2]". */
  readonly input: string;
  /** Change of the result [SI] for one standard uncertainty of the input. */
  readonly effect: number;
}
export interface Propagated {
  /** Standard uncertainty of the result [SI]. */
  readonly standard: number;
  readonly contributions: readonly Contribution[];
}

/** Cube root of the rounding unit: where rounding and curvature of a central difference balance. */
const RELATIVE_STEP = 6e-6;
/** Against an input of 0 the doubt itself gives the scale. */
const SHARE_OF_DOUBT = 0.01;

/**
 * Standard uncertainty of each number of an answer: u² = Σ (∂f/∂x · u(x))².
 *
 * Inputs are taken as independent of each other. Derivatives are central differences with a step of 6 millionths of the
 * value or a hundredth of its uncertainty, whichever is more, and one-sided where a step would leave the valid range. A number whose
 * derivative cannot be had at all is not in the map: unknown is not zero.
 * Source: JCGM 100 (GUM), 5.1.2.
 */
export function propagate(
  calc: Calculation,
  values: AnyValues,
  centre: ReadonlyMap<string, number>,
  doubtful: readonly Doubtful[],
): ReadonlyMap<string, Propagated> {
  const slopes = doubtful.map((place) => slopeAt(calc, values, centre, place));
  const found = new Map<string, Propagated>();
  for (const output of centre.keys()) {
    const contributions = doubtful.map((place, index) => ({
      input: placeName(place.name, place.at),
      // A doubt stated as 0 brings nothing, whatever the slope.
      effect: place.standard === 0 ? 0 : (slopes[index]!.get(output) ?? Number.NaN) * place.standard,
    }));
    const standard = Math.hypot(...contributions.map((one) => one.effect));
    if (Number.isFinite(standard)) found.set(output, { standard, contributions });
  }
  return found;
}

function slopeAt(
  calc: Calculation,
  values: AnyValues,
  centre: ReadonlyMap<string, number>,
  place: Doubtful,
): ReadonlyMap<string, number> {
  const step = Math.max(Math.abs(place.value) * RELATIVE_STEP, place.standard * SHARE_OF_DOUBT);
  const up = numbersAt(calc, values, [place], [place.value + step]);
  const down = numbersAt(calc, values, [place], [place.value - step]);
  const width = (up ? step : 0) + (down ? step : 0);
  const slopes = new Map<string, number>();
  for (const [output, middle] of centre) {
    const high = up ? up.get(output) : middle;
    const low = down ? down.get(output) : middle;
    if (high !== undefined && low !== undefined && width > 0) slopes.set(output, (high - low) / width);
  }
  return slopes;
}
