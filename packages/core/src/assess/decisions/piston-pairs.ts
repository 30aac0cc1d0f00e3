/** Bores with the pistons chosen for them: each clearance with its verdict, and how alike and how near to the middle all are. */
import type { Alternative } from '../model.js';
import { figure, worstVerdict } from './decision.js';
import { judged, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { BorePlace, TaggedPiston } from './piston-places.js';
import { clearanceIn } from './pistons-search.js';

export type Summary = { readonly spread: number; readonly total: number; readonly worst: number };
export const summary = (plan: Summary, words: LengthWords): Alternative['figures'] => [
  figure('Largest less smallest', words.length(plan.spread)),
  figure('Distance from the middle, in all', words.length(plan.total)),
  figure('The worst distance', words.length(plan.worst)),
];

export function judgedPairs(bores: readonly BorePlace[], chosen: readonly TaggedPiston[], words: LengthWords) {
  const pairs = bores.map((bore, at) => {
    const piston = chosen[at] as TaggedPiston;
    const clearance = clearanceIn(bore, piston);
    return { bore, piston, clearance, verdict: judged(clearance, bore.asked) };
  });
  return {
    verdict: worstVerdict(pairs.map((one) => one.verdict)),
    figures: pairs.map(({ bore, piston, clearance }) =>
      figure(
        bore.place.name,
        `piston ${piston.place.id}: clearance ${words.sure(clearance.value, clearance.u)}, asked ${words.window(bore.asked)}`,
      ),
    ),
    out: pairs
      .filter(
        (one) =>
          one.clearance.value < one.bore.asked.low - NANOMETRE || one.clearance.value > one.bore.asked.high + NANOMETRE,
      )
      .map(
        ({ bore, clearance }) =>
          `${bore.place.name}: clearance ${words.length(clearance.value)} is outside ${words.window(bore.asked)}.`,
      ),
  };
}
const NANOMETRE = 1e-9;

/** How alike and how near to the middle the fits of chosen pistons are. */
export function measureOf(bores: readonly BorePlace[], chosen: readonly TaggedPiston[]): Summary {
  const fits = bores.map((bore, at) => clearanceIn(bore, chosen[at] as TaggedPiston).value - middle(bore.asked));
  const distances = fits.map(Math.abs);
  return {
    spread: Math.max(...fits) - Math.min(...fits),
    total: distances.reduce((sum, one) => sum + one, 0),
    worst: Math.max(...distances),
  };
}
