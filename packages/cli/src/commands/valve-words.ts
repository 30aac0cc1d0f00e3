import {
  type CrankSigns,
  describeAssumption,
  describeRefusal,
  type PermittedValve,
  type PlannedStop,
  signsAt,
  type ValvePlan,
  type ValveTiming,
} from '@gudgeon/core/calc/valve-setting';

const cylindersOf = (valves: readonly PermittedValve[], side: 'intake' | 'exhaust') =>
  valves.filter(({ valve }) => valve === side).map(({ cylinder }) => cylinder);
const lists = (valves: readonly PermittedValve[]) => ({
  intake: cylindersOf(valves, 'intake'),
  exhaust: cylindersOf(valves, 'exhaust'),
});
const shown = (degrees: number) => String(Math.round(degrees * 100) / 100);

/** The plan as the command prints it with `--json`. */
export function planAsJson(plan: ValvePlan) {
  return {
    assumed: plan.assumed.map(describeAssumption),
    stops: plan.stops.map((stop) => ({
      crankDegrees: stop.crankDegrees,
      ...lists(stop.set),
      margins: stop.set.map(({ cylinder, valve, degrees }) => ({ cylinder, valve, degrees })),
    })),
    permitted: plan.stops.map((stop) => ({ crankDegrees: stop.crankDegrees, ...lists(stop.permitted) })),
    refused: plan.refused.map((valve) => ({
      cylinder: valve.cylinder,
      valve: valve.valve,
      reason: describeRefusal(valve),
    })),
  };
}

const marks = {
  'dead-centre': 'a dead centre mark',
  'quarter-turn': 'a quarter-turn mark',
  'damper-degrees': 'needs a damper marked in degrees',
  given: 'as given',
} as const;
const numbers = (cylinders: readonly number[]) => (cylinders.length === 0 ? 'none' : cylinders.join(' '));

function signLine(signs: CrankSigns): string {
  const seen = [
    ...signs.firing.map((cylinder) => `cylinder ${cylinder} at its firing dead centre`),
    ...signs.rocking.map((cylinder) => `valves of ${cylinder} rocking`),
  ];
  return seen.length === 0 ? 'no cylinder at a dead centre with its valves shut or rocking' : seen.join(', ');
}

function tightest(valves: readonly PermittedValve[]): string {
  if (valves.length === 0) return 'none';
  const one = valves.reduce((least, next) => (next.degrees < least.degrees ? next : least));
  const end = one.nearest === 'opening' ? 'before it opens' : 'after it closed';
  return `${one.valve} ${one.cylinder}, ${shown(one.degrees)} degrees ${end}`;
}

function stopLines(timing: ValveTiming, stop: PlannedStop, number: number): string[] {
  const turn = stop.turnDegrees === 0 ? '' : `, turn forward ${shown(stop.turnDegrees)}`;
  const set = lists(stop.set);
  return [
    `Stop ${number}: ${shown(stop.crankDegrees)} degrees${turn} (${marks[stop.mark]})`,
    `  see       ${signLine(signsAt(timing, stop.crankDegrees))}`,
    `  intake    ${numbers(set.intake)}`,
    `  exhaust   ${numbers(set.exhaust)}`,
    `  tightest  ${tightest(stop.set)}`,
  ];
}

/** The plan for a reader at the bench. */
export function planAsText(timing: ValveTiming, plan: ValvePlan): string {
  const order = timing.cylinders.map(({ cylinder }) => cylinder);
  return [
    `Firing order ${order.join('-')}, margin ${shown(plan.marginDegrees)} degrees.`,
    `Crank degrees count in the running sense from the firing dead centre of cylinder ${order[0]}.`,
    ...plan.assumed.map((assumed) => `Assumed: ${describeAssumption(assumed)}.`),
    ...plan.stops.flatMap((stop, i) => ['', ...stopLines(timing, stop, i + 1)]),
    ...(plan.refused.length > 0 ? ['', 'Cannot be set at any of these stops:'] : []),
    ...plan.refused.map((valve) => `  ${describeRefusal(valve)}`),
    '',
    'The engine maker’s manual decides. After setting, turn two full turns forward and check every valve again at its own stop.',
  ].join('\n');
}
