import { celsius } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { EXPANSION } from '../materials.js';
import { readingAtTemperature, sizeAtReference } from '../temperature.js';
import { asLength, lengths } from './flavour.js';
import { expansion, temperature } from './inputs.js';
import { expansionInput, expansionOf, materialInput } from './material-inputs.js';

const ROOM = celsius(20);
const shared = {
  partTemperature: { ...temperature, symbol: 'Tp', meaning: 'temperature of the part' },
  partExpansion: expansionInput('αp', 'the part'),
  partMaterial: materialInput('part', 'the part'),
  gaugeTemperature: {
    ...temperature,
    symbol: 'Tg',
    meaning: 'temperature of the gauge; left out: 20 °C',
    default: ROOM,
  },
  gaugeExpansion: { ...expansion, symbol: 'αg', meaning: 'thermal expansion of the gauge', default: EXPANSION.steel },
  reference: { ...temperature, symbol: 'T₀', meaning: 'temperature that the size is referred to', default: ROOM },
} as const;
const change = { ...lengths.output, symbol: 'Δ' } as const;
const assumptions = [
  'Part and gauge are each of one even temperature.',
  'Mean expansion between the temperatures; a handbook figure is good to about 10 %.',
];
const unknownPart = () => conflict(['partExpansion', 'partMaterial'], 'give the expansion of the part or its material');

export const sizeAtReferenceEntry = defineCalculation({
  id: 'metrology.size-at-reference',
  subject: 'metrology',
  title: 'Size at 20 °C from a reading at another temperature',
  summary: 'Refers a measured size to the reference temperature, for the part and for the gauge.',
  inputs: { reading: { ...lengths.input, symbol: 'D', meaning: 'reading' }, ...shared },
  outputs: {
    size: { ...lengths.output, symbol: 'D₀', meaning: 'size at the reference temperature' },
    correction: { ...change, meaning: 'added to the reading' },
  },
  formula: 'D₀ = D·(1 + αg·(Tg − T₀))/(1 + αp·(Tp − T₀))',
  assumptions,
  sources: ['reference-temperature', 'iso-1'],
  example: {
    inputs: { reading: '101.640 mm', partTemperature: '28 °C', partExpansion: '11 ppm/K' },
    outputs: { size: '101.63106 mm', correction: '-0.00894 mm' },
    from: 'hand arithmetic; reference row O-25',
  },
  compute: (v) => {
    const alpha = expansionOf(v.partExpansion, v.partMaterial);
    if (alpha === undefined) return unknownPart();
    const part = { temperature: v.partTemperature, expansion: alpha };
    const gauge = { temperature: v.gaugeTemperature, expansion: v.gaugeExpansion };
    const size = sizeAtReference(v.reading, part, gauge, v.reference);
    return answer({ size, correction: asLength(size - v.reading) });
  },
});

export const readingAtTemperatureEntry = defineCalculation({
  id: 'metrology.reading-at-temperature',
  subject: 'metrology',
  title: 'Reading of a warm or cold part of known size',
  summary: 'What a gauge will show of a part whose size at the reference temperature is known.',
  inputs: {
    size: { ...lengths.input, symbol: 'D₀', meaning: 'size at the reference temperature' },
    ...shared,
  },
  outputs: {
    reading: { ...lengths.output, symbol: 'D', meaning: 'reading' },
    change: { ...change, meaning: 'reading less size' },
  },
  formula: 'D = D₀·(1 + αp·(Tp − T₀))/(1 + αg·(Tg − T₀))',
  assumptions,
  sources: ['reference-temperature', 'iso-1'],
  example: {
    inputs: { size: '101.600 mm', partTemperature: '35 °C', partMaterial: 'aluminium' },
    outputs: { change: '0.0352 mm' },
    from: 'reference row O-24',
  },
  compute: (v) => {
    const alpha = expansionOf(v.partExpansion, v.partMaterial);
    if (alpha === undefined) return unknownPart();
    const part = { temperature: v.partTemperature, expansion: alpha };
    const gauge = { temperature: v.gaugeTemperature, expansion: v.gaugeExpansion };
    const reading = readingAtTemperature(v.size, part, gauge, v.reference);
    return answer({ reading, change: asLength(reading - v.size) });
  },
});
