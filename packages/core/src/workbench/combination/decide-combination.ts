/** From the scratch copy to the log: the decision with the numbers that were seen, and each changed figure as stated from then on. */
import { figureKind, figureParts } from '../../engine/index.js';
import { done, formatQuantity, parseQuantity, refused } from '../../quantity/index.js';
import { FIGURE_UNITS, type NewEntry, type StatedReading } from '../../record/index.js';
import type { Bench } from '../bench.js';
import type { CombinationView, Scratch } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { type Proposal, propose } from '../propose.js';
import { WAS } from './decided-view.js';
import { COMBINATION } from './decision.js';
import { titleOfFigure } from './inputs.js';
import { scratchRows } from './scratch-rows.js';
import { seenAnswers } from './seen-answers.js';
import { shownWay } from './shown.js';
import { triedOf } from './tried.js';

/** What is about to be recorded, as the person sees it. */
export function combinationSeen(bench: Bench, scratch: Scratch, shownIn: ShownIn) {
  const tried = triedOf(bench, scratch);
  const changes = changesOf(scratchRows(tried, scratch, shownIn));
  return {
    words: changes.map(({ title, now }) => `${title} ${now}`).join(', '),
    changes: changes.map(({ title, now, was }) => ({ name: title, text: `${now}${WAS}${was})` })),
    answers: seenAnswers(bench, tried, shownIn),
  };
}

interface Change {
  readonly title: string;
  readonly now: string;
  readonly was: string;
}
/** Cylinders that get the same are told together: "head cut, cylinders 1, 3, 5, 7". */
function changesOf(rows: CombinationView['scratch']): readonly Change[] {
  const groups = new Map<string, (typeof rows)[number][]>();
  for (const row of rows) {
    const { key, place } = figureParts(row.key);
    const group = /^\d+$/.test(place ?? '') ? `${key} ${row.now}` : row.key;
    groups.set(group, [...(groups.get(group) ?? []), row]);
  }
  return [...groups.values()].map((group): Change => {
    const [first] = group;
    const { key } = figureParts(first!.key);
    const places = group.map((row) => figureParts(row.key).place);
    const title = group.length === 1 ? first!.title : `${titleOfFigure(key)}, cylinders ${places.join(', ')}`;
    const was = [...new Set(group.map((row) => (row.was === '' ? 'not known' : row.was)))].join(', ');
    return { title, now: first!.now, was };
  });
}

/** The entries for a decision on what is tried: the decision itself, then every changed figure. Refused without a change or a reason. */
export function proposeCombination(bench: Bench, scratch: Scratch, reason: string, shownIn: ShownIn): Proposal {
  if (scratch.size === 0) return refused('Nothing is changed on the scratch copy.');
  if (reason.trim() === '') return refused('Say why; the reason stands in the record.');
  const { words, changes, answers } = combinationSeen(bench, scratch, shownIn);
  const decided = propose(bench, {
    kind: 'decided',
    data: { ...COMBINATION, words, figures: [...changes, ...answers], orders: [], buys: [], reason: reason.trim() },
  });
  if (!decided.ok) return decided;
  const entries: NewEntry[] = [...decided.value];
  for (const [key, value] of scratch) {
    const reading = readingOf(key, value, shownIn);
    if (reading === undefined) return refused(`"${key}" is no figure of the combination.`);
    const stated = propose(bench, { kind: 'figure-stated', data: { key, reading, why: `decided: ${reason.trim()}` } });
    if (!stated.ok) return stated;
    entries.push(...stated.value);
  }
  return done(entries);
}

const MOST_PLACES = 9;
const ALIKE = 1e-9;

/** A tried value as text with as many places as give it back, and the value of that text. */
function readingOf(key: string, value: number, shownIn: ShownIn): StatedReading | undefined {
  const kind = figureKind(figureParts(key).key);
  if (kind === undefined) return undefined;
  if (kind.choices) return { text: kind.choices[value] ?? '', value, unit: '1' };
  const { unit, places } = shownWay(kind.quantity, shownIn);
  for (let more = places; ; more += 1) {
    const text = formatQuantity(kind.quantity, value, unit, more);
    const read = parseQuantity(kind.quantity, text);
    if (!read.ok) return undefined;
    const near = Math.abs(read.value.value - value) <= ALIKE * Math.max(Math.abs(value), Number.MIN_VALUE);
    if (near || more >= MOST_PLACES) return { text, value: read.value.value, unit: FIGURE_UNITS[kind.quantity] ?? '1' };
  }
}
