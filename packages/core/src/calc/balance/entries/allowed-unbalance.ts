import { kilograms, type Length, type Mass, metresPerSecond } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { allowedUnbalance as find } from '../rotor.js';
import { crankSpeed, massOut, size } from './inputs.js';

export const allowedUnbalance = defineCalculation({
  id: 'balance.allowed-unbalance',
  subject: 'balance',
  title: 'Residual unbalance that a balance quality grade allows',
  summary: 'As a mass at a radius, and as the distance of the centre of mass from the axis.',
  inputs: {
    mass: {
      kind: 'mass',
      symbol: 'm',
      meaning: 'mass of the rotor',
      unit: 'kg',
      range: { above: 0, to: kilograms(1e5) },
    },
    grade: {
      kind: 'speed',
      symbol: 'G',
      meaning: 'balance quality grade, written as a speed: G 6.3 is 6.3 mm/s',
      unit: 'mm/s',
      range: { above: 0, to: metresPerSecond(4) },
    },
    speed: { ...crankSpeed, meaning: 'highest service speed of the rotor' },
    radius: size('r', 'radius at which the residual mass is counted'),
    planes: {
      kind: 'count',
      symbol: 'k',
      meaning: 'correction planes that share it evenly',
      range: { from: 1, to: 2 },
      default: 1,
    },
  },
  outputs: {
    residual: massOut('U/r', 'mass at that radius that may remain, in each plane', 3),
    offset: { kind: 'length', symbol: 'e', meaning: 'centre of mass from the axis', unit: 'µm', places: 2 },
  },
  formula: 'U = m·G/ω; e = G/ω; each plane U/k',
  assumptions: ['Rigid rotor. Crankshafts of engines are also judged by their residual couple.'],
  sources: ['iso-21940-11'],
  example: {
    inputs: { mass: '25 kg', grade: '16 mm/s', speed: '6000 rpm', radius: '50 mm' },
    outputs: { residual: '12.73 g', offset: '25.46 µm' },
    from: 'hand arithmetic: 16/628.32 mm · 25 000 g/50 mm',
  },
  compute: (v) => {
    const unbalance = find(v.mass, v.grade, v.speed);
    return answer({
      residual: (unbalance / v.radius / v.planes) as Mass,
      offset: (unbalance / v.mass) as Length,
    });
  },
});
