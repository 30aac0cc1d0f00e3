import { headName, type Joint, jointsOfHead } from '@gudgeon/core/engine';
import {
  type Bench,
  combinationStanding,
  cylinderTestsView,
  fastenersStanding,
  fitStanding,
  gasketStanding,
  measureStanding,
  orderStanding,
  partsStanding,
  remindersView,
  runInView,
  type Standing,
  startView,
  tighteningStanding,
  valvesStanding,
  workStandingOf,
} from '@gudgeon/core/workbench';
import { momentNow } from '../../shell/index.js';

/** One place of work with how far it is. */
export interface Station {
  readonly place: string;
  readonly name: string;
  readonly state: string;
  readonly finished: boolean;
}
export interface StationGroup {
  readonly way: string;
  readonly name: string;
  readonly none: string;
  readonly parts: readonly { readonly name: string; readonly stations: readonly Station[] }[];
}

const station = (place: string, name: string, { progress, finished }: Standing): Station => ({
  place,
  name,
  state: progress.words,
  finished,
});

/** Every place of work on this engine, by way and by the part that it is about. */
export function stationsOf(bench: Bench): readonly StationGroup[] {
  return [measure(bench), fit(bench), combine(bench), assemble(bench), setValves(bench), runIn(bench), record()];
}

function measure(bench: Bench): StationGroup {
  const standing = measureStanding(bench);
  return {
    way: 'measure',
    name: 'Measure',
    none: 'The sheet gives nothing to measure.',
    parts:
      standing.progress.of === 0 ? [] : [{ name: 'Measure', stations: [station('measure', 'Worksheets', standing)] }],
  };
}

function fit(bench: Bench): StationGroup {
  const standing = fitStanding(bench);
  const stations = [
    station('fit', 'Sizes and decisions', standing),
    station('order', 'Order for the machine shop', orderStanding(bench)),
  ];
  return {
    way: 'fit',
    name: 'Fit',
    none: 'The sheet gives nothing to measure, so nothing to fit.',
    parts: standing.progress.of === 0 ? [] : [{ name: 'Fit', stations }],
  };
}

function combine(bench: Bench): StationGroup {
  const stations = [station('combination', 'Combination', combinationStanding(bench))];
  return { way: 'combination', name: 'Combination', none: '', parts: [{ name: 'Combination', stations }] };
}

function assemble(bench: Bench): StationGroup {
  const { heads, joints } = bench.engine;
  const ofJoint = (joint: Joint) => [
    station(`fasteners/${joint.id}`, 'Fasteners', fastenersStanding(bench, joint)),
    station(`tighten/${joint.id}`, 'Tighten', tighteningStanding(bench, joint)),
  ];
  const onHeads = heads.map((head) => ({
    name: headName(bench.engine, head.id),
    stations: [
      station(`gasket/${head.id}`, 'Gasket', gasketStanding(bench, head)),
      ...jointsOfHead(bench.engine, head.id).flatMap(ofJoint),
    ],
  }));
  const others = joints
    .filter((joint) => joint.head === undefined)
    .map((joint) => ({ name: joint.name, stations: ofJoint(joint) }));
  const parts = partsStanding(bench);
  const gear =
    parts.parts.length === 0
      ? []
      : [{ name: 'valve gear', stations: [station('parts', 'Parts to their places', parts)] }];
  const whole = {
    name: 'Assemble',
    stations: [
      station('work', 'The whole work', workStandingOf(bench)),
      { place: 'bench', name: 'At the bench', state: 'One act at a time, very large', finished: false },
      { place: 'registers', name: 'Registers', state: 'What came from where', finished: false },
    ],
  };
  return {
    way: 'assemble',
    name: 'Assemble',
    none: '',
    parts: [whole, ...onHeads, ...gear, ...others],
  };
}

function setValves(bench: Bench): StationGroup {
  const valves = valvesStanding(bench);
  const known = valves.progress.of > 0;
  return {
    way: 'valves',
    name: 'Set valves',
    none: 'The sheet does not say what valve gear this engine has.',
    parts: known ? [{ name: 'Set valves', stations: [station('valves', 'Set valves', valves)] }] : [],
  };
}

/** Prime, start, run in, and what is read of the fresh engine. */
function runIn(bench: Bench): StationGroup {
  const { ready, tries } = startView(bench);
  const { clock } = runInView(bench, momentNow().at);
  const { compression } = cylinderTestsView(bench);
  const service = remindersView(bench, momentNow().at);
  const stations: readonly Station[] = [
    { place: 'start', name: 'Prime and start', state: tries[0]?.words ?? ready.progress.words, finished: ready.all },
    { place: 'run-in', name: 'Run-in by the clock', state: clock.words, finished: clock.state === 'finished' },
    {
      place: 'tests',
      name: 'Compression and leakage',
      state: compression.words,
      finished: compression.ask === undefined && compression.rows.length > 0,
    },
    { place: 'service', name: 'Service', state: service.words, finished: false },
  ];
  return { way: 'run-in', name: 'Run in', none: '', parts: [{ name: 'Run in', stations }] };
}

function record(): StationGroup {
  const about: Station = {
    place: 'record',
    name: 'Record',
    state: 'Everything done, by whom and when; to read and to print',
    finished: false,
  };
  return { way: 'record', name: 'Record', none: '', parts: [{ name: 'Record', stations: [about] }] };
}
