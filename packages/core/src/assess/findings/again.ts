/** Which reading to take again: the one whose doubt decides. */
import type { Finding, VerdictWord } from '../model.js';
import { isReading, type Judged } from '../sizes/index.js';
import type { KnownSize } from './held.js';

/**
 * For a verdict that is not sure: the reading with the largest share of the variance, or the one whose repeats disagree. Taken away, its
 * doubt lowers that of the size most. Undefined where no reading has any doubt.
 */
export function againFor(
  { size, disagreement }: KnownSize,
  verdict: VerdictWord,
  near: Judged | undefined,
): Finding['again'] {
  if (verdict !== 'near' && verdict !== 'check again') return undefined;
  if (disagreement === undefined && near?.reading !== undefined) return ofOne(near.reading, near.u);
  const whole = size.u ** 2;
  let best: Finding['again'];
  for (const { key, name, sensitivity, u = 0 } of size.parts) {
    if (!isReading(key)) continue;
    const share = whole === 0 ? 0 : (sensitivity * u) ** 2 / whole;
    if (disagreement !== undefined ? key === disagreement.slot : share > (best?.share ?? 0))
      best = { key, name, share };
  }
  // A reading that has no weight at present is not among the parts.
  return best ?? (disagreement && { key: disagreement.slot, name: disagreement.name, share: 0 });
}

/** A reading that is judged by itself decides by itself, as far as the doubt is its own. */
const ofOne = ({ key, name, u }: NonNullable<Judged['reading']>, whole: number): Finding['again'] =>
  u === 0 ? undefined : { key, name, share: (u / whole) ** 2 };
