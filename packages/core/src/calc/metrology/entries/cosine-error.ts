import { degrees } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { asLength, lengths } from './flavour.js';
import { asRatio } from './inputs.js';

export const cosineError = defineCalculation({
  id: 'metrology.cosine-error',
  subject: 'metrology',
  title: 'Error of an indicator that is out of line',
  summary: 'What an indicator reads when its plunger, or the stylus of a lever, does not stand along the travel.',
  inputs: {
    reading: { ...lengths.input, symbol: 'M', meaning: 'reading' },
    angle: {
      kind: 'angle',
      symbol: 'θ',
      meaning: 'angle between plunger and travel; for a lever, between stylus and the surface',
      unit: 'deg',
      range: { from: 0, below: degrees(90) },
    },
    contact: {
      kind: 'choice',
      symbol: 'contact',
      meaning:
        'face-across-travel: plunger on a flat that is square to the travel, reads high; point-on-part: a point of the part carries the plunger along, reads low; lever: stylus of a lever indicator, reads high',
      choices: ['face-across-travel', 'point-on-part', 'lever'],
      default: 'face-across-travel',
    },
  },
  outputs: {
    travel: { ...lengths.output, symbol: 'T', meaning: 'true travel' },
    error: { ...lengths.output, symbol: 'e', meaning: 'reading less travel' },
    share: { kind: 'ratio', symbol: 'e/T', meaning: 'error as a share of the travel', unit: '%', places: 2 },
  },
  formula: 'face across travel, lever: T = M·cos θ; point on the part: T = M/cos θ',
  assumptions: ['The angle does not change over the travel.'],
  sources: ['derived-here'],
  example: {
    inputs: { reading: '10.154 mm', angle: '10 deg' },
    outputs: { travel: '10.000 mm', share: '1.54 %' },
    from: 'trade map, own figures: 10° reads 1.5 % high',
  },
  compute: (v) => {
    const cosine = Math.cos(v.angle);
    const readsOver = v.contact === 'point-on-part' ? cosine : 1 / cosine;
    const travel = v.reading / readsOver;
    return answer({ travel: asLength(travel), error: asLength(v.reading - travel), share: asRatio(readsOver - 1) });
  },
});
