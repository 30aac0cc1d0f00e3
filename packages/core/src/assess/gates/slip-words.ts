/** Which slip of the finger would explain a figure, in words. */
import { type SlipCode, slipsOf } from '../../calc/metrology/index.js';
import { formatQuantity, type QuantityKind, type Typed } from '../../quantity/index.js';
import type { Alike } from './alike.js';

const WORDS: Readonly<Record<SlipCode, string>> = {
  'decimal-point': 'the point in another place?',
  unit: 'another unit?',
  'digits-swapped': 'two digits swapped?',
  'digit-missing': 'a digit left out?',
  'digit-too-many': 'a digit too many?',
};
/** The commonest first; a place too few or too many says itself which digit slip it was. */
function orderFor(typed: number, wanted: number): readonly SlipCode[] {
  if (typed < wanted) return ['decimal-point', 'unit', 'digit-missing', 'digits-swapped', 'digit-too-many'];
  return ['decimal-point', 'unit', 'digits-swapped', 'digit-too-many', 'digit-missing'];
}

/** "two digits swapped? 4.0302 in would fit." Undefined where no single slip explains the figure. */
export function slipWords(kind: QuantityKind, typed: Typed, alike: Alike, places: number): string | undefined {
  const middle: Typed = { text: '', value: alike.middle, unit: typed.unit, places };
  const slips = slipsOf(kind, typed, [middle], alike.within);
  const slip = orderFor(typed.places, places).flatMap((code) => slips.filter((one) => one.code === code))[0];
  if (slip === undefined) return undefined;
  const would = formatQuantity(kind, slip.value, slip.unit, slip.code === 'unit' ? typed.places : places);
  return `${WORDS[slip.code]} ${would} would fit.`;
}
