import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { mean, spread } from '../repeats.js';
import { asLength, asLengths, lengths } from './flavour.js';

export const plateChange = defineCalculation({
  id: 'metrology.plate-change',
  subject: 'metrology',
  title: 'What a torque plate (or the tightened head or cap) does to a bore',
  summary: 'Change of the diameters with the plate on, and the size to hone to where the bore is measured without it.',
  inputs: {
    withPlate: { ...lengths.size, symbol: 'Dp', meaning: 'diameters with the plate tightened', list: true },
    withoutPlate: { ...lengths.size, symbol: 'D', meaning: 'diameters at the same places without it', list: true },
    wanted: { ...lengths.size, symbol: 'W', meaning: 'size wanted with the plate on', optional: true },
  },
  outputs: {
    changes: { ...lengths.output, symbol: 'Δ', meaning: 'with less without, each place', list: true },
    meanChange: { ...lengths.output, symbol: 'Δ̄', meaning: 'mean change' },
    changeSpread: {
      ...lengths.output,
      symbol: 'ΔR',
      meaning: 'largest less smallest change: what the plate does to the form',
    },
    largestChange: { ...lengths.output, symbol: 'Δ max', meaning: 'largest change; positive: the bore grows' },
    smallestChange: { ...lengths.output, symbol: 'Δ min', meaning: 'smallest change; negative: the bore shrinks' },
    readings: {
      ...lengths.output,
      symbol: 'W − Δ',
      meaning: 'diameter at each place without the plate that stands for the size wanted',
      list: true,
      optional: true,
    },
    honeTo: {
      ...lengths.output,
      symbol: 'H',
      meaning: 'mean size to hone to as measured without the plate',
      optional: true,
    },
  },
  formula: 'Δ = Dp − D; H = W − Δ̄',
  assumptions: [
    'Same fastener, thread, lubricant, torque and gasket as in the finished engine, at one temperature.',
    'The form cannot be corrected without the plate: where it changes by more than the limit, hone with the plate on.',
  ],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: {
      withPlate: ['101.612 mm', '101.600 mm'],
      withoutPlate: ['101.604 mm', '101.606 mm'],
      wanted: '101.640 mm',
    },
    outputs: {
      changes: ['0.008 mm', '-0.006 mm'],
      meanChange: '0.001 mm',
      changeSpread: '0.014 mm',
      honeTo: '101.639 mm',
      readings: ['101.632 mm', '101.646 mm'],
    },
    from: 'invented figures, hand arithmetic',
  },
  compute: (v) => {
    if (v.withPlate.length !== v.withoutPlate.length)
      return conflict(['withPlate', 'withoutPlate'], 'both need a diameter at every place');
    const changes = v.withPlate.map((one, at) => one - v.withoutPlate[at]!);
    const meanChange = mean(changes);
    const { wanted } = v;
    return answer({
      changes: asLengths(changes),
      meanChange: asLength(meanChange),
      changeSpread: asLength(spread(changes)),
      largestChange: asLength(Math.max(...changes)),
      smallestChange: asLength(Math.min(...changes)),
      readings: wanted === undefined ? undefined : asLengths(changes.map((one) => wanted - one)),
      honeTo: wanted === undefined ? undefined : asLength(wanted - meanChange),
    });
  },
});
