/** Rules for compression and leakage tests, service and running hours. */
import { factsOf } from '../../plan/index.js';
import { refused } from '../../quantity/outcome.js';
import type { EntryData } from '../entry.js';
import { runningFacts } from '../running.js';
import type { RecordState } from '../state.js';
import { dayFault } from './day.js';
import { type Decision, engineOf, record } from './lookup.js';
import type { Refusal } from './refusal.js';
import { pressureFault } from './running.js';

/** A counter of hours ends here; an engine too. */
const MOST_HOURS = 1_000_000;

function cylinderFault(state: RecordState, cylinder: number): Refusal | undefined {
  const engine = engineOf(state);
  if (!engine.ok) return engine.fault;
  const valid = engine.value.layout.cylinders.map(({ number }) => number);
  return valid.includes(cylinder) ? undefined : { code: 'unknown-cylinder', cylinder, valid };
}

/** A pressure of one cylinder: the newest dry one holds, and a wet one is held against it. */
export function decideCompression(state: RecordState, data: EntryData['compression-read']): Decision {
  const { cylinder, reading, wet } = data;
  const fault = cylinderFault(state, cylinder) ?? pressureFault(reading);
  if (fault !== undefined) return refused(fault);
  const dry = factsOf(runningFacts(state), 'compression-read').some(
    (one) => one.data.cylinder === cylinder && !one.data.wet,
  );
  if (wet && !dry) return refused({ code: 'dry-first', cylinder });
  return record({ kind: 'compression-read', data });
}

/** Supply and what the cylinder holds of it, both on the gauges of one tester. */
export function decideLeakage(state: RecordState, data: EntryData['leakage-read']): Decision {
  const { cylinder, supply, held } = data;
  const fault = cylinderFault(state, cylinder) ?? pressureFault(supply) ?? pressureFault(held);
  if (fault !== undefined) return refused(fault);
  if (supply.value === 0)
    return refused({ code: 'reading-out-of-range', reading: supply.text, valid: 'a supply above 0' });
  if (held.value > supply.value) return refused({ code: 'holds-more', held: held.text, supply: supply.text });
  return record({ kind: 'leakage-read', data });
}

function hoursFault(what: string, hours: number | undefined): Refusal | undefined {
  if (hours === undefined || (hours >= 0 && hours <= MOST_HOURS)) return undefined;
  return { code: 'number-out-of-range', what, given: hours, valid: `0 to ${MOST_HOURS} h` };
}
export function decideService(_: RecordState, data: EntryData['service-planned']): Decision {
  const { what, dueHours, dueDate } = data;
  if (dueHours === undefined && dueDate === undefined) return refused({ code: 'never-due', what });
  const fault = hoursFault('hours at which it is due', dueHours) ?? dayFault(dueDate);
  return fault === undefined ? record({ kind: 'service-planned', data }) : refused(fault);
}

/** Done is what was planned, or what the sheet asks for. */
export function decideServiced(state: RecordState, data: EntryData['service-done']): Decision {
  const { what, hours } = data;
  const sheet = state.engine?.running?.service.map((one) => one.what) ?? [];
  const valid = [
    ...new Set([...sheet, ...factsOf(runningFacts(state), 'service-planned').map((one) => one.data.what)]),
  ];
  if (!valid.includes(what)) return refused({ code: 'unknown-service', what, valid });
  const fault = hoursFault('running hours', hours);
  return fault === undefined ? record({ kind: 'service-done', data }) : refused(fault);
}

/** A counter does not run backward; one that was exchanged begins with the old entries struck out. */
export function decideHours(state: RecordState, data: EntryData['hours-noted']): Decision {
  const fault = hoursFault('running hours', data.hours);
  if (fault !== undefined) return refused(fault);
  const noted = factsOf(runningFacts(state), 'hours-noted').at(-1)?.data.hours;
  if (noted !== undefined && data.hours < noted) return refused({ code: 'hours-back', given: data.hours, noted });
  return record({ kind: 'hours-noted', data });
}
