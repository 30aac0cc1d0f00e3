/** Clearances and other sizes of parts together, for every place that has them. */
import { crankpinsOf } from '../features/journals.js';
import type { Place } from '../model.js';
import type { Bench } from './corrected.js';
import type { Form } from './forms.js';
import { PAIRINGS, type PairInput, type Pairing, type PairWay } from './pairings.js';
import { figureOf, type PlaceFigure, type Read } from './place-readings.js';
import { type Ingredient, keyOf, type RuleOf, type SizeEntry, whole } from './size.js';

export function pairSizes(bench: Bench, read: Read, ruleOf: RuleOf): readonly SizeEntry[] {
  const pins = pinsOf(bench, read);
  const entries: SizeEntry[] = [];
  for (const pairing of PAIRINGS) {
    const per = pairing.per.find((feature) => read.feature(feature) !== undefined);
    if (per === undefined) continue;
    for (const place of read.feature(per)!.places) {
      const entry = pairAt(pairing, place, read, pins, ruleOf(pairing.property, place));
      if (entry !== undefined) entries.push(entry);
    }
  }
  return entries;
}

/** Place of the crankpin of each cylinder. */
function pinsOf({ engine }: Bench, read: Read): ReadonlyMap<number, string> {
  const places = read.feature('crankpin')?.places ?? [];
  const pins = new Map<number, string>();
  for (const { number, cylinders } of crankpinsOf(engine)) {
    const place = places.find(({ journal }) => journal === number);
    if (place !== undefined) for (const cylinder of cylinders) pins.set(cylinder, place.id);
  }
  return pins;
}

interface TriedWay {
  readonly way: PairWay;
  readonly figures: readonly PlaceFigure[];
  readonly missing: readonly string[];
  readonly needed: number;
}

/** The first way that is whole; else the one of which most has been read, so that it says what is left. */
function pairAt(
  pairing: Pairing,
  place: Place,
  read: Read,
  pins: ReadonlyMap<number, string>,
  rule: string | undefined,
): SizeEntry | undefined {
  const tried = pairing.ways.flatMap((way) => tryWay(way, place, read, pins, rule) ?? []);
  const best = tried.find(({ missing }) => missing.length === 0) ?? farthest(tried);
  if (best === undefined) return undefined;
  const { property, title, sense } = pairing;
  const entry = { property, place, title, measured: 'length' as const, sense, needed: best.needed };
  if (best.missing.length > 0) return { ...entry, key: keyOf(property, place.id), missing: best.missing };
  const { way, figures } = best;
  const values = figures.map(({ known }) => known!.value);
  const slopes = slopesOf(way.value, values);
  const ingredients = figures.map(
    ({ known, readings, words }, index): Ingredient => ({
      name: way.inputs[index]!.name,
      words,
      known: known!,
      readings,
      factor: slopes[index]!,
    }),
  );
  return whole(entry, {
    value: way.value(values),
    ingredients,
    formula: way.formula,
    sources: way.sources,
    cautions: way.cautions ?? [],
  });
}

function farthest(tried: readonly TriedWay[]): TriedWay | undefined {
  let best = tried[0];
  for (const one of tried) if (best !== undefined && share(one) < share(best)) best = one;
  return best;
}
const share = ({ missing, needed }: TriedWay): number => missing.length / needed;

function tryWay(
  way: PairWay,
  place: Place,
  read: Read,
  pins: ReadonlyMap<number, string>,
  rule: string | undefined,
): TriedWay | undefined {
  const figures: PlaceFigure[] = [];
  for (const input of way.inputs) {
    const figure = inputAt(input, place, read, pins, rule);
    if (figure === undefined) return undefined;
    figures.push(figure);
  }
  return {
    way,
    figures,
    missing: figures.flatMap(({ missing }) => missing),
    needed: figures.reduce((sum, { needed }) => sum + needed, 0),
  };
}

/** Figures of a hole that a maker may name instead of the usual one. */
const FIGURES: ReadonlySet<string> = new Set<Form>(['mean', 'smallest', 'largest']);

function inputAt(
  { feature, form, only, at }: PairInput,
  place: Place,
  read: Read,
  pins: ReadonlyMap<number, string>,
  rule: string | undefined,
): PlaceFigure | undefined {
  const id = at === 'crankpin' ? place.cylinder !== undefined && pins.get(place.cylinder) : place.id;
  const found = id === undefined || id === false ? undefined : read.at(feature, id);
  if (found === undefined) return undefined;
  const chosen = only === undefined ? [] : found.place.stations.filter(only);
  const stations = chosen.length === 0 ? found.place.stations : chosen;
  const named = found.kind.sense === 'hole' && rule !== undefined && FIGURES.has(rule) ? (rule as Form) : form;
  return figureOf(found, named, stations);
}

/** Share of a figure by which it is moved to see what the result does. */
const STEP = 1e-4;
/** Slopes of a formula at its figures. The pairs are sums and differences, for which this is exact but for rounding. */
function slopesOf(value: PairWay['value'], figures: readonly number[]): readonly number[] {
  const step = STEP * Math.max(...figures.map(Math.abs)) || STEP;
  const moved = [...figures];
  return figures.map((figure, index) => {
    moved[index] = figure + step;
    const up = value(moved);
    moved[index] = figure - step;
    const down = value(moved);
    moved[index] = figure;
    return Math.round(((up - down) / (2 * step)) * ROUND) / ROUND;
  });
}
const ROUND = 1e9;
