/** Uncertainty of results from the standard uncertainties of what they are made of, by derivatives. */

/** A value that may be elsewhere. `standard` left out: it is doubtful by an amount that is not known. */
export interface DoubtfulValue {
  readonly name: string;
  readonly value: number;
  readonly standard: number | undefined;
}
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
 * Standard uncertainty of each of several results by name: u² = Σ (∂f/∂x · u(x))².
 *
 * `at` gives the results with one value put elsewhere, undefined where that cannot be; `centre` the results as they are. Inputs are
 * taken as independent of each other. Derivatives are central differences with a step of 6 millionths of the value or a hundredth of
 * its uncertainty, whichever is more, and one-sided where a step would leave the valid range. A result whose derivative cannot be had
 * at all, or that follows an input of unknown doubt, is not in the map: unknown is not zero.
 * Source: JCGM 100 (GUM), 5.1.2.
 */
export function propagateBy<V extends DoubtfulValue>(
  at: (moved: V, to: number) => ReadonlyMap<string, number> | undefined,
  centre: ReadonlyMap<string, number>,
  doubtful: readonly V[],
): ReadonlyMap<string, Propagated> {
  const slopes = doubtful.map((one) => slopesOf(at, centre, one));
  const found = new Map<string, Propagated>();
  for (const output of centre.keys()) {
    const contributions = doubtful.map(({ name, standard }, index) => ({
      input: name,
      effect: effectOf(slopes[index]!.get(output), standard),
    }));
    const standard = Math.hypot(...contributions.map((one) => one.effect));
    if (Number.isFinite(standard)) found.set(output, { standard, contributions });
  }
  return found;
}

/** A doubt stated as 0 brings nothing, whatever the slope; nor does any doubt where the result does not follow the input. */
function effectOf(slope: number | undefined, standard: number | undefined): number {
  if (standard === 0 || slope === 0) return 0;
  return (slope ?? Number.NaN) * (standard ?? Number.NaN);
}

function slopesOf<V extends DoubtfulValue>(
  at: (moved: V, to: number) => ReadonlyMap<string, number> | undefined,
  centre: ReadonlyMap<string, number>,
  one: V,
): ReadonlyMap<string, number> {
  const step = Math.max(Math.abs(one.value) * RELATIVE_STEP, (one.standard ?? 0) * SHARE_OF_DOUBT);
  const up = at(one, one.value + step);
  const down = at(one, one.value - step);
  const width = (up ? step : 0) + (down ? step : 0);
  const slopes = new Map<string, number>();
  for (const [output, middle] of centre) {
    const high = up ? up.get(output) : middle;
    const low = down ? down.get(output) : middle;
    if (high !== undefined && low !== undefined && width > 0) slopes.set(output, (high - low) / width);
  }
  return slopes;
}
