/** What a wish of a person adds to the record, or why it does not. */
import { refused } from '../../quantity/outcome.js';
import type { EntryData } from '../entry.js';
import { readEntryData } from '../reading/index.js';
import type { RecordState } from '../state.js';
import { decideCam, decideDeadCentre, decideFigure, decideTrial, decideValveRoom } from './combination.js';
import { decideDoubted, decideGasket, decideOpened, decidePlaced, decideResumed, decideSkipped } from './joints.js';
import { type Decision, nothingToAdd, record } from './lookup.js';
import {
  decideCheck,
  decideChoice,
  decideInstrument,
  decideMeasured,
  decideReturned,
  decideTemperature,
} from './measuring.js';
import { decideFitted, decideRechecked, decideTagged, decideValve } from './parts.js';
import { decidePhoto } from './photos.js';
import type { Command } from './refusal.js';
import { decideBegun, decideGauge, decideOilSeen, decideStart, decideStopped } from './running.js';
import { decideCompression, decideHours, decideLeakage, decideService, decideServiced } from './running-tests.js';
import { decideAct } from './tighten.js';

/**
 * Judges a command against the record: the entries to write, an empty list when the record says it already, or a refusal
 * with the reason as data. Pure: time, person and ids are put on by the edge that writes the entries.
 */
export function decide(state: RecordState, command: Command): Decision {
  if (blank(command.data)) return refused({ code: 'reason-needed' });
  const read = readEntryData(command.kind as string, command.data);
  if (!read.ok) return read;
  switch (command.kind) {
    case 'sheet-adopted':
      return state.sheet?.text === command.data.text ? nothingToAdd : record(command);
    case 'gasket-checked':
      return decideGasket(state, command.data);
    case 'fastener-placed':
      return decidePlaced(state, command.data);
    case 'act-done':
      return decideAct(state, command.data);
    case 'walk-resumed':
      return decideResumed(state, command.data);
    case 'fastener-doubted':
      return decideDoubted(state, command.data);
    case 'joint-opened':
      return decideOpened(state, command.data);
    case 'part-tagged':
      return decideTagged(state, command.data);
    case 'part-fitted':
      return decideFitted(state, command.data);
    case 'valve-set':
    case 'shim-measured':
      return decideValve(state, command);
    case 'valve-rechecked':
      return decideRechecked(state, command.data);
    case 'skipped':
      return decideSkipped(state, command.data);
    case 'measured':
      return decideMeasured(state, command.data);
    case 'instrument-kept':
      return decideInstrument(state, command.data);
    case 'instrument-checked':
      return decideCheck(state, command.data);
    case 'temperature-noted':
      return decideTemperature(state, command.data);
    case 'work-returned':
      return decideReturned(state, command.data);
    case 'decided':
      return decideChoice(state, command.data);
    case 'dead-centre-read':
      return decideDeadCentre(state, command.data);
    case 'cam-read':
      return decideCam(state, command.data);
    case 'pushrod-tried':
      return decideTrial(state, command.data);
    case 'valve-room-read':
      return decideValveRoom(state, command.data);
    case 'figure-stated':
      return decideFigure(state, command.data);
    case 'photo-taken':
      return decidePhoto(state, command.data);
    case 'oil-seen':
      return decideOilSeen(state, command.data);
    case 'start-tried':
      return decideStart(state, command.data);
    case 'run-in-begun':
      return decideBegun(state, command.data);
    case 'run-in-stopped':
      return decideStopped(state, command.data);
    case 'running-read':
      return decideGauge(state, command.data);
    case 'compression-read':
      return decideCompression(state, command.data);
    case 'leakage-read':
      return decideLeakage(state, command.data);
    case 'service-planned':
      return decideService(state, command.data);
    case 'service-done':
      return decideServiced(state, command.data);
    case 'hours-noted':
      return decideHours(state, command.data);
    // Whether the plan allows it is judged where the plan is known: `workbench/work`.
    case 'work-act-done':
    case 'work-act-skipped':
    case 'work-reopened':
    case 'second-look':
    case 'mock-up-aid-out':
    case 'mock-up-aid-returned':
    case 'work-begun':
    case 'work-act-added':
    case 'work-act-critical':
    case 'work-left':
    case 'work-resumed':
    case 'work-signed-off':
    case 'note':
    case 'spare-shim':
      return record(command);
    case 'struck-out':
      return decideStruck(state, command.data);
  }
}

/** What needs a reason is refused without one before anything else is looked at. */
function blank(data: unknown): boolean {
  if (typeof data !== 'object' || data === null || !('reason' in data)) return false;
  return typeof data.reason === 'string' && data.reason.trim() === '';
}

/** Nothing is erased: an entry is struck out by a later one, with a reason, and stays readable. */
function decideStruck(state: RecordState, data: EntryData['struck-out']): Decision {
  const target = state.entries.find((one) => one.entry.id === data.entry);
  if (target === undefined) return refused({ code: 'unknown-entry', entry: data.entry });
  return target.struck === undefined ? record({ kind: 'struck-out', data }) : nothingToAdd;
}
