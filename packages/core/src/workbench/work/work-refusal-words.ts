import { ALONE_AFTER_MINUTES, type Blocker, type WorkPlan, type WorkRefusal } from '../../plan/index.js';
import { actWords } from './act-words.js';

const nameOf = (plan: WorkPlan, id: string): string => {
  const act = plan.byId.get(id);
  return act === undefined ? `“${id}”` : `“${actWords(act)}”`;
};
const SHOWN = 3;
/** The first names of a list, and how many more there are. */
const some = (names: readonly string[]) =>
  `${names.slice(0, SHOWN).join(', ')}${names.length > SHOWN ? ` and ${names.length - SHOWN} more` : ''}`;

const blockerWords = (plan: WorkPlan, blocker: Blocker): string =>
  blocker.kind === 'aid'
    ? `${blocker.count} × ${blocker.aid} (${blocker.why})`
    : `${nameOf(plan, blocker.act)} (${blocker.why})`;

const ANSWERS = {
  value: 'a figure with its unit',
  'felt-or-seen': 'what was felt or seen, and whether it is good',
  photo: 'a photo',
  worksheet: 'its worksheet',
  'joint-walk': 'the tightening of its joint',
  register: 'position, end and face',
  list: 'names or numbers',
  'sign-off': 'a signature',
} as const;
const NOTHING = {
  answer: 'say what was found.',
  figure: 'a figure is wanted, with its unit.',
  reason: 'a reason is needed.',
  words: 'a few words are needed.',
} as const;

/** Why something about the work is not recorded: one line, with what is valid. */
export function workRefusalWords(plan: WorkPlan, fault: WorkRefusal): string {
  switch (fault.code) {
    case 'no-such-act':
      return `This engine's work has no act ${nameOf(plan, fault.given)}.`;
    case 'act-waits':
      return `${nameOf(plan, fault.act)} waits for ${some(fault.waitsFor.map((one) => blockerWords(plan, one)))}.`;
    case 'already-done':
      return `${nameOf(plan, fault.act)} is recorded already: say first what has changed, or do it again with a reason.`;
    case 'wrong-answer':
      return `${nameOf(plan, fault.act)} asks for ${ANSWERS[fault.expected]}.`;
    case 'nothing-said':
      return `${plan.byId.has(fault.act) ? `${nameOf(plan, fault.act)}: ` : ''}${NOTHING[fault.what]}`;
    case 'cannot-skip':
      return `${nameOf(plan, fault.act)} cannot be left out: ${fault.why}.`;
    case 'not-critical':
      return `${nameOf(plan, fault.act)} owes no second look; hold it for critical first.`;
    case 'not-done':
      return `${nameOf(plan, fault.act)} does not stand as done and good.`;
    case 'aid-not-out':
      return `${fault.given} × ${fault.aid} cannot come back: ${fault.out} is out.`;
    case 'aid-not-counted':
      return 'Name the aid, and count it in whole numbers from 1.';
    case 'skips-not-read':
      return `Read what was left out before you sign: ${some(fault.missing.map((id) => nameOf(plan, id)))}.`;
    case 'no-such-operation':
      return `This engine's work has no operation “${fault.given}”; it has ${some(fault.valid)}.`;
    case 'act-exists':
      return `The plan has an act “${fault.act}” already.`;
    case 'no-length':
      return `An act takes some minutes; ${fault.minutes} was given.`;
    case 'against-the-order':
      return `${nameOf(plan, fault.before)} comes before ${nameOf(plan, fault.after)}: nothing fits between them.`;
    case 'critical-already':
      return `${nameOf(plan, fault.act)} is held for critical already.`;
    case 'no-such-reopening':
      return `Nothing is known of a finding “${fault.given}”.`;
    case 'reopening-needs-place':
      return fault.valid.length === 0 ? 'This engine has no such place.' : `Say where: ${some(fault.valid)}.`;
    case 'nothing-to-reopen':
      return 'That touches nothing of this engine.';
    case 'nobody-looked':
      return 'Say who looked.';
    case 'no-method':
      return 'Say how it was looked at.';
    case 'nothing-seen':
      return 'Say what was seen.';
    case 'same-method':
      return `Alone, the second look needs another method than “${fault.method}”.`;
    case 'too-soon':
      return `Alone, the second look comes at least ${ALONE_AFTER_MINUTES} minutes later; ${minutesWords(fault.minutes)} have passed.`;
    case 'no-time':
      return `The times of the act and of the look cannot be read: ${fault.given}.`;
  }
}
const minutesWords = (minutes: number) => `${Math.max(0, Math.floor(minutes))}`;
