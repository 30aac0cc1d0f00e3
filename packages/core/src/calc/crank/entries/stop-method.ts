import { degrees } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { topFromStop } from '../stop-method.js';

const reading = { kind: 'angle', unit: 'deg', range: { from: degrees(-360), to: degrees(360) } } as const;

export const stopMethod = defineCalculation({
  id: 'crank.stop-method',
  subject: 'crank',
  title: 'True top dead centre by positive stop',
  summary: 'Where true top dead centre lies between two wheel readings against a stop, and how far to move the wheel.',
  inputs: {
    before: { ...reading, symbol: 'a', meaning: 'wheel reading on the stop before top dead centre, negative' },
    after: { ...reading, symbol: 'b', meaning: 'wheel reading on the stop after top dead centre, positive' },
  },
  outputs: {
    trueTop: { kind: 'angle', symbol: 'top', meaning: 'wheel reading of true top dead centre', unit: 'deg', places: 2 },
    correction: {
      kind: 'angle',
      symbol: 'move',
      meaning: 'to add to every reading of the wheel',
      unit: 'deg',
      places: 2,
    },
    eachSide: { kind: 'angle', symbol: 'each', meaning: 'reading on each side once corrected', unit: 'deg', places: 2 },
  },
  formula: 'top = (a + b)/2; move = −top; each = |b − a|/2',
  assumptions: ['Readings are signed: before top dead centre negative.', 'Same stop, not moved between the readings.'],
  sources: ['derived-here', 'degree-wheel'],
  example: {
    inputs: { before: '-36.75 deg', after: '35.25 deg' },
    outputs: { trueTop: '-0.75 deg', correction: '0.75 deg', eachSide: '36.00 deg' },
    from: 'reference row MO-21',
  },
  compute: (v) => answer({ ...topFromStop(v.before, v.after) }),
});
