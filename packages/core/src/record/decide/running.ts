/** Rules for what is recorded while the engine is primed, started and run in. */
import { valveKey } from '../../engine/index.js';
import { factsOf, type RunningWhat, runInClock, scheduleOf } from '../../plan/index.js';
import { refused } from '../../quantity/outcome.js';
import type { EntryData, Reading } from '../entry.js';
import { runningFacts } from '../running.js';
import type { RecordState } from '../state.js';
import { type Decision, engineOf, nothingToAdd, record } from './lookup.js';
import { valveKnown } from './parts.js';
import type { Refusal } from './refusal.js';

/** Nobody cranks for ten minutes, and no engine of this book runs at 30,000 rpm or has 1000 bar in its gallery. */
const LONGEST_CRANKING = 600;
const MOST = { pressure: 1e8, temperature: 1600, speed: 3200 } as const;

const UNITS: Readonly<
  Record<Exclude<RunningWhat, 'load-words'>, { readonly unit: Reading['unit']; readonly measured: string }>
> = {
  'oil-pressure': { unit: 'Pa', measured: 'a pressure' },
  'oil-temperature': { unit: 'K', measured: 'a temperature' },
  'coolant-temperature': { unit: 'K', measured: 'a temperature' },
  'exhaust-temperature': { unit: 'K', measured: 'a temperature' },
  speed: { unit: 'rad/s', measured: 'a speed' },
};

/** A gauge stands at zero or above it. */
export function pressureFault({ unit, value, text }: Reading): Refusal | undefined {
  if (unit !== 'Pa') return { code: 'other-unit', given: text, measured: 'a pressure', expected: 'Pa' };
  if (value >= 0 && value <= MOST.pressure) return undefined;
  return { code: 'reading-out-of-range', reading: text, valid: '0 to 1000 bar on the gauge' };
}

/** Entries after which oil that was seen before may have to be seen anew. */
const OPENS: ReadonlySet<string> = new Set(['work-reopened', 'joint-opened', 'work-returned', 'struck-out']);

/** Oil seen at a valve; the same again is in the record already, as long as nothing was opened since. */
export function decideOilSeen(state: RecordState, data: EntryData['oil-seen']): Decision {
  const known = valveKnown(state, data.valve);
  if (known !== undefined) return known;
  const key = valveKey(data.valve);
  const seen = factsOf(runningFacts(state), 'oil-seen').findLast((one) => valveKey(one.data.valve) === key);
  if (seen === undefined) return record({ kind: 'oil-seen', data });
  const at = state.entries.findIndex(({ entry }) => entry.id === seen.entry);
  const opened = state.entries.slice(at + 1).some(({ entry }) => OPENS.has(entry.kind));
  return opened ? record({ kind: 'oil-seen', data }) : nothingToAdd;
}

/** One go at the starter; two goes with the same figures are two goes. */
export function decideStart(_: RecordState, data: EntryData['start-tried']): Decision {
  const fault =
    secondsFault('seconds on the starter', data.crankedSeconds) ??
    (data.pressureAfterSeconds === undefined
      ? undefined
      : secondsFault('seconds to oil pressure', data.pressureAfterSeconds)) ??
    (data.pressure === undefined ? undefined : pressureFault(data.pressure));
  return fault === undefined ? record({ kind: 'start-tried', data }) : refused(fault);
}
function secondsFault(what: string, given: number): Refusal | undefined {
  if (given >= 0 && given <= LONGEST_CRANKING) return undefined;
  return { code: 'number-out-of-range', what, given, valid: `0 to ${LONGEST_CRANKING} s` };
}

/** Begins a step of the schedule; one that runs already is not begun again. Without a step the clock finds the next one by the time of the entry. */
export function decideBegun(state: RecordState, data: EntryData['run-in-begun']): Decision {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const schedule = scheduleOf(engine.value);
  const { step } = data;
  if (step !== undefined && step > schedule.steps.length)
    return refused({ code: 'unknown-step', step, steps: schedule.steps.length });
  const clock = clockOf(state);
  if (clock?.state === 'running' && clock.step?.number === step) return nothingToAdd;
  return record({ kind: 'run-in-begun', data });
}

export function decideStopped(state: RecordState, data: EntryData['run-in-stopped']): Decision {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  return clockOf(state)?.state === 'running'
    ? record({ kind: 'run-in-stopped', data })
    : refused({ code: 'not-running' });
}

/** The clock at the moment of the last entry: whether it runs does not depend on the time. */
function clockOf(state: RecordState) {
  const facts = runningFacts(state);
  const last = facts.at(-1);
  return state.engine && last && runInClock(scheduleOf(state.engine), facts, last.at);
}

/** One look at a gauge, or the load in words; the same again is a later look. */
export function decideGauge(_: RecordState, data: EntryData['running-read']): Decision {
  const { what, reading, words } = data;
  const wantsWords = what === 'load-words';
  if ((reading === undefined) === (words === undefined) || (reading === undefined) !== wantsWords)
    return refused({ code: 'one-answer', what });
  if (reading === undefined || what === 'load-words') return record({ kind: 'running-read', data });
  const fault = gaugeFault(what, reading);
  return fault === undefined ? record({ kind: 'running-read', data }) : refused(fault);
}

function gaugeFault(what: Exclude<RunningWhat, 'load-words'>, reading: Reading): Refusal | undefined {
  const { unit, measured } = UNITS[what];
  const { text, value } = reading;
  if (reading.unit !== unit) return { code: 'other-unit', given: text, measured, expected: unit };
  if (unit === 'Pa') return pressureFault(reading);
  const most = unit === 'K' ? MOST.temperature : MOST.speed;
  const valid = unit === 'K' ? 'above absolute zero, to 1300 °C' : '0 to 30,000 rpm';
  if (value <= most && (unit === 'K' ? value > 0 : value >= 0)) return undefined;
  return { code: 'reading-out-of-range', reading: text, valid };
}
