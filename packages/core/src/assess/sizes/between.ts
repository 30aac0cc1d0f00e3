/** How far the places of one feature lie apart: masses, chambers, liners under one head. */
import { stepsBetween } from '../../calc/metrology/index.js';
import { BETWEEN, type Between } from '../features/index.js';
import type { Place } from '../model.js';
import { evenForm, type Formed, formed } from './forms.js';
import {
  type FormedBy,
  figureAt,
  keyOf,
  type LimitsFor,
  type PlannedPlace,
  type PlannedPlaces,
  wayOf,
} from './planned.js';

interface Group {
  readonly place: Place;
  readonly members: readonly PlannedPlace[];
}
/** Places of a feature that are compared, with the name of the whole. Neighbours stand in the order of the crank. */
function groupsOf(places: readonly PlannedPlace[], per: Between['per']): readonly Group[] {
  const banks = [...new Set(places.map(({ place }) => place.bank))];
  if (per === 'engine' || banks.length < 2)
    return [{ place: { id: 'all', name: 'all cylinders', stations: [] }, members: places }];
  return banks.map((bank) => ({
    place: { id: `${bank}`, name: `${bank} bank`, ...(bank !== undefined && { bank }), stations: [] },
    members: places.filter(({ place }) => place.bank === bank),
  }));
}

/** Spreads between the places of a plan. */
export const betweenPlaces = (places: PlannedPlaces, limitsFor: LimitsFor): readonly FormedBy[] =>
  BETWEEN.flatMap((between) =>
    groupsOf(places.of(between.features[0]!), between.per).flatMap((group) =>
      group.members.length > 1 ? (betweenIn(between, group, places, limitsFor) ?? []) : [],
    ),
  );

function betweenIn(
  { features, property, title, form }: Between,
  { place, members }: Group,
  places: PlannedPlaces,
  limitsFor: LimitsFor,
): FormedBy | undefined {
  const all = features.flatMap((feature) => members.map((member) => places.at(feature, member.place.id)));
  const figures = all.flatMap((one) => (one === undefined ? [] : (figureAt(one, 'mean', one.place.name) ?? [])));
  if (figures.length < features.length * members.length) return undefined;
  const way = wayOf({
    figures,
    combine: (values) => ofSums(values, members.length, form),
    formula:
      form === 'steps' ? 'largest step between neighbours' : form === 'spread' ? 'largest less smallest' : 'largest',
    sources: form === 'steps' ? ['metrology.liner-protrusion'] : ['metrology.repeats'],
    cautions: [],
  });
  return {
    key: keyOf(property, place.id),
    property,
    place,
    title,
    measured: members[0]!.kind.measured,
    sense: 'hole',
    ways: [way],
    limits: limitsFor(property, place),
  };
}
/** Figures come feature by feature; those of one place are added, and move the result alike. */
function ofSums(values: readonly number[], count: number, form: Between['form']): Formed {
  const sums = Array.from({ length: count }, (_, at) => {
    let sum = 0;
    for (let index = at; index < values.length; index += count) sum += values[index]!;
    return sum;
  });
  const { value, by } = form === 'steps' ? largestStep(sums) : formed(evenForm(form, count), sums);
  return { value, by: values.map((_, index) => by[index % count]!) };
}

function largestStep(values: readonly number[]): Formed {
  const steps = stepsBetween(
    values.map((one) => [one]),
    'means',
  );
  const at = steps.indexOf(Math.max(...steps));
  const up = values[at + 1]! >= values[at]! ? 1 : -1;
  return { value: steps[at]!, by: values.map((_, index) => (index === at + 1 ? up : index === at ? -up : 0)) };
}
