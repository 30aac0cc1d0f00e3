import type { Expanded } from './expand.js';
import type { Gate } from './gates.js';
import type { Edge, EdgeKind, Known, Operation, Trait } from './model.js';
import { linked } from './places.js';

/** An operation with the acts that this engine has of it. */
export interface Filled {
  readonly operation: Operation;
  readonly acts: readonly Expanded[];
}

const edge = (from: Expanded, to: Expanded, kind: EdgeKind, why: string): Edge => ({
  from: from.act.id,
  to: to.act.id,
  kind,
  why,
});
const meets = (a: Expanded, b: Expanded) => linked(a.place, b.place);

/** Edges inside an operation, by its chain. */
export function inside({ operation, acts }: Filled): readonly Edge[] {
  return operation.chain === 'free' ? freeEdges(acts) : chainEdges(operation, acts);
}

function freeEdges(acts: readonly Expanded[]): readonly Edge[] {
  const at = (position?: 'first' | 'join') => acts.filter(({ rule }) => rule.position === position);
  const firsts = at('first');
  const middle = at();
  const joins = at('join');
  const order = firsts
    .slice(1)
    .map((act, index) => edge(firsts[index] as Expanded, act, 'order', 'it is laid out first'));
  const last = firsts.at(-1);
  const begin =
    last === undefined ? [] : [...middle, ...joins].map((act) => edge(last, act, 'order', 'it is laid out first'));
  const end = joins.flatMap((join) => middle.map((act) => edge(act, join, 'built-on', 'it is judged from this')));
  return [...order, ...begin, ...end];
}

/** Each act waits for the nearest earlier acts that touch its place. */
function chainEdges(operation: Operation, acts: readonly Expanded[]): readonly Edge[] {
  const kind = operation.chain === 'built-on' ? 'built-on' : 'order';
  return acts.flatMap((act) =>
    nearestBefore(operation, acts, act).map((earlier) =>
      edge(earlier, act, act.rule.chain ?? kind, 'it is the step before'),
    ),
  );
}

function nearestBefore(operation: Operation, acts: readonly Expanded[], act: Expanded): readonly Expanded[] {
  const place = operation.acts.indexOf(act.rule);
  for (const rule of operation.acts.slice(0, place).reverse()) {
    const found = acts.filter((one) => one.rule === rule && meets(one, act));
    if (found.length > 0) return found;
  }
  return [];
}

/** The last acts of each operation that this one needs come before its first; an operation without acts passes on what it needs itself. */
export function between(all: readonly Filled[], own: readonly Edge[], { operation, acts }: Filled): readonly Edge[] {
  const entered = new Set(own.map(({ to }) => to));
  const left = new Set(own.map(({ from }) => from));
  const first = acts.filter(({ act }) => !entered.has(act.id));
  return neededBy(all, operation).flatMap((needed) => {
    const last = needed.acts.filter(({ act }) => !left.has(act.id));
    const why = `comes after: ${needed.operation.title.toLowerCase()}`;
    return last.flatMap((one) => first.filter((act) => meets(one, act)).map((act) => edge(one, act, 'order', why)));
  });
}

function neededBy(all: readonly Filled[], operation: Operation): readonly Filled[] {
  return operation.needs.flatMap((id) => {
    const needed = all.find((one) => one.operation.id === id);
    if (needed === undefined) throw new Error(`operation ${operation.id} needs ${id}, which is no operation`);
    return needed.acts.length > 0 ? [needed] : neededBy(all, needed.operation);
  });
}

/** Edges of the gates, from place to place. */
export function gated(
  acts: readonly Expanded[],
  gates: readonly Gate[],
  traits: ReadonlyMap<Trait, Known>,
): readonly Edge[] {
  const byRule = grouped(acts);
  const of = (rule: string) => byRule.get(rule) ?? [];
  return gates
    .filter(({ when }) => when === undefined || traits.get(when) === 'yes')
    .flatMap(({ from, to, kind, why }) =>
      to.flatMap((rule) =>
        of(from).flatMap((a) =>
          of(rule)
            .filter((b) => meets(a, b))
            .map((b) => edge(a, b, kind, why)),
        ),
      ),
    );
}

function grouped(acts: readonly Expanded[]): Map<string, Expanded[]> {
  const groups = new Map<string, Expanded[]>();
  for (const one of acts) groups.set(one.rule.id, [...(groups.get(one.rule.id) ?? []), one]);
  return groups;
}
