/** A size put together: value, doubt, and what a person sees when the number is opened. */
import type { Measured, Place, Size, Slot } from '../model.js';
import { type Cause, causesOf, doubtOf, type Known, type Weighted } from './causes.js';
import { type Corrected, disagrees } from './corrected.js';
import { readingLine, sure, unitOf } from './words.js';

/** A size whose doubt is known. */
export interface SureSize extends Size {
  readonly u: number;
}
/** A size of the plan, whether it can be formed yet or not. */
export interface SizeEntry {
  readonly key: string;
  readonly property: string;
  readonly place: Place;
  readonly title: string;
  readonly measured: Measured;
  /** Whether wear makes it larger (`hole`) or smaller (`shaft`). */
  readonly sense: 'hole' | 'shaft' | 'neither';
  readonly size?: SureSize;
  /** Slots still to read; empty with a size. */
  readonly missing: readonly Slot[];
  /** How many slots it needs in all. */
  readonly needed: number;
  /** The size as each repeat of the slot that differs most would give it, and how far they may differ. */
  readonly disagreement?: Disagreement;
}
export interface Disagreement {
  readonly slot: Slot;
  readonly name: string;
  readonly readings: readonly number[];
  readonly allowed: number;
}
export const keyOf = (property: string, place: string): string => `${property}@${place}`;

/** One figure that a size is made of, with its own line of working. */
export interface Ingredient {
  readonly name: string;
  readonly words: string;
  readonly known: Known;
  readonly readings: readonly Corrected[];
  /** Change of the size for one unit of it. */
  readonly factor: number;
}
export interface SizeIdea {
  readonly property: string;
  readonly place: Place;
  readonly title: string;
  readonly measured: Measured;
  readonly value: number;
  readonly ingredients: readonly Ingredient[];
  /** "housing less both walls less journal"; empty where the one ingredient is the size. */
  readonly formula: string;
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
}

/** Value and doubt at once; the lines that only an opened number shows are made when it is opened. */
export function sizeOf(idea: SizeIdea): SureSize {
  const { property, place, title, measured, value, ingredients } = idea;
  const causes =
    ingredients.length === 1 && ingredients[0]!.factor === 1
      ? ingredients[0]!.known.causes
      : causesOf(ingredients.map(({ factor, known }): Weighted => [factor, known]));
  const u = doubtOf(causes);
  let parts: Size['parts'] | undefined;
  let working: readonly string[] | undefined;
  let cautions: readonly string[] | undefined;
  return {
    key: keyOf(property, place.id),
    property,
    place: place.id,
    title,
    measured,
    value,
    u,
    get parts() {
      parts ??= partsOf(causes);
      return parts;
    },
    get working() {
      working ??= workingOf(idea, u);
      return working;
    },
    sources: idea.sources,
    get cautions() {
      cautions ??= cautionsOf(idea, causes);
      return cautions;
    },
  };
}

const partsOf = (causes: readonly Cause[]): Size['parts'] =>
  causes.map(({ source, sensitivity }) => ({ key: source.key, name: source.name, sensitivity, u: source.u }));

function workingOf({ measured, title, place, value, ingredients, formula }: SizeIdea, u: number): readonly string[] {
  const all = ingredients.flatMap(({ readings }) => readings);
  const unit = unitOf(measured, all);
  const lines = ingredients.flatMap(({ name, words, known, readings }) => {
    const read = readings.map((one) => readingLine(measured, one, unit));
    const own = words === '' && readings.length === 1;
    return own && formula === ''
      ? read
      : [
          ...read,
          `${name}${words === '' ? '' : `, ${words}`}: ${sure(measured, known.value, doubtOf(known.causes), unit)}`,
        ];
  });
  const result = `${title}, ${place.name}${formula === '' ? '' : ` = ${formula}`}: ${sure(measured, value, u, unit)} (k = 2)`;
  return [...lines, result];
}

/** Share of the variance from which the setting of a gauge is worth a caution. */
const MOST_OF_IT = 0.5;

function cautionsOf({ ingredients, cautions }: SizeIdea, causes: readonly Cause[]): readonly string[] {
  const told = new Set(cautions);
  for (const { readings } of ingredients)
    for (const one of readings) for (const caution of one.cautions) told.add(caution);
  const variances = causes.map(({ source, sensitivity }) => (source.u * sensitivity) ** 2);
  const whole = variances.reduce((sum, one) => sum + one, 0);
  causes.forEach(({ source }, at) => {
    if (source.key.startsWith('gauge/') && variances[at]! > MOST_OF_IT * whole)
      told.add(`${source.name} makes most of the doubt: check it against a standard`);
  });
  return [...told];
}

/**
 * Repeats that differ by more than they may: the size as each of them would make it. A reading of no weight at present counts as if it had
 * one: read again, it may decide.
 */
export function disagreementOf(value: number, readings: readonly Corrected[]): Disagreement | undefined {
  let worst: Corrected | undefined;
  let most = 0;
  for (const one of readings) {
    if (one.repeats.length < 2 || !disagrees(one)) continue;
    const excess = Math.max(...one.repeats) - Math.min(...one.repeats) - one.allowed;
    if (worst === undefined || excess > most) [worst, most] = [one, excess];
  }
  if (worst === undefined) return undefined;
  const { repeats, allowed, slot, name, value: middle } = worst;
  return { slot, name, allowed, readings: repeats.map((one) => value + one - middle) };
}

/** An entry that is whole: its size, and what its repeats say. */
export function whole(
  entry: Omit<SizeEntry, 'key' | 'missing' | 'size' | 'disagreement'>,
  idea: Pick<SizeIdea, 'value' | 'ingredients' | 'formula' | 'sources' | 'cautions'>,
): SizeEntry {
  const { property, place, title, measured } = entry;
  const size = sizeOf({ property, place, title, measured, ...idea });
  const disagreement = disagreementOf(
    size.value,
    idea.ingredients.flatMap(({ readings }) => readings),
  );
  return { ...entry, key: size.key, missing: [], size, ...(disagreement !== undefined && { disagreement }) };
}

/** Which rule of the maker holds for a size at a place. */
export type RuleOf = (property: string, place: Place) => string | undefined;
