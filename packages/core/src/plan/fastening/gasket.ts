/** What to look at before the head goes on its gasket: a gasket is crushed once. */
import { type Engine, type Head, jointsOfHead, type Opening } from '../../engine/index.js';
import type { Fact, FactData } from '../facts.js';

export type GasketItemKind = 'way-up' | 'faces' | 'dowels' | 'holes-dry' | 'opening';
export interface GasketItem {
  /** As named in `gasket-checked` facts. */
  readonly item: string;
  readonly kind: GasketItemKind;
  readonly opening?: Opening;
  /** Blind holes of the joints of this head, for `holes-dry`. */
  readonly blindHoles?: readonly string[];
  readonly state: 'open' | 'good' | 'bad';
  readonly checked?: FactData['gasket-checked'];
  readonly entry?: string;
}
export interface GasketChecks {
  readonly head: string;
  readonly items: readonly GasketItem[];
  readonly current?: string;
  readonly finished: boolean;
}

/** Names of the items to check on a head, in working order: the gasket itself, the faces, the holes, each opening. */
export function gasketItems(head: Head): readonly string[] {
  return ['way-up', 'faces', 'dowels', 'holes-dry', ...head.gasket.openings.map((one) => `opening:${one.id}`)];
}

/**
 * The gasket checks of a head with the last answer to each. An answer older than the last opening of the head's joint
 * does not count: the gasket was crushed and is another one now. Undefined where the engine has no such head.
 */
export function gasketChecks(engine: Engine, headId: string, facts: readonly Fact[]): GasketChecks | undefined {
  const head = engine.heads.find((one) => one.id === headId);
  if (head === undefined) return undefined;
  const answers = answersOf(engine, head, facts);
  const items = gasketItems(head).map((item) => itemOf(engine, head, item, answers.get(item)));
  const current = items.find((one) => one.state === 'open')?.item;
  const finished = items.every((one) => one.state === 'good');
  return { head: headId, items, ...(current !== undefined && { current }), finished };
}

interface GivenAnswer {
  readonly data: FactData['gasket-checked'];
  readonly entry?: string;
}

function answersOf(engine: Engine, head: Head, facts: readonly Fact[]): ReadonlyMap<string, GivenAnswer> {
  const joints = new Set(jointsOfHead(engine, head.id).map((joint) => joint.id));
  const answers = new Map<string, GivenAnswer>();
  for (const fact of facts) {
    if (fact.kind === 'joint-opened' && joints.has(fact.data.joint)) answers.clear();
    if (fact.kind === 'gasket-checked' && fact.data.head === head.id) answers.set(fact.data.item, fact);
  }
  return answers;
}

function itemOf(engine: Engine, head: Head, item: string, answer: GivenAnswer | undefined): GasketItem {
  const opening = head.gasket.openings.find((one) => item === `opening:${one.id}`);
  const kind = opening === undefined ? (item as GasketItemKind) : 'opening';
  const blind = jointsOfHead(engine, head.id).flatMap((joint) =>
    joint.holes.filter((hole) => hole.opensInto === 'blind').map((hole) => hole.id),
  );
  return {
    item,
    kind,
    ...(opening && { opening }),
    ...(kind === 'holes-dry' && { blindHoles: blind }),
    state: answer?.data.result ?? 'open',
    ...(answer && { checked: answer.data }),
    ...(answer?.entry !== undefined && { entry: answer.entry }),
  };
}
