import { done, type Outcome, refused } from '../../quantity/index.js';
import { fromNm, toNm } from './nanometres.js';
import { allSizes, clearanceFault, inside, roundTo, thicknessFault, windowFault } from './shim-sizes.js';
import type { ShimChoice, ShimChoiceInput, ShimFault } from './types.js';

function inputFault(input: ShimChoiceInput): ShimFault | undefined {
  return (
    clearanceFault('measured clearance', input.measured) ??
    clearanceFault('wanted clearance', input.wanted) ??
    thicknessFault('shim now in', input.old) ??
    (input.window ? windowFault('clearance window', input.window) : undefined)
  );
}

/** How far beyond the ends the ideal size may lie when the nearest size is asked for: half the gap to a next size that would be there. */
function reach(sizes: readonly number[]): number {
  const gaps = sizes.slice(1).map((size, i) => size - sizes[i]!);
  return gaps.length === 0 ? 0 : Math.min(...gaps) / 2;
}

/**
 * Shim that brings one valve to its wanted clearance.
 *
 *   ideal = old + (measured - wanted);  clearance after = measured + old - chosen
 *
 * | symbol   | argument   | unit | meaning                                             |
 * |----------|------------|------|-----------------------------------------------------|
 * | old      | `old`      | m    | shim in the engine now, above 0 to 20 mm            |
 * | measured | `measured` | m    | clearance now, -20 to 20 mm                         |
 * | wanted   | `wanted`   | m    | clearance asked for                                 |
 * | chosen   |            | m    | size on the list next to ideal under the policy     |
 *
 * Policies: nearest (of two equally near the thinner, which leaves more clearance), next thinner (clearance never below
 * wanted), next thicker (never above). "Even sizes only" is a row with a step of 0.02 mm.
 * Assumes the shim carries the whole clearance one to one, as with a bucket; not for a shim under a rocker with a ratio.
 * Refuses with `beyond-sizes` when the policy has no size to offer; with "nearest" the ideal may lie half a step beyond
 * the ends. Other faults name what is out of range.
 * Example: measured 0.25, old 2.425, wanted 0.15 mm, step 0.05, next thinner: ideal 2.525, chosen 2.50, clearance 0.175.
 * Source: rule printed in several service manuals, reference engine-cases-shims.json.
 */
export function chooseShim(input: ShimChoiceInput): Outcome<ShimChoice, ShimFault> {
  const fault = inputFault(input);
  if (fault) return refused(fault);
  const sizes = allSizes(input.sizes);
  if (!sizes.ok) return sizes;
  const measured = toNm(input.measured);
  const old = toNm(input.old);
  const ideal = old + measured - toNm(input.wanted);
  const chosen = roundTo(sizes.value, ideal, input.rounding);
  const thinnest = sizes.value[0]!;
  const thickest = sizes.value.at(-1)!;
  const beyond = Math.max(thinnest - ideal, ideal - thickest);
  if (chosen === undefined || beyond > reach(sizes.value)) {
    return refused({
      code: 'beyond-sizes',
      ideal: fromNm(ideal),
      thinnest: fromNm(thinnest),
      thickest: fromNm(thickest),
    });
  }
  const clearance = measured + old - chosen;
  return done({
    ideal: fromNm(ideal),
    chosen: fromNm(chosen),
    clearance: fromNm(clearance),
    deviation: fromNm(ideal - chosen),
    ...(input.window ? { accepted: inside(input.window, clearance) } : {}),
  });
}
