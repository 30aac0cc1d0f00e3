import { celsius, kilograms, type Ratio, type Volume } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { volumeOfWater, waterDensity } from '../burette.js';
import { ratioOut, room, roomOut } from './inputs.js';

export const buretteCheck = defineCalculation({
  id: 'cylinder.burette-check',
  subject: 'cylinder',
  title: 'Burette checked by weighing water',
  summary: 'True volume of what the burette let out, its error, and the factor for later readings.',
  inputs: {
    indicated: room('Vi', 'volume that the burette says it let out'),
    mass: {
      kind: 'mass',
      symbol: 'm',
      meaning: 'mass of that water as the scale shows it',
      unit: 'g',
      range: { above: 0, to: kilograms(100) },
    },
    temperature: {
      kind: 'temperature',
      symbol: 't',
      meaning: 'temperature of the water',
      unit: '°C',
      range: { from: celsius(0), to: celsius(40) },
      default: celsius(20),
    },
  },
  outputs: {
    volume: roomOut('V', 'true volume', 3),
    error: roomOut('E', 'indicated less true: positive means the burette reads too much', 3),
    factor: ratioOut('f', 'true over indicated', 5),
    density: { kind: 'density', symbol: 'ρ', meaning: 'density of the water', unit: 'kg/m3', places: 2 },
  },
  formula: 'V = m·(1 − ρa/ρs)/(ρ(t) − ρa), air ρa 1.2, weights ρs 8000 kg/m³; E = Vi − V; f = V/Vi',
  assumptions: [
    'Clean water without air, scale adjusted with weights in air; one gram is one cc within 0.3 % at room heat.',
  ],
  sources: ['water-density', 'iso-4787'],
  example: {
    inputs: { indicated: '50.0 cc', mass: '50.00 g', temperature: '20 °C' },
    outputs: { volume: '50.143 cm3', density: '998.21 kg/m3', error: '-0.143 cm3', factor: '1.00285' },
    from: 'factor for 20 °C of ISO 4787, 1.0029 mL/g (from memory)',
  },
  compute: (v) => {
    const volume = volumeOfWater(v.mass, v.temperature);
    return answer({
      volume,
      error: (v.indicated - volume) as Volume,
      factor: (volume / v.indicated) as Ratio,
      density: waterDensity(v.temperature),
    });
  },
});
