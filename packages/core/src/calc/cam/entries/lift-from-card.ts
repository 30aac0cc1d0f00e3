import {
  type Acceleration,
  type Angle,
  degrees,
  type Length,
  mm,
  type Outcome,
  type Ratio,
} from '../../../quantity/index.js';
import { answer, type Conflict, conflict, defineCalculation } from '../../catalogue/index.js';
import { type CardFault, lobeFromCard } from '../card-lobe.js';
import { lobeAt } from '../polynomial-lobe.js';
import { crankSpeed, lift, shownAngle, shownLift, wheel } from './lobe-inputs.js';

export const liftFromCard = defineCalculation({
  id: 'cam.lift-from-card',
  subject: 'cam',
  title: 'Lift curve from the durations and the peak lift of a cam card',
  summary: 'Fits the length and the fullness of a polynomial lobe so that its durations are those of the card.',
  inputs: {
    peakLift: {
      kind: 'length',
      symbol: 'L',
      meaning: 'peak lift, at the lobe or at the valve as the checking lifts are',
      unit: 'mm',
      range: { above: 0, to: mm(100) },
    },
    durations: {
      kind: 'angle',
      symbol: 'd',
      meaning:
        'crank degrees of duration at each checking lift; two or more shape the lobe, one takes the exponents as given',
      unit: 'deg',
      range: { above: 0, below: degrees(720) },
      list: true,
    },
    checkingLifts: {
      ...lift,
      symbol: 'l',
      meaning: 'checking lift of each duration; 0 for the whole event',
      list: true,
    },
    firstExponent: {
      kind: 'ratio',
      symbol: 'p',
      meaning: 'first exponent, used with a single duration; with more it is found',
      unit: '',
      range: { above: 2, to: 80 },
      default: 6,
    },
    exponentStep: {
      kind: 'ratio',
      symbol: 's',
      meaning: 'step between the exponents p, p + s, p + 2s',
      unit: '',
      range: { from: 0.5, to: 20 },
      default: 2,
    },
    centreline: {
      ...wheel,
      symbol: 'CL',
      meaning: 'crank angle of the nose after top dead centre (before: negative)',
      default: 0,
    },
    at: {
      ...wheel,
      symbol: 'θ',
      meaning: 'crank angles at which the lift is read; left out: the nose',
      list: true,
      optional: true,
    },
    crankSpeed,
  },
  outputs: {
    p: { kind: 'ratio', symbol: 'p', meaning: 'first exponent', unit: '', places: 4 },
    wholeDuration: { ...shownAngle, symbol: 'd₀', meaning: 'crank degrees from the first lift to the last' },
    misses: { ...shownAngle, symbol: 'Δd', meaning: 'duration of the curve minus that of the card', list: true },
    lift: { ...shownLift, symbol: 'h', meaning: 'lift at each angle', list: true },
    noseBend: {
      ...shownLift,
      symbol: 'h″',
      meaning: 'second derivative at the nose, for each radian of crank squared',
    },
    noseAcceleration: {
      kind: 'acceleration',
      symbol: 'a',
      meaning: 'acceleration at the nose at the crank speed',
      unit: 'm/s2',
      places: 1,
      optional: true,
    },
  },
  formula: 'h(d/2; p, d₀) = l for each duration; h = L·(1 + C2·x² + Cp·x^p + Cq·x^q + Cr·x^r), x = (θ − CL)/(d₀/2)',
  assumptions: [
    'A model: the real lobe has ramps and its own flanks. What rests on it is an estimate.',
    'Symmetric lobe; each flank of the model falls all the way.',
  ],
  sources: ['polydyne-cam', 'derived-here'],
  example: {
    inputs: {
      peakLift: '10 mm',
      durations: ['140 deg'],
      checkingLifts: ['4.3506 mm'],
      at: ['0 deg', '70 deg', '140 deg'],
    },
    outputs: { p: '6.0000', wholeDuration: '280.00 deg', lift: ['10.000 mm', '4.351 mm', '0.000 mm'] },
    from: 'reference row MO-24 turned round: the 6-8-10 lobe is 0.43506 of its peak at half of its half duration',
  },
  compute: (v) => {
    if (v.durations.length !== v.checkingLifts.length) {
      return conflict(['durations', 'checkingLifts'], 'each duration needs its checking lift');
    }
    const card = v.durations.map((duration, at) => ({ duration, lift: v.checkingLifts[at]! }));
    const found = lobeFromCard(v.peakLift, card, v.firstExponent, v.exponentStep);
    if (!found.ok) return cardFault(found.fault, v.peakLift);
    const { lobe, misses } = found.value;
    const noseBend = lobeAt(lobe, 0).bend;
    const outputs = {
      p: lobe.exponents[0] as Ratio,
      wholeDuration: (2 * lobe.halfDuration) as Angle,
      misses,
      lift: (v.at ?? [v.centreline]).map((one) => lobeAt(lobe, one - v.centreline).lift as Length),
      noseBend: noseBend as Length,
      noseAcceleration: v.crankSpeed === undefined ? undefined : ((noseBend * v.crankSpeed ** 2) as Acceleration),
    };
    return answer(outputs, [
      { code: 'modelled-curve', text: 'the lift is a model drawn through the card, not a measured lobe' },
    ]);
  },
});

/** Refusals of a card in the words of the catalogue. */
export function cardFault(fault: CardFault, peakLift: Length): Outcome<never, Conflict> {
  switch (fault.code) {
    case 'lift-too-high':
      return conflict(['checkingLifts', 'peakLift'], 'a checking lift must be below the peak lift', {
        input: 'checkingLifts',
        below: peakLift,
      });
    case 'not-falling':
      return conflict(['durations', 'checkingLifts'], 'the duration must be shorter at each higher checking lift');
    case 'no-such-lobe':
      return conflict(
        ['durations', 'checkingLifts', 'peakLift'],
        `no lobe of this family is so ${fault.fuller ? 'full' : 'pointed'}; look at the lifts: lobe or valve, and their units`,
      );
  }
}
