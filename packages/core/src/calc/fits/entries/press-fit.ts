import type { Length } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { fitGrip, fitPressure, fitSizes, fitStresses, smoothing } from '../thick-cylinder.js';
import { fitLength, friction, interference, rings, stress } from './inputs.js';
import { noWall, pairOf } from './pair.js';

const roughness = { kind: 'length', unit: 'µm', range: { from: 0, to: 0.001 }, default: 0 } as const;
const change = { kind: 'length', unit: 'mm', places: 4 } as const;

const allLost: Caution = { code: 'no-grip', text: 'the surfaces smooth away the whole interference: no grip is left' };

export const pressFit = defineCalculation({
  id: 'fits.press-fit',
  subject: 'fits',
  title: 'Pressure, stresses and grip of a press or shrink fit',
  summary: 'Two rings of one or two materials: pressure, hoop stresses, press force, slip torque, closure of the bore.',
  inputs: {
    ...rings,
    interference,
    length: { ...fitLength, optional: true },
    friction: { ...friction, optional: true },
    hubRoughness: { ...roughness, symbol: 'Rzh', meaning: 'roughness Rz of the hub bore, which smooths away' },
    shaftRoughness: { ...roughness, symbol: 'Rzs', meaning: 'roughness Rz of the shaft, which smooths away' },
  },
  outputs: {
    effective: { ...change, symbol: 'δe', meaning: 'interference that grips' },
    pressure: { ...stress, symbol: 'p', meaning: 'pressure between them', places: 2 },
    hubBoreHoop: { ...stress, symbol: 'σh', meaning: 'hoop stress at the hub bore, tension' },
    hubOutsideHoop: { ...stress, symbol: 'σo', meaning: 'hoop stress at the outside of the hub' },
    shaftHoop: { ...stress, symbol: 'σs', meaning: 'hoop stress of the shaft where they meet; negative: compression' },
    shaftBoreHoop: { ...stress, symbol: 'σi', meaning: 'hoop stress at the bore of the shaft, or in a solid one' },
    hubEquivalent: { ...stress, symbol: 'σeq', meaning: 'equivalent stress at the hub bore (von Mises)' },
    boreClosure: { ...change, symbol: 'ΔDi', meaning: 'bore of the shaft closes by this, on the diameter' },
    hubGrowth: { ...change, symbol: 'ΔDo', meaning: 'outside of the hub grows by this, on the diameter' },
    pressForce: {
      kind: 'force',
      symbol: 'F',
      meaning: 'axial force that it holds; press force at full depth',
      unit: 'kN',
      places: 2,
      optional: true,
    },
    slipTorque: {
      kind: 'torque',
      symbol: 'T',
      meaning: 'torque at which it slips',
      unit: 'N·m',
      places: 1,
      optional: true,
    },
  },
  formula:
    'p = (δe/d)/[(Ch + νh)/Eh + (Cs − νs)/Es]; Ch = (Do² + d²)/(Do² − d²), Cs = (d² + Di²)/(d² − Di²); δe = δ − 0.8·(Rzh + Rzs); F = π·d·L·p·μ; T = F·d/2',
  assumptions: [
    'Elastic, long and even rings; interference and diameters both on the diameter. No speed, no yield, no creep.',
    'Force grows with depth: the last millimetre is the peak. Ream or hone after fitting, and measure the clearance then.',
  ],
  sources: ['thick-cylinders', 'din-7190'],
  example: {
    inputs: {
      diameter: '100 mm',
      hubOutside: '150 mm',
      hubModulus: '210 GPa',
      interference: '0.10 mm',
      length: '50 mm',
      friction: '0.15',
    },
    outputs: { pressure: '58.33 MPa', hubBoreHoop: '151.7 MPa', shaftHoop: '-58.3 MPa', slipTorque: '6872 N·m' },
    from: 'reference row O-35, sum printed in the source; last digits by hand arithmetic',
  },
  compute: (v) => {
    const wrong = noWall(v);
    if (wrong) return wrong;
    if ((v.length === undefined) !== (v.friction === undefined)) {
      return conflict(['length', 'friction'], 'the grip needs length and friction together');
    }
    const pair = pairOf(v);
    const effective = (v.interference - smoothing(v.hubRoughness as Length, v.shaftRoughness as Length)) as Length;
    const pressure = fitPressure(pair, effective);
    const grip =
      v.length === undefined || v.friction === undefined
        ? undefined
        : fitGrip(v.diameter, v.length, pressure, v.friction);
    const stresses = fitStresses(pair, pressure);
    return answer(
      {
        effective,
        pressure,
        hubBoreHoop: stresses.hubBore,
        hubOutsideHoop: stresses.hubOutside,
        shaftHoop: stresses.shaftFit,
        shaftBoreHoop: stresses.shaftBore,
        hubEquivalent: stresses.hubEquivalent,
        ...fitSizes(pair, pressure),
        pressForce: grip?.force,
        slipTorque: grip?.torque,
      },
      effective <= 0 ? [allLost] : [],
    );
  },
});
