import { type Frequency, mm, type Ratio, rpm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { activeMass, springRate, surge } from '../spring.js';
import { height, mass, rateInput, wireMaterial } from './spring-inputs.js';

const spring = { ...height, range: { above: 0, to: mm(500) } } as const;
const CAM_TURN = 4 * Math.PI;

export const springSurge = defineCalculation({
  id: 'valvetrain.spring-surge',
  subject: 'valvetrain',
  title: 'Surge of a valve spring',
  summary:
    'First natural frequency from the wire and coils, or from a measured rate and mass, and how it stands to the cam’s speed.',
  inputs: {
    wire: {
      ...spring,
      symbol: 'd',
      meaning: 'wire diameter',
    },
    meanDiameter: { ...spring, symbol: 'D', meaning: 'mean coil diameter' },
    activeCoils: {
      kind: 'ratio',
      symbol: 'Na',
      meaning: 'coils that work',
      unit: '',
      range: { above: 0, to: 500 },
    },
    ...wireMaterial,
    rate: { ...rateInput, meaning: 'measured rate, instead of that of the wire', optional: true },
    activeMass: {
      ...mass,
      range: { above: 0, to: mass.range.to },
      symbol: 'm',
      meaning: 'weighed mass of the coils that work, instead of that of the wire',
      optional: true,
    },
    crankSpeed: {
      kind: 'angular-speed',
      symbol: 'n',
      meaning: 'crank speed',
      unit: 'rpm',
      range: { above: 0, to: rpm(30_000) },
      optional: true,
    },
  },
  outputs: {
    bothHeld: {
      kind: 'frequency',
      symbol: 'f',
      meaning: 'first natural frequency with both ends held',
      unit: 'Hz',
      places: 1,
    },
    oneFree: { kind: 'frequency', symbol: 'f/2', meaning: 'the same with one end free', unit: 'Hz', places: 1 },
    rate: { kind: 'stiffness', symbol: 'k', meaning: 'rate', unit: 'N/mm', places: 2 },
    activeMass: { kind: 'mass', symbol: 'm', meaning: 'mass of the coils that work', unit: 'g', places: 2 },
    camFrequency: {
      kind: 'frequency',
      symbol: 'fc',
      meaning: 'turns of the cam a second',
      unit: 'Hz',
      places: 2,
      optional: true,
    },
    camMultiple: {
      kind: 'ratio',
      symbol: 'f/fc',
      meaning: 'surge as a multiple of the cam’s speed',
      unit: '',
      places: 2,
      optional: true,
    },
  },
  formula: 'f = ½·√(k/m) = d/(2π·D²·Na)·√(G/2ρ); fc = n/120',
  assumptions: [
    'Round wire, even coils, both ends held; a damper or a spring of changing pitch shifts it.',
    'It does not depend on the load.',
  ],
  sources: ['shigley-spring'],
  example: {
    inputs: {
      wire: '4.5 mm',
      meanDiameter: '27.5 mm',
      activeCoils: '4.5',
      shearModulus: '79.3 GPa',
      density: '7850 kg/m3',
    },
    outputs: { bothHeld: '473.0 Hz', rate: '43.43 N/mm' },
    from: 'reference row MO-33',
  },
  compute: (v) => {
    const rate = v.rate ?? springRate(v, v.shearModulus);
    const moving = v.activeMass ?? activeMass(v, v.density);
    const found = surge(rate, moving);
    const cam = v.crankSpeed === undefined ? undefined : v.crankSpeed / CAM_TURN;
    return answer({
      ...found,
      rate,
      activeMass: moving,
      camFrequency: cam as Frequency | undefined,
      camMultiple: cam === undefined ? undefined : ((found.bothHeld / cam) as Ratio),
    });
  },
});
