/** The overview: every subject with its verdict, and what is tried on the scratch copy. */
import type { Answered, AnsweredFigure, VerdictWord } from '../../assess/index.js';
import { assessmentOf } from '../assessment.js';
import type { Bench } from '../bench.js';
import type { CombinationView, Scratch, SubjectId } from '../combination-views.js';
import { worstVerdict } from '../finding-view.js';
import type { ShownIn } from '../measure-views.js';
import type { Standing } from '../standings.js';
import type { Caution } from '../views.js';
import { decidedView } from './decided-view.js';
import { isCombination } from './decision.js';
import { scratchRows } from './scratch-rows.js';
import { shownEnds, shownQuantity } from './shown.js';
import { missingOf } from './subject.js';
import { answerOfSubject } from './subject-answers.js';
import { SUBJECT_IDS, SUBJECTS } from './subjects.js';
import { type Tried, triedOf } from './tried.js';

/** The number by which a subject is known. */
const HEADLINES: Partial<Readonly<Record<SubjectId, string>>> = {
  compression: 'ratio',
  'valve-room': 'valve-room',
  springs: 'follow-margin',
  balance: 'primary-couple',
};

/** All subjects, each judged with the scratch copy laid over engine and log; without data a subject is `no data`, never in. */
export function combinationView(bench: Bench, scratch: Scratch, shownIn: ShownIn): CombinationView {
  const tried = triedOf(bench, scratch);
  const decided = decidedView(bench, shownIn);
  return {
    title: `Combination: ${bench.engine.name}`,
    subjects: SUBJECT_IDS.map((id) => ({ id, ...SUBJECTS[id], ...standingOf(bench, tried, id, shownIn) })),
    scratch: scratchRows(tried, scratch, shownIn),
    ...(decided && { decided }),
    cautions: CAUTIONS,
  };
}

const CAUTIONS: readonly Caution[] = [
  {
    word: 'NOTICE',
    can: 'Parts that clear on paper can touch in metal.',
    because: 'Every answer is as good as the figures that go in; where none is known it says so.',
    act: 'Check clearances with the real parts before anything turns; the maker’s manual outranks every computed figure.',
  },
];

function standingOf(
  bench: Bench,
  tried: Tried,
  id: SubjectId,
  shownIn: ShownIn,
): { readonly verdict?: VerdictWord; readonly words: string } {
  const answer = answerOfSubject(bench, tried, id);
  if (answer === undefined) return { words: '' };
  return { verdict: standing(id, answer), words: wordsOf(id, answer, shownIn) };
}

/** What is not known is not good: beside the number that the subject is about, no lesser one makes it so. */
function standing(id: SubjectId, answer: Answered): VerdictWord {
  const worst = verdictOf(answer);
  const headline = HEADLINES[id];
  const known = headline === undefined || answer.figures.some(({ key }) => key === headline);
  return worst === 'in' && !known ? 'no data' : worst;
}

/** The worst of what is held against a limit. Without any limit or number there is no verdict: no data is not good. */
function verdictOf({ figures }: Pick<Answered, 'figures'>): VerdictWord {
  return worstVerdict(figures.flatMap(({ verdict }) => verdict ?? []));
}

function wordsOf(id: SubjectId, answer: Answered, shownIn: ShownIn): string {
  const missing = missingOf(answer.missing).length;
  const lacking = missing === 0 ? [] : [`${missing} ${missing === 1 ? 'figure is' : 'figures are'} missing`];
  const headline = headlineOf(id, answer);
  return [...(headline.length === 0 ? [] : [headlineWords(headline, shownIn)]), ...lacking].join('; ');
}

/** What is out or near is told before the number by which the subject is known; where it has none, what the verdict rests on. */
function headlineOf(id: SubjectId, { figures }: Answered): readonly AnsweredFigure[] {
  const worst = verdictOf({ figures });
  const telling = worst === 'out' || worst === 'near' || HEADLINES[id] === undefined;
  const judged = telling ? figures.find(({ verdict }) => verdict === worst)?.key : undefined;
  const usual = figures.filter(({ key }) => key === HEADLINES[id]);
  if (judged === undefined || usual.some(({ verdict }) => verdict === worst)) return usual;
  return figures.filter(({ key, verdict }) => key === judged && verdict === worst);
}

/** "compression ratio 9.05 to 9.12, 8.80 to 9.40 wanted". */
function headlineWords(figures: readonly AnsweredFigure[], shownIn: ShownIn): string {
  const [first] = figures;
  if (first === undefined) return '';
  const { quantity, name, limit } = first;
  const values = figures.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const same = shownQuantity(quantity, low, shownIn) === shownQuantity(quantity, high, shownIn);
  const range = same ? shownQuantity(quantity, low, shownIn) : shownEnds(quantity, { low, high }, shownIn);
  return `${name} ${range}${limit === undefined ? '' : `, ${shownEnds(quantity, limit, shownIn)} wanted`}`;
}

/** How far the combination has come, for the list of ways: worked out on its own page, because all subjects together take a while. */
export function combinationStanding(bench: Bench): Standing {
  const choice = assessmentOf(bench).readings.choices.find(isCombination);
  const words = choice === undefined ? 'Will these parts work together?' : `Decided: ${choice.words}`;
  return { progress: { done: choice === undefined ? 0 : 1, of: 1, words }, finished: choice !== undefined };
}
