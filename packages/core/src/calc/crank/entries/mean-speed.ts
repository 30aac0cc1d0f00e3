import { answer, defineCalculation } from '../../catalogue/index.js';
import { meanPistonSpeed } from '../mean-speed.js';
import { crankSpeed, stroke } from './inputs.js';

export const meanSpeed = defineCalculation({
  id: 'crank.mean-piston-speed',
  subject: 'crank',
  title: 'Mean piston speed',
  summary: 'Average speed of the piston over a turn.',
  inputs: { stroke, crankSpeed },
  outputs: { meanSpeed: { kind: 'speed', symbol: 'v̄', meaning: 'mean piston speed', unit: 'm/s', places: 2 } },
  formula: 'v̄ = 2·S·n',
  assumptions: ['Two strokes a turn. In ft/min with the stroke in inches the divisor is 6, not 12.'],
  sources: ['pulkrabek-crank'],
  example: {
    inputs: { stroke: '86.0 mm', crankSpeed: '3600 rpm' },
    outputs: { meanSpeed: '10.32 m/s' },
    from: 'reference row MO-05, textbook example from memory, recomputed',
  },
  compute: (v) => answer({ meanSpeed: meanPistonSpeed(v.stroke, v.crankSpeed) }),
});
