/** Work that came back, held against what was ordered: place by place, with the uncertainty of the new reading. */
import type { Window } from '../../engine/index.js';
import { isBack } from '../decisions/back-from-shop.js';
import { worstVerdict } from '../decisions/decision.js';
import { judged } from '../decisions/judged.js';
import { PROPERTIES } from '../limits/index.js';
import type { Assessment, Choice, OrderLine, Size, VerdictWord } from '../model.js';

export interface ReturnedPlace {
  readonly place: string;
  readonly name: string;
  readonly window: Window<number>;
  readonly fittedTo?: string;
  /** `away`: not back from the shop; `to-measure`: back, its size not read again. */
  readonly state: 'away' | 'to-measure' | 'measured';
  readonly size?: Size;
  readonly verdict: VerdictWord;
  /** How far outside of what was ordered, SI; absent inside. */
  readonly beyond?: number;
  /** Readings of the new occasion, and how many a size needs. */
  readonly read: number;
  readonly of: number;
}
export interface Returned {
  /** Worst of all places; `no data` as long as one is not measured again. */
  readonly verdict: VerdictWord;
  readonly places: readonly ReturnedPlace[];
}

/** Windows of a line by place: its own target where it has one, else that of the line. */
export function windowsOf(
  line: OrderLine,
): readonly { readonly place: string; readonly window: Window<number>; readonly fittedTo?: string }[] {
  const own = new Map((line.targets ?? []).map((target) => [target.place, target]));
  return line.places.flatMap((place) => {
    const target = own.get(place);
    const window = target?.window ?? line.target;
    if (window === undefined) return [];
    const fittedTo = target?.fittedTo ?? line.fittedTo;
    return [{ place, window, ...(fittedTo === undefined ? {} : { fittedTo }) }];
  });
}

/** Features whose readings form a property: one for a size, several for a clearance. */
const featuresOf = (property: string): readonly string[] =>
  PROPERTIES.get(property)?.needs ?? [property.slice(0, property.indexOf('.'))];

interface Wanted {
  readonly place: string;
  readonly window: Window<number>;
  readonly fittedTo?: string;
}
function placeReturned(assessment: Assessment, property: string, wanted: Wanted, choice: Choice): ReturnedPlace {
  const finding = assessment.findings.find((one) => one.property === property && one.place === wanted.place);
  const [feature] = featuresOf(property);
  const place = assessment.plan.features
    .find(({ kind }) => kind.id === feature)
    ?.places.find(({ id }) => id === wanted.place);
  const stations = place?.stations ?? [];
  const read = stations.filter(({ id }) => assessment.readings.bySlot.has(`${feature}/${wanted.place}/${id}`)).length;
  const base = { ...wanted, name: place?.name ?? finding?.placeName ?? wanted.place, of: stations.length };
  if (!featuresOf(property).some((one) => isBack(assessment, one, wanted.place, choice)))
    return { ...base, read: 0, state: 'away', verdict: 'no data' };
  const size = assessment.sizes.get(`${property}@${wanted.place}`);
  if (size === undefined) return { ...base, read, state: 'to-measure', verdict: 'no data' };
  const verdict = finding?.verdict === 'check again' ? 'check again' : judged(size, wanted.window);
  const beyond = outside(size.value, wanted.window);
  return { ...base, read, state: 'measured', size, verdict, ...(beyond === undefined ? {} : { beyond }) };
}

function outside(value: number, { low, high }: Window<number>): number | undefined {
  if (low !== undefined && value < low) return value - low;
  return high !== undefined && value > high ? value - high : undefined;
}

/**
 * Compares what came back with one line of the order. A line without a property or target cannot be measured: undefined, and a person
 * looks at it. Source: `judge` with the window of the order in place of a limit.
 */
export function returnedWork(assessment: Assessment, line: OrderLine, choice: Choice): Returned | undefined {
  const { property } = line;
  const windows = windowsOf(line);
  if (property === undefined || windows.length === 0) return undefined;
  const places = windows.map((wanted) => placeReturned(assessment, property, wanted, choice));
  const verdicts = places.map(({ verdict }) => verdict);
  return { verdict: worstVerdict(verdicts), places };
}
