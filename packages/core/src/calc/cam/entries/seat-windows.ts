import { type Angle, degrees, mm } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { seatWindows as find, roomFaults, type WindowBasis } from '../seat-windows.js';
import { describeWindowFault } from '../window-words.js';
import { baseCircleWindow, type OpenWindow } from '../windows.js';
import { duration, events } from './inputs.js';

const ofTheCard = [...Object.keys(events), 'checkingLift', 'advertisedIntake', 'advertisedExhaust', 'allowance'];
const shown = { kind: 'angle', unit: 'deg', places: 2 } as const;

export const seatWindows = defineCalculation({
  id: 'cam.seat-windows',
  subject: 'cam',
  title: 'Open and base-circle windows of both valves, from seat to seat',
  summary: 'Crank angles, in the cylinder’s own cycle, between which each follower is on the base circle.',
  inputs: {
    ...events,
    basis: {
      kind: 'choice',
      symbol: 'basis',
      meaning: 'whether the events were taken at the seat or at a checking lift',
      choices: ['seat', 'at-lift'],
    },
    checkingLift: {
      kind: 'length',
      symbol: 'y',
      meaning: 'lift at which the events were taken; left out: 0.050 in',
      unit: 'mm',
      range: { above: 0, to: mm(5) },
      optional: true,
    },
    advertisedIntake: {
      ...duration,
      symbol: 'Di',
      meaning: 'advertised intake duration, seat to seat',
      optional: true,
    },
    advertisedExhaust: {
      ...duration,
      symbol: 'De',
      meaning: 'advertised exhaust duration, seat to seat',
      optional: true,
    },
    allowance: {
      kind: 'angle',
      symbol: 'w',
      meaning: 'widening at each end where the card has no advertised duration; left out: by the checking lift',
      unit: 'deg',
      range: { from: 0, to: degrees(90) },
      optional: true,
    },
  },
  outputs: {
    intakeOpens: { ...shown, symbol: 'io', meaning: 'intake opens, after firing top dead centre' },
    intakeCloses: { ...shown, symbol: 'ic', meaning: 'intake closes, after firing top dead centre' },
    exhaustOpens: { ...shown, symbol: 'eo', meaning: 'exhaust opens, after firing top dead centre' },
    exhaustCloses: { ...shown, symbol: 'ec', meaning: 'exhaust closes, after firing top dead centre' },
    intakeRest: { ...shown, symbol: 'ri', meaning: 'intake follower on the base circle for' },
    exhaustRest: { ...shown, symbol: 're', meaning: 'exhaust follower on the base circle for' },
    basisUsed: { kind: 'text', symbol: 'basis', meaning: 'where the edges come from' },
  },
  formula:
    'exhaust open 180° − EO − w to 360° + EC + w; intake open 360° − IO − w to 540° + IC + w; w = 0 at the seat, (D − d)/2 with an advertised duration D, else 25°·√(y/0.050 in) rounded up',
  assumptions: [
    'Phase counts from the cylinder’s own firing top dead centre, 0 to 720°.',
    'Widening about the middle of the event: ramps of equal length on both flanks.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: {
      intakeOpens: '10 deg',
      intakeCloses: '50 deg',
      exhaustOpens: '50 deg',
      exhaustCloses: '10 deg',
      basis: 'seat',
    },
    outputs: { intakeOpens: '350 deg', intakeCloses: '590 deg', intakeRest: '480 deg', exhaustRest: '480 deg' },
    from: 'hand arithmetic on the events of the exhaust-opening rule, mechanism reference 8.2',
  },
  compute: (v) => {
    const both = v.advertisedIntake !== undefined && v.advertisedExhaust !== undefined;
    if (!both && (v.advertisedIntake !== undefined || v.advertisedExhaust !== undefined)) {
      return conflict(
        ['advertisedIntake', 'advertisedExhaust'],
        'give the advertised duration of both valves or of none',
      );
    }
    const card = {
      basis: v.basis,
      ...(v.checkingLift !== undefined && { checkingLift: { value: v.checkingLift } }),
      ...(both && { advertisedDuration: { intake: v.advertisedIntake, exhaust: v.advertisedExhaust } }),
    };
    const found = find(v, card, v.allowance);
    const faults = found.ok ? roomFaults(found.value) : found.fault;
    if (!found.ok || faults.length > 0) return conflict(ofTheCard, faults.map(describeWindowFault).join('; '));
    const { intake, exhaust, basis } = found.value;
    return answer(
      {
        intakeOpens: intake.opens,
        intakeCloses: intake.closes,
        exhaustOpens: exhaust.opens,
        exhaustCloses: exhaust.closes,
        intakeRest: restOf(intake),
        exhaustRest: restOf(exhaust),
        basisUsed: basis.replaceAll('-', ' '),
      },
      cautionsOf(basis),
    );
  },
});

function cautionsOf(basis: WindowBasis): readonly Caution[] {
  if (basis !== 'widened-by-allowance') return [];
  return [
    {
      code: 'ramps-not-known',
      text: 'the events are not seat events and the card has no advertised duration: the widening is an allowance of common practice',
    },
  ];
}

const restOf = (open: OpenWindow): Angle => {
  const { from, to } = baseCircleWindow(open);
  return (to - from) as Angle;
};
