import { type Angle, degrees, formatQuantity } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { type Crossing, crossingAt, curveThrough } from '../crossings.js';
import { VALVE_SIDES, type ValveSide } from '../events.js';
import { liftTable } from '../lift-table.js';
import { angles, lift, lifts, notReached, oneStop, shownAngle, stops, tableFault, wheelTop } from './lobe-inputs.js';

export const eventsFromTable = defineCalculation({
  id: 'cam.events-from-table',
  subject: 'cam',
  title: 'Valve events at any checking lift from measured lifts',
  summary: 'Opening, closing, duration and middle of one lobe at one or more checking lifts, between the readings.',
  inputs: {
    angles: {
      ...angles,
      meaning:
        'crank degrees after the top dead centre between exhaust and intake (before: negative), counted on without a jump; any order',
    },
    lifts,
    checkingLifts: { ...lift, symbol: 'l', meaning: 'checking lifts', list: true },
    valve: { kind: 'choice', symbol: 'valve', meaning: 'which valve the lobe lifts', choices: VALVE_SIDES },
    between: {
      kind: 'choice',
      symbol: 'between',
      meaning: 'how the lift runs between two readings',
      choices: ['spline', 'straight'],
      default: 'spline',
    },
    ...stops,
  },
  outputs: {
    opens: {
      ...shownAngle,
      symbol: 'O',
      meaning:
        'intake opens before top, exhaust opens before bottom dead centre (negative: after), for each checking lift',
      list: true,
    },
    closes: {
      ...shownAngle,
      symbol: 'C',
      meaning: 'intake closes after bottom, exhaust closes after top dead centre (negative: before)',
      list: true,
    },
    durations: { ...shownAngle, symbol: 'd', meaning: 'crank degrees open', list: true },
    centrelines: {
      ...shownAngle,
      symbol: 'CL',
      meaning: 'middle of the event: intake after, exhaust before top dead centre',
      list: true,
    },
    inWords: { kind: 'text', symbol: 'events', meaning: 'the same in words', list: true },
  },
  formula: 'h(O) = h(C) = l; d = O + 180° + C; CL = d/2 − O (intake), d/2 − C (exhaust)',
  assumptions: [
    'Readings of one lobe, taken turning in one sense, dense enough where the flank bends.',
    'A checking lift below the readings of a flank is refused, not guessed.',
  ],
  sources: ['derived-here', 'cam-terms'],
  example: {
    inputs: {
      angles: ['-20 deg', '0 deg', '20 deg', '110 deg', '200 deg', '220 deg', '240 deg'],
      lifts: ['0 mm', '1 mm', '2 mm', '8 mm', '2 mm', '1 mm', '0 mm'],
      checkingLifts: ['0.5 mm', '1.5 mm'],
      valve: 'intake',
      between: 'straight',
    },
    outputs: {
      opens: ['10.00 deg', '-10.00 deg'],
      closes: ['50.00 deg', '30.00 deg'],
      centrelines: ['110.00 deg', '110.00 deg'],
    },
    from: 'hand arithmetic: halfway between two readings',
  },
  compute: (v) => {
    const top = wheelTop(v);
    if (top === undefined) return oneStop();
    const table = liftTable(
      v.angles.map((angle) => (angle - top) as Angle),
      v.lifts,
    );
    if (!table.ok) return tableFault(table.fault);
    const curve = curveThrough(table.value, v.between);
    const crossings: Crossing[] = [];
    for (const one of v.checkingLifts) {
      const found = crossingAt(table.value, curve, one);
      if (!found.ok) return notReached(found.fault, ['lifts', 'checkingLifts']);
      crossings.push(found.value);
    }
    const events = crossings.map((one) => eventOf(one, v.valve));
    return answer({
      opens: events.map((one) => one.opens),
      closes: events.map((one) => one.closes),
      durations: crossings.map((one) => (one.closes - one.opens) as Angle),
      centrelines: crossings.map((one) => (sign(v.valve) * ((one.opens + one.closes) / 2)) as Angle),
      inWords: events.map((one) => words(v.valve, one)),
    });
  },
});

const HALF_TURN = degrees(180);
const sign = (valve: ValveSide) => (valve === 'intake' ? 1 : -1);

/** Events counted from their own dead centres, from angles after the top dead centre of overlap. */
function eventOf({ opens, closes }: Crossing, valve: ValveSide): Crossing {
  return valve === 'intake'
    ? { opens: -opens as Angle, closes: (closes - HALF_TURN) as Angle }
    : { opens: (-opens - HALF_TURN) as Angle, closes };
}

function words(valve: ValveSide, { opens, closes }: Crossing): string {
  const [opensAt, closesAt] = valve === 'intake' ? ['top', 'bottom'] : ['bottom', 'top'];
  const shown = (angle: Angle) => formatQuantity('angle', Math.abs(angle), 'deg', 2);
  const opening = `opens ${shown(opens)} ${opens < 0 ? 'after' : 'before'} ${opensAt}`;
  return `${opening}, closes ${shown(closes)} ${closes < 0 ? 'before' : 'after'} ${closesAt}`;
}
