/** "Something changed": findings that open acts again, and what each would open. */
import { placesIn, REOPENING_RULES, type ReopeningRule, reopenedBy, type WorkPlan } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { ReopenedPreview, ReopeningView } from '../work-views.js';
import { groundOf } from './work-ground.js';

/** A plan does not change: what can change about its engine is told once. */
const told = new WeakMap<WorkPlan, readonly ReopeningView[]>();

/** Findings that touch something of this engine, with the places at which they can be made. */
export function reopeningViews(bench: Bench): readonly ReopeningView[] {
  const { plan } = groundOf(bench);
  const known = told.get(plan);
  if (known !== undefined) return known;
  const has = hasOf(plan);
  const views = REOPENING_RULES.flatMap((rule) => viewOf(plan, rule, has));
  told.set(plan, views);
  return views;
}

function viewOf(plan: WorkPlan, rule: ReopeningRule, has: Has): readonly ReopeningView[] {
  const { id, title, because, at } = rule;
  if (!rule.roots.some((root) => touches(root, has))) return [];
  if (at === 'engine') return [{ rule: id, title, because, places: [] }];
  const places = placesIn(plan, at).map((place) => ({ id: place.id, name: place.name }));
  return places.length === 0 ? [] : [{ rule: id, title, because, places }];
}

/** What the plan has acts of: rules, and features that are read. */
interface Has {
  readonly rules: ReadonlySet<string>;
  readonly features: ReadonlySet<string>;
}
function hasOf({ acts }: WorkPlan): Has {
  const features = acts.flatMap(({ subject }) => (subject?.kind === 'worksheet' ? [subject.feature] : []));
  return { rules: new Set(acts.map(({ rule }) => rule)), features: new Set(features) };
}
const touches = (root: ReopeningRule['roots'][number], { rules, features }: Has): boolean =>
  typeof root === 'string' ? rules.has(root) : root.worksheets.some((feature) => features.has(feature));

/**
 * What was finished and would be open again, before anything is recorded. `rule` may be `done-again` with an act as its place. Undefined for a
 * finding, or a place, that the plan does not know.
 */
export function reopenedPreview(bench: Bench, rule: string, place?: string): ReopenedPreview | undefined {
  const { plan, standing } = groundOf(bench);
  const reopened = reopenedBy(plan, { rule, why: '', ...(place !== undefined && { place }) });
  if (!reopened.ok) return undefined;
  const acts = reopened.value.acts.flatMap((id) => {
    const stand = standing.stands.get(id);
    return stand?.state === 'done' || stand?.state === 'skipped' ? [stand.act] : [];
  });
  return {
    words: previewWords(acts.length),
    acts: acts.map(({ id, does, place: at }) => ({ id, does, place: at.name })),
  };
}

function previewWords(count: number): string {
  if (count === 0) return 'Nothing that is finished rests on it: nothing is open again.';
  return count === 1 ? 'One finished act is open again.' : `${count} finished acts are open again.`;
}
