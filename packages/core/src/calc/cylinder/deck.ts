import type { Length } from '../../quantity/index.js';

/** Heights that stack up from the crankshaft centre to the deck [m]. */
export interface DeckStack {
  /** Crankshaft centre to deck. */
  readonly deckHeight: Length;
  readonly stroke: Length;
  readonly rodLength: Length;
  /** Pin centre to crown flat. */
  readonly compressionHeight: Length;
}

/**
 * Deck clearance [m], below the deck positive: d = H − S/2 − l − K.
 *
 * Without pin offset; one of a few hundredths of the stroke raises the piston by less than a hundredth of it.
 * Example: 9.025 in deck, 3.480 stroke, 5.700 rod, 1.560 piston: 0.025 in. Source: definition.
 */
export const deckClearance = ({ deckHeight, stroke, rodLength, compressionHeight }: DeckStack): Length =>
  (deckHeight - stroke / 2 - rodLength - compressionHeight) as Length;

/**
 * Cut at each place that leaves one clearance everywhere [m]: ci = di − d, d `target`. A negative one means that the
 * place is already lower than the target, which no cut can reach. Source: definition.
 */
export const deckCuts = (clearances: readonly Length[], target: Length): readonly Length[] =>
  clearances.map((one) => (one - target) as Length);
