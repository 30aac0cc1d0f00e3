/** The decision about the combination that stands, and what is computed otherwise since. */
import type { Choice } from '../../assess/index.js';
import { assessmentOf } from '../assessment.js';
import { type Bench, givenBy } from '../bench.js';
import type { Scratch, SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { isCombination } from './decision.js';
import { seenAnswers } from './seen-answers.js';
import { triedOf } from './tried.js';

const NOTHING_TRIED: Scratch = new Map();
const kept = new WeakMap<Bench, SubjectView['decided']>();

/** Undefined where nothing was decided. It is held against the figures without the scratch copy. */
export function decidedView(bench: Bench, shownIn: ShownIn): SubjectView['decided'] {
  const choice = assessmentOf(bench).readings.choices.find(isCombination);
  if (choice === undefined) return undefined;
  const known = kept.get(bench);
  if (known !== undefined) return known;
  const { words, reason, entry, by, at } = choice;
  const view = {
    ...(givenBy(bench, entry) ?? { by, at, entry }),
    words,
    reason,
    differs: differences(bench, choice, shownIn),
  };
  kept.set(bench, view);
  return view;
}

/** Compared in the unit in which it was seen, which is the one that differs least. */
function differences(bench: Bench, choice: Choice, shownIn: ShownIn): readonly string[] {
  const units: readonly ShownIn[] = [shownIn, { length: shownIn.length === 'mm' ? 'in' : 'mm' }];
  const each = units.map((unit) => differencesIn(bench, choice, unit));
  return each.reduce((least, one) => (one.length < least.length ? one : least));
}

function differencesIn(bench: Bench, { figures }: Choice, shownIn: ShownIn): readonly string[] {
  const now = new Map(seenAnswers(bench, triedOf(bench, NOTHING_TRIED), shownIn).map(({ name, text }) => [name, text]));
  return figures.flatMap(({ name, text }) => {
    const fresh = now.get(name);
    if (fresh === text || text.includes(WAS)) return [];
    return [`${name}: ${text} when it was decided, ${fresh === undefined ? 'not computed' : fresh} now`];
  });
}
/** Marks a figure that the decision changed; it is no answer. */
export const WAS = ' (was ';
