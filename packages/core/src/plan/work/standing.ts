import { criticalBefore } from './ancestors.js';
import type { WorkFact } from './facts.js';
import { type Folded, foldWork, type Held, type Left, type OpenAgain, type Resumed } from './fold.js';
import type { WorkAct, WorkPlan } from './model.js';

/** What an act waits for. */
export type Blocker =
  | { readonly kind: 'act'; readonly act: string; readonly why: string }
  | { readonly kind: 'second-look'; readonly act: string; readonly why: string }
  | { readonly kind: 'aid'; readonly aid: string; readonly count: number; readonly why: string };
/** `away`: nothing hinders it but the shop, or parts that have not come. */
export type ActState = 'done' | 'skipped' | 'ready' | 'away' | 'waiting';
export interface ActStand {
  readonly act: WorkAct;
  readonly state: ActState;
  readonly held: Held;
  /** Done, and found bad: it is open until it is good, or left so with a reason. */
  readonly foundBad: boolean;
  readonly again?: OpenAgain;
  readonly waitsFor: readonly Blocker[];
  /** Of a critical act that is done. */
  readonly look?: 'owed' | 'independent' | 'alone';
}
export interface OpenSkip {
  readonly act: WorkAct;
  readonly reason: string;
  readonly by: string;
}
export interface WorkStanding {
  readonly plan: WorkPlan;
  readonly stands: ReadonlyMap<string, ActStand>;
  readonly done: readonly ActStand[];
  readonly ready: readonly ActStand[];
  readonly waiting: readonly ActStand[];
  readonly away: { readonly shop: readonly ActStand[]; readonly parts: readonly ActStand[] };
  readonly skips: readonly OpenSkip[];
  readonly looksOwed: readonly ActStand[];
  readonly aidsOut: ReadonlyMap<string, number>;
  readonly reopened: readonly ActStand[];
  readonly lately: Folded['lately'];
  /** What the record names and this plan has not. */
  readonly unknown: readonly string[];
  readonly left?: Left;
  readonly resumed?: Resumed;
  readonly signedOff: boolean;
}

/**
 * How the work stands after these facts: what is done, what can start, what waits and for which acts, looks or aids, what is away at the shop or
 * not yet delivered, what was skipped, and what a finding opened again.
 *
 * An act waits until every act before it is done and good, or skipped with a reason. An act that closes something also waits for the second
 * looks at all critical acts behind it, and for every aid of the trial that is still out.
 */
export function workStanding(plan: WorkPlan, facts: readonly WorkFact[]): WorkStanding {
  const folded = foldWork(plan, facts);
  const stands = new Map(plan.acts.map((act) => [act.id, standOf(plan, folded, act)]));
  const all = [...stands.values()];
  const of = (state: ActState) => all.filter((one) => one.state === state);
  const away = of('away');
  return {
    plan,
    stands,
    done: of('done'),
    ready: of('ready'),
    waiting: of('waiting'),
    away: {
      shop: away.filter(({ act }) => act.awaits === 'shop'),
      parts: away.filter(({ act }) => act.awaits === 'parts'),
    },
    skips: all.flatMap(({ act, held: { skipped } }) =>
      skipped === undefined ? [] : [{ act, reason: skipped.data.reason, by: skipped.by }],
    ),
    looksOwed: all.filter(({ look }) => look === 'owed'),
    aidsOut: folded.aids,
    reopened: all.filter(({ again }) => again !== undefined),
    lately: folded.lately,
    unknown: folded.unknown,
    ...(folded.left && { left: folded.left }),
    ...(folded.resumed && { resumed: folded.resumed }),
    signedOff: all.at(-1)?.held.signed !== undefined,
  };
}

const NOTHING: Held = {};
const resultOf = ({ done }: Held) => (done === undefined ? undefined : (done.data.answer.result ?? 'good'));
const settled = (held: Held = NOTHING) =>
  resultOf(held) === 'good' || held.skipped !== undefined || held.signed !== undefined;
const lookAt = (act: WorkAct, held: Held): ActStand['look'] =>
  act.critical === true && resultOf(held) === 'good' ? (held.look?.kind ?? 'owed') : undefined;

function standOf(plan: WorkPlan, folded: Folded, act: WorkAct): ActStand {
  const held = folded.held.get(act.id) ?? NOTHING;
  const waitsFor = settled(held) ? [] : blockers(plan, folded, act);
  const look = lookAt(act, held);
  return {
    act,
    held,
    state: stateOf(act, held, waitsFor),
    foundBad: resultOf(held) === 'bad',
    waitsFor,
    ...(held.again && { again: held.again }),
    ...(look && { look }),
  };
}

function stateOf(act: WorkAct, held: Held, waitsFor: readonly Blocker[]): ActState {
  if (held.skipped !== undefined) return 'skipped';
  if (settled(held)) return 'done';
  if (waitsFor.length > 0) return 'waiting';
  return act.awaits === undefined ? 'ready' : 'away';
}

function blockers(plan: WorkPlan, folded: Folded, act: WorkAct): readonly Blocker[] {
  const acts = (plan.before.get(act.id) ?? [])
    .filter(({ from }) => !settled(folded.held.get(from)))
    .map(({ from, why }): Blocker => ({ kind: 'act', act: from, why }));
  if (act.closes !== true) return acts;
  return [...acts, ...looksBehind(plan, folded, act), ...aidsOut(folded)];
}

function looksBehind(plan: WorkPlan, { held }: Folded, act: WorkAct): readonly Blocker[] {
  return criticalBefore(plan, act.id)
    .filter((one) => lookAt(one, held.get(one.id) ?? NOTHING) === 'owed')
    .map(({ id }) => ({ kind: 'second-look', act: id, why: 'a second look is owed before this closes on it' }));
}

function aidsOut({ aids }: Folded): readonly Blocker[] {
  return [...aids].map(([aid, count]) => ({ kind: 'aid', aid, count, why: 'it may still be inside' }));
}
