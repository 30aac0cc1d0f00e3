/** The screen that answers an act, or that helps with it. */
import { jointsOfHead } from '../../engine/index.js';
import type { WorkAct } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { WorkActView } from '../work-views.js';
import { answeredBy } from './finished-elsewhere.js';

type Opens = NonNullable<WorkActView['opens']>;
const answers = (place: string, words: string): Opens => ({ place, words, answers: true });
const helps =
  (place: string, words: string) =>
  (rule: string): readonly [string, Opens] => [rule, { place, words, answers: false }];

const HELP: ReadonlyMap<string, Opens> = new Map([
  ...[
    'outside-bolts',
    'bolts-by-hole',
    'trays-laid-out',
    'main-cap-marked',
    'rod-marked',
    'valve-gear-tagged',
    'bolts-told-apart',
    'shells-placed',
    'rings-kept',
    'rings-laid-to-bore',
  ].map(helps('registers', 'What came from where')),
  ...[
    'readings-looked-through',
    'pistons-chosen',
    'bearings-chosen',
    'valve-train-chosen',
    'sizes-decided',
    'main-room',
    'rod-room',
    'gasket-grade-chosen',
  ].map(helps('fit', 'What fits, and what is decided')),
  ...['order-written', 'work-measured'].map(helps('order', 'The order to the shop')),
  ...['combination-chosen'].map(helps('combination/find', 'Find a combination')),
  ...['combination-accepted'].map(helps('combination', 'The combination of parts')),
  ...['compression-figured', 'squish-figured'].map(helps('combination/compression', 'Work out the compression')),
  ...['trial-dead-centre', 'cam-phase-tried', 'dead-centre-found', 'cam-read', 'cam-timing-accepted'].map(
    helps('combination/degreeing', 'Degree the cam'),
  ),
  ...['piston-room-tried'].map(helps('combination/valve-room', 'Work out the room of the valves')),
  ...['spring-margin-tried', 'spring-shimmed'].map(helps('combination/springs', 'Work out the springs')),
  ...['pushrod-length-tried'].map(helps('combination/rockers', 'Try pushrod lengths')),
  ...['bobweight-figured', 'crank-balanced'].map(helps('combination/balance', 'Work out the balance')),
  ...['follower-in', 'pushrod-in'].map(helps('parts', 'Parts and their places')),
  ...['valves-spot-checked', 'shims-chosen', 'lash-again'].map(helps('valves', 'The valves as they were set')),
  ...[
    'firing-centre',
    'injection-set',
    'rotor-placed',
    'spark-set',
    'leads-placed',
    'drive-home',
    'timing-nipped',
    'spark-again',
  ].map(helps('start/ignition', 'Cap, rotor and advance')),
  ...[
    'plugs-counted-again',
    'oil-filled',
    'filter-filled',
    'primed',
    'oil-at-valve',
    'coolant-filled',
    'throttle-returns',
    'roles-told',
    'extinguisher-held',
    'stop-rule-told',
  ].map(helps('start', 'Ready to start')),
  ...['followers-turn-running', 'run-in-leaks', 'filter-cut', 'head-again'].map(helps('run-in', 'The run-in')),
  ...['compression-found', 'leak-path-found', 'cylinders-compared'].map(helps('tests', 'Compression and leakage')),
  ...['service-told'].map(helps('service', 'Service by hours and date')),
  ...['signed-off'].map(helps('record', 'Read the record')),
]);

/** Where an act is answered, or where help with it is found; undefined where this program has no screen for it. */
export function opensOf(bench: Bench, act: WorkAct): Opens | undefined {
  const { engine } = bench;
  switch (answeredBy(bench, act)) {
    case 'worksheet':
      return act.subject?.kind === 'worksheet'
        ? answers(`measure/${act.subject.feature}`, 'Fill in the worksheet')
        : undefined;
    case 'joint':
      return act.subject?.kind === 'joint'
        ? answers(`tighten/${act.subject.joint}`, 'Go round the fasteners')
        : undefined;
    case 'valve':
      return answers('valves', 'Set the valves');
    case 'valve-again':
      return answers('valves', 'Look at the valves again');
    case 'gasket':
      return answers(`gasket/${act.place.id}`, 'Check the gasket');
    case 'fasteners': {
      const joint = jointsOfHead(engine, act.place.id)[0];
      return joint && answers(`fasteners/${joint.id}`, 'Lay out the fasteners by hole');
    }
    case 'parts':
      return answers('parts', 'Parts and their places');
    case 'oil':
      return answers('start/oil', 'Look for oil at the valves');
    case 'start':
      return answers('start/go', 'Start it');
    case 'run-in':
      return answers('run-in', 'Run it in by the clock');
    case 'cylinder-tests':
      return answers('tests', 'Compression and leakage');
    case undefined:
      return helpOf(bench, act);
  }
}

/** Laying a gasket is helped by the drawing of its head, where the sheet draws one. */
function helpOf({ engine }: Bench, { rule, place }: WorkAct): Opens | undefined {
  if (rule === 'gasket-down' && engine.heads.some(({ id }) => id === place.id))
    return { place: `gasket/${place.id}`, words: 'See which way up it goes', answers: false };
  return HELP.get(rule);
}
/** Rules with a screen that helps: each of them is a rule of the plan. */
export const HELPED_RULES: readonly string[] = [...HELP.keys()];
