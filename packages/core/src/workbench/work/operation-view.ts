/** Operations of the work: what holds for all acts of one, its chunks, the phases. */
import type { ActStand, Operation, Phase } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import type { OperationActsView, OperationView, PhaseView } from '../work-views.js';
import { viewOfStand } from './act-view.js';
import { chunkTitle } from './chunk-title.js';
import { type Ground, groundOf } from './work-ground.js';
import { isFinished, progressOf } from './work-progress.js';

/** Acts of one operation in the order of the plan, chunk by chunk; undefined where this engine has no such operation. */
export function operationView(bench: Bench, id: string, shown?: ShownIn): OperationActsView | undefined {
  const ground = groundOf(bench, shown);
  const operation = ground.plan.operations.find((one) => one.id === id);
  if (operation === undefined) return undefined;
  const byOperation = standsByOperation(ground);
  const stands = byOperation.get(id) ?? [];
  return {
    operation: headOf(byOperation, ground, operation),
    chunks: chunksOf(stands).map((own, index) => ({
      number: index + 1,
      title: chunkTitle(
        operation,
        own.map(({ act }) => act),
      ),
      acts: own.map((stand) => viewOfStand(ground, stand)),
    })),
  };
}

/** What is told before the first act of an operation. */
export function operationHead(ground: Ground, id: string): OperationView | undefined {
  const operation = ground.plan.operations.find((one) => one.id === id);
  return operation && headOf(standsByOperation(ground), ground, operation);
}

/** All phases that this engine has, with the operations of each. */
export function phaseViews(ground: Ground): readonly PhaseView[] {
  const byOperation = standsByOperation(ground);
  return (Object.keys(PHASES) as Phase[]).flatMap((phase) => {
    const own = ground.plan.operations.filter((one) => one.phase === phase);
    if (own.length === 0) return [];
    return [
      {
        phase,
        title: PHASES[phase],
        progress: progressOf(own.flatMap(({ id }) => byOperation.get(id) ?? [])),
        operations: own.map((operation) => headOf(byOperation, ground, operation)),
      },
    ];
  });
}

const PHASES: Readonly<Record<Phase, string>> = {
  'as-found': 'As found',
  'tear-down': 'Tear-down and tagging',
  inspection: 'Cleaning, measuring, machining',
  'trial-assembly': 'Trial assembly',
  'permanent-parts': 'Wash, and parts that stay in',
  'top-end': 'Top end',
  'start-and-run-in': 'Prime, start, run in',
};

type ByOperation = ReadonlyMap<string, readonly ActStand[]>;
function standsByOperation({ standing }: Ground): ByOperation {
  const found = new Map<string, ActStand[]>();
  for (const stand of standing.stands.values()) {
    const own = found.get(stand.act.operation);
    if (own === undefined) found.set(stand.act.operation, [stand]);
    else own.push(stand);
  }
  return found;
}

function headOf(byOperation: ByOperation, { plan }: Ground, operation: Operation): OperationView {
  const { id, title, phase, consumables, tools, cautions, mistakes, needs } = operation;
  const stands = byOperation.get(id) ?? [];
  const open = plan.operations.filter((one) => needs.includes(one.id) && !isFinished(byOperation.get(one.id) ?? []));
  return {
    id,
    title,
    phase,
    progress: progressOf(stands),
    finished: isFinished(stands),
    consumables,
    tools,
    cautions,
    mistakes,
    waitsFor: open.map((one) => one.title),
  };
}

/** An act that the person put in belongs to the chunk of the act before it. */
function chunksOf(stands: readonly ActStand[]): readonly (readonly ActStand[])[] {
  const found = new Map<number, ActStand[]>();
  for (const stand of stands) found.set(stand.act.chunk, [...(found.get(stand.act.chunk) ?? []), stand]);
  return [...found.values()];
}
