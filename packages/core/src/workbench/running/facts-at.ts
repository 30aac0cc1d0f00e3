/** What the views of the running engine share: its facts, answers of the work plan, who gave what. */
import {
  type ActAnswer,
  factsOf,
  type RunningFact,
  type RunningFactKind,
  type RunningFactOf,
} from '../../plan/index.js';
import { runningFacts } from '../../record/index.js';
import { type Bench, shownTime } from '../bench.js';
import type { Caution, Given } from '../views.js';
import { answerWords } from '../work/act-words.js';
import { workAt } from '../work/work-facts.js';

export const factsAt = (bench: Bench): readonly RunningFact[] => runningFacts(bench.state);
export const factsOfKind = <K extends RunningFactKind>(bench: Bench, kind: K): readonly RunningFactOf<K>[] =>
  factsOf(factsAt(bench), kind);

export const givenOf = ({ by, at, entry }: Pick<RunningFact, 'by' | 'at' | 'entry'>): Given => ({
  by,
  at: shownTime(at),
  entry: entry ?? '',
});

/** How the work plan stands with each act that has an answer. One that was left out is not ready: nobody looked. */
export function answersAt(bench: Bench): ReadonlyMap<string, ActAnswer> {
  const answers = new Map<string, ActAnswer>();
  for (const [act, { held, state, foundBad }] of workAt(bench).standing.stands) {
    if (held.skipped !== undefined) {
      const { entry, data } = held.skipped;
      answers.set(act, { result: 'bad', words: `left out: ${data.reason}`, ...(entry && { entry }) });
    } else if (held.done !== undefined && (state === 'done' || foundBad)) {
      const { entry, data } = held.done;
      answers.set(act, { result: foundBad ? 'bad' : 'good', words: answerWords(data.answer), ...(entry && { entry }) });
    }
  }
  return answers;
}

/** Cautions of these operations of the work plan, each once. */
export function cautionsOf(bench: Bench, operations: readonly string[]): readonly Caution[] {
  const all = workAt(bench)
    .plan.operations.filter(({ id }) => operations.includes(id))
    .flatMap(({ cautions }) => cautions);
  return [...new Set(all)];
}

/** "4 min", "1 h 05 min", "40 s" */
export function timeText(seconds: number): string {
  const whole = Math.round(Math.abs(seconds));
  if (whole < 60) return `${whole} s`;
  const minutes = Math.round(whole / 60);
  if (minutes < 60) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
}
