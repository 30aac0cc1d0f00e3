import type { WorkAct, WorkPlan } from './model.js';
import type { ActStand, WorkStanding } from './standing.js';

/** Where a person may stop who begins this act. */
export interface Pause {
  /** False: do not stop right after it, and `words` say why. */
  readonly safeAfter: boolean;
  readonly words: string;
  /** Minutes from here to the next place where one may stop. */
  readonly minutesToSafe: number;
  /** The acts up to there, this one first. */
  readonly run: readonly string[];
}
export type WorkOffer =
  | {
      readonly kind: 'act';
      readonly stand: ActStand;
      readonly pause: Pause;
      /** Whether it, and what has to follow at once, fits in the time there is. */
      readonly fits: boolean;
      readonly awaits?: 'shop' | 'parts';
    }
  | { readonly kind: 'second-look'; readonly stand: ActStand }
  | { readonly kind: 'aid'; readonly aid: string; readonly count: number };

/**
 * What can be done now, in the time there is: acts that wait for nothing, second looks that are owed, aids of the trial to bring back, and what
 * can go on once shop or parts have delivered. Those that fit come first, then those of the operation that is under way, then the order
 * of the plan. Lengths are usual lengths: common practice, no source. Without `minutes` everything fits.
 */
export function offers(standing: WorkStanding, minutes = Number.POSITIVE_INFINITY): readonly WorkOffer[] {
  const here = operationUnderWay(standing);
  const acts = standing.ready.map((stand) => actOffer(standing, stand, minutes));
  const rank = ({ stand, fits }: { stand: ActStand; fits: boolean }) =>
    (fits ? 0 : 2) + (stand.act.operation === here ? 0 : 1);
  const away = [...standing.away.shop, ...standing.away.parts].map((stand) => ({
    ...actOffer(standing, stand, minutes),
    ...(stand.act.awaits && { awaits: stand.act.awaits }),
  }));
  return [
    ...acts.sort((a, b) => rank(a) - rank(b)),
    ...standing.looksOwed.map((stand) => ({ kind: 'second-look' as const, stand })),
    ...[...standing.aidsOut].map(([aid, count]) => ({ kind: 'aid' as const, aid, count })),
    ...away,
  ];
}

function operationUnderWay({ lately, plan }: WorkStanding): string | undefined {
  const last = lately.at(-1);
  return last && plan.byId.get(last.data.act)?.operation;
}

function actOffer(standing: WorkStanding, stand: ActStand, minutes: number): Extract<WorkOffer, { kind: 'act' }> {
  const pause = pauseAfter(standing, stand.act);
  return { kind: 'act', stand, pause, fits: pause.minutesToSafe <= minutes };
}

/** From this act to the next place where one may stop: whatever follows at once, and what that waits for in its own operation. */
function pauseAfter(standing: WorkStanding, act: WorkAct): Pause {
  const run = [...safeRun(standing, act)];
  const minutesToSafe = run.reduce((sum, one) => sum + one.minutes, 0);
  const ids = run.map(({ id }) => id);
  if (act.badPause === undefined)
    return { safeAfter: true, words: 'a good place to stop afterwards', minutesToSafe, run: ids };
  return { safeAfter: false, words: act.badPause, minutesToSafe, run: ids };
}

function safeRun(standing: WorkStanding, first: WorkAct): ReadonlySet<WorkAct> {
  const run = new Set([first]);
  for (const act of run) {
    if (act.badPause === undefined) continue;
    for (const next of nextInOperation(standing.plan, act)) {
      for (const open of openBefore(standing, next)) run.add(open);
      run.add(next);
    }
  }
  return run;
}

const inSame = (plan: WorkPlan, act: WorkAct, ids: readonly string[]) =>
  ids.map((id) => plan.byId.get(id)).filter((one): one is WorkAct => one?.operation === act.operation);

function nextInOperation(plan: WorkPlan, act: WorkAct): readonly WorkAct[] {
  const ids = (plan.after.get(act.id) ?? []).map(({ to }) => to);
  return inSame(plan, act, ids);
}

function openBefore({ plan, stands }: WorkStanding, act: WorkAct): readonly WorkAct[] {
  const ids = (plan.before.get(act.id) ?? []).map(({ from }) => from);
  return inSame(plan, act, ids).filter(({ id }) => !['done', 'skipped'].includes(stands.get(id)?.state ?? ''));
}
