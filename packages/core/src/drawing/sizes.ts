import type { Engine } from '../engine/index.js';
import type { Length } from '../quantity/index.js';

/** Sizes of the crank train in mm, with a sentence for what the sheet does not give. */
export interface DrawnSizes {
  readonly bore: number;
  readonly throw: number;
  readonly rod: number;
  readonly pinOffset: number;
  readonly crownHeight: number;
  /** Crank centre to the head's gasket face. */
  readonly deck: number;
  readonly note: string;
}
/** Proportions of common road engines, for drawing only: common practice, no source. */
const USUAL = { bore: 90, strokeOverBore: 0.95, rodOverStroke: 1.65, crownOverBore: 0.4 };

const millimetres = (stated: { readonly value: Length } | undefined): number | undefined => {
  const value = stated === undefined ? Number.NaN : stated.value * 1000;
  return Number.isFinite(value) && value > 0 ? value : undefined;
};

/**
 * What the front view is drawn from. A size that the sheet lacks is drawn in usual proportion; one that could not be
 * built (rod shorter than the throw, deck below the crown at top dead centre) is drawn so too, and both are said.
 */
export function drawnSizes(engine: Engine): DrawnSizes {
  const given = engine.crankTrain;
  const assumed: string[] = [];
  const take = (name: string, value: number | undefined, usual: number, fits: (n: number) => boolean = () => true) => {
    if (value !== undefined && fits(value)) return value;
    assumed.push(name);
    return usual;
  };
  const stroke = millimetres(given.stroke);
  const bore = take('bore', millimetres(given.bore), stroke === undefined ? USUAL.bore : stroke / USUAL.strokeOverBore);
  const crank = take('stroke', stroke, bore * USUAL.strokeOverBore) / 2;
  const offset = given.pinOffset?.value ?? 0;
  const pinOffset = Number.isFinite(offset) ? offset * 1000 : 0;
  const shortest = crank + Math.abs(pinOffset);
  const rod = take('rod length', millimetres(given.rodLength), 2 * crank * USUAL.rodOverStroke, (n) => n > shortest);
  const crownHeight = take('compression height', millimetres(given.compressionHeight), bore * USUAL.crownOverBore);
  const top = crank + rod + crownHeight;
  const deck = take('deck height', millimetres(given.deckHeight), top, (n) => Math.abs(n - top) < bore * 0.2);
  const note =
    assumed.length === 0
      ? ''
      : `Drawn in usual proportion, not given or not fitting in the sheet: ${assumed.join(', ')}.`;
  return { bore, throw: crank, rod, pinOffset, crownHeight, deck, note };
}
