import type { Length, Ratio, Volume } from '../../quantity/index.js';
import { quench } from './quench.js';
import { clearanceVolume, compressionRatio } from './ratio.js';
import { discVolume } from './volumes.js';

/** What may be combined; each list has at least one value. */
export interface PartsOnOffer {
  readonly bore: Length;
  readonly stroke: Length;
  readonly gasketBore: Length;
  readonly chambers: readonly Volume[];
  readonly gaskets: readonly Length[];
  readonly decks: readonly Length[];
  readonly pistons: readonly Volume[];
  readonly other: Volume;
}
export interface Combination {
  readonly chamber: Volume;
  readonly gasket: Length;
  readonly deck: Length;
  readonly piston: Volume;
  readonly ratio: Ratio;
  readonly quench: Length;
}

/**
 * Every combination of the parts on offer that has room at the top, with its ratio and quench. The list is complete, so
 * the best of it is the best there is.
 *
 * Source: `compressionRatio`, `quench`; exhaustive search.
 */
export function combinations(offer: PartsOnOffer): readonly Combination[] {
  const swept = discVolume(offer.bore, offer.stroke);
  return offer.chambers.flatMap((chamber) =>
    offer.gaskets.flatMap((gasket) =>
      offer.decks.flatMap((deck) =>
        offer.pistons.flatMap((piston) => {
          const clearance = clearanceVolume({
            chamber,
            gasket: discVolume(offer.gasketBore, gasket),
            deck: discVolume(offer.bore, deck),
            piston,
            other: offer.other,
          });
          const ratio = compressionRatio(swept, clearance);
          return clearance > 0 ? [{ chamber, gasket, deck, piston, ratio, quench: quench(deck, gasket) }] : [];
        }),
      ),
    ),
  );
}
