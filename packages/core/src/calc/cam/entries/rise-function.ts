import {
  type Acceleration,
  type Angle,
  degrees,
  type Length,
  mm,
  type Ratio,
  type Speed,
} from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { RISE_LAWS, riseAt, risePeaks } from '../rise.js';
import { crankSpeed, shownLift } from './lobe-inputs.js';

const factor = { kind: 'ratio', unit: '', places: 4 } as const;

export const riseFunction = defineCalculation({
  id: 'cam.rise-function',
  subject: 'cam',
  title: 'Standard rise curves and their peak velocity and acceleration',
  summary: 'Harmonic, cycloidal and polynomial rises: peak factors, and lift, velocity and acceleration on the way.',
  inputs: {
    law: { kind: 'choice', symbol: 'law', meaning: 'standard curve', choices: RISE_LAWS },
    rise: {
      kind: 'length',
      symbol: 'L',
      meaning: 'whole rise',
      unit: 'mm',
      range: { above: 0, to: mm(1000) },
      default: mm(1),
    },
    angle: {
      kind: 'angle',
      symbol: 'b',
      meaning: 'angle of the rise, of the shaft whose speed is given',
      unit: 'deg',
      range: { above: 0, to: degrees(720) },
      default: 1,
    },
    at: {
      kind: 'ratio',
      symbol: 'x',
      meaning: 'places on the way, as shares of the angle from 0 to 1; left out: the middle',
      unit: '',
      range: { from: 0, to: 1 },
      list: true,
      optional: true,
    },
    shaftSpeed: { ...crankSpeed, symbol: 'ω', meaning: 'speed of that shaft, constant' },
  },
  outputs: {
    peakVelocity: { ...factor, symbol: 'v/(L/b)', meaning: 'peak velocity in units of L/b' },
    peakAcceleration: { ...factor, symbol: 'a/(L/b²)', meaning: 'peak acceleration in units of L/b²' },
    share: { ...factor, symbol: 'h/L', meaning: 'rise at each place as a share of the whole', list: true },
    velocityShare: { ...factor, symbol: 'v·b/L', meaning: 'velocity at each place in units of L/b', list: true },
    accelerationShare: {
      ...factor,
      symbol: 'a·b²/L',
      meaning: 'acceleration at each place in units of L/b²',
      list: true,
    },
    lift: { ...shownLift, symbol: 'h', meaning: 'rise at each place', list: true },
    topSpeed: {
      kind: 'speed',
      symbol: 'v',
      meaning: 'peak velocity at the speed',
      unit: 'm/s',
      places: 4,
      optional: true,
    },
    topAcceleration: {
      kind: 'acceleration',
      symbol: 'a',
      meaning: 'peak acceleration at the speed',
      unit: 'm/s2',
      places: 2,
      optional: true,
    },
  },
  formula: 'v = v₁·L·ω/b; a = a₁·L·ω²/b²; v₁, a₁ from the curve',
  assumptions: ['The harmonic curve begins and ends with a jump of acceleration: not acceptable at a valve seat.'],
  sources: ['norton-cam', 'rothbart-cam', 'derived-here'],
  example: {
    inputs: { law: 'polynomial-3-4-5', at: ['0.5'] },
    outputs: { peakVelocity: '1.8750', peakAcceleration: '5.7735', share: ['0.5000'] },
    from: 'reference row MO-23; 15/8 and 10/√3 by hand',
  },
  compute: (v) => {
    const peaks = risePeaks(v.law);
    const points = (v.at ?? [0.5]).map((x) => riseAt(v.law, x));
    const rate = v.shaftSpeed === undefined ? undefined : v.shaftSpeed / (v.angle as Angle);
    return answer({
      peakVelocity: peaks.velocity as Ratio,
      peakAcceleration: peaks.acceleration as Ratio,
      share: points.map((one) => one.lift as Ratio),
      velocityShare: points.map((one) => one.velocity as Ratio),
      accelerationShare: points.map((one) => one.acceleration as Ratio),
      lift: points.map((one) => (one.lift * v.rise) as Length),
      topSpeed: rate === undefined ? undefined : ((peaks.velocity * v.rise * rate) as Speed),
      topAcceleration: rate === undefined ? undefined : ((peaks.acceleration * v.rise * rate ** 2) as Acceleration),
    });
  },
});
