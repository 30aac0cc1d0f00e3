/** How far the places of one feature lie apart: masses, chambers, liners under one head. */
import { stepsBetween } from '../../calc/metrology/index.js';
import type { Measured, Place, Slot } from '../model.js';
import { formed } from './forms.js';
import { figureOf, type PlaceFigure, type Read } from './place-readings.js';
import { type Ingredient, keyOf, type SizeEntry, whole } from './size.js';

interface Between {
  readonly feature: string;
  readonly property: string;
  readonly title: string;
  /** Which of it is held against the limit. */
  readonly form: 'spread' | 'largest' | 'steps';
  readonly per: 'engine' | 'bank';
}
const row = (
  feature: string,
  property: string,
  title: string,
  form: Between['form'],
  per: Between['per'],
): Between => ({
  feature,
  property: `${feature}.${property}`,
  title,
  form,
  per,
});

const BETWEEN: readonly Between[] = [
  row('liner-protrusion', 'between', 'liner protrusion, spread under one head', 'spread', 'bank'),
  row('liner-protrusion', 'neighbours', 'liner protrusion, largest step between neighbours', 'steps', 'bank'),
  row('piston-protrusion', 'between', 'piston protrusion, spread over the cylinders', 'spread', 'engine'),
  row('piston-protrusion', 'largest', 'largest piston protrusion', 'largest', 'engine'),
  row('deck-clearance', 'between', 'deck clearance, spread over the cylinders', 'spread', 'engine'),
  row('chamber-volume', 'between', 'chamber volume, spread over the cylinders', 'spread', 'engine'),
  row('piston-mass', 'between', 'piston mass, spread over the cylinders', 'spread', 'engine'),
  row('pin-mass', 'between', 'pin mass, spread over the cylinders', 'spread', 'engine'),
  row('rod-mass', 'between', 'rod mass, spread over the cylinders', 'spread', 'engine'),
  row('rod-big-end-mass', 'between', 'big-end mass, spread over the cylinders', 'spread', 'engine'),
  row('rod-small-end-mass', 'between', 'small-end mass, spread over the cylinders', 'spread', 'engine'),
];

/** Places of a feature that are compared, with the name of the whole. */
function groupsOf(
  places: readonly Place[],
  per: Between['per'],
): readonly { readonly place: Place; readonly members: readonly Place[] }[] {
  const banks = [...new Set(places.map(({ bank }) => bank))];
  if (per === 'engine' || banks.length < 2)
    return [{ place: { id: 'all', name: 'all cylinders', stations: [] }, members: places }];
  return banks.map((bank) => ({
    place: { id: `${bank}`, name: `${bank} bank`, ...(bank !== undefined && { bank }), stations: [] },
    members: places.filter((place) => place.bank === bank),
  }));
}

export function betweenPlaces(read: Read): readonly SizeEntry[] {
  return BETWEEN.flatMap((between) => {
    const feature = read.feature(between.feature);
    if (feature === undefined) return [];
    return groupsOf(feature.places, between.per)
      .filter(({ members }) => members.length > 1)
      .map(({ place, members }) => spreadOf(between, feature.kind.measured, place, members, read));
  });
}

function spreadOf(
  { feature, property, title, form }: Between,
  measured: Measured,
  place: Place,
  members: readonly Place[],
  read: Read,
): SizeEntry {
  const figures = members.map((member) => figureOf(read.at(feature, member.id)!, 'mean', member.stations)!);
  const missing: Slot[] = figures.flatMap((figure) => figure.missing);
  const needed = figures.reduce((sum, figure) => sum + figure.needed, 0);
  const entry = { property, place, title, measured, sense: 'hole' as const, needed };
  if (missing.length > 0) return { ...entry, key: keyOf(property, place.id), missing };
  const { value, by, words } = compared(form, figures);
  const ingredients = figures.map(
    ({ known, readings, at }, index): Ingredient => ({
      name: at.place.name,
      words: readings.length === 1 ? '' : 'mean',
      known: known!,
      readings,
      factor: by[index]!,
    }),
  );
  return whole(entry, {
    value,
    ingredients,
    formula: words,
    sources: form === 'steps' ? LINERS : COMPARED,
    cautions: [],
  });
}
const COMPARED = ['metrology.repeats'] as const;
const LINERS = ['metrology.liner-protrusion'] as const;

function compared(form: Between['form'], figures: readonly PlaceFigure[]) {
  const values = figures.map(({ known }) => known!.value);
  if (form !== 'steps') return formed(form, [], values, undefined);
  const steps = stepsBetween(
    values.map((one) => [one]),
    'means',
  );
  const at = steps.indexOf(Math.max(...steps));
  const up = values[at + 1]! >= values[at]! ? 1 : -1;
  const by = values.map((_, index) => (index === at + 1 ? up : index === at ? -up : 0));
  return { value: steps[at]!, by, words: 'largest step between neighbours' };
}
