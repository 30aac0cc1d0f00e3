import { type Angle, formatQuantity, type Length, mm, type Outcome } from '../../../quantity/index.js';
import { answer, type Conflict, conflict, defineCalculation } from '../../catalogue/index.js';
import { inOrder } from '../lift-table.js';
import { usualLobeOptions } from '../lobe-options.js';
import { fitLobe, type LobeFault, type LobeFit } from '../whole-lobe.js';
import { angles, lift, lifts, oneStop, shownAngle, shownLift, stops, tableFault, wheelTop } from './lobe-inputs.js';

export const centrelineFromLobe = defineCalculation({
  id: 'cam.centreline-from-lobe',
  subject: 'cam',
  title: 'Lobe centreline, duration and peak by least squares over all readings',
  summary: 'Fits a smooth lobe to every reading of a degree-wheel session and gives its middle with its doubt.',
  inputs: {
    angles,
    lifts,
    checkingLift: {
      ...lift,
      symbol: 'l',
      meaning: 'lift at which opening, closing and duration are taken',
      default: mm(1.27),
    },
    flanks: {
      kind: 'choice',
      symbol: 'flanks',
      meaning: 'alike: both flanks mirror each other about the centreline; unlike: they may differ',
      choices: ['alike', 'unlike'],
      default: 'alike',
    },
    terms: {
      kind: 'count',
      symbol: 'k',
      meaning:
        'coefficients of the curve; left out: half of the readings used, up to 6 (alike), or two thirds of them, up to 11 (unlike)',
      range: { from: 3, to: 15 },
      optional: true,
    },
    leastLift: {
      ...lift,
      symbol: 'h₀',
      meaning: 'readings below it are not used; left out: 5 % of the highest, or half of the checking lift if less',
      optional: true,
    },
    ...stops,
  },
  outputs: {
    centreline: { ...shownAngle, symbol: 'CL', meaning: 'centreline after top dead centre (before: negative)' },
    standardUncertainty: {
      ...shownAngle,
      places: 3,
      symbol: 'u',
      meaning:
        'standard uncertainty of the centreline from the scatter about the curve; not known without readings to spare',
      optional: true,
    },
    opens: { ...shownAngle, symbol: 'θ₁', meaning: 'angle at the checking lift going up' },
    closes: { ...shownAngle, symbol: 'θ₂', meaning: 'angle at the checking lift coming down' },
    duration: { ...shownAngle, symbol: 'd', meaning: 'duration at the checking lift, crank angle' },
    peakLift: { ...shownLift, symbol: 'L', meaning: 'highest lift of the curve' },
    peakAngle: { ...shownAngle, symbol: 'θ(L)', meaning: 'angle of the highest lift' },
    scatter: {
      ...shownLift,
      places: 4,
      symbol: 's',
      meaning: 'standard deviation of one reading about the curve',
      optional: true,
    },
    residuals: {
      ...shownLift,
      places: 4,
      symbol: 'v',
      meaning: 'measured minus curve for each reading used, by rising angle',
      list: true,
    },
    usedAngles: { ...shownAngle, symbol: 'θ used', meaning: 'angles of the readings used, rising', list: true },
  },
  formula: 'h = Σ cᵢ·Tᵢ((θ − CL)/w), Σ v² least; CL = (θ₁ + θ₂)/2; u² = gᵀ·s²(JᵀJ)⁻¹·g',
  assumptions: [
    'Readings of one lobe, taken turning in one sense; their errors are alike and independent.',
    'The centreline is the middle of the duration at the checking lift, not the point of highest lift.',
    'Above the ramps the lobe is smooth enough for a polynomial of this degree: look at the residuals.',
  ],
  sources: ['derived-here', 'least-squares-book', 'degree-wheel'],
  example: {
    inputs: {
      angles: ['50 deg', '70 deg', '90 deg', '110 deg', '130 deg', '150 deg', '170 deg'],
      lifts: ['2.8 mm', '4.8 mm', '6 mm', '6.4 mm', '6 mm', '4.8 mm', '2.8 mm'],
      checkingLift: '4.8 mm',
      terms: 3,
    },
    outputs: { centreline: '110.00 deg', duration: '80.00 deg', peakLift: '6.400 mm', scatter: '0.0000 mm' },
    from: 'hand arithmetic: the readings lie on 6.4 − ((θ − 110)/10)²/10',
  },
  compute: (v) => {
    const top = wheelTop(v);
    if (top === undefined) return oneStop();
    if (v.angles.length !== v.lifts.length) {
      const fault = { code: 'unlike-lengths', angles: v.angles.length, lifts: v.lifts.length } as const;
      return tableFault(fault);
    }
    const table = inOrder(
      v.angles.map((angle) => (angle - top) as Angle),
      v.lifts,
    );
    const highest = Math.max(...v.lifts) as Length;
    if (!(highest > v.checkingLift)) {
      return conflict(['lifts', 'checkingLift'], 'no reading is above the checking lift', {
        input: 'checkingLift',
        below: highest,
      });
    }
    const usual = usualLobeOptions(v.lifts, v.checkingLift, v.flanks, v.leastLift);
    const found = fitLobe(table, { ...usual, terms: v.terms ?? usual.terms });
    return found.ok ? answer(outputsOf(found.value), doubtful(found.value)) : lobeFault(found.fault, v.checkingLift);
  },
});

const outputsOf = ({ durationUncertainty, offOthers, liftAt, doubtAt, shareWith, ...outputs }: LobeFit) => outputs;

/** Residuals this many times the scatter are looked at again. */
const FAR = 3;
function doubtful({ residuals, usedAngles, scatter }: LobeFit) {
  const far = scatter === undefined ? [] : usedAngles.filter((_, at) => Math.abs(residuals[at]!) > FAR * scatter);
  if (far.length === 0) return [];
  const shown = far.map((angle) => formatQuantity('angle', angle, 'deg', 2)).join(', ');
  return [{ code: 'reading-far-off', text: `more than three times the scatter off the curve, read again: ${shown}` }];
}

function lobeFault(fault: LobeFault, checkingLift: Length): Outcome<never, Conflict> {
  switch (fault.code) {
    case 'too-few-used':
      return conflict(
        ['angles', 'lifts', 'terms'],
        `${fault.used} readings are high enough to be used; ${fault.needed} or more are needed`,
      );
    case 'undetermined':
      return conflict(
        ['angles', 'lifts', 'terms'],
        'the readings do not tell the curve: too few angles, or no rise and fall',
      );
    case 'not-crossed': {
      const shown = formatQuantity('length', checkingLift, 'mm', 3);
      return conflict(
        ['angles', 'lifts', 'checkingLift'],
        `the readings used on the ${fault.flank} flank do not reach down to ${shown}`,
      );
    }
  }
}
