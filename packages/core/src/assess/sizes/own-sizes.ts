/** Sizes that the readings of one place give: mean, largest, out-of-round, taper. */
import { senseOf } from '../features/index.js';
import type { SizeRule } from '../model.js';
import { isRuleOf } from './forms.js';
import {
  type FormedBy,
  figureAt,
  keyOf,
  type LimitsFor,
  type PlannedPlace,
  type PlannedPlaces,
  wayOf,
} from './planned.js';

/** Sizes of every place of a plan, in its order. */
export const ownSizes = (places: PlannedPlaces, limitsFor: LimitsFor): readonly FormedBy[] =>
  places.all.flatMap((place) => place.kind.sizes.flatMap((rule) => ownSize(place, rule, limitsFor) ?? []));

function ownSize(at: PlannedPlace, size: SizeRule, limitsFor: LimitsFor): FormedBy | undefined {
  const { kind, place } = at;
  const { property, title, form, stations } = size;
  const limits = limitsFor(property, place);
  const shape = form === 'out-of-round' || form === 'taper' ? form : undefined;
  const rule = shape && limits.find((limit) => limit.rule !== undefined)?.rule;
  const named = stations && new Set(stations);
  const figure = figureAt(at, form, title, named && (({ id }) => named.has(id)), rule);
  if (figure === undefined) return undefined;
  const way = wayOf({
    figures: [figure],
    formula: figure.words,
    sources: shape === undefined ? SIZE : SHAPE,
    cautions: unusualRule(shape, rule),
    ends: form === 'mean' && kind.measured === 'length' && kind.sense !== 'neither' && figure.stations.length > 1,
  });
  return {
    key: keyOf(property, place.id),
    property,
    place,
    title,
    measured: kind.measured,
    sense: senseOf(kind, size),
    ways: [way],
    limits,
  };
}
const SIZE = ['metrology.repeats', 'metrology.size-at-reference'] as const;
const SHAPE = ['metrology.bore-shape'] as const;

function unusualRule(shape: 'out-of-round' | 'taper' | undefined, rule: string | undefined): readonly string[] {
  if (shape === undefined || rule === undefined || isRuleOf(shape, rule)) return [];
  return [`"${rule}" is no rule of ${shape}: the usual one is used`];
}
