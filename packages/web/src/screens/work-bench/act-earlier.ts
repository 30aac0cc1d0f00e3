import type { OperationActsView, WorkActView } from '@gudgeon/core/workbench';
import { groupOf } from '../work/act-words.js';

const givenAt = ({ given }: WorkActView): string => given?.at ?? '';
const newestFirst = (a: WorkActView, b: WorkActView): number => givenAt(b).localeCompare(givenAt(a));

/** What the same act was answered with at other places, good ones only, newest first, each once. */
export function earlierWords({ chunks }: OperationActsView, act: WorkActView): readonly string[] {
  const group = groupOf(act);
  const words = chunks
    .flatMap(({ acts }) => acts)
    .filter((one) => one.id !== act.id && groupOf(one) === group && one.given?.result === 'good')
    .toReversed()
    .sort(newestFirst)
    .map(({ given }) => given?.words ?? '');
  return [...new Set(words)].filter((one) => one !== '');
}

/** The act of an operation that was recorded last and can still be struck out. */
export function recordedLast({ chunks }: OperationActsView): WorkActView | undefined {
  return chunks
    .flatMap(({ acts }) => acts)
    .filter(({ given, opens }) => given !== undefined && given.entry !== '' && opens?.answers !== true)
    .toReversed()
    .sort(newestFirst)[0];
}
