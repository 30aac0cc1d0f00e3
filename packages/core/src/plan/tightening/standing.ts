/** Which acts of a joint are finished for the fasteners now in its holes. */
import { type Act, actKey, byTorqueValue, WHOLE_JOINT } from './acts.js';
import { finishes } from './answers.js';
import { isVoided } from './doubts.js';
import { fastenerNow, type HoleFastener } from './fastener-now.js';
import type { Ledger, RecordedAct } from './ledger.js';

export interface Standing {
  readonly ledger: Ledger;
  readonly fasteners: ReadonlyMap<string, HoleFastener>;
  /** The recorded act that finishes an act; absent while it is open. */
  readonly finished: ReadonlyMap<Act, RecordedAct>;
  /** Acts neither finished nor skipped, as printed. */
  readonly open: readonly Act[];
  /** The last stage that any recorded act belongs to; 0 before the first. */
  readonly frontier: number;
}

export function standingOf(ledger: Ledger): Standing {
  const fasteners = new Map(ledger.joint.holes.map((hole) => [hole.id, fastenerNow(ledger, hole.id)]));
  const finished = new Map<Act, RecordedAct>();
  for (const [act, records] of byAct(ledger.recorded)) {
    const record = finishing(ledger, fasteners.get(act.hole), act, records);
    if (record !== undefined) finished.set(act, record);
  }
  return {
    ledger,
    fasteners,
    finished,
    open: ledger.acts.filter((act) => !ledger.skipped.has(actKey(act)) && !finished.has(act)),
    frontier: Math.max(0, ...ledger.recorded.map((one) => one.act.stage)),
  };
}

function byAct(recorded: readonly RecordedAct[]): ReadonlyMap<Act, readonly RecordedAct[]> {
  const groups = new Map<Act, RecordedAct[]>();
  for (const one of recorded) {
    const group = groups.get(one.act);
    if (group === undefined) groups.set(one.act, [one]);
    else group.push(one);
  }
  return groups;
}

export const roundOf = (ledger: Ledger, act: Pick<Act, 'stage' | 'kind'>): number =>
  byTorqueValue(act.kind) ? (ledger.rounds.get(act.stage) ?? 1) : 1;

function finishing(ledger: Ledger, fastener: HoleFastener | undefined, act: Act, records: readonly RecordedAct[]) {
  const its = records.filter((one) => finishes(one.done.seen) && !isVoided(ledger.voided, one));
  if (act.hole === WHOLE_JOINT) return its.findLast(({ at }) => at > tightenedSince(ledger, act));
  if (fastener === undefined) return its.at(-1);
  if (act.stage <= renewedAt(ledger, act.hole)) return its.at(-1);
  const moved = movedSince(ledger, act, fastener.instance);
  const round = roundOf(ledger, act);
  return its.findLast(
    ({ done, at }) =>
      done.instance === fastener.instance && at > moved && (!byTorqueValue(act.kind) || done.round === round),
  );
}

/**
 * Place of the last record that tightened the cap which an act was felt on, up to its stage: what was felt before counts no
 * more. -1 where there is none, and for acts that nothing is felt by.
 */
function tightenedSince({ recorded }: Ledger, { kind, cap, stage }: Act): number {
  if (kind !== 'feel' || cap === undefined) return -1;
  return recorded.findLast((one) => cap.holes.includes(one.act.hole) && one.act.stage <= stage)?.at ?? -1;
}

/** A renewed fastener starts after the stage that renewed it; the stages up to there belong to the old one. */
function renewedAt(ledger: Ledger, hole: string): number {
  const renewals = ledger.ended.filter((one) => one.hole === hole && one.why === 'renewed');
  return Math.max(0, ...renewals.map((one) => one.stage));
}

/** Place of the last `moved` answer that makes earlier records of `act` worthless; -1 when there is none. */
function movedSince(ledger: Ledger, act: Act, instance: number): number {
  const moved = ledger.recorded.findLast(
    (one) =>
      one.done.seen === 'moved' &&
      one.act.hole === act.hole &&
      one.done.instance === instance &&
      (one.act === act || remedyOf(ledger, one.act) === act),
  );
  return moved?.at ?? -1;
}

const NOT_TURNED: ReadonlySet<Act['kind']> = new Set(['verify', 'instruct', 'feel']);
/**
 * The torque act that a failed check sends the fastener back to: the last stage before the check that turned it, where
 * that was by torque value. After a stage by angle there is none, and the check itself brings the fastener to its value.
 */
function remedyOf(ledger: Ledger, check: Act): Act | undefined {
  const turned = ledger.acts.findLast(
    (act) => act.hole === check.hole && act.stage < check.stage && !NOT_TURNED.has(act.kind),
  );
  return turned?.kind === 'torque' ? turned : undefined;
}
