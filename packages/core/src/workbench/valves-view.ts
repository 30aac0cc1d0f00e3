/** Set the valves: crank stops, which valves at each, what to see, what is refused and why, and what has been recorded. */
import {
  describeReason,
  describeRefusal,
  JUST_MOVING,
  type NeighbourStep,
  neighbourSteps,
  type PlannedStop,
  permittedAt,
  signsAt,
  type ValveGroup,
  type ValveTiming,
} from '../calc/valve-setting/index.js';
import { type Marks, type Shown, stopFigure, valveMap } from '../drawing/index.js';
import { type Engine, valveKey, valveName, valvesOf } from '../engine/index.js';
import { type ValveRecord, type ValveStand, valveRecord } from '../plan/index.js';
import { type Bench, givenBy } from './bench.js';
import { valveCautions } from './cautions.js';
import { neighbourOf, neighbourWords, signWords, turnWords } from './crank-words.js';
import { settingRule } from './setting-rule.js';
import { shimsView } from './shims-view.js';
import { turnCount } from './turn-words.js';
import { assumptionsOf, drawingAngle, eventsOf, planOf, timingOf, type ValveChoices } from './valve-timing.js';
import type { CrankStopView, HereView, ValveSettingView, ValvesView } from './views.js';

const inGroup = (engine: Engine, group: ValveGroup) =>
  valvesOf(engine).filter((valve) => valve.cylinder === group.cylinder && valve.kind === group.valve);

function setWords(stand: ValveStand): string {
  const data = stand.set?.data;
  if (data === undefined) return '';
  const turned = data.turns === undefined ? [] : [`${turnCount(data.turns)} turn past zero lash`];
  const travel = data.plungerTravel === undefined ? [] : [`plunger ${data.plungerTravel.text}`];
  const lash = data.lash === undefined ? [] : [`gap ${data.lash.text} ${data.condition}`];
  const shim = data.shim === undefined ? [] : [`shim ${data.shim.text}`];
  const fixed = data.adjustment === 'fixed' ? ['rocker tightened'] : [];
  return [...turned, ...travel, ...lash, ...shim, ...fixed].join(', ');
}

function settingView(bench: Bench, stand: ValveStand, marginDegrees: number): ValveSettingView {
  const given = givenBy(bench, stand.set?.entry);
  return {
    valve: stand.valve,
    key: valveKey(stand.valve),
    place: valveName(bench.engine, stand.valve),
    marginDegrees: Math.round(marginDegrees * 10) / 10,
    state: stand.state,
    ...(given && { given: { ...given, words: setWords(stand) } }),
  };
}

function groupViews(bench: Bench, record: ValveRecord, groups: readonly (ValveGroup & { readonly degrees: number })[]) {
  return groups.flatMap((group) =>
    record.valves
      .filter((stand) => stand.valve.cylinder === group.cylinder && stand.valve.kind === group.valve)
      .map((stand) => settingView(bench, stand, group.degrees)),
  );
}

/** Valves to set now are lit, valves that are set are done, all others idle. */
export function valveMarks(record: ValveRecord, now: readonly ValveSettingView[]): Marks {
  const lit = new Set(now.filter((one) => one.state === 'open' || one.state === 'bad').map((one) => one.key));
  return Object.fromEntries(
    record.valves.map((stand) => {
      const key = valveKey(stand.valve);
      if (stand.state === 'bad') return [key, 'wrong'] as const;
      if (stand.state !== 'open') return [key, 'done'] as const;
      return [key, lit.has(key) ? 'lit' : 'idle'] as const;
    }),
  );
}

function stopView(
  bench: Bench,
  timing: ValveTiming,
  record: ValveRecord,
  stop: PlannedStop,
  place: number,
  shown: Shown,
): CrankStopView {
  const valves = groupViews(bench, record, stop.set);
  const crankAngle = drawingAngle(timing, stop.crankDegrees);
  const previous = drawingAngle(timing, stop.crankDegrees - stop.turnDegrees);
  return {
    crankDegrees: stop.crankDegrees,
    crankAngle,
    turnDegrees: stop.turnDegrees,
    turn: turnWords(bench.engine, stop, place),
    sight: signWords(signsAt(timing, stop.crankDegrees)),
    valves,
    finished: valves.every((valve) => valve.state === 'set' || valve.state === 'checked'),
    figure: stopFigure(bench.engine, place === 0 ? { crankAngle } : { crankAngle, previous }, shown),
    map: valveMap(bench.engine, valveMarks(record, valves), shown),
  };
}

function neighbourView(bench: Bench, timing: ValveTiming, step: NeighbourStep): ValvesView['neighbour'] {
  return inGroup(bench.engine, step).map((valve) => ({
    valve,
    key: valveKey(valve),
    place: valveName(bench.engine, valve),
    words: neighbourWords(step),
    permitted: step.permitted,
    marginDegrees: Math.round(step.degrees * 10) / 10,
    watch: { cylinder: valve.cylinder, kind: step.watch, index: 1 },
    crankAngle: drawingAngle(timing, step.from + JUST_MOVING / 2),
  }));
}

/** Where no timing can be computed, the neighbouring valve is all that there is to go by. */
function byEye(bench: Bench): ValvesView['neighbour'] {
  return valvesOf(bench.engine).map((valve) => ({
    valve,
    key: valveKey(valve),
    place: valveName(bench.engine, valve),
    words: neighbourWords({ ...neighbourOf(valve.kind), cylinder: valve.cylinder, valve: valve.kind, permitted: true }),
    permitted: true,
  }));
}

function recheckView(record: ValveRecord): ValvesView['recheck'] {
  const checked = record.valves.filter((stand) => stand.state === 'checked').length;
  return {
    due: record.allSet,
    words:
      'Turn the crank two whole turns forward by hand; stop at once if anything catches. Then look at every valve again at its stop: the gap or the free pushrod is as it was set.',
    progress: {
      done: checked,
      of: record.valves.length,
      words: `${checked} of ${record.valves.length} looked at again`,
    },
  };
}

/** The whole valve-setting view. What cannot be computed is said in `hindrances`; the record of set valves is shown all the same. */
export function valvesView(bench: Bench, choices: ValveChoices = {}, shown: Shown = {}): ValvesView {
  const record = valveRecord(bench.engine, bench.facts);
  const timing = timingOf(bench.engine, choices);
  const plan = timing.ok ? planOf(timing.value, choices) : timing;
  const set = record.valves.filter((stand) => stand.state === 'set' || stand.state === 'checked').length;
  const shims = shimsView(bench);
  return {
    rule: settingRule(bench.engine),
    hindrances: plan.ok ? [] : plan.fault,
    assumed: timing.ok ? assumptionsOf(timing.value) : [],
    ...(timing.ok && { marginDegrees: timing.value.marginDegrees, events: eventsOf(timing.value) }),
    stops:
      timing.ok && plan.ok
        ? plan.value.stops.map((stop, place) => stopView(bench, timing.value, record, stop, place, shown))
        : [],
    refused: plan.ok
      ? plan.value.refused.map((one) => ({ valve: `${one.valve} ${one.cylinder}`, reason: describeRefusal(one) }))
      : [],
    neighbour: timing.ok
      ? neighbourSteps(timing.value).flatMap((step) => neighbourView(bench, timing.value, step))
      : byEye(bench),
    valves: record.valves.map((stand) => settingView(bench, stand, 0)),
    ...(shims && { shims }),
    progress: { done: set, of: record.valves.length, words: `${set} of ${record.valves.length} valves set` },
    recheck: recheckView(record),
    finished: record.allChecked,
    cautions: valveCautions(bench.engine),
  };
}

/** "The crank is here: what may I set?" `crankDegrees` from the firing dead centre of the first cylinder of the order. */
export function hereView(
  bench: Bench,
  crankDegrees: number,
  choices: ValveChoices = {},
  shown: Shown = {},
): HereView | undefined {
  const timing = timingOf(bench.engine, choices);
  if (!timing.ok) return undefined;
  const record = valveRecord(bench.engine, bench.facts);
  const verdict = permittedAt(timing.value, crankDegrees);
  const may = groupViews(bench, record, verdict.permitted);
  const crankAngle = drawingAngle(timing.value, verdict.crankDegrees);
  return {
    crankDegrees: verdict.crankDegrees,
    crankAngle,
    may,
    mayNot: verdict.refused.flatMap((one) =>
      inGroup(bench.engine, one).map((valve) => ({
        valve,
        place: valveName(bench.engine, valve),
        reason: describeReason(one),
      })),
    ),
    sight: signWords(signsAt(timing.value, verdict.crankDegrees)),
    figure: stopFigure(bench.engine, { crankAngle }, shown),
    map: valveMap(bench.engine, valveMarks(record, may), shown),
  };
}
