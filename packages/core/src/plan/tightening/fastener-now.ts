/** Which fastener is, or should be, in a hole now. */
import { fastenerOfHole, type StageAct } from '../../engine/index.js';
import { turns } from './doubts.js';
import { type Ended, type FastenerPlaced, instanceKey, type Ledger, type OutWhy } from './ledger.js';

export interface HoleFastener {
  readonly hole: string;
  readonly instance: number;
  readonly placed?: FastenerPlaced;
  readonly entry?: string;
  /** Why the hole waits for a fastener; absent when one is in place. */
  readonly waits?: 'missing' | 'opened' | OutWhy;
  /** A used fastener may not go in here. */
  readonly mustBeNew: boolean;
  /** A used one may go in, but only measured: the sheet lets it be used again up to a length. */
  readonly mustMeasure: boolean;
  /** It replaces one that was taken out since the joint was last opened. */
  readonly replaced: boolean;
}

/**
 * The fastener that is, or should be, in a hole now: the highest instance that was placed and has not been taken out,
 * else the instance after the last one that was.
 */
export function fastenerNow(ledger: Ledger, hole: string): HoleFastener {
  const before = ledger.before.get(hole) ?? 0;
  const ended = ledger.ended.filter((one) => one.hole === hole && one.instance > before);
  const out = Math.max(before, ...ended.map((one) => one.instance));
  const instance = Math.max(out + 1, ...placedIn(ledger, hole));
  const last = ended.findLast((one) => one.instance === instance - 1);
  const common = { hole, instance, ...demandsOn(ledger, hole, last), replaced: instance > before + 1 };
  const inPlace = ledger.placed.get(instanceKey(hole, instance));
  if (inPlace === undefined) return { ...common, waits: last?.why ?? (before > 0 ? 'opened' : 'missing') };
  return { ...common, placed: inPlace.data, ...(inPlace.entry !== undefined && { entry: inPlace.entry }) };
}

function placedIn(ledger: Ledger, hole: string): number[] {
  return [...ledger.placed.values()].filter((one) => one.data.hole === hole).map((one) => one.data.instance);
}

/**
 * What the next fastener in a hole must be. A used one is refused where the sheet says once, after a renewal, after a
 * stretch beyond the window, and after a turn by angle that is in doubt; where the sheet allows use up to a length, the
 * turned one may go back when its length is measured.
 */
function demandsOn(
  ledger: Ledger,
  hole: string,
  last: Ended | undefined,
): { mustBeNew: boolean; mustMeasure: boolean } {
  const use = fastenerOfHole(ledger.joint, hole)?.use;
  const turned = last === undefined ? ledger.turnedBefore.has(hole) : turnedByAngle(ledger, last);
  const gone = last?.why === 'renewed' || (last?.why === 'beyond' && kindOfStage(ledger, last.stage) === 'stretch');
  const spent = use === 'once' && (last !== undefined || turned);
  const suspect = last !== undefined && turned && use !== 'reuse-to-length';
  const mustBeNew = gone || spent || suspect;
  return { mustBeNew, mustMeasure: !mustBeNew && turned && use === 'reuse-to-length' };
}

const kindOfStage = (ledger: Ledger, number: number): StageAct['kind'] | undefined =>
  ledger.joint.stages.find((stage) => stage.number === number)?.act.kind;

/** It was turned by angle or stretch, or was in doubt at a stage that does so. */
function turnedByAngle(ledger: Ledger, last: Ended): boolean {
  if (turns(kindOfStage(ledger, last.stage))) return true;
  const its = ledger.recorded.filter((one) => one.act.hole === last.hole && one.done.instance === last.instance);
  return its.some((one) => turns(one.act.kind));
}
