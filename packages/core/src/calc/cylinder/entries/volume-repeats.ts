import type { Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { fromRepeatedVolumes } from '../repeats.js';
import { roomOrNone, roomOut, verdictOut } from './inputs.js';

export const volumeRepeats = defineCalculation({
  id: 'cylinder.volume-repeats',
  subject: 'cylinder',
  title: 'Mean of repeated volume measurements',
  summary:
    'Mean, spread and standard uncertainty of the mean; says when the repeats do not agree well enough. Repeated lengths: metrology.repeats.',
  inputs: {
    volumes: { ...roomOrNone('V', 'the same room measured two or more times'), list: true },
    allowedSpread: { ...roomOrNone('R', 'largest spread that is accepted; common practice is 0.5 cc'), optional: true },
  },
  outputs: {
    mean: roomOut('V̄', 'mean'),
    spread: roomOut('R', 'largest less smallest'),
    deviation: roomOut('s', 'standard deviation of one measurement', 3),
    uncertainty: roomOut('u', 'standard uncertainty of the mean', 3),
    verdict: verdictOut('whether the repeats agree within the spread that is accepted'),
  },
  formula: 'V̄ = ΣV/n; s = √(Σ(V − V̄)²/(n − 1)); u = s/√n',
  assumptions: ['Repeats are independent: emptied, dried and filled anew each time.'],
  sources: ['gum-type-a', 'shop-practice'],
  example: {
    inputs: { volumes: ['64.2 cc', '64.0 cc', '64.4 cc'], allowedSpread: '0.5 cc' },
    outputs: {
      mean: '64.2 cm3',
      spread: '0.4 cm3',
      deviation: '0.200 cm3',
      uncertainty: '0.115 cm3',
      verdict: 'agree',
    },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.volumes.length < 2)
      return conflict(['volumes'], 'one measurement says nothing about repeats: two are needed');
    const { mean, apart, deviation, uncertainty } = fromRepeatedVolumes(v.volumes);
    const verdict = v.allowedSpread === undefined ? 'no limit given' : agree(apart, v.allowedSpread);
    return answer({
      mean: mean as Volume,
      spread: apart as Volume,
      deviation: deviation as Volume,
      uncertainty: uncertainty as Volume,
      verdict,
    });
  },
});

const agree = (spread: number, allowed: number): string =>
  spread <= allowed * (1 + 1e-9) ? 'agree' : 'too far apart: measure again';
