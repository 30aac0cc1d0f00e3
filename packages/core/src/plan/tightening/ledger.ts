/**
 * What the facts say about one joint since it was last opened: which fastener is in which hole, which acts are recorded
 * for it, which stages have gone round again. Facts that do not fit the sheet are left out, never guessed at.
 */
import type { Joint } from '../../engine/model.js';
import type { ActStruck, Fact, FactData } from '../facts.js';
import { type Act, actKey, skipName, tighteningActs, type VisitingOrder, WHOLE_JOINT } from './acts.js';
import { type Aftermath, afterLateRecord, afterStrike, isVoided, turnedTwice } from './doubts.js';
import type { ActDone, Ended, OutWhy, Placed, RecordedAct, Voided } from './recorded.js';

export type { ActDone, Ended, FastenerPlaced, OutWhy, RecordedAct } from './recorded.js';

export interface Ledger {
  readonly joint: Joint;
  readonly order: VisitingOrder;
  readonly acts: readonly Act[];
  readonly recorded: readonly RecordedAct[];
  readonly skipped: ReadonlyMap<string, string>;
  /** Highest instance that each hole had before the joint was last opened. */
  readonly before: ReadonlyMap<string, number>;
  /** Holes whose fastener had been turned before the joint was last opened. */
  readonly turnedBefore: ReadonlySet<string>;
  readonly placed: ReadonlyMap<string, Placed>;
  readonly ended: readonly Ended[];
  readonly rounds: ReadonlyMap<number, number>;
  /** Acts whose record was struck out and whose paint mark nobody has looked at since, as `stage/hole#instance`. */
  readonly struck: ReadonlySet<string>;
  readonly voided: readonly Voided[];
}

export const instanceKey = (key: string, instance: number): string => `${key}#${instance}`;

interface Open {
  recorded: RecordedAct[];
  skipped: Map<string, string>;
  placed: Map<string, Placed>;
  ended: Ended[];
  rounds: Map<number, number>;
  struck: Set<string>;
  voided: Voided[];
  /** Highest instance named by any fact, in each hole, over all openings. */
  highest: Map<string, number>;
  before: Map<string, number>;
  turnedBefore: Set<string>;
}

const nothingYet = (): Open => ({
  recorded: [],
  skipped: new Map(),
  placed: new Map(),
  ended: [],
  rounds: new Map(),
  struck: new Set(),
  voided: [],
  highest: new Map(),
  before: new Map(),
  turnedBefore: new Set(),
});

/** Folds the facts of one joint; facts of other joints pass by. */
export function foldJoint(joint: Joint, facts: readonly Fact[]): Ledger {
  const { order, acts } = tighteningActs(joint);
  const named = new Map(acts.map((act) => [actKey(act), act]));
  const holes = new Set(joint.holes.map((hole) => hole.id));
  const skips = new Map(acts.map((act) => [skipName(joint.id, act), actKey(act)]));
  const open = nothingYet();
  facts.forEach((fact, at) => {
    if (fact.kind === 'skipped') {
      const key = skips.get(fact.data.what);
      if (key !== undefined) open.skipped.set(key, fact.data.reason);
    } else if ('joint' in fact.data && fact.data.joint === joint.id) {
      takeIn(open, fact, at, named, holes);
    }
  });
  return { joint, order, acts, ...open };
}

function takeIn(open: Open, fact: Fact, at: number, named: ReadonlyMap<string, Act>, holes: ReadonlySet<string>): void {
  switch (fact.kind) {
    case 'fastener-placed':
      if (!holes.has(fact.data.hole)) return;
      raise(open, fact.data);
      open.placed.set(instanceKey(fact.data.hole, fact.data.instance), {
        data: fact.data,
        ...(fact.entry !== undefined && { entry: fact.entry }),
      });
      return;
    case 'act-done': {
      const act = named.get(actKey(fact.data));
      if (act !== undefined) takeInAct(open, act, fact.data, at, fact.entry);
      return;
    }
    case 'fastener-doubted':
      if (!holes.has(fact.data.hole)) return;
      raise(open, fact.data);
      open.ended.push({ ...fact.data, why: 'doubted' });
      return;
    case 'walk-resumed':
      resumed(open, fact.data);
      return;
    case 'act-struck': {
      const act = named.get(actKey(fact.data));
      if (act !== undefined) takeOutAct(open, act, fact.data, at);
      return;
    }
    case 'joint-opened':
      startAfresh(open);
      return;
  }
}

function raise(open: Open, fastener: { readonly hole: string; readonly instance: number }): void {
  open.highest.set(fastener.hole, Math.max(open.highest.get(fastener.hole) ?? 0, fastener.instance));
}

function takeInAct(open: Open, act: Act, data: ActDone, at: number, entry: string | undefined): void {
  if (act.hole !== WHOLE_JOINT) raise(open, data);
  if (turnedTwice(counting(open), act, data)) endOf(open, data, 'twice');
  follow(open, data, at, afterLateRecord(counting(open), act, data.instance));
  open.recorded.push({ act, done: data, at, ...(entry !== undefined && { entry }) });
  const ends = data.seen === 'beyond' || data.seen === 'renewed' ? data.seen : undefined;
  if (ends !== undefined) endOf(open, data, ends);
  if (data.seen === 'stiff') takeCapOff(open, act);
}

/** What binds is looked at before anything is tightened further, so all fasteners of that cap come out. */
function takeCapOff(open: Open, { cap, stage }: Act): void {
  for (const hole of cap?.holes ?? []) {
    endOf(open, { hole, instance: open.highest.get(hole) ?? 1, stage }, 'cap-off');
  }
}

function endOf(open: Open, { hole, instance, stage }: Omit<Ended, 'why'>, why: OutWhy): void {
  open.ended.push({ hole, instance, stage, why });
}

function takeOutAct(open: Open, act: Act, data: ActStruck['data'], at: number): void {
  open.struck.add(instanceKey(actKey(data), data.instance));
  follow(open, data, at, afterStrike(counting(open), act, data.instance));
}

const counting = (open: Open): readonly RecordedAct[] => open.recorded.filter((one) => !isVoided(open.voided, one));

function follow(open: Open, { hole, instance, stage }: ActStruck['data'], at: number, then: Aftermath): void {
  if (then === 'doubted') endOf(open, { hole, instance, stage }, 'doubted');
  if (then === 'again') open.voided.push({ hole, instance, stage, at });
}

function resumed(open: Open, data: FactData['walk-resumed']): void {
  if (data.roundAgain) open.rounds.set(data.stage, (open.rounds.get(data.stage) ?? 1) + 1);
  if (data.mark?.answer === 'clean') open.struck.delete(instanceKey(actKey(data.mark), data.mark.instance));
}

/** The joint was taken apart: what was tightened is no longer so, but instances go on counting. */
function startAfresh(open: Open): void {
  const turned = open.recorded.map((one) => one.act.hole);
  const fresh = nothingYet();
  Object.assign(open, fresh, {
    highest: open.highest,
    before: new Map(open.highest),
    turnedBefore: new Set([...open.turnedBefore, ...turned]),
  });
}
