import { answer, defineCalculation } from '../../catalogue/index.js';
import { SHAPES, typeB } from '../type-b.js';
import { asLength, type Flavour, lengths, numbers } from './flavour.js';
import { level } from './inputs.js';

const typeBOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.type-b${of.tail}`,
    subject: 'metrology',
    title: `Standard uncertainty from bounds${of.of}`,
    summary: 'Standard uncertainty of an effect that was not repeated but is known within bounds (Type B).',
    inputs: {
      shape: {
        kind: 'choice',
        symbol: 'shape',
        meaning:
          'what is known: rectangular (no place within ±a likelier), triangular (the middle likelier), u-shaped (the ends likelier), step (a display or graduation), trapezoidal, expanded (a certificate), normal-limits',
        choices: SHAPES,
      },
      bound: {
        ...of.size,
        symbol: 'a',
        meaning: 'half width ±a; for step the whole step; for expanded the expanded uncertainty U',
      },
      edgeRatio: {
        kind: 'ratio',
        symbol: 'β',
        meaning: 'for trapezoidal: width of the top over that of the base',
        unit: '',
        range: { from: 0, to: 1 },
        default: 0,
      },
      coverage: {
        kind: 'ratio',
        symbol: 'k',
        meaning: 'for expanded: the coverage factor on the certificate',
        unit: '',
        range: { above: 0, to: 100 },
        default: 2,
      },
      level: { ...level, meaning: 'for normal-limits: share of values within ±a' },
    },
    outputs: { uncertainty: { ...of.output, places: 6, symbol: 'u', meaning: 'standard uncertainty' } },
    formula: 'u = a/√3, a/√6, a/√2, step/√12, a·√((1 + β²)/6), U/k, a/z(p)',
    assumptions: [
      'The shape is a judgement about the instrument; rectangular is the cautious one of the bounded shapes.',
    ],
    sources: ['gum-welch'],
    example: {
      inputs: { shape: 'step', bound: of.text('0.001') },
      outputs: { uncertainty: of.text('0.000289') },
      from: 'reference row O-26',
    },
    compute: (v) => answer({ uncertainty: asLength(typeB(v.shape, v)) }),
  });

export const typeBLength = typeBOf(lengths);
export const typeBNumber = typeBOf(numbers);
