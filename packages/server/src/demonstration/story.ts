/**
 * What happened in the demonstration, fact by fact: the top end of an invented engine, half put together. The facts are
 * asked from the plan one after the other, as a person at the bench would be, so they always fit the sheet.
 */
import { type Engine, type Head, type Joint, jointsOfHead, type ValveId, valvesOf } from '@gudgeon/core/engine';
import {
  answersFor,
  type Fact,
  gasketItems,
  type NewFact,
  type Offer,
  partsOf,
  type WorkFactData,
  type WorkFactKind,
  walk,
} from '@gudgeon/core/plan';

/** Stage and fastener of the second head at which the work is left: five are done, the sixth is next. */
const LEFT_AT = { stage: 2, done: 5 };

/** What is told of the top end: facts of joints and parts, and acts of the whole work between them. */
type Told =
  | NewFact
  | { readonly [K in WorkFactKind]: { readonly kind: K; readonly data: WorkFactData[K] } }[WorkFactKind];

/** The book of the work begins where the short engine stands built. */
const BEGUN: Told = {
  kind: 'work-begun',
  data: { operation: 'heads-on', why: 'The short engine stood built when this book was begun (invented).' },
};

/** The facts in order. The first head is finished, the second is under way; some valve gear is back in its place. */
export function topEndHalfWay(engine: Engine): readonly Told[] {
  const [first, second] = engine.heads;
  const facts: Told[] = [BEGUN, ...taggedParts(engine)];
  if (first) {
    facts.push(...fittedLifters(engine, first), ...checkedGasket(first), ...loweredHead(first));
    for (const joint of jointsOfHead(engine, first.id)) facts.push(...tightened(joint, () => false));
  }
  if (second) {
    facts.push(...fittedLifters(engine, second).slice(0, 3), ...checkedGasket(second), ...loweredHead(second));
    for (const joint of jointsOfHead(engine, second.id)) facts.push(...tightened(joint, isLeftHere));
  }
  return facts;
}

function isLeftHere(offer: Offer, recorded: readonly NewFact[]): boolean {
  const here = recorded.filter((fact) => fact.kind === 'act-done' && fact.data.stage === LEFT_AT.stage);
  return offer.kind === 'act' && offer.act.stage === LEFT_AT.stage && here.length >= LEFT_AT.done;
}

/** Lifters and pushrods were tagged when they came out; the rockers were not kept. */
function taggedParts(engine: Engine): NewFact[] {
  const kept = partsOf(engine).filter((part) => part === 'lifter' || part === 'pushrod');
  return kept.flatMap((part) =>
    valvesOf(engine).map((valve): NewFact => {
      const end = part === 'pushrod' ? { end: 'rocker end marked with paint' } : {};
      return { kind: 'part-tagged', data: { part, valve, ...end, condition: 'used, good' } };
    }),
  );
}

function fittedLifters(engine: Engine, head: Head): NewFact[] {
  const own = (valve: ValveId) => head.cylinders.includes(valve.cylinder);
  return valvesOf(engine)
    .filter((valve) => own(valve) && partsOf(engine).includes('lifter'))
    .map((valve) => ({
      kind: 'part-fitted',
      data: { part: 'lifter', to: valve, from: valve, lubricant: 'assembly lube on the face, oil on the side' },
    }));
}

function checkedGasket(head: Head): NewFact[] {
  return gasketItems(head).map((item) => ({
    kind: 'gasket-checked',
    data: { head: head.id, item, result: 'good', seen: 'as the sheet says' },
  }));
}

/** Gasket over the dowels, head down: felt, and told. */
const loweredHead = (head: Head): readonly Told[] => [
  seen(`gasket-down@${head.id}`, 'the printed word up, flat over both dowels', 'by eye'),
  seen(`head-down@${head.id}`, 'sits all round, rocks nowhere', 'by hand'),
];
const seen = (act: string, words: string, method: string): Told => ({
  kind: 'work-act-done',
  data: { act, answer: { kind: 'felt-or-seen', words, result: 'good' }, method },
});

/** Places and tightens as the walk asks, until it is finished or `leave` says that the person went home. */
function tightened(joint: Joint, leave: (offer: Offer, recorded: readonly NewFact[]) => boolean): NewFact[] {
  const facts: NewFact[] = [];
  for (;;) {
    const offer = walk(joint, facts as readonly Fact[]).current;
    if (offer === undefined || leave(offer, facts)) return facts;
    facts.push(offer.kind === 'place' ? placed(joint, offer) : acted(joint, offer));
  }
}

function placed(joint: Joint, { hole, instance }: Offer & { readonly kind: 'place' }): NewFact {
  const { fastener, onThread, underHead } = joint.holes.find((one) => one.id === hole)!;
  return { kind: 'fastener-placed', data: { joint: joint.id, hole, instance, fastener, onThread, underHead } };
}

function acted(joint: Joint, { act, instance, round }: Exclude<Offer, { readonly kind: 'place' }>): NewFact {
  const seen = answersFor(act.kind)[0]!;
  const { stage, hole, target } = act;
  return {
    kind: 'act-done',
    data: { joint: joint.id, stage, hole, instance, round, target: target.text, seen },
  };
}
