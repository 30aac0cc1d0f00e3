import { type Force, kilonewtons, type Length, newtonMetres, type Pressure } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { fitStresses, interferenceForPressure, smoothing } from '../thick-cylinder.js';
import { fitLength, friction, rings, stress } from './inputs.js';
import { noWall, pairOf } from './pair.js';

const change = { kind: 'length', unit: 'mm', places: 4 } as const;
const roughness = { kind: 'length', unit: 'µm', range: { from: 0, to: 0.001 }, default: 0 } as const;

export const interferenceNeeded = defineCalculation({
  id: 'fits.interference-needed',
  subject: 'fits',
  title: 'Interference that holds a torque or a force',
  summary: 'The press fit backwards: from a slip torque or an axial force to the pressure and the interference.',
  inputs: {
    ...rings,
    length: fitLength,
    friction,
    torque: {
      kind: 'torque',
      symbol: 'T',
      meaning: 'torque to hold (or give the force)',
      unit: 'N·m',
      range: { above: 0, to: newtonMetres(1e7) },
      optional: true,
    },
    force: {
      kind: 'force',
      symbol: 'F',
      meaning: 'axial force to hold (or give the torque)',
      unit: 'kN',
      range: { above: 0, to: kilonewtons(100_000) },
      optional: true,
    },
    hubRoughness: { ...roughness, symbol: 'Rzh', meaning: 'roughness Rz of the hub bore, which smooths away' },
    shaftRoughness: { ...roughness, symbol: 'Rzs', meaning: 'roughness Rz of the shaft, which smooths away' },
  },
  outputs: {
    pressure: { ...stress, symbol: 'p', meaning: 'pressure needed', places: 2 },
    interference: { ...change, symbol: 'δ', meaning: 'interference needed on the diameter, smoothing included' },
    hubBoreHoop: { ...stress, symbol: 'σh', meaning: 'hoop stress at the hub bore, tension' },
  },
  formula: 'F = 2T/d; p = F/(π·d·L·μ); δ = p·d·[(Ch + νh)/Eh + (Cs − νs)/Es] + 0.8·(Rzh + Rzs)',
  assumptions: ['As fits.press-fit. No margin is in it: friction scatters, and heat may take interference away.'],
  sources: ['thick-cylinders', 'din-7190'],
  example: {
    inputs: {
      diameter: '100 mm',
      hubOutside: '150 mm',
      hubModulus: '210 GPa',
      length: '50 mm',
      friction: '0.15',
      torque: '6872 N·m',
    },
    outputs: { pressure: '58.33 MPa', interference: '0.1000 mm' },
    from: 'reference row O-35 solved backwards',
  },
  compute: (v) => {
    const wrong = noWall(v);
    if (wrong) return wrong;
    const force = v.force ?? (v.torque === undefined ? undefined : (((2 * v.torque) / v.diameter) as Force));
    if (force === undefined || (v.force !== undefined && v.torque !== undefined)) {
      return conflict(['torque', 'force'], 'one of torque and force is needed, and not both');
    }
    const pair = pairOf(v);
    const pressure = (force / (Math.PI * v.diameter * v.length * v.friction)) as Pressure;
    const lost = smoothing(v.hubRoughness as Length, v.shaftRoughness as Length);
    return answer({
      pressure,
      interference: (interferenceForPressure(pair, pressure) + lost) as Length,
      hubBoreHoop: fitStresses(pair, pressure).hubBore,
    });
  },
});
