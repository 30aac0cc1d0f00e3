import { done, type Outcome, refused } from '../../quantity/outcome.js';
import { SIGNED_OFF } from './build-plan.js';
import type { WorkAnswer, WorkFact, WorkFactData } from './facts.js';
import type { AnswerKind, WorkPlan } from './model.js';
import { type ReopeningRefusal, reopenedBy } from './reopening.js';
import { type LookRefusal, lookKind } from './second-look.js';
import { type ActStand, type Blocker, type WorkStanding, workStanding } from './standing.js';

export type WorkRefusal =
  | { readonly code: 'no-such-act'; readonly given: string }
  | { readonly code: 'act-waits'; readonly act: string; readonly waitsFor: readonly Blocker[] }
  | { readonly code: 'already-done'; readonly act: string }
  | { readonly code: 'wrong-answer'; readonly act: string; readonly expected: AnswerKind; readonly given: string }
  | { readonly code: 'nothing-said'; readonly act: string; readonly what: 'answer' | 'figure' | 'reason' | 'words' }
  | { readonly code: 'cannot-skip'; readonly act: string; readonly why: string }
  | { readonly code: 'not-critical'; readonly act: string }
  | { readonly code: 'not-done'; readonly act: string }
  | { readonly code: 'aid-not-out'; readonly aid: string; readonly out: number; readonly given: number }
  | { readonly code: 'aid-not-counted'; readonly aid: string; readonly given: number }
  | { readonly code: 'skips-not-read'; readonly missing: readonly string[] }
  | { readonly code: 'no-such-operation'; readonly given: string; readonly valid: readonly string[] }
  | { readonly code: 'act-exists'; readonly act: string }
  | { readonly code: 'no-length'; readonly minutes: number }
  /** The act that it should precede comes before the one that it should follow. */
  | { readonly code: 'against-the-order'; readonly after: string; readonly before: string }
  | { readonly code: 'critical-already'; readonly act: string }
  | ReopeningRefusal
  | LookRefusal;
type Judged = Outcome<undefined, WorkRefusal>;
const FINE: Judged = done(undefined);

/**
 * Whether this fact may be recorded after those. Refuses an act that waits, that is done already (report what changed first), or is
 * answered otherwise than it asks; a skip without a reason, or of an act that must be done; a second look that does not count; aids that do
 * not add up; a re-opening that the plan does not know; and a signature over skips that were not read.
 */
export function judgeWork(plan: WorkPlan, facts: readonly WorkFact[], fact: WorkFact): Judged {
  const standing = workStanding(plan, facts);
  switch (fact.kind) {
    case 'work-act-done':
      return judgeDone(standing, fact.data);
    case 'work-act-skipped':
      return judgeSkip(standing, fact.data);
    case 'work-reopened':
      return judgeReopening(plan, fact.data);
    case 'second-look':
      return judgeLook(standing, fact);
    case 'mock-up-aid-out':
    case 'mock-up-aid-returned':
      return judgeAid(standing, fact);
    case 'work-begun':
      return judgeBegun(standing, fact.data);
    case 'work-act-added':
      return judgeAdded(plan, fact.data);
    case 'work-act-critical':
      return judgeCritical(standing, fact.data);
    case 'work-left':
      return Object.values(fact.data).every((line) => line.trim() === '')
        ? refused({ code: 'nothing-said', act: 'work-left', what: 'words' })
        : FINE;
    case 'work-resumed':
      return judgeResumed(standing, fact.data);
    case 'work-signed-off':
      return judgeSignature(standing, fact.data);
  }
}

function openAct(standing: WorkStanding, id: string): Outcome<ActStand, WorkRefusal> {
  const stand = standing.stands.get(id);
  if (stand === undefined) return refused({ code: 'no-such-act', given: id });
  if (stand.state === 'done') return refused({ code: 'already-done', act: id });
  if (stand.waitsFor.length > 0) return refused({ code: 'act-waits', act: id, waitsFor: stand.waitsFor });
  return done(stand);
}

function judgeDone(standing: WorkStanding, { act, answer }: WorkFactData['work-act-done']): Judged {
  const stand = openAct(standing, act);
  if (!stand.ok) return stand;
  const expected = stand.value.act.answer;
  if (answer.kind !== expected) return refused({ code: 'wrong-answer', act, expected, given: answer.kind });
  if (wordsOf(answer).trim() === '') return refused({ code: 'nothing-said', act, what: 'answer' });
  if (answer.kind === 'value' && !/\d/.test(answer.text)) return refused({ code: 'nothing-said', act, what: 'figure' });
  return FINE;
}
function wordsOf(answer: WorkAnswer): string {
  if (answer.kind === 'value') return answer.text;
  return answer.kind === 'photo' ? answer.photo : answer.words;
}

function judgeSkip(standing: WorkStanding, { act, reason }: WorkFactData['work-act-skipped']): Judged {
  const stand = openAct(standing, act);
  if (!stand.ok) return stand;
  const { mustDo } = stand.value.act;
  if (mustDo !== undefined) return refused({ code: 'cannot-skip', act, why: mustDo });
  return reason.trim() === '' ? refused({ code: 'nothing-said', act, what: 'reason' }) : FINE;
}

function judgeReopening(plan: WorkPlan, data: WorkFactData['work-reopened']): Judged {
  const reopened = reopenedBy(plan, data);
  if (!reopened.ok) return reopened;
  return data.why.trim() === '' ? refused({ code: 'nothing-said', act: data.rule, what: 'reason' }) : FINE;
}

function judgeLook(standing: WorkStanding, look: Extract<WorkFact, { kind: 'second-look' }>): Judged {
  const id = look.data.act;
  const stand = standing.stands.get(id);
  if (stand === undefined) return refused({ code: 'no-such-act', given: id });
  if (stand.act.critical !== true) return refused({ code: 'not-critical', act: id });
  if (stand.held.done === undefined || stand.foundBad) return refused({ code: 'not-done', act: id });
  const kind = lookKind(stand.held.done, look);
  return kind.ok ? FINE : kind;
}

function judgeAid(
  standing: WorkStanding,
  { kind, data }: Extract<WorkFact, { kind: 'mock-up-aid-out' | 'mock-up-aid-returned' }>,
): Judged {
  const { aid, count } = data;
  if (aid.trim() === '' || !Number.isInteger(count) || count < 1)
    return refused({ code: 'aid-not-counted', aid, given: count });
  const out = standing.aidsOut.get(aid) ?? 0;
  if (kind === 'mock-up-aid-returned' && count > out) return refused({ code: 'aid-not-out', aid, out, given: count });
  return FINE;
}

function judgeBegun({ plan }: WorkStanding, { operation, why }: WorkFactData['work-begun']): Judged {
  const valid = plan.operations.map(({ id }) => id);
  if (!valid.includes(operation)) return refused({ code: 'no-such-operation', given: operation, valid });
  return why.trim() === '' ? refused({ code: 'nothing-said', act: operation, what: 'reason' }) : FINE;
}

function judgeAdded(plan: WorkPlan, data: WorkFactData['work-act-added']): Judged {
  const { id, after, before = SIGNED_OFF, minutes } = data;
  if (plan.byId.has(id)) return refused({ code: 'act-exists', act: id });
  for (const act of [after, before]) if (!plan.byId.has(act)) return refused({ code: 'no-such-act', given: act });
  const place = (act: string) => plan.acts.findIndex((one) => one.id === act);
  if (place(after) >= place(before)) return refused({ code: 'against-the-order', after, before });
  for (const what of ['does', 'ask', 'why'] as const)
    if (data[what].trim() === '')
      return refused({ code: 'nothing-said', act: id, what: what === 'why' ? 'reason' : 'words' });
  return minutes > 0 ? FINE : refused({ code: 'no-length', minutes });
}

function judgeCritical(standing: WorkStanding, { act, why }: WorkFactData['work-act-critical']): Judged {
  const stand = standing.stands.get(act);
  if (stand === undefined || act === SIGNED_OFF) return refused({ code: 'no-such-act', given: act });
  if (stand.act.critical === true) return refused({ code: 'critical-already', act });
  return why.trim() === '' ? refused({ code: 'nothing-said', act, what: 'reason' }) : FINE;
}

/** Only what stands as done can have been touched and found so. */
function judgeResumed({ stands }: WorkStanding, { verified }: WorkFactData['work-resumed']): Judged {
  const strange = verified.find((act) => stands.get(act)?.held.done === undefined);
  return strange === undefined ? FINE : refused({ code: 'not-done', act: strange });
}

function judgeSignature(standing: WorkStanding, { words, skips }: WorkFactData['work-signed-off']): Judged {
  const stand = openAct(standing, SIGNED_OFF);
  if (!stand.ok) return stand;
  const missing = standing.skips.map(({ act }) => act.id).filter((id) => !skips.includes(id));
  if (missing.length > 0) return refused({ code: 'skips-not-read', missing });
  return words.trim() === '' ? refused({ code: 'nothing-said', act: SIGNED_OFF, what: 'words' }) : FINE;
}
