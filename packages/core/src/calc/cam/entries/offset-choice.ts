import { type Angle, degrees, formatQuantity } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { TURN } from '../../crank/index.js';
import { VALVE_SIDES } from '../events.js';
import { bestOffset, type OffsetChoice } from '../offset.js';
import { shownAngle, wheel } from './lobe-inputs.js';

export const offsetChoice = defineCalculation({
  id: 'cam.offset-choice',
  subject: 'cam',
  title: 'Which offset key, bushing or tooth corrects the cam timing',
  summary:
    'From the measured and the wanted centreline: the change needed, and the part at hand that leaves the least error.',
  inputs: {
    valve: {
      kind: 'choice',
      symbol: 'valve',
      meaning: 'lobe that was measured',
      choices: VALVE_SIDES,
      default: 'intake',
    },
    measured: {
      ...wheel,
      symbol: 'CL',
      meaning: 'measured centreline in crank degrees: intake after, exhaust before top dead centre',
    },
    wanted: { ...wheel, symbol: 'CL₀', meaning: 'wanted centreline, counted the same way' },
    parts: {
      kind: 'angle',
      symbol: 'β',
      meaning: 'offsets of the parts at hand, positive advances the cam; name each way round that fits',
      unit: 'deg',
      range: { from: degrees(-90), to: degrees(90) },
      list: true,
      optional: true,
    },
    partsIn: {
      kind: 'choice',
      symbol: 'in',
      meaning: 'degrees in which those offsets are marked: of the crank or of the cam',
      choices: ['crank', 'cam'],
      default: 'crank',
    },
    crankTeeth: {
      kind: 'count',
      symbol: 'z',
      meaning: 'teeth of the crank sprocket, when the chain or belt may be moved by whole teeth',
      range: { from: 5, to: 200 },
      optional: true,
    },
    mostTeeth: {
      kind: 'count',
      symbol: 'k',
      meaning: 'teeth that it may be moved either way',
      range: { from: 0, to: 20 },
      default: 1,
    },
    doubt: {
      kind: 'angle',
      symbol: 'U',
      meaning: 'expanded uncertainty of the measured centreline',
      unit: 'deg',
      range: { from: 0, to: degrees(45) },
      default: 0,
    },
  },
  outputs: {
    change: { ...shownAngle, symbol: 'Δ', meaning: 'change needed in crank degrees, positive: advance' },
    perTooth: { ...shownAngle, symbol: 't', meaning: 'one tooth in crank degrees', optional: true },
    part: { kind: 'count', symbol: 'part', meaning: 'which part of the list to fit, from 1', optional: true },
    teeth: { kind: 'count', symbol: 'teeth', meaning: 'teeth to move, positive advances' },
    done: { ...shownAngle, symbol: 'β', meaning: 'change that they make, crank degrees' },
    left: { ...shownAngle, symbol: 'Δ − β', meaning: 'change still wanting, crank degrees' },
    centrelineAfter: { ...shownAngle, symbol: 'CL₁', meaning: 'centreline afterwards, counted like the measured one' },
    advice: { kind: 'text', symbol: 'advice', meaning: 'the choice in words' },
  },
  formula: 'Δ = CL − CL₀ (intake), CL₀ − CL (exhaust); t = 360°/z; least |Δ − β − k·t|; cam degrees count twice',
  assumptions: [
    'Both lobes are on one cam, or only the cam of the measured lobe is moved.',
    'A part is worth fitting only when the error is larger than the doubt of the measurement.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: { measured: '110 deg', wanted: '106 deg', parts: ['1 deg', '2 deg', '3 deg'], partsIn: 'cam' },
    outputs: { change: '4.00 deg', part: 2, done: '4.00 deg', left: '0.00 deg', centrelineAfter: '106.00 deg' },
    from: 'hand arithmetic: 2 degrees of cam are 4 of crank',
  },
  compute: (v) => {
    const sign = v.valve === 'intake' ? 1 : -1;
    const change = (sign * (v.measured - v.wanted)) as Angle;
    const scale = v.partsIn === 'cam' ? 2 : 1;
    const parts = (v.parts ?? []).map((one) => (one * scale) as Angle);
    const tooth = v.crankTeeth === undefined ? 0 : TURN / v.crankTeeth;
    const best = bestOffset(change, parts, tooth, v.crankTeeth === undefined ? 0 : v.mostTeeth);
    const within = Math.abs(change) <= v.doubt;
    return answer(
      {
        change,
        perTooth: v.crankTeeth === undefined ? undefined : (tooth as Angle),
        part: best.part === undefined ? undefined : best.part + 1,
        teeth: best.teeth,
        done: best.change,
        left: best.left,
        centrelineAfter: (v.measured - sign * best.change) as Angle,
        advice: advice(best),
      },
      within
        ? [{ code: 'within-doubt', text: 'the change needed is no larger than the doubt of the measurement' }]
        : [],
    );
  },
});

/** A hundred thousandth of a degree. */
const NOTHING = 2e-7;
function advice({ part, teeth, change, left }: OffsetChoice): string {
  const moves = [
    part === undefined ? '' : `part ${part + 1}`,
    teeth === 0
      ? ''
      : `${Math.abs(teeth)} ${Math.abs(teeth) === 1 ? 'tooth' : 'teeth'} ${teeth > 0 ? 'advanced' : 'retarded'}`,
  ].filter((move) => move !== '');
  const what = moves.length === 0 ? 'leave as it is' : moves.join(' and ');
  const shown = (angle: Angle) =>
    Math.abs(angle) < NOTHING
      ? 'nothing'
      : `${formatQuantity('angle', Math.abs(angle), 'deg', 2)} ${angle < 0 ? 'retard' : 'advance'}`;
  return `${what}: makes ${shown(change)}, leaves ${shown(left)} wanting`;
}
