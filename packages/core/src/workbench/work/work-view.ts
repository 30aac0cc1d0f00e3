/** The whole work of an engine: what can be done now, what waits, what is away, what came open again, and every operation. */
import type { ActStand } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import type { AidView, WorkActView, WorkView } from '../work-views.js';
import { viewOfStand } from './act-view.js';
import { leftView } from './left-view.js';
import { phaseViews } from './operation-view.js';
import { type Ground, groundOf } from './work-ground.js';
import { type ActOffer, actOffers, offerView } from './work-offers.js';
import { progressOf } from './work-progress.js';

export interface WorkAsked {
  /** The time that there is; without it everything fits. */
  readonly minutes?: number;
  readonly shown?: ShownIn;
}

/** Kinds of acts that one operation shows under "now". */
const MOST = 12;

/**
 * The work as a whole. What waits for nothing is grouped by operation, and what is the same act at many places is one offer: the first
 * place, with the number of the others. A joint that is half tightened comes before everything.
 */
export function workView(bench: Bench, { minutes, shown }: WorkAsked = {}): WorkView {
  const ground = groundOf(bench, shown);
  const { plan, standing } = ground;
  const views = (stands: readonly ActStand[]) => stands.map((stand) => viewOfStand(ground, stand));
  const left = leftView(standing);
  return {
    title: 'The whole work',
    progress: progressOf([...standing.stands.values()]),
    now: nowOf(ground, actOffers(ground, minutes)),
    looks: views(standing.looksOwed),
    aids: aidViews(ground),
    away: { shop: views(standing.away.shop), parts: views(standing.away.parts) },
    reopened: views(standing.reopened),
    skips: skipped(ground),
    phases: phaseViews(ground),
    assumptions: plan.assumptions,
    unknown: standing.unknown,
    ...(left && { left }),
    signedOff: standing.signedOff,
  };
}

function nowOf(ground: Ground, offers: readonly ActOffer[]): WorkView['now'] {
  return [...grouped(offers, ({ stand }) => stand.act.operation)].map(([operation, own]) => {
    const kinds = [...grouped(own, kindOf).values()];
    const more = kinds.length - MOST;
    return {
      operation,
      operationTitle: ground.plan.operations.find(({ id }) => id === operation)?.title ?? operation,
      offers: kinds.slice(0, MOST).map((same) => offerView(ground, same[0]!, same.length - 1)),
      ...(more > 0 && { more }),
    };
  });
}

/** Worksheets are told apart by what they measure, everything else by its rule; a half tightened joint stands alone. */
function kindOf({ stand: { act }, underWay }: ActOffer): string {
  if (underWay !== undefined) return act.id;
  return act.subject?.kind === 'worksheet' ? `${act.rule} ${act.subject.feature}` : act.rule;
}

function grouped<T>(all: readonly T[], key: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const group = groups.get(key(one));
    if (group === undefined) groups.set(key(one), [one]);
    else group.push(one);
  }
  return groups;
}

/** Aids of the trial that are still out, and where they were put last. */
function aidViews({ standing, facts }: Ground): readonly AidView[] {
  return [...standing.aidsOut].map(([aid, count]) => {
    const out = facts.findLast((fact) => fact.kind === 'mock-up-aid-out' && fact.data.aid === aid);
    return { aid, count, where: out?.kind === 'mock-up-aid-out' ? out.data.where : '' };
  });
}

function skipped(ground: Ground): readonly WorkActView[] {
  return [...ground.standing.stands.values()]
    .filter(({ state }) => state === 'skipped')
    .map((stand) => viewOfStand(ground, stand));
}
