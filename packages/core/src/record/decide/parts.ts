/** Rules for the parts of the valve gear and for setting valves. Whether the crank permits it is the workbench's to say. */
import { sameValve, type ValveId, valvesOf } from '../../engine/index.js';
import { judgePart, partsOf, registerOf, valveRecord } from '../../plan/index.js';
import { refused } from '../../quantity/outcome.js';
import { canonicalText } from '../canonical.js';
import type { EntryData } from '../entry.js';
import type { RecordState } from '../state.js';
import { type Decision, engineOf, nothingToAdd, record } from './lookup.js';
import type { NewEntry } from './refusal.js';

/** Tags an old part with the place it came from; a later tag on the same place replaces the earlier. */
export function decideTagged(state: RecordState, data: EntryData['part-tagged']): Decision {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const { part, valve } = data;
  if (!valvesOf(engine.value).some((one) => sameValve(one, valve))) return refused({ code: 'unknown-valve', valve });
  const { parts, places } = registerOf(engine.value, state.facts);
  if (!parts.includes(part)) return refused({ code: 'unknown-part', part, valid: partsOf(engine.value) });
  const place = places.find((one) => one.part === part && sameValve(one.valve, valve));
  return same(place?.tag?.data, data) ? nothingToAdd : record({ kind: 'part-tagged', data });
}

/** A used part goes back to its own place, the same way round; a new one anywhere that is free. */
export function decideFitted(state: RecordState, data: EntryData['part-fitted']): Decision {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const { places } = registerOf(engine.value, state.facts);
  const place = places.find((one) => one.part === data.part && sameValve(one.valve, data.to));
  if (same(place?.fitted?.data, data)) return nothingToAdd;
  const judged = judgePart(engine.value, state.facts, data);
  return judged.ok ? record({ kind: 'part-fitted', data }) : judged;
}

/** Set, or shim measured: any valve that the engine has; the same figures again add nothing. */
export function decideValve(
  state: RecordState,
  entry: Extract<NewEntry, { kind: 'valve-set' | 'shim-measured' }>,
): Decision {
  const known = valveKnown(state, entry.data.valve);
  if (known !== undefined) return known;
  const last = state.engine && standOf(state, entry.data.valve);
  const repeated = entry.kind === 'valve-set' && last?.state === 'set' && same(last.set?.data, entry.data);
  return repeated ? nothingToAdd : record(entry);
}

/** A valve is looked at again after it has been set. */
export function decideRechecked(state: RecordState, data: EntryData['valve-rechecked']): Decision {
  const known = valveKnown(state, data.valve);
  if (known !== undefined) return known;
  const stand = standOf(state, data.valve);
  if (stand === undefined || stand.state === 'open') return refused({ code: 'not-set-yet', valve: data.valve });
  return same(stand.recheck?.data, data) ? nothingToAdd : record({ kind: 'valve-rechecked', data });
}

/** Refuses a valve that the engine does not have; undefined for one that it has. */
export function valveKnown(state: RecordState, valve: ValveId): Decision | undefined {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const known = valvesOf(engine.value).some((one) => sameValve(one, valve));
  return known ? undefined : refused({ code: 'unknown-valve', valve });
}

function standOf(state: RecordState, valve: ValveId) {
  if (state.engine === undefined) return undefined;
  return valveRecord(state.engine, state.facts).valves.find((one) => sameValve(one.valve, valve));
}

const same = (recorded: unknown, given: unknown): boolean =>
  recorded !== undefined && canonicalText(recorded) === canonicalText(given);
