import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { linerSeals, type NoSeals } from '../liner-seals.js';
import { lengthOut, signedLength, size, tooMany } from './fit-inputs.js';
import { highest, lowest, stepLimit, steps } from './liner-inputs.js';
import { fromOne } from './lists.js';

const faultOf = ({ liner }: NoSeals) =>
  liner === undefined
    ? conflict(
        ['bare', 'seals', 'stepLimit', 'steps', 'choice'],
        'no choice of seals keeps the rules between neighbours',
      )
    : conflict(['bare', 'seals', 'lowest', 'highest'], `no seal brings liner ${liner + 1} into the window`);

export const linerSealsEntry = defineCalculation({
  id: 'selection.liner-seals',
  subject: 'selection',
  title: 'Seals or shims under wet liners',
  summary:
    'The seals with which the liners of a bank stand as high as they may, with the steps between neighbours kept.',
  inputs: {
    bare: {
      ...signedLength('p₀', 'protrusion of each liner without seal, along the bank; sunk is negative'),
      list: true,
    },
    seals: { ...size('t', 'thicknesses of seal or shim that can be had'), list: true },
    highest,
    lowest,
    stepLimit,
    steps,
    choice: {
      kind: 'choice',
      symbol: 'choice',
      meaning: 'one seal thickness for the whole bank, or one for each liner',
      choices: ['same-for-all', 'one-each'],
      default: 'same-for-all',
    },
  },
  outputs: {
    sealOf: { kind: 'count', symbol: 'j', meaning: 'seal of each liner, from 1 in the order of the list', list: true },
    thicknesses: { ...lengthOut('t*', 'their thicknesses', 3), list: true },
    protrusions: { ...lengthOut('p', 'protrusion of each liner with its seal', 3), list: true },
    wanted: {
      ...lengthOut('p₂−p₀', 'seal that would bring each liner to the highest protrusion exactly', 3),
      list: true,
    },
    step: lengthOut('max|pᵢ−pᵢ₊₁|', 'largest difference between neighbours', 3),
    total: lengthOut('Σ(p₂−p)', 'how far the liners stay below the highest protrusion, together', 3),
    bound: lengthOut('bound', 'the same with each liner decided alone: no choice of seals has less', 3),
  },
  formula: 'p = p₀ + t; minimise Σ(p₂ − p); p₁ ≤ p ≤ p₂, |pᵢ − pᵢ₊₁| ≤ Δp',
  assumptions: [
    'Each seal adds its own thickness; liners are held down as for the measurement.',
    'Neighbours are neighbours in the list. Liners stay in their places.',
    'With one seal for all the optimum is the thickest that fits; else it is found along the bank exactly.',
  ],
  sources: ['liner-seal', 'bellman'],
  example: {
    inputs: {
      bare: ['0.10 mm', '0.08 mm'],
      seals: ['0.102 mm', '0.122 mm', '0.147 mm'],
      highest: '0.23 mm',
      stepLimit: '0.04 mm',
      steps: 'one-way',
    },
    outputs: {
      thicknesses: ['0.122 mm', '0.122 mm'],
      wanted: ['0.130 mm', '0.150 mm'],
      protrusions: ['0.222 mm', '0.202 mm'],
      step: '0.020 mm',
    },
    from: 'reference row O-39; the other two thicknesses are invented',
  },
  compute: (v) => {
    const fault = reversedEnds(v, ['lowest', 'highest']) ?? tooMany({ bare: v.bare, seals: v.seals });
    if (fault) return fault;
    const { lowest: low, highest: high, stepLimit: limit, ...rest } = v;
    const found = linerSeals({
      ...rest,
      high,
      oneWay: v.steps === 'one-way',
      ...(low !== undefined && { low }),
      ...(limit !== undefined && { stepLimit: limit }),
    });
    if (!found.ok) return faultOf(found.fault);
    const { sealOf, ...lengths } = found.value;
    const wanted = v.bare.map((one) => (high - one) as Length);
    return answer({ ...lengths, wanted, sealOf: fromOne(sealOf), thicknesses: sealOf.map((one) => v.seals[one]!) });
  },
});
