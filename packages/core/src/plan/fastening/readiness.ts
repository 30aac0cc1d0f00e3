/** Whether a joint may be tightened yet, and what stands in the way. */
import { type Engine, jointById } from '../../engine/index.js';
import type { Fact } from '../facts.js';
import { gasketChecks } from './gasket.js';
import type { FastenerJudgement } from './judge.js';
import { fastenerMap, type MapRow } from './map.js';

export type Block =
  | { readonly code: 'unknown-joint'; readonly joint: string; readonly valid: readonly string[] }
  | { readonly code: 'fastener-missing'; readonly hole: string; readonly instance: number }
  | { readonly code: 'fastener-wrong'; readonly hole: string; readonly judgement: FastenerJudgement }
  | { readonly code: 'fastener-not-new'; readonly hole: string; readonly instance: number }
  | { readonly code: 'fastener-not-measured'; readonly hole: string; readonly instance: number }
  | { readonly code: 'gasket-bad'; readonly head: string; readonly item: string; readonly seen: string };
export interface Readiness {
  /** Reasons why the joint may not be tightened; empty when it may. */
  readonly blocks: readonly Block[];
  /** Gasket items nobody has looked at: not a refusal, but never shown as good. */
  readonly unchecked: readonly string[];
}

/**
 * What stands in the way of tightening a joint: a hole without its fastener, a fastener that is not the one the sheet
 * asks for, a used one where a new one is due, a gasket check that was found bad.
 */
export function readiness(engine: Engine, jointId: string, facts: readonly Fact[]): Readiness {
  const joint = jointById(engine, jointId);
  if (joint === undefined) {
    const valid = engine.joints.map((one) => one.id);
    return { blocks: [{ code: 'unknown-joint', joint: jointId, valid }], unchecked: [] };
  }
  const gasket = joint.head === undefined ? undefined : gasketChecks(engine, joint.head, facts);
  const items = gasket?.items ?? [];
  const bad = items.flatMap(({ item, checked }) =>
    checked?.result === 'bad' ? [{ code: 'gasket-bad' as const, head: checked.head, item, seen: checked.seen }] : [],
  );
  return {
    blocks: [...fastenerMap(joint, facts).rows.flatMap(blockOf), ...bad],
    unchecked: items.filter((one) => one.state === 'open').map((one) => one.item),
  };
}

function blockOf({ hole, fastener, judgement }: MapRow): Block[] {
  const { instance, placed, mustBeNew, mustMeasure } = fastener;
  if (placed === undefined || judgement === undefined) return [{ code: 'fastener-missing', hole: hole.id, instance }];
  if (judgement.verdict !== 'right') return [{ code: 'fastener-wrong', hole: hole.id, judgement }];
  if (placed.condition === 'new') return [];
  if (mustBeNew) return [{ code: 'fastener-not-new', hole: hole.id, instance }];
  return mustMeasure && placed.length === undefined ? [{ code: 'fastener-not-measured', hole: hole.id, instance }] : [];
}
