import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { smallestCleanUp, wornSection } from '../worn-profile.js';
import { height, lengthOut, size } from './inputs.js';

const reading = (symbol: string, meaning: string) => ({ ...size(symbol, meaning), list: true }) as const;

export const cleanUp = defineCalculation({
  id: 'cylinder.clean-up',
  subject: 'cylinder',
  title: 'Diameter at which one worn oval bore cleans up',
  summary:
    'From readings across and along the crank at several heights taken as ellipses, with a limited shift of the axis.',
  inputs: {
    standardBore: size('D0', 'standard (unworn) bore'),
    across: reading('Y', 'diameters across the crank (thrust direction), top to bottom'),
    along: reading('X', 'diameters along the crank at the same heights'),
    wearShare: {
      kind: 'ratio',
      symbol: 'σ',
      meaning: 'share of the thrust wear on the major thrust side: 1 all on one wall (the worst), 0.5 both alike',
      unit: '',
      range: { from: 0, to: 1 },
      default: 1,
    },
    shift: { ...height('s', 'how far the axis may move along the thrust direction'), default: 0 },
    honeAllowance: { ...height('a', 'left for honing, on diameter'), default: 0 },
  },
  outputs: {
    bored: lengthOut('D', 'diameter at which it cleans up', 4),
    finished: lengthOut('D + a', 'with the honing allowance', 4),
    bestShift: lengthOut('s', 'shift of the axis toward the major thrust side that needs the least', 4),
    oversize: lengthOut('os', 'finished less standard', 4),
  },
  formula: 'D = 2·min over |s| of the largest distance from the axis to the worn ellipses',
  assumptions: [
    'Half ellipses about the original axis; the axis moves only in the thrust direction and is not tilted.',
    'Pits and scores that the readings do not show come on top.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      standardBore: '100.00 mm',
      across: ['100.10 mm', '100.06 mm', '100.00 mm'],
      along: ['100.00 mm', '100.00 mm', '100.00 mm'],
      shift: '1 mm',
    },
    outputs: { bored: '100.10 mm', bestShift: '0.05 mm', oversize: '0.10 mm' },
    from: 'hand arithmetic: worn 0.10 mm on one wall, the circle through both walls',
  },
  compute: (v) => {
    if (v.across.length !== v.along.length) {
      return conflict(['across', 'along'], 'each height needs one reading in both directions');
    }
    const sections = v.across.map((across, place) =>
      wornSection(across, v.along[place] as Length, v.standardBore, v.wearShare),
    );
    const { diameter, shift } = smallestCleanUp(sections, v.shift);
    const finished = (diameter + v.honeAllowance) as Length;
    return answer({ bored: diameter, finished, bestShift: shift, oversize: (finished - v.standardBore) as Length });
  },
});
