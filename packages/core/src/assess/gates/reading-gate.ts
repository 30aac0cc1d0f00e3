/** The gate through which every keyed figure goes before it is recorded. */
import { describeFault, findUnit, formatQuantity, parseQuantity, type Typed } from '../../quantity/index.js';
import { type Alike, alikeTo } from './alike.js';
import type { GateQuestion, NumberGate } from './model.js';
import { placesFor } from './places.js';
import { slipWords } from './slip-words.js';

interface Judged {
  readonly question: GateQuestion;
  readonly typed: Typed;
  /** Places that such a figure has; those typed where nobody knows. */
  readonly places: number;
  readonly step: number;
}
interface Ends {
  readonly low?: number;
  readonly high?: number;
}
interface Doubt {
  readonly expected: string;
  readonly hint?: string;
}

const shown = ({ question, typed, places }: Judged, value: number): string =>
  formatQuantity(question.measured, value, typed.unit, places);
function windowWords(judged: Judged, { low, high }: Ends): string {
  if (low === undefined) return high === undefined ? 'anything' : `at most ${shown(judged, high)}`;
  return high === undefined ? `at least ${shown(judged, low)}` : `${shown(judged, low)} to ${shown(judged, high)}`;
}
const outside = (value: number, { low, high }: Ends): boolean =>
  (low !== undefined && value < low) || (high !== undefined && value > high);

/** Groups that know enough to be compared with. */
const groupsOf = ({ question, step }: Judged): readonly (Alike & { readonly words: string })[] =>
  question.sisters
    .filter(({ values }) => values.length >= 2)
    .map(({ words, values }) => ({ words, ...alikeTo(values, question.kind, step) }));

/** What the figure should be near to: its sisters, else what such a part usually is. */
function targetOf(judged: Judged): Alike | undefined {
  const [sister] = groupsOf(judged);
  if (sister !== undefined) return sister;
  const { expected } = judged.question;
  if (expected === undefined) return undefined;
  const { low = expected.nominal, high = expected.nominal } = expected.usual;
  return { middle: (low + high) / 2, within: (high - low) / 2 + judged.step };
}
function hintOf(judged: Judged): string | undefined {
  const target = targetOf(judged);
  return target && slipWords(judged.question.measured, judged.typed, target, judged.places);
}

/** Volumes, masses and forces have no sign; a length has one where the part can stand below another. */
function signless({ question, typed }: Judged): boolean {
  if (typed.value >= 0) return false;
  if (['volume', 'mass', 'force'].includes(question.measured)) return true;
  const low = question.expected?.possible.low;
  return low !== undefined && low >= 0;
}

function impossible(judged: Judged): string | undefined {
  const { question, typed } = judged;
  const { gauge, what, expected } = question;
  const own = gauge && findUnit(question.measured, gauge.unit)?.name;
  if (gauge !== undefined && own !== typed.unit) return `${gauge.name} reads ${own}; this is in ${typed.unit}.`;
  if (signless(judged)) return `${typed.text}: ${what} cannot be less than nothing.`;
  if (gauge?.range !== undefined && outside(typed.value, gauge.range))
    return `${typed.text}: ${gauge.name} reads ${windowWords(judged, gauge.range)}.`;
  if (expected !== undefined && outside(typed.value, expected.possible)) {
    const hint = hintOf(judged);
    const line = `${typed.text} cannot be: ${what} is ${windowWords(judged, expected.possible)} (${expected.why}).`;
    return hint === undefined ? line : `${line} Was it ${hint}`;
  }
  return undefined;
}

function unusual(judged: Judged): Doubt | undefined {
  const { expected } = judged.question;
  if (expected === undefined || !outside(judged.typed.value, expected.usual)) return undefined;
  return { expected: `${windowWords(judged, expected.usual)} (${expected.why})` };
}
function unlike(judged: Judged): Doubt | undefined {
  const groups = groupsOf(judged);
  const [first] = groups;
  const like = groups.some(({ middle, within }) => Math.abs(judged.typed.value - middle) <= within);
  if (first === undefined || like) return undefined;
  return { expected: `about ${shown(judged, first.middle)}, as ${first.words}` };
}
function otherPlaces({ question, typed }: Judged): Doubt | undefined {
  const places = placesFor(question, typed);
  if (places === undefined || places === typed.places) return undefined;
  const counted = places === 1 ? '1 decimal place' : `${places === 0 ? 'no' : places} decimal places`;
  return { expected: `${counted}, as ${question.gauge?.name ?? 'the readings before it'}` };
}

/**
 * Judges a keyed figure before it is recorded. Refused: what is no figure of this kind, another unit than the gauge's, what
 * the gauge cannot reach, what such a part cannot be. Asked about once, with what was expected and the slip that would
 * explain it (point, unit, swapped, missing or doubled digit): places that the gauge does not give, a figure outside of what such a
 * part usually is, a figure unlike its sisters. Two sisters are needed; being like one group of them is enough, so that a cylinder
 * worn more than the others is not asked about at each of its readings. Unknown expectations raise no question.
 */
export function readingGate(question: GateQuestion): NumberGate {
  const { measured, text, gauge, decimalMark } = question;
  const read = parseQuantity(measured, text, decimalMark === undefined ? {} : { decimalMark });
  if (!read.ok) return { level: 'impossible', reason: describeFault(read.fault) };
  const typed = read.value;
  const judged: Judged = {
    question,
    typed,
    places: placesFor(question, typed) ?? typed.places,
    step: gauge?.resolution ?? question.step,
  };
  const reason = impossible(judged);
  if (reason !== undefined) return { level: 'impossible', reason };
  const doubts = [unlike(judged), unusual(judged), otherPlaces(judged)].flatMap((one) => one ?? []);
  const [first] = doubts;
  if (first === undefined) return { level: 'fine' };
  const hint = hintOf(judged);
  return { level: 'unlikely', expected: first.expected, ...(hint !== undefined && { hint }) };
}
