import { type Angle, degrees, type Length, mm } from '../../../quantity/index.js';
import { lobeAt, lobeFromCard, VALVE_SIDES } from '../../cam/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { lowest } from '../../numeric/index.js';
import {
  advanceRange,
  crankInputs,
  crown,
  gap,
  headHigher,
  roomCurve,
  shownGap,
  valveAngle,
  verdictOf,
} from './gap-inputs.js';
import { ratio, smallLength } from './inputs.js';
import { cautionsOf } from './valve-to-piston.js';

const LOOKS = Array.from({ length: 49 }, (_, at) => degrees(-60 + at * 2.5));

export const valveToPistonFromCard = defineCalculation({
  id: 'valvetrain.valve-to-piston-from-card',
  subject: 'valvetrain',
  title: 'Valve-to-piston clearance from a cam card (modelled lift)',
  summary:
    'Least room along the stem from lobe lift, durations, centreline, ratio and lash, where the lobe was not measured.',
  inputs: {
    valve: { kind: 'choice', symbol: 'valve', meaning: 'which valve', choices: VALVE_SIDES },
    ...crankInputs,
    valveAngle,
    crown,
    gapAtTop: {
      ...gap,
      symbol: 'g₀',
      meaning: 'room along the stem with the valve closed and the piston at top dead centre',
    },
    peakLift: {
      kind: 'length',
      symbol: 'L',
      meaning: 'peak lift of the lobe',
      unit: 'mm',
      range: { above: 0, to: mm(100) },
    },
    durations: {
      kind: 'angle',
      symbol: 'd',
      meaning: 'crank degrees of duration at each checking lift',
      unit: 'deg',
      range: { above: 0, below: degrees(720) },
      list: true,
    },
    checkingLifts: { ...smallLength, symbol: 'l', meaning: 'checking lift of each duration, at the lobe', list: true },
    centreline: {
      kind: 'angle',
      symbol: 'CL',
      meaning: 'installed centreline in crank degrees: intake after, exhaust before top dead centre',
      unit: 'deg',
      range: { from: degrees(30), to: degrees(180) },
    },
    ratio,
    lash: { ...smallLength, symbol: 'q', meaning: 'lash at the valve', default: 0 },
    advance: {
      kind: 'angle',
      symbol: 'A',
      meaning: 'cam advanced by so many crank degrees; negative: retarded',
      unit: 'deg',
      range: advanceRange,
      default: 0,
    },
    headHigher,
    limit: { ...gap, symbol: 'g min', meaning: 'least room wanted', optional: true },
  },
  outputs: {
    minimum: { ...shownGap, symbol: 'min g', meaning: 'least room along the stem' },
    minimumAngle: {
      kind: 'angle',
      symbol: 'θ min',
      meaning: 'crank degrees after top dead centre at which it is least',
      unit: 'deg',
      places: 1,
    },
    liftThere: { ...shownGap, symbol: 'h(θ min)', meaning: 'net valve lift there' },
    liftAtTop: { ...shownGap, symbol: 'h(0)', meaning: 'net valve lift at top dead centre' },
    spare: {
      ...shownGap,
      symbol: 'min g − g min',
      meaning: 'room beyond the limit; negative: missing',
      optional: true,
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in or out against the limit', optional: true },
  },
  formula: 'h = R·lobe(θ ∓ CL + A) − q with the lobe of cam.lift-from-card; g(θ) = g₀ + (drop(θ) + Δh)·c − h(θ)',
  assumptions: [
    'The lift is a model through the card’s durations; near the seat a real lobe may differ by tenths of a millimetre. Measure before trusting a small room.',
    'Constant ratio; looked at from 60° before to 60° after top dead centre.',
  ],
  sources: ['polydyne-cam', 'derived-here', 'piston-to-valve'],
  example: {
    inputs: {
      valve: 'intake',
      stroke: '80 mm',
      rodLength: '140 mm',
      valveAngle: '0 deg',
      gapAtTop: '5 mm',
      peakLift: '8 mm',
      durations: ['260 deg'],
      checkingLifts: ['0 mm'],
      centreline: '130 deg',
      ratio: '1.5',
    },
    outputs: { minimum: '5.000 mm', minimumAngle: '0.0 deg', liftAtTop: '0.000 mm' },
    from: 'hand reasoning: the lobe begins at top dead centre with the fourth power of the angle, the piston falls with the second',
  },
  compute: (v) => {
    if (v.durations.length !== v.checkingLifts.length) {
      return conflict(['durations', 'checkingLifts'], 'each duration needs its checking lift');
    }
    const card = v.durations.map((duration, at) => ({ duration, lift: v.checkingLifts[at]! }));
    const lobe = lobeFromCard(v.peakLift, card, FIRST, STEP);
    if (!lobe.ok)
      return conflict(
        ['peakLift', 'durations', 'checkingLifts'],
        'no lobe has these durations at these lifts below its peak',
      );
    const nose = (v.valve === 'intake' ? v.centreline : -v.centreline) - v.advance;
    const liftAt = (angle: number) => Math.max(0, lobeAt(lobe.value.lobe, angle - nose).lift * v.ratio - v.lash);
    const room = roomCurve(v, liftAt);
    if (!room.ok) return room;
    const found = lowest(room.value, LOOKS);
    const spare = v.limit === undefined ? undefined : ((found.value - v.limit) as Length);
    return answer(
      {
        minimum: found.value as Length,
        minimumAngle: found.at as Angle,
        liftThere: liftAt(found.at) as Length,
        liftAtTop: liftAt(0) as Length,
        spare,
        verdict: spare === undefined ? undefined : verdictOf(spare),
      },
      [
        { code: 'modelled-curve', text: 'the lift is a model drawn through the card, not a measured lobe' },
        ...cautionsOf(found.atEnd, found.value),
      ],
    );
  },
});

/** Exponents used where the card has a single duration: 6, 8, 10. */
const FIRST = 6;
const STEP = 2;
