/** Clearances and other sizes of parts together, for every place that has them. */
import type { Engine } from '../../engine/index.js';
import { crankpinsOf } from '../features/journals.js';
import type { Place } from '../model.js';
import type { Form } from './forms.js';
import { PAIRINGS, type PairInput, type Pairing, type PairWay } from './pairings.js';
import {
  type FormedBy,
  figureAt,
  keyOf,
  type LimitsFor,
  type PlannedFigure,
  type PlannedPlaces,
  type PlannedWay,
  wayOf,
} from './planned.js';

/** Every pair that a plan has the parts for. */
export function pairSizes(engine: Engine, places: PlannedPlaces, limitsFor: LimitsFor): readonly FormedBy[] {
  const pins = pinsOf(engine, places);
  return PAIRINGS.flatMap((pairing) => {
    const per = pairing.per.map((feature) => places.of(feature)).find((found) => found.length > 0) ?? [];
    return per.flatMap(({ place }) => pairAt(pairing, place, places, pins, limitsFor) ?? []);
  });
}

/** Place of the crankpin of each cylinder. */
function pinsOf(engine: Engine, places: PlannedPlaces): ReadonlyMap<number, string> {
  const pins = new Map<number, string>();
  for (const { number, cylinders } of crankpinsOf(engine)) {
    const found = places.of('crankpin').find(({ place }) => place.journal === number);
    if (found !== undefined) for (const cylinder of cylinders) pins.set(cylinder, found.place.id);
  }
  return pins;
}

function pairAt(
  pairing: Pairing,
  place: Place,
  places: PlannedPlaces,
  pins: ReadonlyMap<number, string>,
  limitsFor: LimitsFor,
): FormedBy | undefined {
  const { property, title, sense } = pairing;
  const limits = limitsFor(property, place);
  const rule = limits.find((limit) => limit.rule !== undefined)?.rule;
  const figureFor = (input: PairInput) => {
    const id =
      input.at === 'crankpin' ? (place.cylinder === undefined ? undefined : pins.get(place.cylinder)) : place.id;
    const found = id === undefined ? undefined : places.at(input.feature, id);
    return found && figureAt(found, input.form, input.name, input.only);
  };
  const ways = pairing.ways.flatMap((way) => {
    const asked = byRule(way, rule);
    return plannedWay(asked, asked.inputs.map(figureFor)) ?? [];
  });
  if (ways.length === 0) return undefined;
  return { key: keyOf(property, place.id), property, place, title, measured: 'length', sense, ways, limits };
}

/** Figures of a hole that a maker may name instead of the usual one. */
const FIGURES: ReadonlySet<string> = new Set<Form>(['mean', 'smallest', 'largest']);

/** A way with the figure of its hole that the maker names; the hole is its first input, and single readings have one figure only. */
function byRule(way: PairWay, rule: string | undefined): PairWay {
  const [hole, ...shafts] = way.inputs;
  if (rule === undefined || !FIGURES.has(rule) || hole === undefined || shafts.length === 0 || rule === hole.form)
    return way;
  const bare = hole.name.replace(/ at its .*$/, '');
  const name = rule === 'mean' ? `mean ${bare}` : `${bare} at its ${rule}`;
  return {
    ...way,
    inputs: [{ ...hole, form: rule as Form, name }, ...shafts],
    formula: way.formula.replace(hole.name, name),
  };
}

function plannedWay(way: PairWay, figures: readonly (PlannedFigure | undefined)[]): PlannedWay | undefined {
  const known = figures.filter((figure) => figure !== undefined);
  if (known.length < figures.length) return undefined;
  const by = weightsOf(way, known.length);
  return wayOf({
    figures: known,
    combine: (values) => ({ value: way.value(values), by }),
    formula: way.formula,
    sources: way.sources,
    cautions: way.cautions ?? [],
    negative: way.negative,
    ...(way.ends !== undefined && { ends: way.ends }),
  });
}

/** The pairs are sums and differences: what one unit of each figure does to nothing is its weight. */
const weightsOf = ({ value }: PairWay, count: number): readonly number[] =>
  Array.from({ length: count }, (_, one) => value(Array.from({ length: count }, (__, at) => (at === one ? 1 : 0))));
