import { done, type Outcome, refused } from '../../quantity/outcome.js';
import { SIGNED_OFF } from './build-plan.js';
import type { WorkFactData } from './facts.js';
import type { WorkAct, WorkPlace, WorkPlan } from './model.js';
import { linked } from './places.js';
import { DONE_AGAIN, REOPENING_RULES, type ReopeningRule, type Root } from './reopenings/index.js';

export type ReopeningRefusal =
  | { readonly code: 'no-such-reopening'; readonly given: string }
  | {
      readonly code: 'reopening-needs-place';
      readonly kind: ReopeningRule['at'] | 'act';
      readonly valid: readonly string[];
    }
  | { readonly code: 'nothing-to-reopen'; readonly rule: string };
export interface Reopened {
  readonly title: string;
  readonly because: string;
  /** What the finding itself makes open, and all that was built on it; in the order of the plan. */
  readonly acts: readonly string[];
}

/**
 * What a finding makes open again: the roots of its rule at that place, and everything that is built on them, however far. What is
 * only ordered after them, and what touches another place, stays as it is; the signature never does. Refuses an unknown rule, a place
 * that the rule does not fit, and a finding that touches nothing of this engine.
 */
export function reopenedBy(plan: WorkPlan, fact: WorkFactData['work-reopened']): Outcome<Reopened, ReopeningRefusal> {
  if (fact.rule === DONE_AGAIN) return doneAgain(plan, fact.place);
  const rule = REOPENING_RULES.find(({ id }) => id === fact.rule);
  if (rule === undefined) return refused({ code: 'no-such-reopening', given: fact.rule });
  const place = placeOf(plan, rule, fact.place);
  if (!place.ok) return place;
  const roots = rule.roots.flatMap((root) => actsOfRoot(plan, root, place.value)).map(({ id }) => id);
  if (roots.length === 0) return refused({ code: 'nothing-to-reopen', rule: rule.id });
  return done({ title: rule.title, because: rule.because, acts: builtOn(plan, roots) });
}

function doneAgain(plan: WorkPlan, act: string | undefined): Outcome<Reopened, ReopeningRefusal> {
  if (act === undefined || !plan.byId.has(act))
    return refused({ code: 'reopening-needs-place', kind: 'act', valid: [...plan.byId.keys()] });
  return done({ title: 'An act is done again', because: 'the person wants it so', acts: builtOn(plan, [act]) });
}

function placeOf(plan: WorkPlan, { at }: ReopeningRule, given?: string): Outcome<WorkPlace, ReopeningRefusal> {
  const places = placesIn(plan, at);
  const place = at === 'engine' ? places[0] : places.find(({ id }) => id === given);
  if (place === undefined)
    return refused({ code: 'reopening-needs-place', kind: at, valid: places.map(({ id }) => id) });
  return done(place);
}

/** The places of a kind that the plan has, each once. */
export function placesIn(plan: WorkPlan, kind: WorkPlace['kind']): readonly WorkPlace[] {
  const places = plan.acts.map(({ place }) => place).filter((place) => place.kind === kind);
  return [...new Map(places.map((place) => [place.id, place])).values()];
}

function actsOfRoot(plan: WorkPlan, root: Root, place: WorkPlace): readonly WorkAct[] {
  return plan.acts.filter((act) => isRoot(act, root) && linked(act.place, place));
}
function isRoot(act: WorkAct, root: Root): boolean {
  if (typeof root === 'string') return act.rule === root;
  return act.subject?.kind === 'worksheet' && root.worksheets.includes(act.subject.feature);
}

/** These acts and all that is built on them, in the order of the plan. */
export function builtOn(plan: WorkPlan, roots: readonly string[]): readonly string[] {
  const found = new Set([...roots, SIGNED_OFF]);
  const open = [...roots];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    for (const { to, kind } of plan.after.get(id) ?? []) {
      if (kind !== 'built-on' || found.has(to)) continue;
      found.add(to);
      open.push(to);
    }
  }
  return plan.acts.map(({ id }) => id).filter((id) => found.has(id));
}
