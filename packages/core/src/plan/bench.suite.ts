/** Invented joints and facts for the tests of plans; not part of the built package. */
import type { FastenerKind, From, Hole, Joint, Stage, StageAct } from '../engine/model.js';
import { degrees, inch, mm, newtonMetres } from '../quantity/index.js';
import type { Fact, FactData } from './facts.js';
import { type Offer, walk } from './index.js';

export const invented: From = { standing: 'invented', text: 'invented' };

export const torque = (value: number): StageAct => ({
  kind: 'torque',
  target: { low: newtonMetres(value), high: newtonMetres(value) },
  text: `${value} N·m`,
});
export const verify = (value: number): StageAct => ({ ...torque(value), kind: 'verify' }) as StageAct;
export const angle = (value: number): StageAct => ({
  kind: 'angle',
  target: { low: degrees(value), high: degrees(value) },
  text: `${value} deg`,
});
export const stretch = (low: number, high: number): StageAct => ({
  kind: 'stretch',
  target: { low: inch(low), high: inch(high) },
  text: `${low}..${high} in`,
});
export const loosen = (amount: 'fully' | number): StageAct => ({
  kind: 'loosen',
  amount: amount === 'fully' ? 'fully' : degrees(amount),
  text: amount === 'fully' ? 'fully' : `${amount} deg`,
});
export const renew: StageAct = { kind: 'renew', text: 'fit a new bolt' };
export const instruct = (text: string): StageAct => ({ kind: 'instruct', text });
export const feel = (text: string): StageAct => ({ kind: 'feel', text });

export type StageSpec = StageAct | (Partial<Omit<Stage, 'act'>> & { readonly act: StageAct });
export const stagesOf = (specs: readonly StageSpec[]): readonly Stage[] =>
  specs.map((spec, index) => ({
    number: index + 1,
    holes: 'all',
    direction: 'in-order',
    from: invented,
    ...('act' in spec ? spec : { act: spec }),
  }));

export const bolt = (over: Partial<FastenerKind> = {}): FastenerKind => ({
  id: 'bolt',
  name: 'head bolt',
  thread: 'M10x1.25',
  length: { text: '95 mm', value: mm(95), from: invented },
  use: 'reuse',
  ...over,
});
export const hole = (id: string, over: Partial<Hole> = {}): Hole => ({
  id,
  fastener: 'bolt',
  opensInto: 'blind',
  onThread: 'oil',
  underHead: 'oil',
  ...over,
});

export interface JointSpec {
  readonly holes?: readonly Hole[];
  readonly stages: readonly StageSpec[];
  readonly fasteners?: readonly FastenerKind[];
  readonly order?: readonly string[];
  readonly head?: string;
}
/** A joint of four holes, visited 2 3 1 4, unless said otherwise. */
export function jointOf(spec: JointSpec): Joint {
  const holes = spec.holes ?? ['1', '2', '3', '4'].map((id) => hole(id));
  const order = spec.order ?? (spec.holes === undefined ? ['2', '3', '1', '4'] : undefined);
  return {
    id: 'head',
    name: 'head bolts',
    ...(spec.head !== undefined && { head: spec.head }),
    fasteners: spec.fasteners ?? [bolt()],
    holes,
    ...(order && { order: { holes: order, from: invented } }),
    stages: stagesOf(spec.stages),
    whenInDoubt: 'Ask the maker.',
    cautions: [],
  };
}

export const placed = (joint: Joint, id: string, over: Partial<FactData['fastener-placed']> = {}): Fact => {
  const where = joint.holes.find((one) => one.id === id)!;
  const { fastener, onThread, underHead } = where;
  const data = { joint: joint.id, hole: id, instance: 1, fastener, onThread, underHead, ...over };
  return { kind: 'fastener-placed', data };
};
export const allPlaced = (joint: Joint): Fact[] => joint.holes.map((one) => placed(joint, one.id));

const USUAL = {
  torque: 'reached',
  angle: 'turned-and-marked',
  loosen: 'loosened',
  verify: 'held',
  stretch: 'within',
  renew: 'renewed',
  instruct: 'followed',
  feel: 'free',
} as const;

/** The fact of doing what is offered. */
export function doing(joint: Joint, offer: Offer, over: Partial<FactData['act-done']> = {}): Fact {
  if (offer.kind === 'place') {
    return placed(joint, offer.hole, { instance: offer.instance, condition: 'new' });
  }
  const { act, instance, round } = offer;
  const { stage, hole: at, target, kind } = act;
  const data = { joint: joint.id, stage, hole: at, instance, round, target: target.text, seen: USUAL[kind], ...over };
  return { kind: 'act-done', data };
}

/** Does what is offered, so many times; each place or act counts. */
export function doNext(joint: Joint, facts: readonly Fact[], times: number): Fact[] {
  const grown = [...facts];
  for (let done = 0; done < times; done += 1) {
    const offer = walk(joint, grown).current;
    if (offer === undefined) throw new Error(`nothing left to do after ${done}`);
    grown.push(doing(joint, offer));
  }
  return grown;
}

/** What is offered, as "stage/hole#instance", or "place hole#instance". */
export function offered(joint: Joint, facts: readonly Fact[]): string {
  const offer = walk(joint, facts).current;
  if (offer === undefined) return 'finished';
  if (offer.kind === 'place') return `place ${offer.hole}#${offer.instance}`;
  return `${offer.kind === 'look' ? 'look ' : ''}${offer.act.stage}/${offer.act.hole}#${offer.instance}`;
}
