import {
  type Acceleration,
  type Angle,
  degrees,
  type Length,
  mm,
  type Ratio,
  type Speed,
} from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type Exponents, lobeAt, lobeCoefficients, meanLiftShare } from '../polynomial-lobe.js';
import { crankSpeed, shownLift, shownMotion, wheel } from './lobe-inputs.js';

const exponent = { kind: 'ratio', unit: '', range: { above: 2, to: 200 } } as const;
const coefficient = { kind: 'ratio', unit: '', places: 5 } as const;

export const polynomialLobe = defineCalculation({
  id: 'cam.polynomial-lobe',
  subject: 'cam',
  title: 'Polynomial full-lobe model with four terms',
  summary: 'Coefficients, lift, velocity and acceleration of a symmetric lobe 1 + C2·x² + Cp·x^p + Cq·x^q + Cr·x^r.',
  inputs: {
    p: { ...exponent, symbol: 'p', meaning: 'first upper exponent' },
    q: { ...exponent, symbol: 'q', meaning: 'second upper exponent' },
    r: { ...exponent, symbol: 'r', meaning: 'third upper exponent' },
    peakLift: {
      kind: 'length',
      symbol: 'L',
      meaning: 'lift at the nose, at the lobe or at the valve',
      unit: 'mm',
      range: { above: 0, to: mm(100) },
      default: mm(1),
    },
    duration: {
      kind: 'angle',
      symbol: 'd',
      meaning:
        'whole duration from the start of the lift to its end, in degrees of the shaft on which the angles are read',
      unit: 'deg',
      range: { above: 0, below: degrees(720) },
      default: 2,
    },
    x: {
      kind: 'ratio',
      symbol: 'x',
      meaning: 'places to read, angle from the nose over half the duration; left out: the angles are read',
      unit: '',
      range: { from: -1, to: 1 },
      list: true,
      optional: true,
    },
    fromNose: {
      ...wheel,
      symbol: 'θ',
      meaning: 'angles from the nose, before it negative; with neither x nor angles the nose is read',
      list: true,
      optional: true,
    },
    shaftSpeed: { ...crankSpeed, meaning: 'speed of that shaft (crank speed for crank degrees), constant' },
  },
  outputs: {
    c2: { ...coefficient, symbol: 'C2', meaning: 'coefficient of x²' },
    cp: { ...coefficient, symbol: 'Cp', meaning: 'coefficient of x^p' },
    cq: { ...coefficient, symbol: 'Cq', meaning: 'coefficient of x^q' },
    cr: { ...coefficient, symbol: 'Cr', meaning: 'coefficient of x^r' },
    share: { ...coefficient, symbol: 'h/L', meaning: 'lift over peak lift at each angle', list: true },
    lift: { ...shownLift, symbol: 'h', meaning: 'lift at each angle', list: true },
    velocityShare: { ...coefficient, symbol: 'h′', meaning: 'first derivative of h/L by x = θ/(d/2)', list: true },
    bendShare: { ...coefficient, symbol: 'h″', meaning: 'second derivative of h/L by x = θ/(d/2)', list: true },
    ...shownMotion,
    meanShare: { ...coefficient, symbol: 'mean/L', meaning: 'mean lift over the duration as a share of the peak' },
  },
  formula: 'h/L = 1 + C2·x² + Cp·x^p + Cq·x^q + Cr·x^r, x = θ/(d/2); 0 with three derivatives at x = 1',
  assumptions: ['A model of a lobe, not a measured one; symmetric, without ramps.'],
  sources: ['polydyne-cam', 'derived-here'],
  example: {
    inputs: { p: '6', q: '8', r: '10', x: ['0', '0.5'] },
    outputs: { c2: '-2.5', cp: '5', cq: '-5', cr: '1.5', share: ['1.00000', '0.43506'], meanShare: '0.46176' },
    from: 'reference row MO-24; boundary conditions by hand',
  },
  compute: (v) => {
    if (v.p === v.q || v.q === v.r || v.p === v.r) return conflict(['p', 'q', 'r'], 'the exponents must all differ');
    const exponents: Exponents = [v.p, v.q, v.r];
    const [c2, cp, cq, cr] = lobeCoefficients(exponents) as unknown as [Ratio, Ratio, Ratio, Ratio];
    const halfDuration = (v.duration / 2) as Angle;
    const places = v.x?.map((one) => one * halfDuration) ?? v.fromNose ?? [0];
    const points = places.map((one) => lobeAt({ peakLift: v.peakLift, halfDuration, exponents }, one));
    const speed = v.shaftSpeed;
    return answer({
      c2,
      cp,
      cq,
      cr,
      share: points.map((one) => (one.lift / v.peakLift) as Ratio),
      lift: points.map((one) => one.lift as Length),
      velocityShare: points.map((one) => ((one.slope * halfDuration) / v.peakLift) as Ratio),
      bendShare: points.map((one) => ((one.bend * halfDuration ** 2) / v.peakLift) as Ratio),
      velocity: speed === undefined ? undefined : points.map((one) => (one.slope * speed) as Speed),
      acceleration: speed === undefined ? undefined : points.map((one) => (one.bend * speed ** 2) as Acceleration),
      meanShare: meanLiftShare(exponents) as Ratio,
    });
  },
});
