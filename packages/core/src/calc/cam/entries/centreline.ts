import { type Angle, degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { centrelineFromEqualLifts } from '../events.js';

const reading = { kind: 'angle', unit: 'deg', range: { from: degrees(-360), to: degrees(720) } } as const;

export const centreline = defineCalculation({
  id: 'cam.centreline',
  subject: 'cam',
  title: 'Lobe centreline from readings of equal lift',
  summary: 'Middle of a lobe from the wheel readings at one lift on the opening and the closing flank.',
  inputs: {
    opening: {
      ...reading,
      symbol: 'a',
      meaning: 'reading on the opening flank after top dead centre (negative: before)',
    },
    closing: { ...reading, symbol: 'b', meaning: 'reading at the same lift on the closing flank' },
  },
  outputs: {
    centreline: { kind: 'angle', symbol: 'CL', meaning: 'centreline after top dead centre', unit: 'deg', places: 2 },
    between: { kind: 'angle', symbol: 'b − a', meaning: 'duration at that lift', unit: 'deg', places: 2 },
  },
  formula: 'CL = (a + b)/2',
  assumptions: [
    'Flanks that are alike.',
    'Both readings were approached turning in the running sense, to keep slack out.',
  ],
  sources: ['degree-wheel'],
  example: {
    inputs: { opening: '60.0 deg', closing: '145.5 deg' },
    outputs: { centreline: '102.75 deg' },
    from: 'reference row MO-21, a re-posted degree-wheel text',
  },
  compute: (v) => {
    if (v.closing <= v.opening) {
      return conflict(['opening', 'closing'], 'the closing flank comes after the opening flank', {
        input: 'closing',
        above: v.opening,
      });
    }
    return answer({
      centreline: centrelineFromEqualLifts(v.opening, v.closing),
      between: (v.closing - v.opening) as Angle,
    });
  },
});
