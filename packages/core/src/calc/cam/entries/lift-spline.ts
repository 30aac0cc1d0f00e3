import { type Acceleration, type Length, mm, type Speed } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type SplineEnds, splineAt, splineThrough } from '../../numeric/index.js';
import { liftTable } from '../lift-table.js';
import { angles, crankSpeed, lifts, shownLift, shownMotion, tableFault, wheel } from './lobe-inputs.js';

const endSlope = {
  kind: 'length',
  unit: 'mm',
  range: { from: mm(-1000), to: mm(1000) },
  default: 0,
} as const;

export const liftSpline = defineCalculation({
  id: 'cam.lift-spline',
  subject: 'cam',
  title: 'Lift, velocity and acceleration between measured points',
  summary: 'Cubic spline through measured lifts, read at any angle, with its first and second derivative.',
  inputs: {
    angles,
    lifts,
    at: { ...wheel, symbol: 'θ₀', meaning: 'angles at which the curve is read, within the readings', list: true },
    ends: {
      kind: 'choice',
      symbol: 'ends',
      meaning:
        'natural: no bend at the first and last reading; clamped: stated slopes there; periodic: the last joins the first',
      choices: ['natural', 'clamped', 'periodic'],
      default: 'natural',
    },
    firstSlope: { ...endSlope, symbol: 'h′₁', meaning: 'clamped: lift for each radian at the first reading' },
    lastSlope: { ...endSlope, symbol: 'h′ₙ', meaning: 'clamped: lift for each radian at the last reading' },
    crankSpeed: { ...crankSpeed, meaning: 'speed of the shaft on which the angles are read, constant' },
  },
  outputs: {
    lift: { ...shownLift, symbol: 'h', meaning: 'lift at each angle', list: true },
    slope: {
      ...shownLift,
      symbol: 'h′',
      meaning: 'lift for each radian of the angles given (for each degree: × π/180)',
      list: true,
    },
    bend: { ...shownLift, symbol: 'h″', meaning: 'second derivative, lift for each radian squared', list: true },
    ...shownMotion,
  },
  formula: 'cubic pieces with like slope and bend at each reading; v = h′·ω; a = h″·ω²',
  assumptions: [
    'Second derivatives of measured lifts magnify their errors: spacing h and an error e give about 4e/h².',
    'Angles and speed are of the same shaft.',
  ],
  sources: ['spline-book', 'derived-here'],
  example: {
    inputs: {
      angles: ['0 rad', '1 rad', '2 rad', '3 rad'],
      lifts: ['0 mm', '1 mm', '8 mm', '27 mm'],
      at: ['1.5 rad'],
      ends: 'clamped',
      firstSlope: '0 mm',
      lastSlope: '27 mm',
    },
    outputs: { lift: ['3.375 mm'], slope: ['6.750 mm'], bend: ['9.000 mm'] },
    from: 'hand arithmetic: a clamped spline reproduces the cubic x³',
  },
  compute: (v) => {
    const table = liftTable(v.angles, v.lifts);
    if (!table.ok) return tableFault(table.fault);
    const { angles: x, lifts: y } = table.value;
    if (v.at.some((one) => one < x[0]! || one > x.at(-1)!)) {
      return conflict(['at', 'angles'], 'the curve is known only between the first reading and the last');
    }
    if (v.ends === 'periodic' && Math.abs(y.at(-1)! - y[0]!) > SAME_LIFT) {
      return conflict(['lifts', 'ends'], 'a periodic curve ends with the lift with which it begins');
    }
    const spline = splineThrough(x, y, endsOf(v));
    const points = v.at.map((one) => splineAt(spline, one));
    const speed = v.crankSpeed;
    return answer({
      lift: points.map((one) => one.value as Length),
      slope: points.map((one) => one.slope as Length),
      bend: points.map((one) => one.bend as Length),
      velocity: speed === undefined ? undefined : points.map((one) => (one.slope * speed) as Speed),
      acceleration: speed === undefined ? undefined : points.map((one) => (one.bend * speed ** 2) as Acceleration),
    });
  },
});

const SAME_LIFT = 1e-9;

function endsOf(v: { ends: 'natural' | 'clamped' | 'periodic'; firstSlope: Length; lastSlope: Length }): SplineEnds {
  return v.ends === 'clamped' ? { kind: 'clamped', first: v.firstSlope, last: v.lastSlope } : { kind: v.ends };
}
