import { hours, type Time } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';

const time = { kind: 'time', unit: 'h', range: { from: 0, to: hours(100_000) } } as const;

export const retorqueDwell = defineCalculation({
  id: 'fasteners.retorque-dwell',
  subject: 'fasteners',
  title: 'Dwell before re-tightening',
  summary: 'How long a gasketed joint still has to rest between the final pass and a re-tightening.',
  inputs: {
    elapsed: { ...time, symbol: 't', meaning: 'time since the final pass' },
    needed: { ...time, symbol: 't min', meaning: 'dwell that is wanted', default: hours(4) },
  },
  outputs: {
    remaining: { kind: 'time', symbol: 'Δt', meaning: 'still to wait', unit: 'h', places: 2 },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'wait, or rested' },
  },
  formula: 'Δt = max(0, t min − t)',
  assumptions: [
    'Four hours are guidance for pipe flanges at room temperature. A head gasket maker’s text wins, "no re-torque" above all.',
    'Re-tighten cold unless told otherwise; the first movement reads high.',
  ],
  sources: ['retorque-dwell'],
  example: {
    inputs: { elapsed: '1.5 h' },
    outputs: { remaining: '2.50 h', verdict: 'wait' },
    from: 'reference row O-31, hand arithmetic',
  },
  compute: (v) => {
    const remaining = Math.max(0, v.needed - v.elapsed) as Time;
    return answer({ remaining, verdict: remaining > 0 ? 'wait' : 'rested' });
  },
});
