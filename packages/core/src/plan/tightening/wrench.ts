/** Whether a torque wrench may be trusted with a target, and what to set on it. */
import { type Adapter, drives, settingFor } from '../../calc/fasteners/index.js';
import type { Window } from '../../engine/model.js';
import type { Torque } from '../../quantity/index.js';

export interface WrenchOnHand {
  readonly range?: Window<Torque>;
  /** What it showed over what the standard was, at the newest check: 1.04 reads 4 % high. */
  readonly readsTimes?: number;
  readonly adapter?: Adapter;
}
export type WrenchVerdict = 'fits' | 'below' | 'low-end' | 'above' | 'range-unknown' | 'adapter-turns-back';
export interface WrenchJudgement {
  readonly verdict: WrenchVerdict;
  /** Wanted at the fastener. */
  readonly aim: Torque;
  /** To be set on the wrench; absent where the adapter would turn the fastener backwards. */
  readonly setting?: Torque;
}

/** Below this share of its top a clicking wrench is not trusted. Common practice, no source. */
export const LEAST_SHARE_OF_TOP = 0.2;

/** The middle of a window, or its one end; undefined where it has none. */
export function aimOf({ low, high }: Window<Torque>): Torque | undefined {
  if (low === undefined || high === undefined) return low ?? high;
  return ((low + high) / 2) as Torque;
}

/**
 * Judges a wrench for a torque at the fastener.
 *
 * | symbol | meaning | unit |
 * | aim | wanted at the fastener | N·m |
 * | setting | aim, corrected for the adapter (`settingFor`) and multiplied by what the wrench reads of a true torque | N·m |
 *
 * Fits where the setting lies in the wrench's range, ends included, and at 20 % of its top or above (common practice, no
 * source). A wrench whose top nobody noted is unknown, never good.
 */
export function judgeWrench(aim: Torque, { range, readsTimes = 1, adapter }: WrenchOnHand): WrenchJudgement {
  if (adapter !== undefined && !drives(adapter)) return { verdict: 'adapter-turns-back', aim };
  const withoutError = adapter === undefined ? aim : settingFor(aim, adapter);
  const setting = (withoutError * readsTimes) as Torque;
  return { verdict: verdictOf(setting, range ?? {}), aim, setting };
}

/** Rounding of a converted figure must not put a setting outside the end that it stands on. */
const ROUNDING = 1e-9;

function verdictOf(setting: Torque, { low, high }: Window<Torque>): WrenchVerdict {
  if (low !== undefined && setting < low - ROUNDING) return 'below';
  if (high === undefined) return 'range-unknown';
  if (setting > high + ROUNDING) return 'above';
  return setting < LEAST_SHARE_OF_TOP * high - ROUNDING ? 'low-end' : 'fits';
}
