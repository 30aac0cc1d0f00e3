/** Where the pistons on the bench do not serve every bore: the fewest bought, the rest from the bench. */
import { partsWithShop, type ShopWindow } from '../../calc/selection/index.js';
import type { PistonStock } from '../../engine/index.js';
import { fromHalfWidth, type Length, quadrature } from '../../quantity/index.js';
import type { Alternative, Assessment } from '../model.js';
import { blocked, figure, placesText, possible, worstVerdict } from './decision.js';
import { type Closed, closed, judged, middle, moved } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { BorePlace, TaggedPiston } from './piston-places.js';
import { makersPistons, oversizeText } from './piston-sets.js';
import { clearanceIn } from './pistons-search.js';
import { buysOf, canBeBought, piecesOf, type Taken } from './stock-taken.js';

interface Offer {
  readonly piston: PistonStock;
  readonly skirt: Closed;
}
const offersOf = ({ engine }: Assessment): readonly Offer[] =>
  makersPistons(engine).flatMap((piston) => {
    const skirt = piston.skirt && closed(piston.skirt);
    return skirt ? [{ piston, skirt }] : [];
  });

/** The fit of one bore, with a piston from the bench or with one to buy, whose printed skirt is taken at its middle. */
interface Served {
  readonly bore: BorePlace;
  readonly text: string;
  readonly clearance: { readonly value: number; readonly u: number };
  /** Of the sheet's stock; absent where it was measured. */
  readonly piston?: PistonStock;
}

/**
 * Fewest pistons bought, then nearest in all to the middle of each window; undefined where the sheet has no printed skirts. A printed
 * skirt is a range: half of it is part of the doubt. Source: `partsWithShop`, every piston at the price of one.
 */
export function fewestBought(
  assessment: Assessment,
  bores: readonly BorePlace[],
  pistons: readonly TaggedPiston[],
  words: LengthWords,
): Alternative | undefined {
  const offers = offersOf(assessment);
  if (offers.length === 0) return undefined;
  const shop = offers.filter(({ piston }) => canBeBought(piston));
  const loose = offers
    .filter(({ piston }) => !canBeBought(piston))
    .flatMap((offer) => Array.from({ length: Math.min(piecesOf(offer.piston), bores.length) }, () => offer));
  const windows = bores.map(({ asked }) => moved(asked, -middle(asked)) as ShopWindow);
  const [window = { low: 0 as Length, high: 0 as Length }] = windows;
  const plan = partsWithShop({
    places: bores.map(({ bore, asked }) => (bore.value - middle(asked)) as Length),
    stock: [...pistons.map(({ size }) => size.value), ...loose.map(({ skirt }) => middle(skirt))] as Length[],
    shop: shop.map(({ skirt }) => ({ size: middle(skirt) as Length, price: 1 })),
    target: 0 as Length,
    window,
    windows,
  });
  const named = { id: 'fewest-bought', words: 'Fewest pistons bought, the rest from the bench' };
  if (!plan.ok)
    return blocked({ ...named, figures: [], verdict: 'no data', against: ['The windows are too wide to be weighed.'] });
  const served = bores.map((bore, at) => {
    const source = plan.value.sources[at];
    if (source === undefined || source.kind === 'none') return undefined;
    if (source.kind === 'shop') return asPrinted(bore, shop[source.index] as Offer, words);
    const own = pistons[source.index];
    return own ? fromBench(bore, own, words) : asPrinted(bore, loose[source.index - pistons.length] as Offer, words);
  });
  const without = bores.filter((_, at) => served[at] === undefined);
  const found = served.filter((one) => one !== undefined);
  const figures = found.map(({ bore, text }) => figure(bore.place.name, text));
  if (without.length > 0) {
    const where = placesText(without.map(({ place }) => place));
    return blocked({ ...named, figures, verdict: 'out', against: [`No piston that can be had fits ${where}.`] });
  }
  return possible({
    ...named,
    figures,
    verdict: worstVerdict(found.map(({ clearance, bore }) => judged(clearance, bore.asked))),
    against: ['Sizes of pistons from stock are printed ones: measure them before they go in.'],
    buys: buysOf(takenBy(offers, found, words)),
  });
}

function fromBench(bore: BorePlace, piston: TaggedPiston, words: LengthWords): Served {
  const clearance = clearanceIn(bore, piston);
  const text = `piston ${piston.place.id}: clearance ${words.sure(clearance.value, clearance.u)}`;
  return { bore, clearance, text };
}

/** A piston of stock, from the bench or bought. */
function asPrinted(bore: BorePlace, { piston, skirt }: Offer, words: LengthWords): Served {
  const u = quadrature(bore.bore.u, fromHalfWidth((skirt.high - skirt.low) / 2));
  const clearance = { value: bore.bore.value - middle(skirt), u };
  const how = canBeBought(piston) ? 'bought' : 'from the bench';
  const text = `${how}, ${sizeText(piston, skirt, words)}: clearance ${words.sure(clearance.value, u)}`;
  return { bore, clearance, text, piston };
}

const sizeText = ({ oversize, grade }: PistonStock, skirt: Closed, words: LengthWords): string =>
  `${oversizeText(oversize, words)}${grade === undefined ? '' : `, grade ${grade}`}, ${words.window(skirt)}`;

const takenBy = (offers: readonly Offer[], found: readonly Served[], words: LengthWords): readonly Taken[] =>
  offers.flatMap(({ piston, skirt }) => {
    const own = found.filter((one) => one.piston === piston);
    if (own.length === 0) return [];
    const use = placesText(own.map(({ bore }) => bore.place));
    return [{ part: piston, size: sizeText(piston, skirt, words), count: own.length, for: use }];
  });
