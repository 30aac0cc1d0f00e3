/** What every decision shares: how it is asked, how figures are written, and what it says when data is lacking. */
import type { InspectionLimit, Window } from '../../engine/index.js';
import { limitsOf, newWindow, PROPERTIES, wearWindow } from '../limits/index.js';
import type {
  Alternative,
  Area,
  Assessment,
  Decision,
  Feature,
  Finding,
  Place,
  ShownFigure,
  Size,
  VerdictWord,
} from '../model.js';
import type { LengthWords } from './length-words.js';

/**
 * Computes the decisions of one kind for an engine as it has been measured so far: one for each scope (main journals, crankpins,
 * a bank), none where the engine has nothing of the kind.
 */
export type Decider = (assessment: Assessment, words: LengthWords) => readonly Decision[];

/** What stays the same whether a decision can be taken or waits. */
export interface Question {
  readonly id: string;
  readonly scope: string;
  readonly title: string;
  readonly question: string;
  readonly area: Area;
  readonly sources: readonly string[];
}

/** A decision for which figures are lacking: it names them, and offers nothing. */
export const waiting = (
  question: Question,
  missing: readonly string[],
  cautions: readonly string[] = [],
): Decision => ({ ...question, missing, alternatives: [], proof: '', working: [], cautions });

export interface Answer {
  /** Best first; those that cannot be taken come last. */
  readonly alternatives: readonly Alternative[];
  readonly proof: string;
  readonly working: readonly string[];
  readonly cautions: readonly string[];
}
/** A decision with its alternatives; the first that is possible is recommended, none where none is. */
export function decided(question: Question, answer: Answer): Decision {
  const alternatives = possibleFirst(answer.alternatives);
  const [best] = alternatives;
  return { ...question, missing: [], ...answer, alternatives, ...(best?.possible ? { recommended: best.id } : {}) };
}

/** The possible ones in their order, then the blocked ones in theirs. */
export const possibleFirst = (alternatives: readonly Alternative[]): readonly Alternative[] => [
  ...alternatives.filter(({ possible }) => possible),
  ...alternatives.filter(({ possible }) => !possible),
];

type Draft = Pick<Alternative, 'id' | 'words' | 'figures' | 'verdict'> & Partial<Alternative>;
/** An alternative that can be taken; what it lacks is empty. */
export const possible = (draft: Draft): Alternative => ({
  against: [],
  possible: true,
  orders: [],
  buys: [],
  ...draft,
});
/** An alternative that cannot be taken, shown with the reasons. */
export const blocked = (draft: Omit<Draft, 'against'> & Pick<Alternative, 'against'>): Alternative => ({
  ...possible(draft),
  possible: false,
  orders: [],
  buys: [],
});

export const figure = (name: string, text: string): ShownFigure => ({ name, text });

/** Worst of several verdicts: nothing counts as good while one is out, unknown or undecided. */
export const worstVerdict = (verdicts: readonly VerdictWord[]): VerdictWord =>
  (['out', 'check again', 'no data', 'near', 'in'] as const).find((word) => verdicts.includes(word)) ?? 'no data';

export const featureOf = ({ plan }: Assessment, id: string): Feature | undefined =>
  plan.features.find(({ kind }) => kind.id === id);
export const placesOf = (assessment: Assessment, feature: string): readonly Place[] =>
  featureOf(assessment, feature)?.places ?? [];

export const sizeKey = (property: string, place: string): string => `${property}@${place}`;
export const sizeAt = ({ sizes }: Assessment, property: string, place: string): Size | undefined =>
  sizes.get(sizeKey(property, place));
/** Looked up many times in one decision: findings by key, places by id. */
interface Index {
  readonly findings: ReadonlyMap<string, Finding>;
  readonly places: ReadonlyMap<string, Place>;
}
const INDEXES = new WeakMap<Assessment, Index>();
function indexOf(assessment: Assessment): Index {
  let index = INDEXES.get(assessment);
  if (index === undefined) {
    const places = assessment.plan.features.flatMap((feature) => feature.places);
    index = {
      findings: new Map(assessment.findings.map((one) => [one.key, one])),
      places: new Map(places.map((place) => [place.id, place])),
    };
    INDEXES.set(assessment, index);
  }
  return index;
}
export const findingAt = (assessment: Assessment, property: string, place: string): Finding | undefined =>
  indexOf(assessment).findings.get(sizeKey(property, place));

/** A window that a size is held against, with where it comes from. */
export interface Asked {
  readonly window: Window<number>;
  readonly limit: InspectionLimit;
}
/**
 * Limit of a size at a place; undefined where none is printed. Where the size is known, the row that it was held against (its own
 * grade); before that, the row of the sheet for the place.
 */
export function limitAt(
  assessment: Assessment,
  property: string,
  place: string,
  against: 'new' | 'wear',
): Asked | undefined {
  const held = findingAt(assessment, property, place)?.held.find((one) => one.against === against);
  return held ?? printedAt(assessment, property, place, against);
}

function printedAt(assessment: Assessment, property: string, id: string, against: 'new' | 'wear'): Asked | undefined {
  const place = indexOf(assessment).places.get(id) ?? {};
  const sense = PROPERTIES.get(property)?.sense ?? 'neither';
  const printed = limitsOf(assessment.engine, property, place).flatMap((limit): readonly Asked[] => {
    const window = against === 'new' ? newWindow(limit) : wearWindow(limit, sense);
    return window === undefined ? [] : [{ window, limit }];
  });
  const [first] = printed;
  const graded = printed.filter(({ limit }) => limit.applies?.grade !== undefined);
  // Before it is measured a part may be of any grade.
  return first && graded.length > 1
    ? { window: spanOf(graded.map(({ window }) => window)), limit: first.limit }
    : first;
}

/** From the lowest end to the highest; an open end stays open. */
function spanOf(windows: readonly Window<number>[]): Window<number> {
  const lows = windows.flatMap(({ low }) => low ?? []);
  const highs = windows.flatMap(({ high }) => high ?? []);
  return {
    ...(lows.length === windows.length && { low: Math.min(...lows) }),
    ...(highs.length === windows.length && { high: Math.max(...highs) }),
  };
}

/** "manual p. 4-38", or how far the figure can be trusted where no page is given. */
export const origin = ({ from }: { readonly from: InspectionLimit['from'] }): string => from.text;

/** Places whose size is still unknown, in words: "bore of cylinder 3". */
export function notMeasured(assessment: Assessment, feature: string, property: string): readonly string[] {
  const found = featureOf(assessment, feature);
  const places = found?.places.filter(({ id }) => sizeAt(assessment, property, id) === undefined) ?? [];
  return found === undefined ? [] : grouped(found.kind.one, places, found.places.length);
}

/** One line when all or many places lack it, else one each. */
function grouped(one: string, places: readonly Place[], all: number): readonly string[] {
  if (places.length === 0) return [];
  if (places.length === all && all > 1) return [`${one}: measure all ${all} places`];
  return places.map(({ name }) => `${one} of ${name}: measure it`);
}

/** Names as a person lists them. */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** "cylinders 1, 3 and 5", "main 2": places of one kind by their numbers, in order. */
export function placesText(places: readonly Pick<Place, 'name'>[]): string {
  const parted = places.map(({ name }) => /^(\D+) (\d+)$/.exec(name));
  const [word] = parted.map((match) => match?.[1]);
  if (places.length < 2 || word === undefined || parted.some((match) => match?.[1] !== word))
    return listed(places.map(({ name }) => name));
  const numbers = parted.map((match) => Number(match?.[2])).toSorted((a, b) => a - b);
  return `${word}s ${listed(numbers.map(String))}`;
}

/** Texts of places, those that read alike said once: "98.620 mm (cylinders 1 and 3); 98.640 mm (cylinder 5)". */
export function byText(texts: readonly { readonly place: Pick<Place, 'name'>; readonly text: string }[]): string {
  const distinct = [...new Set(texts.map(({ text }) => text))];
  if (distinct.length === 1) return distinct[0] ?? '';
  return distinct
    .map((text) => `${text} (${placesText(texts.filter((one) => one.text === text).map(({ place }) => place))})`)
    .join('; ');
}
