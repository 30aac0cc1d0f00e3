import type { Angle, Length } from '../../../quantity/index.js';
import { liftTable } from '../../cam/index.js';
import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { lowest } from '../../numeric/index.js';
import {
  advanceRange,
  crankInputs,
  crown,
  curveFault,
  curveInputs,
  gap,
  headHigher,
  lashMore,
  looksOf,
  netCurve,
  roomCurve,
  shownGap,
  valveAngle,
  verdictOf,
} from './gap-inputs.js';

export const valveToPiston = defineCalculation({
  id: 'valvetrain.valve-to-piston',
  subject: 'valvetrain',
  title: 'Valve-to-piston clearance through the overlap from measured lifts',
  summary:
    'Room along the stem at each reading and the least room between them, for an intake or an exhaust valve, with the cam advanced or retarded.',
  inputs: {
    ...crankInputs,
    valveAngle,
    crown,
    gapAtTop: {
      ...gap,
      symbol: 'g₀',
      meaning: 'room along the stem with the valve closed and the piston at top dead centre',
    },
    ...curveInputs,
    advance: {
      kind: 'angle',
      symbol: 'A',
      meaning: 'cam advanced by so many crank degrees since the lifts were taken; negative: retarded',
      unit: 'deg',
      range: advanceRange,
      default: 0,
    },
    lashMore,
    headHigher,
    limit: { ...gap, symbol: 'g min', meaning: 'least room wanted', optional: true },
  },
  outputs: {
    gaps: { ...shownGap, symbol: 'g', meaning: 'room along the stem at each angle as given', list: true },
    tableMinimum: { ...shownGap, symbol: 'least of g', meaning: 'least of them' },
    tableMinimumAngle: { kind: 'angle', symbol: 'θ', meaning: 'angle of that one', unit: 'deg', places: 1 },
    minimum: {
      ...shownGap,
      symbol: 'min g',
      meaning: 'least room between the readings too, by a spline through the lifts',
    },
    minimumAngle: {
      kind: 'angle',
      symbol: 'θ min',
      meaning: 'crank degrees after top dead centre at which it is least',
      unit: 'deg',
      places: 1,
    },
    spare: {
      ...shownGap,
      symbol: 'min g − g min',
      meaning: 'room beyond the limit; negative: missing',
      optional: true,
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in or out against the limit', optional: true },
  },
  formula:
    'g(θ) = g₀ + (drop(θ) + Δh)·c − (h(θ + A) − Δg); c = cos γ (parallel pocket), 1/cos γ (flat crown); drop by the exact slider-crank',
  assumptions: [
    'Lifts are net at the valve, taken with a solid follower; a hydraulic lifter with a light spring gives too little.',
    'Rigid parts; at speed rods stretch and valves loft: the limits of 0.080 in intake and 0.100 in exhaust are for that.',
    'Only the room along the stem; the radial room of valve and pocket is checked apart.',
    'With the cam moved, the lift beyond the first or last reading is not known: readings must reach beyond the closest place.',
  ],
  sources: ['derived-here', 'piston-to-valve'],
  example: {
    inputs: {
      stroke: '3.480 in',
      rodLength: '5.700 in',
      valveAngle: '23 deg',
      gapAtTop: '0.180 in',
      angles: ['-10 deg', '0 deg', '5 deg', '10 deg', '15 deg', '20 deg', '25 deg', '30 deg'],
      lifts: ['0.045 in', '0.075 in', '0.095 in', '0.118 in', '0.143 in', '0.170 in', '0.199 in', '0.230 in'],
      limit: '0.080 in',
    },
    outputs: { tableMinimum: '0.0930 in', tableMinimumAngle: '5.0 deg', verdict: 'in' },
    from: 'reference row MO-35',
  },
  compute: (v) => {
    const table = liftTable(v.angles, v.lifts);
    if (!table.ok) return curveFault(table.fault);
    const curve = netCurve(table.value, v.lashMore);
    const room = roomCurve(v, (angle) => curve(angle + v.advance));
    if (!room.ok) return room;
    const gaps = v.angles.map((angle) => room.value(angle - v.advance));
    const least = Math.min(...gaps);
    const found = lowest(
      room.value,
      looksOf(table.value.angles).map((angle) => angle - v.advance),
    );
    const spare = v.limit === undefined ? undefined : ((found.value - v.limit) as Length);
    return answer(
      {
        gaps: gaps as Length[],
        tableMinimum: least as Length,
        tableMinimumAngle: (v.angles[gaps.indexOf(least)]! - v.advance) as Angle,
        minimum: found.value as Length,
        minimumAngle: found.at as Angle,
        spare,
        verdict: spare === undefined ? undefined : verdictOf(spare),
      },
      cautionsOf(found.atEnd, found.value),
    );
  },
});

export function cautionsOf(atEnd: boolean, least: number): readonly Caution[] {
  return [
    ...(atEnd
      ? [{ code: 'least-at-end', text: 'the least room lies at the end of the readings: it may be less beyond' }]
      : []),
    ...(least <= 0 ? [{ code: 'valve-hits-piston', text: 'the valve meets the piston' }] : []),
  ];
}
