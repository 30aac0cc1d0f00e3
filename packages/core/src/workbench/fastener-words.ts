/** Plain words for fasteners, holes and what is on them. */
import type { FastenerKind, Hole, ThreadTreatment } from '../engine/index.js';
import type { FastenerJudgement } from '../plan/index.js';
import { formatQuantity } from '../quantity/index.js';

export const treatmentWords: Readonly<Record<ThreadTreatment, string>> = {
  oil: 'oil',
  sealer: 'thread sealer',
  locker: 'thread locker',
  dry: 'dry',
  'assembly-lube': 'assembly lube',
  'anti-seize': 'anti-seize',
  'as-supplied': 'as supplied, nothing added',
  'not-stated': 'the sheet does not say: look it up first',
};
export const opensWords: Readonly<Record<Hole['opensInto'], string>> = {
  blind: 'blind hole',
  water: 'opens into water',
  oil: 'opens into oil',
  air: 'goes through',
  'not-stated': 'not stated where it opens',
};
export const useWords: Readonly<Record<FastenerKind['use'], string>> = {
  once: 'new each time',
  reuse: 'may be used again',
  'reuse-to-length': 'may be used again up to a length',
  'not-stated': 'whether it may be used again is not stated',
};

export const lengthText = (kind: FastenerKind | undefined): string => kind?.length?.text ?? 'length not stated';
export const kindText = (kind: FastenerKind): string => `${kind.name}, ${kind.thread}, ${lengthText(kind)}`;

/** What is wrong with a fastener in a hole, and what the hole asks for. */
export function judgementWords(judgement: FastenerJudgement): string {
  const { expected, hole, off } = judgement;
  const wanted = expected === undefined ? '' : ` This hole takes ${kindText(expected)}.`;
  const by = off === undefined ? '' : ` by ${formatQuantity('length', Math.abs(off), 'mm', 1)}`;
  switch (judgement.verdict) {
    case 'right':
      return `Hole ${hole}: right.`;
    case 'wrong-kind':
      return `Hole ${hole}: another fastener belongs here.${wanted}`;
    case 'too-long':
      return `Hole ${hole}: too long${by}${judgement.reach?.bottoms ? bottomWords(judgement) : ''}.${wanted}`;
    case 'too-short':
      return `Hole ${hole}: too short${by}; too little thread is engaged.${wanted}`;
    case 'past-limit':
      return `Hole ${hole}: stretched past its length limit ${expected?.lengthLimit?.text ?? ''}. Take a new one.`;
    case 'wrong-on-thread':
      return `Hole ${hole}: something else belongs on the thread.${wanted}`;
    case 'wrong-under-head':
      return `Hole ${hole}: something else belongs under the head.${wanted}`;
    case 'cannot-tell':
      return `Hole ${hole}: neither kind nor length is known, so it cannot be called right.${wanted}`;
    case 'unknown-hole':
      return `Hole ${hole} is not in this joint.`;
  }
}

/** A bolt that meets the bottom shows its torque on the wrench and clamps nothing. */
function bottomWords({ reach }: FastenerJudgement): string {
  const into = reach === undefined ? '' : ` ${formatQuantity('length', reach.into, 'mm', 1)} into the hole`;
  return `; it reaches${into} and bottoms before it clamps`;
}
