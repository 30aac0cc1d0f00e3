/** D27: end float of the crankshaft and the thrust washers that set it. */
import { endFloat } from '../../calc/bearings/index.js';
import type { ThicknessStock, Window } from '../../engine/index.js';
import { type Length, quadrature } from '../../quantity/index.js';
import type { Alternative, Assessment, Size } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  limitAt,
  origin,
  placesOf,
  possible,
  sizeAt,
  waiting,
} from './decision.js';
import { closed, judged, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import { buysOf, shortOf } from './stock-taken.js';

const FLOAT = 'crank-end-float.float';
const QUESTION = {
  id: 'thrust-washers',
  scope: 'crankshaft',
  title: 'End float and thrust washers',
  question: 'Which thrust washers set the end float of the crankshaft?',
  area: 'assembly',
  sources: ['end-float'],
} as const;

interface Present {
  readonly float: Size;
  /** One washer as measured; absent where none was. */
  readonly washer: Size | undefined;
  readonly fresh: Window<number> | undefined;
  readonly worn: Window<number> | undefined;
}

/** What the float must keep: the new range where parts are exchanged, the wear limit for parts that stay. */
function verdictOf(float: number, u: number | undefined, window: Window<number> | undefined) {
  return float <= 0 ? 'out' : window === undefined ? 'no data' : judged({ value: float, u }, window);
}

function asItIs({ float, fresh, worn }: Present, words: LengthWords): Alternative {
  return possible({
    id: 'as-is',
    words: `Leave the thrust faces as they are: ${words.sure(float.value, float.u)}`,
    figures: [figure('end float', words.sure(float.value, float.u))],
    verdict: verdictOf(float.value, float.u, worn ?? fresh),
    against:
      worn === undefined && fresh !== undefined ? ['judged against the new range: no wear limit is printed'] : [],
  });
}

interface Pair {
  readonly front: ThicknessStock;
  readonly rear: ThicknessStock;
}
/** All ways to take one size for each side; which side gets which is the same float. */
export const washerPairs = (sizes: readonly ThicknessStock[]): readonly Pair[] =>
  sizes.flatMap((front, at) => sizes.slice(at).map((rear) => ({ front, rear })));

/** Float with other washers [m]: the room between the faces stays, what is in it changes. Source: `endFloat`. */
export function floatWith(float: Length, present: readonly Length[], fitted: readonly Length[]): Length {
  const room = float + present.reduce((sum, one) => sum + one, 0);
  return endFloat(room as Length, fitted);
}

function withWashers(present: Present & { readonly washer: Size }, pair: Pair, words: LengthWords): Alternative {
  const { float, washer, fresh } = present;
  const old = washer.value as Length;
  const value = floatWith(float.value as Length, [old, old], [pair.front.thickness, pair.rear.thickness]);
  const u = float.u === undefined || washer.u === undefined ? undefined : quadrature(float.u, 2 * washer.u);
  const same = pair.front.id === pair.rear.id;
  const size = same
    ? words.length(pair.front.thickness)
    : `${words.length(pair.front.thickness)} and ${words.length(pair.rear.thickness)}`;
  const binds = value <= 0;
  const taken = (same ? [pair.front] : [pair.front, pair.rear]).map((part) => ({
    part,
    count: same ? 2 : 1,
    size: words.length(part.thickness),
    for: 'thrust bearing of the crankshaft',
  }));
  const made = possible({
    id: `washers-${pair.front.id}-${pair.rear.id}`,
    words: `Washers of ${size}: ${binds ? 'the crankshaft binds' : words.sure(value, u)}`,
    figures: [figure('end float', binds ? 'none: it binds' : words.sure(value, u)), figure('washers', size)],
    verdict: verdictOf(value, u, fresh),
    orders: [
      {
        id: 'thrust-washers/crankshaft',
        operation: 'Fit thrust washers',
        part: 'crankshaft',
        property: FLOAT,
        places: ['crankshaft'],
        measured: 'length',
        ...(fresh && { target: fresh }),
        with: 'main caps tightened, thrust faces lined up',
        notes: [
          `Washers ${size}; grooves of the washers face the crankshaft. Measure the float before the sump goes on.`,
        ],
      },
    ],
    buys: buysOf(taken),
  });
  const against = [...(binds ? ['thicker than the room between the faces'] : []), ...shortOf(taken)];
  return against.length === 0 ? made : blocked({ ...made, against });
}

/** Without loose washers only the flanged shell or the face of the crankshaft can change the float. */
function flangedShell({ fresh }: Present): Alternative {
  return possible({
    id: 'flanged-shell',
    words: 'Renew the shell that carries the thrust faces, and measure again',
    figures: [figure('end float afterwards', 'not known before the new shell is measured')],
    verdict: 'no data',
    orders: [
      {
        id: 'thrust-washers/crankshaft',
        operation:
          'Renew the shell with the thrust faces; look at the thrust face of the crankshaft, grind it where it is scored',
        part: 'crankshaft',
        property: FLOAT,
        places: ['crankshaft'],
        measured: 'length',
        ...(fresh && { target: fresh }),
        notes: ['A ground thrust face needs a wider shell: ask for one before the face is cut.'],
      },
    ],
  });
}

/** Best first: in before near before out, then nearest to the middle of the new range. */
function ordered(alternatives: readonly Alternative[], floats: ReadonlyMap<string, number>, fresh: Window<number>) {
  const rank = { in: 0, near: 1, 'no data': 2, 'check again': 2, out: 3 } as const;
  const ends = closed(fresh);
  const away = ({ id }: Alternative) => (ends === undefined ? 0 : Math.abs((floats.get(id) ?? 0) - middle(ends)));
  return alternatives.toSorted((a, b) => rank[a.verdict] - rank[b.verdict] || away(a) - away(b));
}

/** What stays is best as long as it is surely good: nothing has to be bought. */
function alternativesOf(assessment: Assessment, present: Present, words: LengthWords): readonly Alternative[] {
  const stock = assessment.engine.stock?.thrustWashers ?? [];
  const stays = asItIs(present, words);
  if (stock.length === 0) {
    const other = flangedShell(present);
    return stays.verdict === 'out' ? [other, stays] : [stays, other];
  }
  const { washer } = present;
  if (washer === undefined) return [stays];
  const pairs = washerPairs(stock);
  const made = pairs.map((pair) => withWashers({ ...present, washer }, pair, words));
  const old = washer.value as Length;
  const floats = new Map(
    pairs.map((pair, at) => [
      (made[at] as Alternative).id,
      floatWith(present.float.value as Length, [old, old], [pair.front.thickness, pair.rear.thickness]) as number,
    ]),
  );
  const others = ordered(made, floats, present.fresh ?? {});
  return stays.verdict === 'in' ? [stays, ...others] : [...others, stays];
}

/** End float of the crankshaft; none where it is not among what is measured. */
export const thrust: Decider = (assessment, words) => {
  const [place] = placesOf(assessment, 'crank-end-float');
  if (place === undefined) return [];
  const float = sizeAt(assessment, FLOAT, place.id);
  const stock = assessment.engine.stock?.thrustWashers ?? [];
  const washer = sizeAt(assessment, 'thrust-washer.thickness', 'thrust');
  if (float === undefined) return [waiting(QUESTION, ['end float of the crankshaft: measure it'])];
  const fresh = limitAt(assessment, FLOAT, place.id, 'new');
  const worn = limitAt(assessment, FLOAT, place.id, 'wear');
  if (fresh === undefined && worn === undefined) return [waiting(QUESTION, ['end float asked for, in the sheet'])];
  const present = { float, washer, fresh: fresh?.window, worn: worn?.window };
  return [
    decided(QUESTION, {
      alternatives: alternativesOf(assessment, present, words),
      proof:
        stock.length === 0
          ? 'The sheet names no loose thrust washers.'
          : `All ${washerPairs(stock).length} combinations of the washers in stock stand side by side, nearest to the middle of the new range first.`,
      working: [
        'float with other washers = float + washers that were in − washers that go in',
        ...[fresh, worn].flatMap((asked) => (asked ? [`${words.window(asked.window)} (${origin(asked.limit)})`] : [])),
      ],
      cautions: [
        ...(stock.length > 0 && washer === undefined
          ? ['The washers that were in are not measured: other washers cannot be compared before they are.']
          : []),
        'The thickness in stock is the printed one: measure each washer before it goes in.',
      ],
    }),
  ];
};
