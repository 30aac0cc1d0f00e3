/** Which reading to take again: the one whose doubt decides. */
import type { Finding, VerdictWord } from '../model.js';
import { isReading } from '../sizes/index.js';
import type { Known } from './held.js';

/**
 * For a verdict that is not sure: the reading with the largest share of the variance, or the one whose repeats disagree. Taken away, its
 * doubt lowers that of the size most. Undefined where no reading has any doubt.
 */
export function againFor({ size, disagreement }: Known, verdict: VerdictWord): Finding['again'] {
  if (verdict !== 'near' && verdict !== 'check again') return undefined;
  const whole = size.u ** 2;
  const share = ({ sensitivity, u = 0 }: (typeof size.parts)[number]) =>
    whole === 0 ? 0 : (sensitivity * u) ** 2 / whole;
  const readings = size.parts.filter(({ key }) => isReading(key));
  if (verdict === 'check again' && disagreement !== undefined) {
    const own = readings.find(({ key }) => key === disagreement.slot);
    return { key: disagreement.slot, name: disagreement.name, share: own === undefined ? 0 : share(own) };
  }
  let best: (typeof readings)[number] | undefined;
  for (const one of readings) if (best === undefined || share(one) > share(best)) best = one;
  return best === undefined || share(best) === 0 ? undefined : { key: best.key, name: best.name, share: share(best) };
}
