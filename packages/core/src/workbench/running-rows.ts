/** Lines of the record for priming, start, run-in, compression and leakage, service. */
import { valveName } from '../engine/index.js';
import { GAUGES, HEARD, percentOf, type RunningFactKind } from '../plan/index.js';
import type { Writer } from './row-words.js';

const OUTCOME = { runs: 'runs', stopped: 'ran and was stopped', 'no-start': 'did not start' } as const;
const and = (parts: readonly (string | undefined)[]) => parts.filter((part) => part !== undefined).join(', ');
const hoursText = (hours: number) => `${hours} h`;

export const runningRows: { readonly [K in RunningFactKind]: Writer<K> } = {
  'oil-seen': (bench, { valve, how }) => ({
    what: `Oil at ${valveName(bench.engine, valve)}`,
    value: and(['seen while priming', how]),
  }),
  'start-tried': (_, { crankedSeconds, pressureAfterSeconds: after, pressure, outcome }) => ({
    what: 'Starter',
    value: and([
      OUTCOME[outcome],
      `${crankedSeconds} s on the starter`,
      after === undefined ? undefined : `oil pressure after ${after} s`,
      pressure && `oil pressure ${pressure.text}`,
    ]),
  }),
  'run-in-begun': (_, { step }) => ({
    what: 'Run-in',
    value: step === undefined ? 'clock started' : `step ${step} begun`,
  }),
  'run-in-stopped': (_, { why }) => ({ what: 'Run-in, stopped', value: why }),
  'running-read': (_, { what, reading, words }) => ({
    what: `Running: ${what === 'load-words' ? 'load' : GAUGES[what].title}`,
    value: reading?.text ?? words ?? '',
  }),
  'compression-read': (_, { cylinder, reading, wet, strokes, gauge }) => ({
    what: `Compression, cylinder ${cylinder}, ${wet ? 'wet' : 'dry'}`,
    value: and([reading.text, strokes === undefined ? undefined : `${strokes} strokes`, gauge]),
  }),
  'leakage-read': (_, { cylinder, supply, held, heard, tester }) => ({
    what: `Leakage, cylinder ${cylinder}`,
    value: and([
      `${held.text} held of ${supply.text}`,
      percentOf((supply.value - held.value) / supply.value),
      heard && `heard ${HEARD[heard].words}`,
      tester,
    ]),
  }),
  'service-planned': (_, { what, dueHours, dueDate, from }) => ({
    what: `Service planned: ${what}`,
    value: and([dueHours === undefined ? undefined : `at ${hoursText(dueHours)}`, dueDate && `by ${dueDate}`]),
    origin: from,
  }),
  'service-done': (_, { what, hours }) => ({
    what: `Service done: ${what}`,
    value: hours === undefined ? 'done' : `at ${hoursText(hours)}`,
  }),
  'hours-noted': (_, { hours }) => ({ what: 'Running hours', value: hoursText(hours) }),
};
