import { degrees } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { blindTo, lobeFactor, SIDES } from '../vee-block.js';
import { asLength, lengths, maybeLength } from './flavour.js';
import { asRatio } from './inputs.js';

const MOST_LOBES = 15;

export const lobedShaft = defineCalculation({
  id: 'metrology.lobed-shaft',
  subject: 'metrology',
  title: 'Out-of-round of a lobed shaft from a vee block or a two-point gauge',
  summary: 'What an indicator swing over a vee block means, what a micrometer would find, and which forms stay hidden.',
  inputs: {
    lobes: {
      kind: 'count',
      symbol: 'n',
      meaning: 'lobes of the shaft: 2 is an oval, 3 and 5 come from grinding',
      range: { from: 2, to: 100 },
    },
    angle: {
      kind: 'angle',
      symbol: 'θ',
      meaning: 'included angle of the vee; 180° is a flat, which makes it a two-point gauge (micrometer)',
      unit: 'deg',
      range: { above: 0, to: degrees(180) },
    },
    indicator: {
      kind: 'choice',
      symbol: 'side',
      meaning: 'where the indicator stands on the bisector: opposite the block, or through its bottom',
      choices: SIDES,
      default: 'opposite',
    },
    swing: { ...lengths.size, symbol: 'M', meaning: 'indicator swing over one turn', optional: true },
  },
  outputs: {
    factor: {
      kind: 'ratio',
      symbol: 'K',
      meaning: 'swing over true radial out-of-round; 0: the form cannot be seen',
      unit: '',
      places: 3,
    },
    outOfRound: {
      ...lengths.output,
      symbol: 'F',
      meaning: 'true radial out-of-round: largest less smallest radius',
      optional: true,
    },
    diameterDifference: {
      ...lengths.output,
      symbol: 'ΔD',
      meaning: 'largest less smallest diameter that a two-point gauge finds of it',
      optional: true,
    },
    twoPointFactor: { kind: 'ratio', symbol: 'K180', meaning: 'the factor of a two-point gauge', unit: '', places: 3 },
    blind: { kind: 'count', symbol: 'blind', meaning: 'lobe counts up to 15 that this set-up cannot see', list: true },
  },
  formula:
    'K = |1 + cos(n·(90° + θ/2))/sin(θ/2)|; F = M/K; through the block: K = |cos(n·180°) − cos(n·(90° + θ/2))/sin(θ/2)|',
  assumptions: [
    'Equal lobes of one count; in truth several counts mix, and their number is found by counting the swings.',
  ],
  sources: ['vee-block'],
  example: {
    inputs: { lobes: 3, angle: '90 deg', swing: '0.012 mm' },
    outputs: { factor: '2.000', outOfRound: '0.006 mm', twoPointFactor: '0.000', diameterDifference: '0.000 mm' },
    from: 'reference row O-36',
  },
  compute: (v) => {
    const factor = lobeFactor(v.lobes, v.angle, v.indicator);
    const twoPoint = lobeFactor(v.lobes, degrees(180), 'opposite');
    const form = v.swing === undefined || factor === 0 ? undefined : v.swing / factor;
    const hidden = { code: 'form-hidden', text: `this set-up cannot see ${v.lobes} lobes: the shaft reads round` };
    return answer(
      {
        factor: asRatio(factor),
        outOfRound: maybeLength(form),
        diameterDifference: form === undefined ? undefined : asLength(form * twoPoint),
        twoPointFactor: asRatio(twoPoint),
        blind: blindTo(v.angle, v.indicator, MOST_LOBES),
      },
      factor === 0 ? [hidden] : [],
    );
  },
});
