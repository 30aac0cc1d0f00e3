/** Acts of priming, start, run-in and tests that the record of the running engine finishes. */
import { valveKey } from '../../engine/index.js';
import {
  judgeGauge,
  judgeStart,
  type RunInClock,
  type RunningFact,
  runInClock,
  scheduleOf,
  type WorkPlan,
} from '../../plan/index.js';
import { runningFacts } from '../../record/index.js';
import type { Bench } from '../bench.js';
import { ofBuilt } from './built-engine.js';
import type { FinishedElsewhere } from './finished-act.js';

export type RunningPart = 'oil' | 'start' | 'run-in' | 'cylinder-tests';
export const RUNNING_RULES: Readonly<Record<string, RunningPart>> = {
  'oil-at-valve': 'oil',
  started: 'start',
  'pressure-seen': 'start',
  'run-in-step': 'run-in',
  'compression-read': 'cylinder-tests',
  'leakage-read': 'cylinder-tests',
};

/** An act by its id, as the record of one moment finishes it. */
interface Finished {
  readonly act: string;
  readonly words: string;
  readonly result?: 'good' | 'bad';
}

/** Each at the entry that finished it. What was read of the engine as it was found says nothing of the one that was built. */
export function runningFinished(bench: Bench, plan: WorkPlan): readonly FinishedElsewhere[] {
  const facts = runningFacts(bench.state);
  if (facts.length === 0) return [];
  const byEntry = new Map<string, readonly Finished[]>();
  const add = (entry: string | undefined, finished: readonly Finished[]) => {
    if (entry !== undefined) byEntry.set(entry, [...(byEntry.get(entry) ?? []), ...finished]);
  };
  const built = ofBuilt(bench, plan);
  for (const fact of facts) add(fact.entry, finishedBy(bench, facts, fact, built?.(fact.entry) ?? false));
  for (const { entry, act, words } of stepsRun(bench, facts)) add(entry, [{ act, words }]);
  return [...byEntry].flatMap(([entry, all]) =>
    all.flatMap(({ act: id, words, result = 'good' }) => {
      const act = plan.byId.get(id);
      return act === undefined ? [] : [{ act, entry, words, result }];
    }),
  );
}

function finishedBy(
  { engine }: Bench,
  facts: readonly RunningFact[],
  fact: RunningFact,
  built: boolean,
): readonly Finished[] {
  switch (fact.kind) {
    case 'oil-seen':
      return [{ act: `oil-at-valve@${valveKey(fact.data.valve)}`, words: fact.data.how ?? 'oil came' }];
    case 'start-tried': {
      const { outcome, crankedSeconds, pressure } = fact.data;
      if (outcome !== 'runs') return [];
      const { verdict, says } = judgeStart(engine, fact.data);
      const seen = pressure && {
        act: 'pressure-seen',
        words: `${pressure.text}. ${says}`,
        result: verdict === 'out' ? ('bad' as const) : ('good' as const),
      };
      return [{ act: 'started', words: `${crankedSeconds} s on the starter` }, ...(seen ? [seen] : [])];
    }
    case 'running-read': {
      const { what, reading } = fact.data;
      if (!built || what !== 'oil-pressure' || reading === undefined || reading.value <= 0) return [];
      const { verdict } = judgeGauge(engine, facts, fact, undefined);
      return [{ act: 'pressure-seen', words: reading.text, result: verdict === 'out' ? 'bad' : 'good' }];
    }
    case 'compression-read': {
      const { cylinder, reading, wet } = fact.data;
      return wet || !built ? [] : [{ act: `compression-read@${cylinder}`, words: reading.text }];
    }
    case 'leakage-read': {
      const { cylinder, held, supply } = fact.data;
      if (!built) return [];
      return [{ act: `leakage-read@${cylinder}`, words: `${held.text} held of ${supply.text}` }];
    }
    default:
      return [];
  }
}

const CLOCK: ReadonlySet<RunningFact['kind']> = new Set(['run-in-begun', 'run-in-stopped']);
type Ran = Finished & { readonly entry: string | undefined };

/**
 * Steps of the run-in at the entry that ended them. One that has run its time once has to run it anew before it counts again: it may have been
 * opened by a new part meanwhile. A line without a time is over when it was begun and then ended. Without lines in the sheet there is one act for all of them.
 */
function stepsRun(bench: Bench, facts: readonly RunningFact[]): readonly Ran[] {
  const schedule = scheduleOf(bench.engine);
  const counted = new Map<number, number>();
  const found: Ran[] = [];
  let running: number | undefined;
  facts.forEach((fact, at) => {
    if (!CLOCK.has(fact.kind)) return;
    const clock = runInClock(schedule, facts.slice(0, at + 1), fact.at);
    const step = running === undefined ? undefined : schedule.steps[running - 1];
    running = clock.state === 'running' ? clock.step?.number : undefined;
    if (step === undefined) return;
    const ran = clock.ran[step.number - 1]!;
    if (step.seconds !== undefined && ran - (counted.get(step.number) ?? 0) < step.seconds) return;
    counted.set(step.number, ran);
    const time = step.seconds === undefined ? 'done' : `${Math.round(ran / 6) / 10} min run`;
    if (schedule.fromSheet) found.push({ entry: fact.entry, act: `run-in-step@line-${step.number}`, words: time });
    else if (allTimed(clock, schedule)) found.push({ entry: fact.entry, act: 'run-in-step@all', words: time });
  });
  return found;
}
const allTimed = ({ done }: RunInClock, { steps }: ReturnType<typeof scheduleOf>): boolean =>
  steps.every(({ number, seconds }) => seconds === undefined || done[number - 1] === true);
