import type { Engine } from '../../engine/model.js';
import { chunksOf } from './chunks.js';
import { between, type Filled, gated, inside } from './connect.js';
import { actsOf, type Expanded, type Ground } from './expand.js';
import { GATES } from './gates.js';
import type { Edge, EdgeKind, WorkAct, WorkPlan, WorksheetToFill } from './model.js';
import { operationsInOrder } from './operations/index.js';
import { placesOf } from './places.js';
import { traitsOf } from './traits.js';

/** The act that ends every plan. */
export const SIGNED_OFF = 'signed-off';

/**
 * The whole work on this engine, from the first look to the signature: every operation that it needs, its acts at each place, and what must
 * precede what. `worksheets` are those of the inspection plan; each place of them is one act, as is each joint and each valve of the
 * sheet. What the sheet leaves open stays in, with `unsure`.
 *
 * The acts stand in an order that breaks no precedence, and every edge leads forward in it, so nothing can wait for itself. An edge
 * that leads back is a defect of our own data and throws.
 */
export function workPlan(engine: Engine, worksheets: readonly WorksheetToFill[]): WorkPlan {
  const traits = traitsOf(engine);
  const places = placesOf(engine, worksheets);
  const ground: Ground = { engine, worksheets, traits, places };
  const filled = operationsInOrder(traits.get('overhead-cam') ?? 'unknown').map((operation) => ({
    operation,
    acts: actsOf(ground, operation),
  }));
  const expanded = filled.flatMap(({ acts }) => acts);
  const tied = edgesOf(filled, expanded, traits);
  const edges = withoutDoubles([...tied, ...toTheEnd(expanded, tied)]);
  const acts = filled.flatMap(({ acts: own }) => chunked(own));
  checkForward(acts, edges);
  return {
    acts,
    operations: filled.filter(({ acts: own }) => own.length > 0).map(({ operation }) => operation),
    byId: new Map(acts.map((act) => [act.id, act])),
    before: groupedBy(edges, ({ to }) => to),
    after: groupedBy(edges, ({ from }) => from),
    assumptions: places.assumptions,
  };
}

function edgesOf(filled: readonly Filled[], acts: readonly Expanded[], traits: Ground['traits']): readonly Edge[] {
  const within = filled.flatMap(inside);
  const across = filled.flatMap((one) => between(filled, within, one));
  return [...within, ...across, ...gated(acts, GATES, traits)];
}

/** Two ties between the same acts are one; the one that carries a re-opening stays. */
function withoutDoubles(edges: readonly Edge[]): readonly Edge[] {
  const rank: Readonly<Record<EdgeKind, number>> = { order: 0, 'built-on': 1 };
  const kept = new Map<string, Edge>();
  for (const edge of edges) {
    const key = `${edge.from}>${edge.to}`;
    const other = kept.get(key);
    if (other === undefined || rank[edge.kind] > rank[other.kind]) kept.set(key, edge);
  }
  return [...kept.values()];
}

/** The signature waits for everything, and is open again when any of it is. */
function toTheEnd(acts: readonly Expanded[], edges: readonly Edge[]): readonly Edge[] {
  const left = new Set(edges.filter(({ to }) => to !== SIGNED_OFF).map(({ from }) => from));
  const why = 'the signature closes all of the work';
  return acts
    .filter(({ act }) => act.id !== SIGNED_OFF && !left.has(act.id))
    .map(({ act }) => ({ from: act.id, to: SIGNED_OFF, kind: 'built-on', why }));
}

function chunked(acts: readonly Expanded[]): readonly WorkAct[] {
  const chunks = chunksOf(acts.length);
  return acts.map(({ act }, index) => ({ ...act, chunk: chunks[index] ?? 1 }));
}

function checkForward(acts: readonly WorkAct[], edges: readonly Edge[]): void {
  const place = new Map(acts.map(({ id }, index) => [id, index]));
  if (place.size !== acts.length) throw new Error('two acts of the plan share an id');
  for (const { from, to } of edges) {
    const [a, b] = [place.get(from), place.get(to)];
    if (a === undefined || b === undefined || a >= b)
      throw new Error(`the plan ties ${from} before ${to}, against its order`);
  }
}

function groupedBy(edges: readonly Edge[], key: (edge: Edge) => string): ReadonlyMap<string, readonly Edge[]> {
  const groups = new Map<string, Edge[]>();
  for (const edge of edges) {
    const group = groups.get(key(edge));
    if (group === undefined) groups.set(key(edge), [edge]);
    else group.push(edge);
  }
  return groups;
}
