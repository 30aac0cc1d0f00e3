import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { backClearance } from '../rings.js';
import { bore, height, lengthOut, size, verdictOut } from './inputs.js';
import { against } from './verdicts.js';

export const ringBackClearance = defineCalculation({
  id: 'cylinder.ring-back-clearance',
  subject: 'cylinder',
  title: 'Ring back clearance',
  summary:
    'Radial room behind a ring that is pressed against the wall, piston centred; also how deep it lies below the land.',
  inputs: {
    bore,
    grooveRoot: size('dg', 'diameter of the groove’s floor'),
    ringWidth: size('w', 'radial width of the ring'),
    landDiameter: { ...size('dl', 'diameter of the land beside the groove'), optional: true },
    least: { ...height('bmin', 'smallest back clearance allowed'), optional: true },
    most: { ...height('bmax', 'largest back clearance allowed'), optional: true },
  },
  outputs: {
    clearance: lengthOut('b', 'back clearance, radial, ring on the wall; negative: the ring binds'),
    belowLand: {
      ...lengthOut('k', 'ring pushed to the floor lies below the land by this; negative: it stands proud'),
      optional: true,
    },
    verdict: verdictOut('against the limits given'),
  },
  formula: 'b = (B − dg)/2 − w; k = (dl − dg)/2 − w',
  assumptions: ['Piston centred in the bore, cold.'],
  sources: ['derived-here'],
  example: {
    inputs: { bore: '100.0 mm', grooveRoot: '91.2 mm', ringWidth: '4.1 mm', landDiameter: '99.4 mm' },
    outputs: { clearance: '0.300 mm', belowLand: '0.000 mm' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.grooveRoot >= v.bore) {
      return conflict(['grooveRoot', 'bore'], 'the groove’s floor lies outside the bore', {
        input: 'grooveRoot',
        below: v.bore,
      });
    }
    const clearance = backClearance(v.bore, v.grooveRoot, v.ringWidth);
    const belowLand =
      v.landDiameter === undefined ? undefined : backClearance(v.landDiameter, v.grooveRoot, v.ringWidth);
    return answer({ clearance, belowLand, verdict: against(clearance, v.least, v.most) });
  },
});
