/** The shape of what is recorded about priming, start, run-in, tests and service, version 1. */
import {
  HEARD_PLACES,
  type HeardPlace,
  RUNNING_WHATS,
  type RunningFactData,
  type RunningWhat,
} from '../../plan/running/facts.js';
import { count, filledText, finite, type Guard, object, oneOf, optional, truth } from './guards.js';
import { NAME, name, reading, reason, valve, WORDS } from './pieces.js';

const what: Guard<RunningWhat> = oneOf(...RUNNING_WHATS);
const heard: Guard<HeardPlace> = oneOf(...HEARD_PLACES);

export const RUNNING_SHAPES: { readonly [K in keyof RunningFactData]: Guard<RunningFactData[K]> } = {
  'oil-seen': object<RunningFactData['oil-seen']>({ valve, how: optional(name) }),
  'start-tried': object<RunningFactData['start-tried']>({
    crankedSeconds: finite,
    pressureAfterSeconds: optional(finite),
    pressure: optional(reading),
    outcome: oneOf('runs', 'stopped', 'no-start'),
  }),
  'run-in-begun': object<RunningFactData['run-in-begun']>({ step: optional(count) }),
  'run-in-stopped': object<RunningFactData['run-in-stopped']>({ why: reason }),
  'running-read': object<RunningFactData['running-read']>({
    what,
    reading: optional(reading),
    words: optional(filledText(WORDS)),
  }),
  'compression-read': object<RunningFactData['compression-read']>({
    cylinder: count,
    reading,
    wet: truth,
    strokes: optional(count),
    gauge: optional(name),
  }),
  'leakage-read': object<RunningFactData['leakage-read']>({
    cylinder: count,
    supply: reading,
    held: reading,
    heard: optional(heard),
    tester: optional(name),
  }),
  'service-planned': object<RunningFactData['service-planned']>({
    what: name,
    dueHours: optional(finite),
    dueDate: optional(filledText(NAME)),
    from: name,
  }),
  'service-done': object<RunningFactData['service-done']>({ what: name, hours: optional(finite) }),
  'hours-noted': object<RunningFactData['hours-noted']>({ hours: finite }),
};
