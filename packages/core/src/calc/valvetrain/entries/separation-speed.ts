import { type Angle, type Length, type Ratio, rpm } from '../../../quantity/index.js';
import { liftTable } from '../../cam/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { splineThrough } from '../../numeric/index.js';
import { firstToPart } from '../moving-mass.js';
import { curveFault, curveInputs } from './gap-inputs.js';
import { ratio } from './inputs.js';
import { load, mass, rateInput } from './spring-inputs.js';

export const separationSpeedEntry = defineCalculation({
  id: 'valvetrain.separation-speed',
  subject: 'valvetrain',
  title: 'Speed at which the valve gear leaves a measured lobe',
  summary:
    'Lowest crank speed at which the spring no longer holds the gear on the lobe, and where on the lobe that is.',
  inputs: {
    ...curveInputs,
    lifts: { ...curveInputs.lifts, meaning: 'lift at each angle, at the lobe or at the valve (then the ratio is 1)' },
    ratio: { ...ratio, default: 1 },
    seatLoad: { ...load, symbol: 'F₀', meaning: 'spring load with the valve closed' },
    rate: rateInput,
    mass: { ...mass, range: { above: 0, to: mass.range.to }, symbol: 'm', meaning: 'effective mass at the valve' },
    crankSpeed: {
      kind: 'angular-speed',
      symbol: 'n',
      meaning: 'crank speed that is wanted',
      unit: 'rpm',
      range: { above: 0, to: rpm(30_000) },
      optional: true,
    },
  },
  outputs: {
    speed: {
      kind: 'angular-speed',
      symbol: 'n₀',
      meaning: 'crank speed at which contact is lost first',
      unit: 'rpm',
      places: 0,
    },
    angle: { kind: 'angle', symbol: 'θ', meaning: 'crank angle at which it is lost', unit: 'deg', places: 1 },
    lift: { kind: 'length', symbol: 'h', meaning: 'valve lift there', unit: 'mm', places: 3 },
    speedShare: {
      kind: 'ratio',
      symbol: 'n₀/n',
      meaning: 'that speed over the wanted one',
      unit: '',
      places: 3,
      optional: true,
    },
    loadShare: {
      kind: 'ratio',
      symbol: '(n₀/n)²',
      meaning: 'spring load over the load needed at the wanted speed',
      unit: '',
      places: 3,
      optional: true,
    },
  },
  formula: 'ω₀² = min (F₀ + k·h)/(m·(−h″)) where h″ < 0; h from a cubic spline through the readings',
  assumptions: [
    'Rigid gear, constant ratio, no gas force; real gear bends and parts earlier.',
    'Reading errors are magnified by the second derivative: take readings of few micrometres, or smooth them first.',
  ],
  sources: ['derived-here', 'spline-book'],
  example: {
    inputs: {
      angles: ['-60 deg', '-30 deg', '0 deg', '30 deg', '60 deg'],
      lifts: ['0 mm', '7.5 mm', '10 mm', '7.4 mm', '0 mm'],
      seatLoad: '400 N',
      rate: '50 N/mm',
      mass: '200 g',
    },
    outputs: { speed: '3901.5 rpm', angle: '-30.0 deg', lift: '7.500 mm' },
    from: 'hand arithmetic: the three spline equations give a bend of -23.214 mm/rad² at -30°; 775 N / (0.2 kg × 23.214 mm)',
  },
  compute: (v) => {
    const table = liftTable(v.angles, v.lifts);
    if (!table.ok) return curveFault(table.fault);
    const lifts = table.value.lifts.map((one) => one * v.ratio);
    const found = firstToPart(
      splineThrough(table.value.angles, lifts, { kind: 'natural' }),
      v.seatLoad,
      v.rate,
      v.mass,
    );
    if (!found) return conflict(['angles', 'lifts'], 'the lift never bends down: readings over the nose are needed');
    const share = v.crankSpeed === undefined ? undefined : found.speed / v.crankSpeed;
    return answer({
      speed: found.speed,
      angle: found.angle as Angle,
      lift: found.lift as Length,
      speedShare: share as Ratio | undefined,
      loadShare: share === undefined ? undefined : ((share ** 2) as Ratio),
    });
  },
});
