/**
 * Acts that another part of the record finishes: worksheets, joints, valves, gaskets, fasteners by hole, parts by place. Each is done at the entry that
 * completed it, so that what was opened again later stands after it.
 */
import { sameValve, type ValveId, valveKey } from '../../engine/index.js';
import {
  type Fact,
  fastenerMap,
  gasketChecks,
  type PartKind,
  partsOf,
  type Subject,
  type WorkAct,
  type WorkPlan,
  walk,
} from '../../plan/index.js';
import type { KnownData } from '../../record/index.js';
import type { Bench } from '../bench.js';
import { slotsOf } from '../slot-names.js';
import type { FinishedElsewhere } from './finished-act.js';
import { RUNNING_RULES, type RunningPart, runningFinished } from './finished-running.js';

/** What answers an act without anything being typed here. */
export type AnsweredBy = Subject['kind'] | 'gasket' | 'fasteners' | 'parts' | 'valve-again' | RunningPart;
const BY_RULE: Readonly<Record<string, AnsweredBy>> = {
  'gasket-held-up': 'gasket',
  'deck-dry': 'gasket',
  'head-bolts-laid-out': 'fasteners',
  'valve-gear-tagged': 'parts',
  'follower-in': 'parts',
  'pushrod-in': 'parts',
  'valve-read-again': 'valve-again',
  ...RUNNING_RULES,
};

/** Which part of the record finishes this act on this engine; undefined where the person answers it here. */
export function answeredBy({ engine }: Bench, act: WorkAct): AnsweredBy | undefined {
  if (act.subject !== undefined) return act.subject.kind;
  const by = BY_RULE[act.rule];
  switch (by) {
    case 'gasket':
      return engine.heads.some(({ id }) => id === act.place.id) ? by : undefined;
    case 'fasteners':
      return jointsAt(engine, act.place.id).length > 0 ? by : undefined;
    case 'parts':
      return partsOf(engine).length > 0 && act.place.valve !== undefined ? by : undefined;
    case 'valve-again':
    case 'oil':
      return act.place.valve === undefined ? undefined : by;
    case 'start':
    case 'run-in':
    case 'cylinder-tests':
      return by;
    default:
      return undefined;
  }
}
const jointsAt = ({ joints }: Bench['engine'], head: string) => joints.filter((joint) => joint.head === head);

/** All that is finished elsewhere, by the entry that finished it. */
export function finishedElsewhere(bench: Bench, plan: WorkPlan): ReadonlyMap<string, readonly FinishedElsewhere[]> {
  const found = [
    ...worksheets(bench, plan),
    ...plan.acts.flatMap((act) => finished(bench, act)),
    ...valvesAndParts(bench, plan),
    ...runningFinished(bench, plan),
  ];
  const byEntry = new Map<string, FinishedElsewhere[]>();
  for (const one of found) byEntry.set(one.entry, [...(byEntry.get(one.entry) ?? []), one]);
  return byEntry;
}

/** Joints, gasket checks and fastener maps: judged as a whole, and done at their last entry. */
function finished(bench: Bench, act: WorkAct): readonly FinishedElsewhere[] {
  switch (answeredBy(bench, act)) {
    case 'joint':
      return act.subject?.kind === 'joint' ? jointFinished(bench, act, act.subject.joint) : [];
    case 'gasket':
      return gasketFinished(bench, act);
    case 'fasteners':
      return fastenersPlaced(bench, act);
    default:
      return [];
  }
}

const lastEntry = (facts: readonly Fact[], is: (fact: Fact) => boolean) => facts.findLast(is)?.entry;

/** A joint is finished once, or again after each time that it was opened. */
function jointFinished(bench: Bench, act: WorkAct, id: string): readonly FinishedElsewhere[] {
  const joint = bench.engine.joints.find((one) => one.id === id);
  if (joint === undefined) return [];
  const { facts } = bench;
  const ends = facts.flatMap((fact, at) => (fact.kind === 'joint-opened' && fact.data.joint === id ? [at] : []));
  return [...ends, facts.length].flatMap((end) => {
    const until = facts.slice(0, end);
    const entry = lastEntry(until, (fact) => isActOf(id, fact));
    if (entry === undefined) return [];
    const { finished, skipped, progress } = walk(joint, until);
    if (!finished) return [];
    const left = skipped.length === 0 ? '' : `; ${skipped.length} left out with a reason`;
    return [{ act, entry, words: `${progress.done} of ${progress.acts} acts recorded${left}`, result: 'good' }];
  });
}
const isActOf = (joint: string, fact: Fact): boolean =>
  (fact.kind === 'act-done' && fact.data.joint === joint) ||
  (fact.kind === 'skipped' && fact.data.what.startsWith(`act:${joint}/`));

function gasketFinished(bench: Bench, act: WorkAct): readonly FinishedElsewhere[] {
  const head = act.place.id;
  const entry = lastEntry(bench.facts, (fact) => fact.kind === 'gasket-checked' && fact.data.head === head);
  const checks = entry === undefined ? undefined : gasketChecks(bench.engine, head, bench.facts);
  if (entry === undefined || checks?.finished !== true) return [];
  return [{ act, entry, words: `${checks.items.length} of ${checks.items.length} checks good`, result: 'good' }];
}

function fastenersPlaced(bench: Bench, act: WorkAct): readonly FinishedElsewhere[] {
  const joints = jointsAt(bench.engine, act.place.id);
  const ids = joints.map(({ id }) => id);
  const entry = lastEntry(bench.facts, (fact) => fact.kind === 'fastener-placed' && ids.includes(fact.data.joint));
  if (entry === undefined) return [];
  const maps = joints.map((joint) => fastenerMap(joint, bench.facts));
  if (!maps.every((map) => map.finished)) return [];
  const placed = maps.reduce((sum, map) => sum + map.placed, 0);
  return [{ act, entry, words: `${placed} fasteners in their holes`, result: 'good' }];
}

/** A worksheet's place is done with the reading that leaves none of it open; back from work it is open until it is read again. */
function worksheets({ engine, state }: Bench, plan: WorkPlan): readonly FinishedElsewhere[] {
  const acts = new Map(plan.acts.filter(({ place }) => place.kind === 'worksheet').map((act) => [act.place.id, act]));
  const slots = slotsOf(engine);
  const open = new Map<string, Set<string>>();
  const found: FinishedElsewhere[] = [];
  for (const { entry, reading, struck } of state.entries) {
    if (struck !== undefined || !reading.understood) continue;
    const { known } = reading;
    if (known.kind === 'work-returned')
      for (const place of known.data.places) open.delete(`${known.data.feature}/${place}`);
    if (known.kind !== 'measured') continue;
    const slot = slots.get(known.data.slot);
    if (slot === undefined) continue;
    const key = `${slot.feature.kind.id}/${slot.place.id}`;
    const left = open.get(key) ?? new Set(slot.place.stations.map(({ id }) => `${key}/${id}`));
    open.set(key, left);
    left.delete(slot.slot);
    const act = acts.get(key);
    if (left.size > 0 || act === undefined) continue;
    const { length } = slot.place.stations;
    found.push({ act, entry: entry.id, words: `${length} of ${length} read`, result: 'good' });
  }
  return found;
}

/** Valves set and read again, parts tagged and fitted: each at its own entry. */
function valvesAndParts(bench: Bench, plan: WorkPlan): readonly FinishedElsewhere[] {
  const parts = partsOf(bench.engine);
  const tagged = new Map<string, Set<PartKind>>();
  return bench.state.entries.flatMap(({ entry, reading, struck }) => {
    if (struck !== undefined || !reading.understood) return [];
    return answersOf(reading.known, parts, tagged).flatMap(({ rule, valve, words, result = 'good' }) => {
      const act = plan.byId.get(`${rule}@${valveKey(valve)}`);
      const by = act && answeredBy(bench, act);
      return act !== undefined && by !== undefined ? [{ act, entry: entry.id, words, result }] : [];
    });
  });
}

interface AtValve {
  readonly rule: string;
  readonly valve: ValveId;
  readonly words: string;
  readonly result?: 'good' | 'bad';
}
const FITTED: Readonly<Partial<Record<PartKind, string>>> = {
  lifter: 'follower-in',
  follower: 'follower-in',
  pushrod: 'pushrod-in',
};

function answersOf(
  known: KnownData,
  parts: readonly PartKind[],
  tagged: Map<string, Set<PartKind>>,
): readonly AtValve[] {
  switch (known.kind) {
    case 'valve-set':
      return [{ rule: 'valve-set', valve: known.data.valve, words: 'set' }];
    case 'valve-rechecked': {
      const { valve, result, seen } = known.data;
      return [{ rule: 'valve-read-again', valve, words: seen === '' ? result : seen, result }];
    }
    case 'part-fitted': {
      const rule = FITTED[known.data.part];
      const { to, from } = known.data;
      return rule === undefined ? [] : [{ rule, valve: to, words: from === 'new' ? 'new' : placeFrom(from, to) }];
    }
    case 'part-tagged': {
      const { valve, part } = known.data;
      const key = valveKey(valve);
      const have = tagged.get(key) ?? new Set();
      tagged.set(key, have.add(part));
      return parts.every((one) => have.has(one)) ? [{ rule: 'valve-gear-tagged', valve, words: 'all tagged' }] : [];
    }
    default:
      return [];
  }
}
const placeFrom = (from: ValveId, to: ValveId) => (sameValve(from, to) ? 'from its own place' : 'from another place');
