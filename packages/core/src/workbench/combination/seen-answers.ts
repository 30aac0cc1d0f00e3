/** The answers that are recorded with a decision: what is held against a limit, and the ratio and quench of every cylinder. */
import type { AnsweredFigure } from '../../assess/index.js';
import type { Bench } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import { answerRows } from './answers.js';
import { answerOfSubject } from './subject-answers.js';
import { SUBJECT_IDS } from './subjects.js';
import type { Tried } from './tried.js';

const ALWAYS: ReadonlySet<string> = new Set(['ratio', 'quench']);
const counts = ({ key, limit }: AnsweredFigure): boolean => limit !== undefined || ALWAYS.has(key);

export interface SeenAnswer {
  readonly name: string;
  readonly text: string;
}
export const seenAnswers = (bench: Bench, tried: Tried, shownIn: ShownIn): readonly SeenAnswer[] =>
  SUBJECT_IDS.flatMap((id) => {
    const answer = answerOfSubject(bench, tried, id);
    return answer === undefined ? [] : answerRows(answer, shownIn, counts);
  }).map(({ name, value, verdict }) => ({ name, text: verdict === undefined ? value : `${value}, ${verdict}` }));
