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
  const views = REOPENING_RULES.flatMap((rule) => viewOf(plan, rule));
  told.set(plan, views);
  return views;
}

function viewOf(plan: WorkPlan, { id, title, because, at }: ReopeningRule): readonly ReopeningView[] {
  const view = { rule: id, title, because };
  const touches = (place?: string) => reopenedBy(plan, { rule: id, why: '', ...(place !== undefined && { place }) }).ok;
  if (at === 'engine') return touches() ? [{ ...view, places: [] }] : [];
  const places = placesIn(plan, at).filter((place) => touches(place.id));
  return places.length === 0 ? [] : [{ ...view, places: places.map((place) => ({ id: place.id, name: place.name })) }];
}

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
