/** Why the record says no, in one clear line: what, where, and what would be right. */
import { type Engine, valveName } from '../engine/index.js';
import type { Refusal } from '../record/index.js';
import { judgementWords } from './fastener-words.js';
import { slotName } from './slot-names.js';

const list = (valid: readonly (string | number)[]) => valid.join(', ');

function fastenerWords(refusal: Refusal): string | undefined {
  switch (refusal.code) {
    case 'wrong-fastener':
      return judgementWords(refusal.judgement);
    case 'already-placed':
      return `Hole ${refusal.hole} already has its fastener; strike out the old entry first if it was wrong.`;
    case 'must-be-new':
      return `Hole ${refusal.hole}: a new fastener is due here.`;
    case 'place-first':
      return `Hole ${refusal.hole} waits for its fastener; place ${refusal.mustBeNew ? 'a new one' : 'it'} first.`;
    case 'unknown-hole':
      return `No hole ${refusal.hole}; this joint has ${list(refusal.valid)}.`;
    case 'other-fastener':
      return `Hole ${refusal.hole}: the screen was behind the record; it is now fastener ${refusal.expected.instance}, round ${refusal.expected.round}.`;
    default:
      return undefined;
  }
}

function walkWords(refusal: Refusal): string | undefined {
  switch (refusal.code) {
    case 'blocked':
      return `Not yet: ${refusal.blocks.length} things stand in the way of tightening; the list is on the page.`;
    case 'look-for-mark':
      return `Hole ${refusal.hole}: look for the paint mark of stage ${refusal.stage} first.`;
    case 'stage-skipped':
      return `Hole ${refusal.hole}: stage ${refusal.missing} comes before stage ${refusal.stage}.`;
    case 'out-of-order':
      return `Now it is ${refusal.expected}, not ${refusal.given}.`;
    case 'joint-finished':
      return 'This joint is finished; nothing of it is left to tighten.';
    case 'wrong-answer':
      return `That answer does not fit this act; it takes ${list(refusal.valid)}.`;
    case 'reading-needed':
      return `Hole ${refusal.hole}: key in what the gauge reads.`;
    case 'reading-disagrees':
      return `The reading ${refusal.reading} says ${refusal.says}, the answer said ${refusal.seen}.`;
    case 'unknown-act':
      return `No act for hole ${refusal.hole} in stage ${refusal.stage}; the joint has ${refusal.stages} stages.`;
    default:
      return undefined;
  }
}

function partWords(engine: Engine, refusal: Refusal): string | undefined {
  switch (refusal.code) {
    case 'used-part-elsewhere':
      return `This used ${refusal.part} ran at ${valveName(engine, refusal.from)}: it goes back there, or a new one goes to ${valveName(engine, refusal.to)}.`;
    case 'other-end':
      return `Other end up: it was tagged "${refusal.tagged}", not "${refusal.given}".`;
    case 'other-face':
      return `Other face to the front: it was tagged "${refusal.tagged}", not "${refusal.given}".`;
    case 'place-taken':
      return `${valveName(engine, refusal.valve)} already has its ${refusal.part}; strike out the old entry first if it was wrong.`;
    case 'unknown-valve':
      return `This engine has no ${valveName(engine, refusal.valve)}.`;
    case 'unknown-part':
      return `This engine has no ${refusal.part} to keep apart; it has ${list(refusal.valid)}.`;
    case 'not-set-yet':
      return `${valveName(engine, refusal.valve)} has not been set yet.`;
    default:
      return undefined;
  }
}

function measuringWords(engine: Engine, refusal: Refusal): string | undefined {
  switch (refusal.code) {
    case 'unknown-instrument':
      return `No instrument ${refusal.instrument} in this record; ${refusal.valid.length === 0 ? 'none is kept yet' : `there is ${list(refusal.valid)}`}.`;
    case 'other-unit':
      return `${refusal.given} does not fit: ${refusal.measured} is wanted here.`;
    case 'not-a-slot':
      return `"${refusal.slot}" names no reading; a reading is named feature/place/station.`;
    case 'other-occasion':
      return `${slotName(engine, refusal.slot)}: the screen was behind the record; this is now occasion ${refusal.expected}, not ${refusal.given}.`;
    case 'read-already':
      return `${slotName(engine, refusal.slot)} reads ${refusal.reading} already; strike that out first, or take a second reading as a check.`;
    case 'nothing-to-repeat':
      return `${slotName(engine, refusal.slot)} has no first reading yet.`;
    case 'no-resolution':
      return `A gauge that reads ${refusal.resolution} reads nothing; give its smallest step, more than zero.`;
    case 'range-turned':
      return `A gauge does not reach from ${refusal.low} to ${refusal.high}; the low end comes first.`;
    case 'no-length':
      return `From grip to drive it cannot be ${refusal.given}; more than zero is.`;
    case 'not-a-day':
      return `"${refusal.given}" is no day; write year-month-day, such as 2026-03-31.`;
    case 'no-temperature':
      return 'Give the temperature of the room or of the part.';
    case 'no-places':
      return `Say which places of ${refusal.feature.replaceAll('-', ' ')} came back.`;
    default:
      return undefined;
  }
}

function combinationWords(refusal: Refusal): string | undefined {
  switch (refusal.code) {
    case 'unknown-cylinder':
      return `This engine has no cylinder ${refusal.cylinder}; it has ${list(refusal.valid)}.`;
    case 'no-wheel':
      return 'A valve pressed down until it meets the piston: key what the wheel reads there.';
    case 'same-stop':
      return `Both stop readings are ${refusal.reading}: turn to the stop from the other side for the second.`;
    case 'reading-out-of-range':
      return `${refusal.reading} cannot be read; ${refusal.valid} can.`;
    case 'unknown-figure':
      return `"${refusal.key}" is no figure of the combination; valid are ${list(refusal.valid)}.`;
    case 'not-a-figure':
      return `${refusal.title}: ${refusal.given} cannot be; ${refusal.valid} is valid.`;
    default:
      return undefined;
  }
}

function runningWords(refusal: Refusal): string | undefined {
  switch (refusal.code) {
    case 'not-running':
      return 'The clock of the run-in stands; there is nothing to stop.';
    case 'unknown-step':
      return `The run-in has no step ${refusal.step}; it has ${refusal.steps}.`;
    case 'one-answer':
      return `${refusal.what.replaceAll('-', ' ')}: ${refusal.what === 'load-words' ? 'say the load in words' : 'key in what the gauge reads'}.`;
    case 'number-out-of-range':
      return `${refusal.what}: ${refusal.given} cannot be; ${refusal.valid} is valid.`;
    case 'dry-first':
      return `Cylinder ${refusal.cylinder}: read it dry first; a wet reading is held against the dry one.`;
    case 'holds-more':
      return `A cylinder cannot hold ${refusal.held} of a supply of ${refusal.supply}; are the two exchanged?`;
    case 'never-due':
      return `${refusal.what}: say at which running hours or on which day it is due.`;
    case 'unknown-service':
      return `"${refusal.what}" was not planned; there is ${refusal.valid.length === 0 ? 'nothing planned yet' : list(refusal.valid)}.`;
    case 'hours-back':
      return `${refusal.given} h is less than the ${refusal.noted} h noted before; strike that out first if it was wrong.`;
    default:
      return undefined;
  }
}

function generalWords(refusal: Refusal): string {
  switch (refusal.code) {
    case 'no-sheet':
      return 'This job has no engine sheet yet.';
    case 'reason-needed':
      return 'Say why; a reason is needed here.';
    case 'unknown-joint':
      return `No joint ${refusal.joint}; the sheet has ${list(refusal.valid)}.`;
    case 'unknown-head':
      return `No head ${refusal.head}; the sheet has ${list(refusal.valid)}.`;
    case 'unknown-item':
      return `Nothing called ${refusal.item} to check; there is ${list(refusal.valid)}.`;
    case 'photo-too-large':
      return `This picture has ${Math.ceil(refusal.bytes / 1024 ** 2)} MB; at most ${refusal.most / 1024 ** 2} MB are kept.`;
    case 'unknown-entry':
      return 'That entry is not in this record.';
    default:
      return `Not recorded: ${refusal.code.replaceAll('-', ' ')}.`;
  }
}

/** One line for a refusal of the record. */
export function refusalWords(engine: Engine, refusal: Refusal): string {
  return (
    fastenerWords(refusal) ??
    walkWords(refusal) ??
    partWords(engine, refusal) ??
    measuringWords(engine, refusal) ??
    combinationWords(refusal) ??
    runningWords(refusal) ??
    generalWords(refusal)
  );
}
