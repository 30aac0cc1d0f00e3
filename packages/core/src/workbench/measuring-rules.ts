/** What only the whole bench can judge about readings, work that came back and decisions: plan, gauge, what is offered now. */
import type { Measured } from '../assess/index.js';
import { parseQuantity } from '../quantity/index.js';
import type { Command, EntryData, Reading } from '../record/index.js';
import { assessmentOf } from './assessment.js';
import type { Bench } from './bench.js';
import { isCombination } from './combination/decision.js';
import { decisionsAt } from './decision-view.js';
import { judgeKeyed, type Keying } from './reading-gate.js';
import { slotName, slotsOf } from './slot-names.js';

export const SI_UNITS: Readonly<Record<Measured, Reading['unit']>> = {
  length: 'm',
  volume: 'm3',
  mass: 'kg',
  force: 'N',
  angle: 'rad',
  torque: 'N.m',
};
const MARKS = ['.', ','] as const;

/** The decimal mark by which a text gives its value; undefined where the two say different things. */
function markOf(measured: Measured, { text, value }: Reading): Keying['decimalMark'] | undefined {
  return MARKS.find((decimalMark) => {
    const read = parseQuantity(measured, text, { decimalMark });
    return read.ok && Math.abs(read.value.value - value) <= 1e-12 * Math.max(1, Math.abs(value));
  });
}

function measuredRefusal(bench: Bench, { slot, reading, instrument }: EntryData['measured']): string | undefined {
  const at = slotsOf(bench.engine).get(slot);
  if (at === undefined) return `"${slot}" is nothing to measure on this engine.`;
  const { measured } = at.feature.kind;
  if (reading.unit !== SI_UNITS[measured]) return `${slotName(bench.engine, slot)}: a ${measured} is wanted.`;
  const decimalMark = markOf(measured, reading);
  if (decimalMark === undefined)
    return `${slotName(bench.engine, slot)}: "${reading.text}" is not the value beside it.`;
  const gate = judgeKeyed(bench, slot, reading.text, { decimalMark, ...(instrument !== undefined && { instrument }) });
  return gate.level === 'impossible' ? gate.reason : undefined;
}

function returnedRefusal(bench: Bench, { feature, places }: EntryData['work-returned']): string | undefined {
  const { plan } = assessmentOf(bench);
  const found = plan.features.find((one) => one.kind.id === feature);
  if (found === undefined) return `"${feature}" is nothing to measure on this engine.`;
  const strange = places.find((place) => found.places.every((one) => one.id !== place));
  if (strange === undefined) return undefined;
  return `${found.kind.title} has no place "${strange}"; it has ${found.places.map((one) => one.id).join(', ')}.`;
}

function decidedRefusal(bench: Bench, data: EntryData['decided']): string | undefined {
  // What is tried on the scratch copy is no alternative that this engine offers: the person made it.
  if (isCombination(data)) return undefined;
  const { decision, scope, alternative } = data;
  const offered = decisionsAt(bench, { length: 'mm' }).find((one) => one.id === decision && one.scope === scope);
  if (offered === undefined) return `There is no decision "${decision}" about "${scope}" on this engine.`;
  const chosen = offered.alternatives.find((one) => one.id === alternative);
  if (offered.missing.length > 0) return `${offered.title} cannot be decided yet: ${offered.missing.join('; ')}.`;
  if (chosen === undefined) {
    const valid = offered.alternatives.filter((one) => one.possible).map((one) => one.id);
    return `${offered.title} has no alternative "${alternative}" now; it has ${valid.join(', ')}.`;
  }
  return chosen.possible ? undefined : `${chosen.words} cannot be taken: ${chosen.against.join('; ')}.`;
}

/** One clear line why a command about measuring is not taken, before the record's own rules; undefined where it may pass. */
export function measuringRefusal(bench: Bench, command: Command): string | undefined {
  switch (command.kind) {
    case 'measured':
      return measuredRefusal(bench, command.data);
    case 'work-returned':
      return returnedRefusal(bench, command.data);
    case 'decided':
      return decidedRefusal(bench, command.data);
    default:
      return undefined;
  }
}
