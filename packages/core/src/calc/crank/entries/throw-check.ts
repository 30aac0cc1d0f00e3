import { type Angle, degrees, toUnit } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { firingTops } from '../firing.js';
import { firingOrderAgainstThrows, type ThrowDisagreement } from '../throws.js';
import { firingFault } from './faults.js';
import { firingOrder, intervals } from './inputs.js';

const direction = { kind: 'angle', unit: 'deg', range: { from: degrees(-720), to: degrees(720) }, list: true } as const;

export const throwCheck = defineCalculation({
  id: 'crank.throw-check',
  subject: 'crank',
  title: 'Firing order against the throws of the crank',
  summary: 'Checks for every cylinder that its throw is up its bank when the firing order says so.',
  inputs: {
    firingOrder,
    intervals,
    throwAngles: {
      ...direction,
      symbol: 'τ',
      meaning: 'throw of cylinders 1, 2, 3 ... ahead of the reference, in the running sense',
    },
    bankAngles: {
      ...direction,
      symbol: 'β',
      meaning: 'bank of cylinders 1, 2, 3 ... from upright, clockwise seen from the front',
    },
    rotation: {
      kind: 'choice',
      symbol: 'sense',
      meaning: 'running sense seen from the front',
      choices: ['clockwise', 'anticlockwise'],
      default: 'clockwise',
    },
    tolerance: {
      kind: 'angle',
      symbol: 'tol',
      meaning: 'allowed for printed rounding',
      unit: 'deg',
      range: { from: 0, to: degrees(30) },
      default: degrees(0.5),
    },
  },
  outputs: {
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'whether crank and firing order belong together' },
    wrongCylinders: { kind: 'count', symbol: 'cylinder', meaning: 'cylinders that do not fit', list: true },
  },
  formula: 'β − τ (in the running sense) = A modulo 360°, both counted from the first cylinder of the order',
  assumptions: ['Four-stroke, cylinder axes through the crankshaft centre, cylinders numbered 1 to N.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      firingOrder: [1, 3, 4, 2],
      throwAngles: ['0 deg', '180 deg', '180 deg', '0 deg'],
      bankAngles: ['0 deg', '0 deg', '0 deg', '0 deg'],
    },
    outputs: { verdict: 'agrees', wrongCylinders: [] },
    from: 'hand arithmetic: flat four-throw crank',
  },
  compute: (v) => {
    const tops = firingTops(v.firingOrder, v.intervals);
    if (!tops.ok) return firingFault(tops.fault);
    const n = v.firingOrder.length;
    if (v.throwAngles.length !== n || v.bankAngles.length !== n || Math.max(...v.firingOrder) !== n) {
      return conflict(
        ['firingOrder', 'throwAngles', 'bankAngles'],
        `one throw and one bank angle are needed for each of the cylinders 1 to ${n}`,
      );
    }
    const throws = v.throwAngles.map((throwAngle, at) => ({
      cylinder: at + 1,
      throwAngle,
      bankAngle: v.bankAngles[at]!,
    }));
    const wrong = firingOrderAgainstThrows(tops.value, throws, v.rotation, v.tolerance);
    const verdict = wrong.length === 0 ? 'agrees' : `does not agree: ${wrong.map(sentence).join('; ')}`;
    return answer({ verdict, wrongCylinders: wrong.map((one) => one.cylinder) });
  },
});

const shown = (angle: Angle): string => String(Math.round(toUnit('angle', angle, 'deg') * 100) / 100);
const sentence = (one: ThrowDisagreement): string =>
  `cylinder ${one.cylinder} is up at ${shown(one.byThrow)} deg by its throw, at ${shown(one.byFiringOrder)} deg by the order`;
