import { litres, type Ratio } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { airFlow as find } from '../gas.js';
import { crankSpeed } from './crank-speed.js';

export const airFlow = defineCalculation({
  id: 'cylinder.air-flow',
  subject: 'cylinder',
  title: 'Air that a four-stroke engine takes in',
  summary: 'Volume flow from displacement, crank speed and filling; advisory.',
  inputs: {
    displacement: {
      kind: 'volume',
      symbol: 'V',
      meaning: 'displacement of the engine',
      unit: 'L',
      range: { above: 0, to: litres(10_000) },
    },
    crankSpeed,
    filling: {
      kind: 'ratio',
      symbol: 'η',
      meaning: 'volumetric efficiency, such as 85 %',
      unit: '%',
      range: { above: 0, to: 5 },
      default: 1,
    },
  },
  outputs: { flow: { kind: 'volume-flow', symbol: 'Q', meaning: 'air taken in', unit: 'L/min', places: 0 } },
  formula: 'Q = η·V·n/2',
  assumptions: ['Four-stroke. At the state of the air in front of the engine.'],
  sources: ['derived-here'],
  example: {
    inputs: { displacement: '5.0 L', crankSpeed: '6000 rpm', filling: '85 %' },
    outputs: { flow: '12750 L/min' },
    from: 'hand arithmetic: 0.85·5·3000',
  },
  compute: (v) => answer({ flow: find(v.displacement, v.crankSpeed, v.filling as Ratio) }),
});
