import { answer, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { linersKeep } from '../liner-seals.js';
import { lengthOut, line, signedLength } from './fit-inputs.js';
import { highest, lowest, stepLimit, steps } from './liner-inputs.js';

export const linerSteps = defineCalculation({
  id: 'selection.liner-steps',
  subject: 'selection',
  title: 'Do the liners of a bank keep their rules',
  summary: 'Largest step between neighbouring liners, whether the steps run one way, and the verdict on the bank.',
  inputs: {
    protrusions: {
      ...signedLength('p', 'protrusion of each liner as it stands, along the bank; sunk is negative'),
      list: true,
    },
    highest,
    lowest,
    stepLimit,
    steps,
  },
  outputs: {
    step: lengthOut('max|pᵢ−pᵢ₊₁|', 'largest difference between neighbours', 3),
    spread: lengthOut('Δp', 'highest less lowest liner', 3),
    runsOneWay: line('one way', 'yes when all steps run one way along the bank, or no'),
    verdict: line('verdict', 'in, or out with the rules that are broken'),
  },
  formula: 'p₁ ≤ p ≤ p₂; |pᵢ − pᵢ₊₁| ≤ Δp; steps all ≥ 0 or all ≤ 0 where asked for',
  assumptions: ['Neighbours are neighbours in the list.', 'Ends belong to the window and to the step limit.'],
  sources: ['liner-seals'],
  example: {
    inputs: {
      protrusions: ['0.21 mm', '0.16 mm', '0.19 mm'],
      highest: '0.23 mm',
      stepLimit: '0.04 mm',
      steps: 'one-way',
    },
    outputs: { step: '0.05 mm', runsOneWay: 'no', verdict: 'out: step, one way' },
    from: 'reference row O-39',
  },
  compute: (v) => {
    const fault = reversedEnds(v, ['lowest', 'highest']);
    if (fault) return fault;
    const { protrusions, highest: high, lowest: low, stepLimit: limit } = v;
    const oneWay = v.steps === 'one-way';
    const found = linersKeep(protrusions, {
      high,
      oneWay,
      ...(low !== undefined && { low }),
      ...(limit !== undefined && { stepLimit: limit }),
    });
    const broken = [
      !found.windowKept && 'height',
      !found.stepKept && 'step',
      oneWay && !found.runsOneWay && 'one way',
    ].filter((one) => one !== false);
    return answer({
      step: found.step,
      spread: (Math.max(...protrusions) - Math.min(...protrusions)) as typeof high,
      runsOneWay: found.runsOneWay ? 'yes' : 'no',
      verdict: broken.length === 0 ? 'in' : `out: ${broken.join(', ')}`,
    });
  },
});
