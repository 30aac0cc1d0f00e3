import { degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { firingOrder, intervals } from '../../crank/entries/inputs.js';
import { crankDegrees } from '../../crank/index.js';
import { planValveStops } from '../plan-stops.js';
import type { PlannedStop, ValveSide } from '../types.js';
import { describePlanFault, describeRefusal } from '../words.js';
import { camEventsIfKnown, margin } from './inputs.js';
import { readyTiming } from './ready.js';

function line(stop: PlannedStop): string {
  const list = (side: ValveSide) => stop.set.flatMap((one) => (one.valve === side ? [one.cylinder] : [])).join(' ');
  return `${stop.crankDegrees}°: intake ${list('intake') || 'none'} / exhaust ${list('exhaust') || 'none'}`;
}

export const crankStops = defineCalculation({
  id: 'valve-setting.crank-stops',
  subject: 'valve-setting',
  title: 'Fewest crank stops for setting all valves',
  summary: 'Where to stop the crank, turning only forward, and which valves to set at each stop.',
  inputs: {
    firingOrder,
    intervals,
    ...camEventsIfKnown,
    margin,
    stops: {
      kind: 'angle',
      symbol: 'A',
      meaning: 'stops to plan over; left out means the fewest at marks a person has',
      unit: 'deg',
      range: { from: 0, below: degrees(720) },
      list: true,
      optional: true,
    },
  },
  outputs: {
    crankAngles: {
      kind: 'angle',
      symbol: 'A',
      meaning: 'stops after the firing dead centre of the first cylinder of the order',
      unit: 'deg',
      places: 1,
      list: true,
    },
    lists: { kind: 'text', symbol: 'valves', meaning: 'cylinders whose valves are set at each stop', list: true },
    smallestMargin: {
      kind: 'angle',
      symbol: 'm₀',
      meaning: 'tightest valve of the plan: crank angle to its own opening or closing',
      unit: 'deg',
      places: 1,
      optional: true,
    },
    refusedValves: { kind: 'text', symbol: 'refused', meaning: 'valves that no stop permits, and why', list: true },
  },
  formula:
    'fewest stops, then coarsest marks, then greatest m₀; each valve where |phase − middle of its window| is greatest',
  assumptions: ['Four-stroke: one cycle is 720° of the crank.', 'All cylinders have the same cam events.'],
  sources: ['valve-stop-lists', 'derived-here'],
  example: {
    inputs: { firingOrder: [1, 8, 4, 3, 6, 5, 7, 2] },
    outputs: {
      crankAngles: ['0.0 deg', '360.0 deg'],
      lists: ['0°: intake 1 2 5 7 / exhaust 1 3 4 8', '360°: intake 3 4 6 8 / exhaust 2 5 6 7'],
    },
    from: 'printed list, reference mechanism-open.md section 8.1 row V1',
  },
  compute: (v) => {
    const ready = readyTiming(v);
    if (!ready.ok) return ready;
    const plan = planValveStops(ready.value.timing, v.stops ? { stops: v.stops.map(crankDegrees) } : {});
    if (!plan.ok) return conflict(['stops'], describePlanFault(plan.fault));
    const { stops, refused, smallestDegrees } = plan.value;
    const outputs = {
      crankAngles: stops.map((stop) => degrees(stop.crankDegrees)),
      lists: stops.map(line),
      smallestMargin: smallestDegrees === undefined ? undefined : degrees(smallestDegrees),
      refusedValves: refused.map(describeRefusal),
    };
    return answer(outputs, ready.value.cautions);
  },
});
