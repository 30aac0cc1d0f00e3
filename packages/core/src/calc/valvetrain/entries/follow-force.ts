import {
  type Acceleration,
  type Angle,
  degrees,
  type Force,
  type Length,
  mm,
  type Ratio,
  rpm,
} from '../../../quantity/index.js';
import { lobeAt } from '../../cam/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { followForce as forceFor, separationSpeed } from '../moving-mass.js';
import { smallLength } from './inputs.js';
import { load, mass, shownForce } from './spring-inputs.js';

const exponent = { kind: 'ratio', unit: '', range: { above: 2, to: 200 } } as const;

export const followForce = defineCalculation({
  id: 'valvetrain.follow-force',
  subject: 'valvetrain',
  title: 'Spring force at the nose and the speed at which the valve floats',
  summary:
    'From the curvature of the lobe at its nose, or a polynomial lobe, and the effective mass: force needed, margin, float speed.',
  inputs: {
    mass: { ...mass, range: { above: 0, to: mass.range.to }, symbol: 'm', meaning: 'effective mass at the valve' },
    crankSpeed: {
      kind: 'angular-speed',
      symbol: 'n',
      meaning: 'crank speed',
      unit: 'rpm',
      range: { above: 0, to: rpm(30_000) },
    },
    lift: {
      ...smallLength,
      range: { above: 0, to: smallLength.range.to },
      symbol: 'L',
      meaning: 'valve lift of a polynomial lobe; with its duration',
      optional: true,
    },
    duration: {
      kind: 'angle',
      symbol: 'd',
      meaning: 'its duration from seat to seat in crank degrees',
      unit: 'deg',
      range: { above: 0, below: degrees(720) },
      optional: true,
    },
    p: { ...exponent, symbol: 'p', meaning: 'first exponent of the polynomial lobe', default: 6 },
    q: { ...exponent, symbol: 'q', meaning: 'second exponent', default: 8 },
    r: { ...exponent, symbol: 'r', meaning: 'third exponent', default: 10 },
    noseBend: {
      kind: 'length',
      symbol: 'h″',
      meaning:
        'instead of the polynomial lobe: second derivative of the valve lift at the nose for each radian of crank squared, negative',
      unit: 'mm',
      range: { from: mm(-10_000), below: 0 },
      optional: true,
    },
    openLoad: {
      ...load,
      range: { above: 0, to: load.range.to },
      symbol: 'F',
      meaning: 'spring load at full lift',
      optional: true,
    },
    wantedMargin: {
      kind: 'ratio',
      symbol: 'μ',
      meaning: 'margin wanted over the force needed, as a share of it',
      unit: '',
      range: { from: 0, to: 10 },
      default: 0,
    },
  },
  outputs: {
    noseAcceleration: {
      kind: 'acceleration',
      symbol: 'a',
      meaning: 'valve acceleration at the nose',
      unit: 'm/s2',
      places: 1,
    },
    forceNeeded: { ...shownForce, symbol: 'm·|a|', meaning: 'spring force needed at the nose' },
    forceWanted: { ...shownForce, symbol: '(1 + μ)·m·|a|', meaning: 'the same with the margin wanted' },
    margin: {
      ...shownForce,
      symbol: 'F − m·|a|',
      meaning: 'spring force beyond what is needed; negative: it floats',
      optional: true,
    },
    marginShare: {
      kind: 'ratio',
      symbol: 'F/(m·|a|) − 1',
      meaning: 'margin as a share of the force needed',
      unit: '',
      places: 3,
      optional: true,
    },
    floatSpeed: {
      kind: 'angular-speed',
      symbol: 'n₀',
      meaning: 'crank speed at which nothing is left',
      unit: 'rpm',
      places: 0,
      optional: true,
    },
  },
  formula: 'a = h″·ω², polynomial lobe: h″ = 2·C2·L/(d/2)²; F needed = m·|a|; n₀ = n·√(F/(m·|a|))',
  assumptions: [
    'ω is crank speed with durations in crank degrees. Rigid gear, ratio constant; real gear bends and floats earlier.',
    'Gas force on the valve is left out.',
  ],
  sources: ['polydyne-cam', 'derived-here'],
  example: {
    inputs: { mass: '0.240 kg', crankSpeed: '6500 rpm', lift: '12.7 mm', duration: '290 deg', openLoad: '1300 N' },
    outputs: { noseAcceleration: '-4594 m/s2', forceNeeded: '1102.5 N', floatSpeed: '7058 rpm' },
    from: 'reference row MO-34; float speed 6500·√(1300/1102.6) by hand',
  },
  compute: (v) => {
    const modelled = v.lift !== undefined && v.duration !== undefined;
    if (modelled === (v.noseBend !== undefined) || (v.noseBend !== undefined && (v.lift ?? v.duration) !== undefined)) {
      return conflict(
        ['lift', 'duration', 'noseBend'],
        'either lift and duration, or the second derivative at the nose, are needed',
      );
    }
    if (v.p === v.q || v.q === v.r || v.p === v.r) return conflict(['p', 'q', 'r'], 'the exponents must all differ');
    const bend = v.noseBend ?? bendOf(v as Modelled);
    const acceleration = (bend * v.crankSpeed ** 2) as Acceleration;
    const needed = forceFor(v.mass, acceleration);
    const outputs = {
      noseAcceleration: acceleration,
      forceNeeded: needed,
      forceWanted: ((1 + v.wantedMargin) * needed) as Force,
      margin: v.openLoad === undefined ? undefined : ((v.openLoad - needed) as Force),
      marginShare: v.openLoad === undefined ? undefined : ((v.openLoad / needed - 1) as Ratio),
      floatSpeed: v.openLoad === undefined ? undefined : separationSpeed(v.openLoad, v.mass, bend),
    };
    return answer(outputs, cautionOf(v.openLoad, outputs.forceWanted));
  },
});

interface Modelled {
  readonly lift: Length;
  readonly duration: Angle;
  readonly p: number;
  readonly q: number;
  readonly r: number;
}
const bendOf = (v: Modelled): number =>
  lobeAt({ peakLift: v.lift, halfDuration: (v.duration / 2) as Angle, exponents: [v.p, v.q, v.r] }, 0).bend;

const cautionOf = (openLoad: Force | undefined, wanted: Force): readonly Caution[] =>
  openLoad !== undefined && openLoad < wanted
    ? [{ code: 'valve-float', text: 'the spring holds less than is wanted at this speed' }]
    : [];
