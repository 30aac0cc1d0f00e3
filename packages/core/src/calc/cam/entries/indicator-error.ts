import { type Angle, degrees, type Length, mm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { CONTACTS, tiltForShare, trueTravel } from '../indicator.js';
import { shownAngle, shownLift } from './lobe-inputs.js';

export const indicatorError = defineCalculation({
  id: 'cam.indicator-error',
  subject: 'cam',
  title: 'Cosine error of a tilted indicator',
  summary: 'True travel of a follower from the reading of an indicator that stands at an angle to it.',
  inputs: {
    reading: {
      kind: 'length',
      symbol: 'm',
      meaning: 'travel shown',
      unit: 'mm',
      range: { from: mm(-200), to: mm(200) },
    },
    tilt: {
      kind: 'angle',
      symbol: 'α',
      meaning: 'angle between plunger and travel; of a lever-type indicator between lever and face',
      unit: 'deg',
      range: { from: 0, to: degrees(80) },
    },
    contact: {
      kind: 'choice',
      symbol: 'contact',
      meaning:
        'plunger on a face square to the travel (top of a follower), plunger on a face square to the plunger, or lever type',
      choices: CONTACTS,
      default: 'face-square-to-travel',
    },
    allowedShare: {
      kind: 'ratio',
      symbol: 'ε',
      meaning: 'error allowed, as a share of the reading',
      unit: '',
      range: { above: 0, below: 0.5 },
      default: 0.001,
    },
  },
  outputs: {
    travel: { ...shownLift, places: 4, symbol: 'M', meaning: 'true travel' },
    error: { ...shownLift, places: 4, symbol: 'm − M', meaning: 'reading minus true travel' },
    tiltAllowed: { ...shownAngle, symbol: 'α max', meaning: 'largest tilt that keeps the allowed error' },
  },
  formula: 'M = m·cos α (face square to travel; lever); M = m/cos α (face square to plunger)',
  assumptions: ['Flat face, point contact, stiff stand.'],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: { reading: '0.3000 in', tilt: '10 deg' },
    outputs: { travel: '0.2954 in', error: '0.0046 in', tiltAllowed: '2.56 deg' },
    from: 'hand arithmetic: cos 10° = 0.98481; acos 0.999 = 2.563°',
  },
  compute: (v) => {
    const travel = trueTravel(v.contact, v.tilt, v.reading);
    const tiltAllowed: Angle = tiltForShare(v.contact, v.allowedShare);
    return answer({ travel, error: (v.reading - travel) as Length, tiltAllowed });
  },
});
