/** Sizes that the readings of one place give: mean, largest, out-of-round, taper. */
import type { FeatureKind, SizeRule } from '../model.js';
import type { Bench } from './corrected.js';
import { ruleFor } from './forms.js';
import { figureOf, type PlaceFigure, type PlaceReadings, type Read, stationsOf } from './place-readings.js';
import { keyOf, type RuleOf, type SizeEntry, whole } from './size.js';
import { materialOf } from './warmth.js';

export function ownSizes(bench: Bench, read: Read, ruleOf: RuleOf): readonly SizeEntry[] {
  const entries: SizeEntry[] = [];
  for (const { kind, places } of read.plan.features) {
    const material = materialCaution(bench, kind);
    for (const place of places) {
      const at = read.at(kind.id, place.id)!;
      for (const rule of kind.sizes) {
        const entry = ownSize(at, rule, ruleOf, material);
        if (entry !== undefined) entries.push(entry);
      }
    }
  }
  return entries;
}

function ownSize(
  at: PlaceReadings,
  size: SizeRule,
  ruleOf: RuleOf,
  material: readonly string[],
): SizeEntry | undefined {
  const { kind, place } = at;
  const { property, title, form, stations } = size;
  const shape = form === 'out-of-round' || form === 'taper' ? form : undefined;
  const rule = shape === undefined ? undefined : ruleOf(property, place);
  const figure = figureOf(at, form, stationsOf(place, stations), rule);
  if (figure === undefined) return undefined;
  const { known, readings, words, missing, needed } = figure;
  const entry = { property, place, title, measured: kind.measured, sense: senseOf(kind, size), needed };
  if (known === undefined) return { ...entry, key: keyOf(property, place.id), missing };
  return whole(entry, {
    value: known.value,
    ingredients: [{ name: title, words, known, readings, factor: 1 }],
    formula: words,
    sources: shape === undefined ? SIZE : SHAPE,
    cautions: [...unusualRule(shape, rule), ...(isWarm(figure) ? material : [])],
  });
}
const SIZE = ['metrology.repeats', 'metrology.size-at-reference'] as const;
const SHAPE = ['metrology.bore-shape'] as const;

/** Out-of-round, taper and spread wear in no sense of their own: they only grow. */
const senseOf = (kind: FeatureKind, { form }: SizeRule): FeatureKind['sense'] =>
  form === 'out-of-round' || form === 'taper' || form === 'spread' ? 'hole' : kind.sense;

function unusualRule(shape: 'out-of-round' | 'taper' | undefined, rule: string | undefined): readonly string[] {
  if (shape === undefined || rule === undefined || ruleFor(shape, rule).stated) return [];
  return [`"${rule}" is no rule of ${shape}: the usual one is used`];
}

/** Where the temperature is taken into account with a material that the sheet does not name, the size says so. */
function materialCaution(bench: Bench, kind: FeatureKind): readonly string[] {
  if (kind.material === undefined) return [];
  const { name, assumed } = materialOf(bench.engine, kind);
  return assumed ? [`the sheet names no material of the ${kind.material}: ${name} taken`] : [];
}
const isWarm = ({ readings }: PlaceFigure): boolean =>
  readings.some(({ taken }) => taken.some(({ temperature }) => temperature !== undefined));
