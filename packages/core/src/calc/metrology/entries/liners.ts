import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { atMost } from '../decision.js';
import { runsOneWay, STEP_RULES, spreadOfEach, stepsBetween } from '../liners.js';
import { mean } from '../repeats.js';
import { asLength, asLengths, lengths, maybeLength } from './flavour.js';
import { limitInputs, upsideDown } from './limit-inputs.js';

export const linerProtrusion = defineCalculation({
  id: 'metrology.liner-protrusion',
  subject: 'metrology',
  title: 'Liner protrusion: height, spread and steps between neighbours',
  summary: 'Two to four points a liner, along one bank: each against its limits, and the largest step against its own.',
  inputs: {
    protrusions: {
      ...lengths.input,
      symbol: 'p',
      meaning: 'protrusions above the block, liner after liner along one bank, all points of a liner together',
      list: true,
    },
    pointsPerLiner: {
      kind: 'count',
      symbol: 'm',
      meaning: 'points measured on each liner',
      range: { from: 1, to: 16 },
      default: 1,
    },
    ...limitInputs(lengths),
    stepLimit: {
      ...lengths.size,
      symbol: 'step max',
      meaning: 'largest step between neighbours, inclusive',
      optional: true,
    },
    stepRule: {
      kind: 'choice',
      symbol: 'rule',
      meaning:
        'steps between the means of neighbours, or between their worst points (lowest of one, highest of the next)',
      choices: STEP_RULES,
      default: 'means',
    },
    oneWay: {
      kind: 'choice',
      symbol: 'one way',
      meaning: 'whether the heights must only rise or only fall along the bank',
      choices: ['not-asked', 'required'],
      default: 'not-asked',
    },
    spreadLimit: {
      ...lengths.size,
      symbol: 'tilt max',
      meaning: 'largest spread of the points of one liner, inclusive',
      optional: true,
    },
  },
  outputs: {
    means: { ...lengths.output, symbol: 'p̄', meaning: 'mean protrusion of each liner', list: true },
    spreads: { ...lengths.output, symbol: 'tilt', meaning: 'highest less lowest point of each liner', list: true },
    steps: {
      ...lengths.output,
      symbol: 'step',
      meaning: 'step from each liner to the next',
      list: true,
      optional: true,
    },
    largestStep: { ...lengths.output, symbol: 'step', meaning: 'largest of them', optional: true },
    lowest: { ...lengths.output, symbol: 'p min', meaning: 'lowest point of the bank' },
    highest: { ...lengths.output, symbol: 'p max', meaning: 'highest point of the bank' },
    heightVerdict: { kind: 'text', symbol: 'V height', meaning: 'every point within low and high: in, out or no data' },
    stepVerdict: { kind: 'text', symbol: 'V step', meaning: 'steps: in, out or no data' },
    orderVerdict: {
      kind: 'text',
      symbol: 'V order',
      meaning: 'heights run one way: in, out, or no data where not asked',
    },
    spreadVerdict: { kind: 'text', symbol: 'V tilt', meaning: 'spread of the points: in, out or no data' },
    verdict: {
      kind: 'text',
      symbol: 'verdict',
      meaning: 'out if any is out, in if one was judged and none is out, else no data',
    },
  },
  formula: 'step = |p̄(k + 1) − p̄(k)|, or the largest point of one less the lowest of its neighbour',
  assumptions: ['Liners clamped as the maker says, block at 15 to 25 °C. The maker’s figures decide.'],
  sources: ['liner-seal'],
  example: {
    inputs: { protrusions: ['0.21 mm', '0.16 mm', '0.19 mm'], stepLimit: '0.04 mm', oneWay: 'required' },
    outputs: {
      largestStep: '0.05 mm',
      stepVerdict: 'out',
      orderVerdict: 'out',
      verdict: 'out',
      heightVerdict: 'no data',
    },
    from: 'reference row O-39',
  },
  compute: (v) => {
    const wrong = upsideDown(v);
    if (wrong) return wrong;
    const m = v.pointsPerLiner;
    if (v.protrusions.length % m !== 0)
      return conflict(['protrusions', 'pointsPerLiner'], `the readings do not make whole liners of ${m} points`);
    const liners = Array.from({ length: v.protrusions.length / m }, (_, at) =>
      v.protrusions.slice(at * m, (at + 1) * m),
    );
    const means = liners.map(mean);
    const spreads = spreadOfEach(liners);
    const steps = stepsBetween(liners, v.stepRule);
    const largestStep = steps.length === 0 ? undefined : Math.max(...steps);
    const [lowest, highest] = [Math.min(...v.protrusions), Math.max(...v.protrusions)];
    const heightAsked = v.low !== undefined || v.high !== undefined;
    const height = atMost(v.low ?? lowest, lowest) && atMost(highest, v.high ?? highest);
    const verdicts = {
      heightVerdict: word(heightAsked ? height : undefined),
      stepVerdict: word(
        largestStep !== undefined && v.stepLimit !== undefined ? atMost(largestStep, v.stepLimit) : undefined,
      ),
      orderVerdict: word(v.oneWay === 'required' ? runsOneWay(means) : undefined),
      spreadVerdict: word(v.spreadLimit === undefined ? undefined : atMost(Math.max(...spreads), v.spreadLimit)),
    };
    const words = Object.values(verdicts);
    return answer({
      means: asLengths(means),
      spreads: asLengths(spreads),
      steps: largestStep === undefined ? undefined : asLengths(steps),
      largestStep: maybeLength(largestStep),
      lowest: asLength(lowest),
      highest: asLength(highest),
      ...verdicts,
      verdict: words.includes('out') ? 'out' : words.includes('in') ? 'in' : 'no data',
    });
  },
});
const word = (kept: boolean | undefined): string => (kept === undefined ? 'no data' : kept ? 'in' : 'out');
