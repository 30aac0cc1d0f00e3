/** Decisions as a person sees them: alternatives side by side, what was decided, and what is computed otherwise since. */
import {
  type Alternative,
  type Assessment,
  type BuyLine,
  type Choice,
  type Decision,
  decisionsOf,
  type OrderLine,
  returnedWork,
} from '../assess/index.js';
import type { Window } from '../engine/index.js';
import { assessmentOf } from './assessment.js';
import { type Bench, givenBy } from './bench.js';
import { isCombination } from './combination/decision.js';
import { sourceLines } from './finding-words.js';
import type { AlternativeView, DecisionView, ShownIn } from './measure-views.js';
import { shownWindow } from './shown-figures.js';

type Unit = ShownIn['length'];
const computed = new WeakMap<Assessment, Map<Unit, readonly Decision[]>>();

/** The decisions of this moment with lengths in the device's unit; computed once for each moment and unit. */
export function decisionsAt(bench: Bench, { length }: ShownIn): readonly Decision[] {
  const assessment = assessmentOf(bench);
  const known = computed.get(assessment) ?? new Map<Unit, readonly Decision[]>();
  computed.set(assessment, known);
  const before = known.get(length);
  if (before !== undefined) return before;
  const made = decisionsOf(assessment, length);
  known.set(length, made);
  return made;
}

/** Every decision that this engine asks for, and every one that was taken and is not asked for any more. */
export function decisionViews(bench: Bench, shownIn: ShownIn): readonly DecisionView[] {
  const asked = decisionsAt(bench, shownIn);
  const { choices } = assessmentOf(bench).readings;
  const gone = choices.filter((choice) => !isCombination(choice) && !asked.some((one) => isOf(one, choice)));
  return [...asked.map((one) => decisionView(bench, one, shownIn)), ...gone.map((choice) => goneView(bench, choice))];
}

/** One decision; undefined where this engine does not ask for it and nobody has taken it. */
export const decisionViewOf = (
  bench: Bench,
  wanted: { readonly id: string; readonly scope: string },
  shownIn: ShownIn,
): DecisionView | undefined =>
  decisionViews(bench, shownIn).find((one) => one.id === wanted.id && one.scope === wanted.scope);

const isOf = (one: Pick<Decision, 'id' | 'scope'>, choice: Choice): boolean =>
  one.id === choice.decision && one.scope === choice.scope;

function decisionView(bench: Bench, decision: Decision, shownIn: ShownIn): DecisionView {
  const assessment = assessmentOf(bench);
  const choice = assessment.readings.choices.find((one) => isOf(decision, one));
  const done = choice !== undefined && workIsBack(assessment, choice);
  const differs = choice && !done ? differences(bench, choice) : [];
  const { alternatives, recommended, sources, cautions, ...same } = decision;
  return {
    ...same,
    state: stateOf(decision, choice, differs),
    alternatives: alternatives.map((one) => alternativeView(assessment, one, recommended, shownIn)),
    sources: sourceLines(sources),
    cautions: done ? [WORK_IS_BACK, ...cautions] : cautions,
    ...(choice && { decided: decidedOf(bench, choice, differs) }),
  };
}

const WORK_IS_BACK =
  'What it ordered has come back: the work is held against the order, and no longer compared with what is computed now.';
/** Readings after the work are those of other parts than were decided about. */
const workIsBack = (assessment: Assessment, choice: Choice): boolean =>
  choice.orders.some((line) =>
    returnedWork(assessment, line, choice)?.places.some(({ state }) => state === 'to-measure' || state === 'measured'),
  );

function stateOf(decision: Decision, choice: Choice | undefined, differs: readonly string[]): DecisionView['state'] {
  if (choice !== undefined) return differs.length > 0 ? 'changed' : 'decided';
  return decision.missing.length > 0 ? 'waiting' : 'open';
}

function decidedOf(bench: Bench, choice: Choice, differs: readonly string[]): NonNullable<DecisionView['decided']> {
  const { alternative, words, reason, entry, by, at } = choice;
  return { ...(givenBy(bench, entry) ?? { by, at, entry }), alternative, words, reason, differs };
}

/** A choice about something that the engine no longer asks, e.g. after its sheet was changed: it stays to be seen. */
function goneView(bench: Bench, choice: Choice): DecisionView {
  const differs = ['This is no longer asked: sheet or readings have changed since it was decided.'];
  return {
    id: choice.decision,
    scope: choice.scope,
    title: choice.decision.replaceAll('-', ' '),
    question: '',
    area: 'assembly',
    state: 'changed',
    missing: [],
    alternatives: [],
    proof: '',
    working: [],
    sources: [],
    cautions: [],
    decided: decidedOf(bench, choice, differs),
  };
}

const UNITS: readonly Unit[] = ['mm', 'in'];

/**
 * What is computed now otherwise than it was seen. Texts are compared in the unit in which they were seen, which is the one
 * that differs least: another unit on this device is no difference.
 */
function differences(bench: Bench, choice: Choice): readonly string[] {
  const each = UNITS.map((length) => differencesIn(decisionsAt(bench, { length }), choice));
  return each.reduce((least, one) => (one.length < least.length ? one : least));
}

function differencesIn(decisions: readonly Decision[], choice: Choice): readonly string[] {
  const now = decisions.find((one) => isOf(one, choice));
  if (now === undefined) return ['This is no longer asked.'];
  if (now.missing.length > 0) return [`It cannot be computed now: ${now.missing.join('; ')}`];
  const same = now.alternatives.find((one) => one.id === choice.alternative);
  if (same === undefined) return [`"${choice.words}" is no longer among the alternatives.`];
  const blocked = same.possible ? [] : [`It cannot be taken now: ${same.against.join('; ')}`];
  return [...blocked, ...figuresApart(same, choice), ...ordersApart(same, choice)];
}

function figuresApart(now: Alternative, { figures }: Choice): readonly string[] {
  const changed = figures.flatMap(({ name, text }) => {
    const figure = now.figures.find((one) => one.name === name);
    if (figure === undefined) return [`${name}: ${text} when it was decided, not computed now`];
    return figure.text === text ? [] : [`${name}: ${text} when it was decided, ${figure.text} now`];
  });
  const fresh = now.figures.filter(({ name }) => figures.every((one) => one.name !== name));
  return [...changed, ...fresh.map(({ name, text }) => `${name}: ${text} now, not shown when it was decided`)];
}

/** The order that stands is the one that was decided; a target that would be another now is said. */
function ordersApart(now: Alternative, { orders, buys }: Choice): readonly string[] {
  const other = orders.filter((line) => {
    const fresh = now.orders.find((one) => one.id === line.id);
    return fresh === undefined || targetsKey(line) !== targetsKey(fresh);
  });
  return [
    ...other.map(({ operation, part }) => `The order would have other targets now: ${operation}, ${part}`),
    ...(buysKey(buys) === buysKey(now.buys) ? [] : ['The parts to buy would be others now.']),
  ];
}
const windowKey = (window: Window<number> | undefined) => [window?.low ?? null, window?.high ?? null];
const targetsKey = ({ target, targets = [] }: OrderLine): string =>
  JSON.stringify([windowKey(target), targets.map(({ place, window }) => [place, windowKey(window)])]);
const buysKey = (buys: readonly BuyLine[]): string =>
  JSON.stringify(buys.map(({ part, size, count }) => [part, size, count]));

function alternativeView(
  assessment: Assessment,
  alternative: Alternative,
  recommended: string | undefined,
  shownIn: ShownIn,
): AlternativeView {
  const { orders, buys, ...same } = alternative;
  return {
    ...same,
    recommended: alternative.id === recommended,
    orders: orders.map((line) => orderWords(assessment, line, shownIn)),
    buys: buys.map(buyWords),
  };
}

/** Places as a person lists them: "all 8", "cylinders 7 and 8", "left deck, right deck". */
function placeNames({ plan }: Assessment, { property = '' }: OrderLine, places: readonly string[]): string {
  const feature = plan.features.find(({ kind }) => kind.id === property.split('.')[0]);
  if (feature === undefined) return places.join(', ');
  if (places.length === feature.places.length && places.length > 1) return `all ${places.length}`;
  const names = places.map((place) => feature.places.find((one) => one.id === place)?.name ?? place);
  return numbered(names) ?? names.join(', ');
}

/** "cylinders 1, 3 and 5" of names that differ in their number alone. */
function numbered(names: readonly string[]): string | undefined {
  const found = names.map((name) => /^(\D+) (\d+)$/.exec(name));
  const words = new Set(found.map((one) => one?.[1]));
  const [word] = words;
  if (names.length < 2 || words.size > 1 || word === undefined) return undefined;
  const numbers = found.map((one) => Number(one?.[2])).sort((a, b) => a - b);
  return `${word}s ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}

/** "bore and hone to +0.500 mm, cylinder block: all 8 99.103 to 99.112 mm"; places with targets of their own stand apart. */
function orderWords(assessment: Assessment, line: OrderLine, shownIn: ShownIn): string {
  const { operation, part, places, target, targets = [], measured = 'length' } = line;
  const groups = new Map<string, string[]>();
  for (const { place, window } of targets) {
    const text = shownWindow(measured, window, shownIn);
    groups.set(text, [...(groups.get(text) ?? []), place]);
  }
  if (groups.size === 0) groups.set(target === undefined ? '' : shownWindow(measured, target, shownIn), [...places]);
  const parts = [...groups].map(([text, of]) => `${placeNames(assessment, line, of)} ${text}`.trim());
  const where = parts.filter((one) => one !== '').join('; ');
  return where === '' ? `${operation}, ${part}` : `${operation}, ${part}: ${where}`;
}

/** "8 × piston Q51-310A-50, 0.50 mm (cylinders 1 to 8)". */
const buyWords = ({ count, part, partNumber, size, for: use }: BuyLine): string =>
  `${count} × ${part}${partNumber === undefined ? '' : ` ${partNumber}`}, ${size} (${use})`;
