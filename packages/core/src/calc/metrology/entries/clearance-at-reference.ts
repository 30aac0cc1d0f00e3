import { celsius, type Temperature, type ThermalExpansion } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { EXPANSION, type Material } from '../materials.js';
import { sizeAtReference } from '../temperature.js';
import { asLength, lengths } from './flavour.js';
import { expansion, temperature } from './inputs.js';
import { expansionInput, expansionOf, materialInput } from './material-inputs.js';

const ROOM = celsius(20);

export const clearanceAtReference = defineCalculation({
  id: 'metrology.clearance-at-reference',
  subject: 'metrology',
  title: 'Clearance at 20 °C from a hole and a shaft measured at other temperatures',
  summary: 'Each reading is referred to the reference temperature before one is taken from the other.',
  inputs: {
    hole: { ...lengths.size, symbol: 'H', meaning: 'reading of the hole (bore)' },
    holeTemperature: { ...temperature, symbol: 'TH', meaning: 'temperature of the hole' },
    holeExpansion: expansionInput('αH', 'the part with the hole'),
    holeMaterial: materialInput('hole', 'the part with the hole'),
    shaft: { ...lengths.size, symbol: 'S', meaning: 'reading of the shaft (journal, piston)' },
    shaftTemperature: { ...temperature, symbol: 'TS', meaning: 'temperature of the shaft' },
    shaftExpansion: expansionInput('αS', 'the shaft'),
    shaftMaterial: materialInput('shaft', 'the shaft'),
    gaugeTemperature: {
      ...temperature,
      symbol: 'Tg',
      meaning: 'temperature of the gauge for both; left out: the reference temperature',
      optional: true,
    },
    gaugeExpansion: { ...expansion, symbol: 'αg', meaning: 'thermal expansion of the gauge', default: EXPANSION.steel },
    reference: { ...temperature, symbol: 'T₀', meaning: 'temperature that sizes are referred to', default: ROOM },
  },
  outputs: {
    holeSize: { ...lengths.output, symbol: 'H₀', meaning: 'hole at the reference temperature' },
    shaftSize: { ...lengths.output, symbol: 'S₀', meaning: 'shaft at the reference temperature' },
    clearance: { ...lengths.output, symbol: 'C₀', meaning: 'diametral clearance there; negative is interference' },
    asRead: { ...lengths.output, symbol: 'C', meaning: 'difference of the readings as they are' },
    correction: { ...lengths.output, symbol: 'Δ', meaning: 'clearance at the reference less that as read' },
  },
  formula: 'C₀ = H·g/(1 + αH·(TH − T₀)) − S·g/(1 + αS·(TS − T₀)); g = 1 + αg·(Tg − T₀)',
  assumptions: ['Each part is of one even temperature. Equal temperatures cancel only where both expand alike.'],
  sources: ['derived-here', 'iso-1'],
  example: {
    inputs: {
      hole: '101.640 mm',
      holeTemperature: '28 °C',
      holeExpansion: '11 ppm/K',
      shaft: '101.580 mm',
      shaftTemperature: '23 °C',
      shaftExpansion: '19.4 ppm/K',
    },
    outputs: { holeSize: '101.63106 mm', shaftSize: '101.57409 mm', clearance: '0.0570 mm', asRead: '0.0600 mm' },
    from: 'reference row O-25',
  },
  compute: (v) => {
    const gauge = { temperature: v.gaugeTemperature ?? v.reference, expansion: v.gaugeExpansion };
    const sizeOf = (reading: number, warm: Temperature, figure?: ThermalExpansion, material?: Material) => {
      const alpha = expansionOf(figure, material);
      return alpha === undefined
        ? undefined
        : sizeAtReference(asLength(reading), { temperature: warm, expansion: alpha }, gauge, v.reference);
    };
    const holeSize = sizeOf(v.hole, v.holeTemperature, v.holeExpansion, v.holeMaterial);
    if (holeSize === undefined) return conflict(['holeExpansion'], 'give the expansion or the material of the hole');
    const shaftSize = sizeOf(v.shaft, v.shaftTemperature, v.shaftExpansion, v.shaftMaterial);
    if (shaftSize === undefined) return conflict(['shaftExpansion'], 'give the expansion or the material of the shaft');
    const clearance = asLength(holeSize - shaftSize);
    const asRead = asLength(v.hole - v.shaft);
    return answer({ holeSize, shaftSize, clearance, asRead, correction: asLength(clearance - asRead) });
  },
});
