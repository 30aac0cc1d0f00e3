import { type Force, type Length, mm, type Outcome, type Ratio, type Stiffness } from '../../../quantity/index.js';
import { answer, type Conflict, conflict, defineCalculation } from '../../catalogue/index.js';
import {
  activeMass,
  deadCoils,
  springRate as find,
  SPRING_ENDS,
  type SpringEnds,
  solidHeight,
  springStress,
  surge,
} from '../spring.js';
import { height, load, shownLength, wireMaterial } from './spring-inputs.js';

const diameter = { ...height, range: { above: 0, to: mm(500) }, optional: true } as const;
const coils = { kind: 'ratio', unit: '', range: { above: 0, to: 500 }, optional: true } as const;

interface Sizes {
  readonly wire: Length;
  readonly meanDiameter: Length | undefined;
  readonly outsideDiameter: Length | undefined;
  readonly insideDiameter: Length | undefined;
  readonly totalCoils: Ratio | undefined;
  readonly activeCoils: Ratio | undefined;
  readonly ends: SpringEnds;
}

export const springRate = defineCalculation({
  id: 'valvetrain.spring-rate',
  subject: 'valvetrain',
  title: 'Spring rate, solid height and surge from wire and coils',
  summary: 'What a helical spring of round wire does, from its wire, its diameter, its coils and its ends.',
  inputs: {
    wire: { kind: 'length', symbol: 'd', meaning: 'wire diameter', unit: 'mm', range: { above: 0, to: mm(100) } },
    meanDiameter: { ...diameter, symbol: 'D', meaning: 'mean coil diameter; one of the three diameters is needed' },
    outsideDiameter: { ...diameter, symbol: 'Do', meaning: 'outside coil diameter' },
    insideDiameter: { ...diameter, symbol: 'Di', meaning: 'inside coil diameter' },
    totalCoils: { ...coils, symbol: 'Nt', meaning: 'coils in all; total or active coils are needed' },
    activeCoils: { ...coils, symbol: 'Na', meaning: 'coils that work' },
    ends: {
      kind: 'choice',
      symbol: 'ends',
      meaning: 'how the ends are made',
      choices: SPRING_ENDS,
      default: 'squared-ground',
    },
    ...wireMaterial,
    load: { ...load, symbol: 'F', meaning: 'load for the stress of the wire', optional: true },
  },
  outputs: {
    rate: { kind: 'stiffness', symbol: 'k', meaning: 'spring rate', unit: 'N/mm', places: 3 },
    activeCoils: { kind: 'ratio', symbol: 'Na', meaning: 'coils that work', unit: '', places: 2 },
    totalCoils: { kind: 'ratio', symbol: 'Nt', meaning: 'coils in all', unit: '', places: 2 },
    solidHeight: { ...shownLength, symbol: 'Ls', meaning: 'height with the coils touching' },
    index: { kind: 'ratio', symbol: 'C', meaning: 'spring index D/d', unit: '', places: 2 },
    activeMass: { kind: 'mass', symbol: 'm', meaning: 'mass of the coils that work', unit: 'g', places: 2 },
    surge: {
      kind: 'frequency',
      symbol: 'f',
      meaning: 'first natural frequency, both ends held',
      unit: 'Hz',
      places: 1,
    },
    surgeOneFree: {
      kind: 'frequency',
      symbol: 'f/2',
      meaning: 'first natural frequency, one end free',
      unit: 'Hz',
      places: 1,
    },
    stress: {
      kind: 'pressure',
      symbol: 'τ',
      meaning: 'largest shear stress under the load',
      unit: 'MPa',
      places: 1,
      optional: true,
    },
  },
  formula:
    'k = d⁴·G/(8·D³·Na); D = Do − d = Di + d; squared: Nt = Na + 2, Ls = (Nt + 1)·d; squared and ground: Ls = Nt·d; plain: Nt = Na, Ls = (Nt + 1)·d; plain and ground: Nt = Na + 1, Ls = Nt·d; f = ½·√(k/m), m = ρ·π²·d²·D·Na/4; τ = K·8FD/(πd³) with Wahl’s K',
  assumptions: [
    'Round wire, even coils; conical, beehive and wire of changing pitch are not of this form: measure them.',
    'Index 4 to 12 is usual.',
  ],
  sources: ['shigley-spring'],
  example: {
    inputs: {
      wire: '0.037 in',
      meanDiameter: '0.400 in',
      totalCoils: '12.5',
      ends: 'squared',
      shearModulus: '11850000 psi',
    },
    outputs: { rate: '4.13 lbf/in', activeCoils: '10.50', solidHeight: '0.4995 in' },
    from: 'reference row MO-30',
  },
  compute: (v) => {
    const made = madeOf(v);
    if (!made.ok) return made;
    const { spring, totalCoils } = made.value;
    const rate: Stiffness = find(spring, v.shearModulus);
    const mass = activeMass(spring, v.density);
    const { bothHeld, oneFree } = surge(rate, mass);
    return answer({
      rate,
      activeCoils: spring.activeCoils as Ratio,
      totalCoils: totalCoils as Ratio,
      solidHeight: solidHeight(v.ends, totalCoils, v.wire),
      index: (spring.meanDiameter / v.wire) as Ratio,
      activeMass: mass,
      surge: bothHeld,
      surgeOneFree: oneFree,
      stress: v.load === undefined ? undefined : springStress(spring, v.load as Force),
    });
  },
});

/** Mean diameter and active coils, from whichever of them were given. */
function madeOf(
  v: Sizes,
): Outcome<{ spring: { wire: Length; meanDiameter: Length; activeCoils: number }; totalCoils: number }, Conflict> {
  const diameters = [
    v.meanDiameter,
    v.outsideDiameter && v.outsideDiameter - v.wire,
    v.insideDiameter && v.insideDiameter + v.wire,
  ];
  const [meanDiameter, ...more] = diameters.filter((one) => one !== undefined);
  if (meanDiameter === undefined || more.length > 0) {
    return conflict(['meanDiameter', 'outsideDiameter', 'insideDiameter'], 'exactly one of the diameters is needed');
  }
  if (meanDiameter <= v.wire)
    return conflict(['wire', 'meanDiameter', 'outsideDiameter'], 'the coils leave no room inside');
  if ((v.totalCoils === undefined) === (v.activeCoils === undefined)) {
    return conflict(['totalCoils', 'activeCoils'], 'either the total or the active coils are needed');
  }
  const dead = deadCoils(v.ends);
  const activeCoils = v.activeCoils ?? v.totalCoils! - dead;
  if (activeCoils <= 0)
    return conflict(['totalCoils', 'ends'], 'no coil is left to work', { input: 'totalCoils', above: dead });
  const spring = { wire: v.wire, meanDiameter: meanDiameter as Length, activeCoils };
  return { ok: true, value: { spring, totalCoils: activeCoils + dead } };
}
