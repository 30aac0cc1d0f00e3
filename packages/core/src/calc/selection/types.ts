import type { Length } from '../../quantity/index.js';

export type ShimRounding = 'nearest' | 'next-thinner' | 'next-thicker';
/** Sizes that can be had, in one of two forms: an even row, or a list as it lies in the drawer. */
export type ShimSizes =
  | { readonly thinnest: Length; readonly thickest: Length; readonly step: Length }
  | { readonly sizes: readonly Length[] };
/** Accepted clearance; an end left out is open. Both ends belong to the window. */
export interface ClearanceWindow {
  readonly low?: Length;
  readonly high?: Length;
}

export interface ShimChoiceInput {
  readonly measured: Length;
  readonly old: Length;
  readonly wanted: Length;
  readonly sizes: ShimSizes;
  readonly rounding: ShimRounding;
  readonly window?: ClearanceWindow;
}
export interface ShimChoice {
  /** old + (measured - wanted) */
  readonly ideal: Length;
  readonly chosen: Length;
  /** Clearance with the chosen shim. */
  readonly clearance: Length;
  /** Clearance with the chosen shim less the wanted clearance. */
  readonly deviation: Length;
  /** Absent when no window was given: unknown, not accepted. */
  readonly accepted?: boolean;
}
export type ShimFault =
  | {
      readonly code: 'length-out-of-range';
      readonly what: string;
      readonly given: number;
      readonly low: Length;
      readonly high: Length;
    }
  | { readonly code: 'sizes-unusable'; readonly reason: 'none' | 'step' | 'ends' | 'too-many' }
  | { readonly code: 'window-empty'; readonly what: string }
  /** The policy asks for a shim beyond the thinnest or thickest that can be had. */
  | { readonly code: 'beyond-sizes'; readonly ideal: Length; readonly thinnest: Length; readonly thickest: Length }
  | { readonly code: 'place-repeated'; readonly place: string }
  | { readonly code: 'too-many-places'; readonly given: number; readonly most: number };

/** One valve that needs its clearance set. */
export interface ShimPlace {
  readonly id: string;
  readonly measured: Length;
  /** Thickness of the shim that is in now, as measured with a micrometer. */
  readonly old: Length;
  readonly wanted: Length;
  readonly window: ClearanceWindow;
}
export interface ShimPoolInput {
  readonly places: readonly ShimPlace[];
  /** Loose shims on hand besides those that come out of the engine. */
  readonly spares: readonly Length[];
  /** Sizes that can be bought, each as often as needed; absent: nothing can be bought. */
  readonly buyable?: ShimSizes;
  /** Which bought sizes are allowed beside the ideal one; default nearest. Shims on hand need only be inside the window. */
  readonly rounding?: ShimRounding;
}
export type ShimOrigin =
  | { readonly kind: 'own' }
  | { readonly kind: 'place'; readonly place: string }
  | { readonly kind: 'spare'; readonly index: number }
  | { readonly kind: 'bought' };
export interface ShimAssignment {
  readonly id: string;
  readonly origin: ShimOrigin;
  readonly thickness: Length;
  readonly clearance: Length;
  /** Clearance less the wanted clearance. */
  readonly deviation: Length;
}
/**
 * Proof that no cheaper assignment exists: a price for each valve and each shim such that no allowed pair costs less
 * than its two prices together, shims priced 0 or below. Then no assignment costs less than the sum of the prices, and
 * this one costs exactly that. Costs are whole numbers; `costs` is the table that the prices answer to.
 */
export interface OptimalityProof {
  readonly costs: readonly (readonly number[])[];
  readonly columnOf: readonly number[];
  readonly rowPrices: readonly number[];
  readonly columnPrices: readonly number[];
}
export interface ShimPool {
  readonly assignments: readonly ShimAssignment[];
  /** Shims to buy, by thickness. */
  readonly buy: readonly { readonly thickness: Length; readonly count: number }[];
  readonly boughtCount: number;
  /** Sum of the absolute deviations from the wanted clearances. */
  readonly totalDeviation: Length;
  /** Valves for which nothing on hand or for sale gives an accepted clearance. As few as possible. */
  readonly unserved: readonly { readonly id: string; readonly ideal: Length }[];
  readonly proof: OptimalityProof;
}
