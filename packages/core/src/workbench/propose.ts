/** The one way from a wish of a person to entries of the log: the record's rules, and what only the whole bench can judge. */
import { describeRefusal, neighbourSteps, permittedAt } from '../calc/valve-setting/index.js';
import { sameValve, valveName } from '../engine/index.js';
import {
  type ArrivalReason,
  answerLook,
  answerResume,
  type MarkAnswer,
  registerOf,
  resumeQuestion,
  walk,
} from '../plan/index.js';
import { done, type Outcome, refused } from '../quantity/index.js';
import { type Command, decide, type EntryData, type NewEntry } from '../record/index.js';
import type { Bench } from './bench.js';
import { neighbourWords } from './crank-words.js';
import { measuringRefusal } from './measuring-rules.js';
import { NOT_AGAIN } from './part-choices.js';
import { refusalWords } from './refusal-words.js';
import { timingOf, type ValveChoices } from './valve-timing.js';

export type Proposal = Outcome<readonly NewEntry[], string>;

/**
 * Judges a command: the entries to write (none when the record says it already), or one clear line why not. A valve is
 * refused where the crank stands with its follower off the base circle or too near to it, a reading that cannot be, a decision that is
 * not offered now.
 */
export function propose(bench: Bench, command: Command, choices: ValveChoices = {}): Proposal {
  if (command.kind === 'valve-set') {
    const reason = crankRefusal(bench, command.data, choices);
    if (reason !== undefined) return refused(reason);
  }
  if (command.kind === 'part-fitted') {
    const reason = conditionRefusal(bench, command.data);
    if (reason !== undefined) return refused(reason);
  }
  const measuring = measuringRefusal(bench, command);
  if (measuring !== undefined) return refused(measuring);
  const decision = decide(bench.state, command);
  return decision.ok ? done(decision.value) : refused(refusalWords(bench.engine, decision.fault));
}

function crankRefusal(bench: Bench, data: EntryData['valve-set'], choices: ValveChoices): string | undefined {
  const timing = timingOf(bench.engine, choices);
  if (!timing.ok) return undefined;
  if (data.method === 'neighbour' && data.crankDegrees === undefined) {
    const { cylinder, kind } = data.valve;
    const step = neighbourSteps(timing.value).find((one) => one.cylinder === cylinder && one.valve === kind);
    return step === undefined || step.permitted
      ? undefined
      : `${neighbourWords(step)} It would stand too near to its own lobe.`;
  }
  if (data.crankDegrees === undefined) return undefined;
  const verdict = permittedAt(timing.value, data.crankDegrees);
  const no = verdict.refused.find((one) => one.cylinder === data.valve.cylinder && one.valve === data.valve.kind);
  return no && `${valveName(bench.engine, data.valve)} may not be set here. ${describeRefusal(no)}`;
}

/** A part that was judged as worn when it came out does not go back by a slip of the finger; a new tag is needed first. */
function conditionRefusal(bench: Bench, { part, from, to }: EntryData['part-fitted']): string | undefined {
  if (from === 'new' || !sameValve(from, to)) return undefined;
  const place = registerOf(bench.engine, bench.facts).places.find(
    (one) => one.part === part && sameValve(one.valve, from),
  );
  if (place?.tag?.data.condition !== NOT_AGAIN) return undefined;
  return `The ${part} of ${valveName(bench.engine, from)} was tagged "${NOT_AGAIN}": a new one goes here, or tag it anew.`;
}

export interface ReturnAnswer {
  readonly arrival: ArrivalReason;
  /** Acts touched again, as `stage/hole`. */
  readonly verified: readonly string[];
  readonly mark?: MarkAnswer;
}

/** The entries for the page "You were here"; refused until everything on it was touched. */
export function proposeReturn(bench: Bench, jointId: string, answer: ReturnAnswer): Proposal {
  const joint = bench.engine.joints.find((one) => one.id === jointId);
  const question = joint && resumeQuestion(joint, bench.facts, { why: answer.arrival });
  if (question === undefined) return done([]);
  const facts = answerResume(question, answer);
  if (facts.ok) return done(facts.value);
  return refused(
    facts.fault.code === 'not-all-touched'
      ? `Touch these as well: ${facts.fault.missing.join(', ')}.`
      : `Hole ${facts.fault.hole}: say whether the paint mark is there.`,
  );
}

/** The entries for the answer to "look for the paint mark" after an act was struck out. */
export function proposeLook(bench: Bench, jointId: string, mark: MarkAnswer): Proposal {
  const joint = bench.engine.joints.find((one) => one.id === jointId);
  const offer = joint && walk(joint, bench.facts).current;
  if (joint === undefined || offer?.kind !== 'look') return refused('Nothing here waits for a look at a paint mark.');
  return done(answerLook(joint, offer, mark));
}
