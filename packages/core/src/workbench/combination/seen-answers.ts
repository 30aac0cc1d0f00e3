/** The answers that are recorded with a decision: what is held against a limit, with ratio and quench; alike places told together. */
import type { AnsweredFigure, VerdictWord } from '../../assess/index.js';
import type { Bench } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import { shownEnds, shownQuantity } from './shown.js';
import { answerOfSubject } from './subject-answers.js';
import { SUBJECT_IDS } from './subjects.js';
import type { Tried } from './tried.js';

const ALWAYS: ReadonlySet<string> = new Set(['ratio', 'quench']);
const counts = ({ key, limit }: AnsweredFigure): boolean => limit !== undefined || ALWAYS.has(key);

export interface SeenAnswer {
  /** "compression ratio", "room to coil bind, intake". */
  readonly name: string;
  /** "8.83 to 8.87: IN", "3.1 to 3.7 mm: IN 14, NEAR 2". */
  readonly text: string;
}
export const seenAnswers = (bench: Bench, tried: Tried, shownIn: ShownIn): readonly SeenAnswer[] =>
  SUBJECT_IDS.flatMap((id) => {
    const answer = answerOfSubject(bench, tried, id);
    return answer === undefined ? [] : together(answer.figures.filter(counts), shownIn);
  });

function together(figures: readonly AnsweredFigure[], shownIn: ShownIn): readonly SeenAnswer[] {
  const groups = new Map<string, AnsweredFigure[]>();
  for (const one of figures) {
    const name = one.kind === undefined || one.name.includes(one.kind) ? one.name : `${one.name}, ${one.kind}`;
    groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  return [...groups].map(([name, group]) => ({ name, text: `${rangeOf(group, shownIn)}${verdictsOf(group)}` }));
}

function rangeOf(group: readonly AnsweredFigure[], shownIn: ShownIn): string {
  const { quantity } = group[0]!;
  const values = group.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const alike = shownQuantity(quantity, low, shownIn) === shownQuantity(quantity, high, shownIn);
  return alike ? shownQuantity(quantity, low, shownIn) : shownEnds(quantity, { low, high }, shownIn);
}

/** How many places have each verdict; the verdict alone where all have it. Capitals, because "8 in" would read as inches. */
function verdictsOf(group: readonly AnsweredFigure[]): string {
  const found = new Map<VerdictWord, number>();
  for (const { verdict } of group) if (verdict !== undefined) found.set(verdict, (found.get(verdict) ?? 0) + 1);
  if (found.size === 0) return '';
  const told = [...found].map(([verdict, many]) =>
    many === group.length ? verdict.toUpperCase() : `${verdict.toUpperCase()} ${many}`,
  );
  return `: ${told.join(', ')}`;
}
