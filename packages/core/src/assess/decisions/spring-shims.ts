/** D38: shims under the valve springs, so that heights, seat loads and the room to coil bind are what is asked for. */
import {
  commonHeight,
  heightForLoad,
  loadAtHeight,
  type Stack,
  springShims as shimsFor,
} from '../../calc/selection/index.js';
import type { ThicknessStock } from '../../engine/index.js';
import { type Force, inch, type Length } from '../../quantity/index.js';
import type { Alternative, Assessment, BuyLine, Decision, VerdictWord } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  notMeasured,
  placesOf,
  possible,
  waiting,
  worstVerdict,
} from './decision.js';
import { closed, judged, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import { counted, forceWords } from './other-words.js';
import { HEIGHT, roomToBind, type SpringSeen, springSeen } from './spring-plan.js';

type Kind = 'intake' | 'exhaust';
/** Shims under one spring: more than two are a sign of a wrong spring. Common practice, no source. */
const MOST_SHIMS = 2;
/** Least room to coil bind at full lift that the trade leaves. Common practice, no source. */
const USUAL_ROOM = inch(0.06);
/** Partial plans looked at; a plan that is not proven by then says so. */
const STEPS = 20_000;

interface Plan {
  readonly id: string;
  readonly words: string;
  readonly stacks: readonly (Stack | undefined)[];
  readonly proven: boolean;
}

const NONE: Stack = { shims: [], height: 0 as Length };

/** Height, load and room of one spring with its shims, each judged against what is printed. */
function shimmed(seen: SpringSeen, stack: Stack) {
  const height = seen.height - stack.height;
  const room = roomToBind(seen, height);
  const load = seen.tested && loadAtHeight(seen.tested, height as Length);
  const verdicts: VerdictWord[] = [
    seen.window === undefined ? 'no data' : judged({ value: height, u: seen.u }, seen.window),
  ];
  if (room !== undefined && room <= 0) verdicts.push('out');
  return { height, room, load, verdict: worstVerdict(verdicts) };
}

function figuresOf(springs: readonly SpringSeen[], plan: Plan, sizes: readonly ThicknessStock[], words: LengthWords) {
  const made = springs.map((seen, at) => ({
    seen,
    stack: plan.stacks[at] ?? NONE,
    ...shimmed(seen, plan.stacks[at] ?? NONE),
  }));
  const heights = made.map(({ height }) => height);
  const loads = made.flatMap(({ load }) => load ?? []);
  const rooms = made.flatMap(({ room }) => room ?? []);
  const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return {
    made,
    least: rooms.length === 0 ? undefined : Math.min(...rooms),
    figures: [
      figure('heights apart', words.length(spread(heights))),
      figure(
        'seat loads apart',
        loads.length === springs.length
          ? forceWords(spread(loads), words)
          : 'not known: loads or their heights are missing',
      ),
      figure(
        'least room to coil bind',
        rooms.length === springs.length
          ? words.length(Math.min(...rooms))
          : 'not known: lift or bind height is missing',
      ),
      ...made.map(({ seen, stack, height }) =>
        figure(seen.place.name, `${shimText(stack, sizes, words)}: ${words.length(height)}`),
      ),
    ],
  };
}
const shimText = ({ shims }: Stack, sizes: readonly ThicknessStock[], words: LengthWords): string =>
  shims.length === 0 ? 'no shim' : shims.map((one) => words.length(sizes[one]?.thickness ?? 0)).join(' + ');

function buysOf(plan: Plan, sizes: readonly ThicknessStock[], kind: Kind, words: LengthWords): readonly BuyLine[] {
  return sizes.flatMap((part, at) => {
    const count = plan.stacks.flatMap((stack) => stack?.shims ?? []).filter((one) => one === at).length;
    if (count === 0) return [];
    const number = part.partNumber === undefined ? {} : { partNumber: part.partNumber };
    return [{ part: part.name, ...number, size: words.length(part.thickness), count, for: `${kind} springs` }];
  });
}
/** Sizes of which a plan takes more than there are. */
function short(buys: readonly BuyLine[], sizes: readonly ThicknessStock[], words: LengthWords): readonly string[] {
  return buys.flatMap(({ size, count }) => {
    const part = sizes.find(({ thickness }) => words.length(thickness) === size);
    return part?.count !== undefined && count > part.count
      ? [`takes ${counted(count, 'shim')} of ${size}, there are ${part.count}`]
      : [];
  });
}

function alternativeOf(
  springs: readonly SpringSeen[],
  plan: Plan,
  sizes: readonly ThicknessStock[],
  kind: Kind,
  words: LengthWords,
): Alternative {
  const { made, figures, least } = figuresOf(springs, plan, sizes, words);
  const buys = buysOf(plan, sizes, kind, words);
  const unserved = made.filter((_, at) => plan.stacks[at] === undefined).map(({ seen }) => seen.place.name);
  const against = [
    ...short(buys, sizes, words),
    ...unserved.map((name) => `${name}: no stack of shims brings it into the printed heights`),
    ...(least !== undefined && least <= 0 ? ['a spring would bind before full lift'] : []),
  ];
  const tight =
    least !== undefined && least > 0 && least < USUAL_ROOM
      ? [`room to coil bind is under ${words.length(USUAL_ROOM)} (common practice, no source)`]
      : [];
  const alternative = possible({
    id: plan.id,
    words: plan.words,
    figures,
    verdict: worstVerdict(made.map(({ verdict }) => verdict)),
    against: [...tight, ...(plan.proven ? [] : ['a better plan may exist: the search was cut short'])],
    orders: plan.id === 'as-is' ? [] : [orderOf(made, sizes, kind, words)],
    buys,
  });
  return against.length === 0 ? alternative : blocked({ ...alternative, against });
}

function orderOf(
  made: readonly { readonly seen: SpringSeen; readonly stack: Stack; readonly height: number }[],
  sizes: readonly ThicknessStock[],
  kind: Kind,
  words: LengthWords,
) {
  return {
    id: `spring-shims/${kind}`,
    operation: 'Shim the valve springs',
    part: `${kind} springs`,
    property: HEIGHT,
    places: made.map(({ seen }) => seen.place.id),
    measured: 'length' as const,
    targets: made.flatMap(({ seen }) =>
      seen.window === undefined ? [] : [{ place: seen.place.id, window: seen.window }],
    ),
    notes: [
      'Measured again over the shims: from the uppermost shim to the retainer.',
      ...made.map(
        ({ seen, stack, height }) =>
          `${seen.place.name}: ${shimText(stack, sizes, words)}, installed height ${words.length(height)}.`,
      ),
    ],
  };
}

/** Every plan that can be worked out from what is known. */
function plansOf(springs: readonly SpringSeen[], sizes: readonly ThicknessStock[]): readonly Plan[] {
  const heights = springs.map(({ height }) => height as Length);
  const thicknesses = sizes.map(({ thickness }) => thickness);
  const plenty = heights.length * MOST_SHIMS;
  const stock = sizes.map(({ count }) => count ?? plenty);
  const shared = { heights, sizes: thicknesses, most: MOST_SHIMS };
  const asIs: Plan = {
    id: 'as-is',
    words: 'Leave the springs as they stand',
    stacks: springs.map(() => NONE),
    proven: true,
  };
  const windows = springs.map(({ window }) => window && closed(window));
  const toMiddle = windows.every((one) => one !== undefined)
    ? shimsFor(
        {
          ...shared,
          stock,
          wanted: windows.map((one) => middle(one) as Length),
          window: narrowest(windows),
        },
        STEPS,
      )
    : undefined;
  const equal = commonHeight({ ...shared, window: windows[0] ? (windows[0] as Record<'low' | 'high', Length>) : {} });
  const loaded = equalLoads(springs, shared, stock);
  return [
    ...(toMiddle?.ok
      ? [
          {
            id: 'printed-height',
            words: 'Shim each to the middle of the printed heights',
            stacks: toMiddle.value.stacks,
            proven: toMiddle.value.proven,
          },
        ]
      : []),
    ...(equal.ok && equal.value
      ? [
          {
            id: 'equal-heights',
            words: 'Shim all to heights as equal as they can be',
            stacks: equal.value.stacks,
            proven: true,
          },
        ]
      : []),
    ...loaded,
    asIs,
  ];
}
/** Half of the narrowest printed window: the deviation from its middle that every valve accepts. */
function narrowest(windows: readonly { readonly low: number; readonly high: number }[]) {
  const half = Math.min(...windows.map(({ low, high }) => (high - low) / 2));
  return { low: -half as Length, high: half as Length };
}

function equalLoads(
  springs: readonly SpringSeen[],
  shared: { readonly heights: readonly Length[]; readonly sizes: readonly Length[]; readonly most: number },
  stock: readonly number[],
): readonly Plan[] {
  const asked = springs[0]?.seatLoad && closed(springs[0].seatLoad);
  const tested = springs.flatMap((seen) => seen.tested ?? []);
  if (asked === undefined || tested.length < springs.length) return [];
  const wanted = tested.map((one) => heightForLoad(one, middle(asked) as Force));
  const plan = shimsFor({ ...shared, stock, wanted, window: {} }, STEPS);
  if (!plan.ok) return [];
  return [
    {
      id: 'equal-load',
      words: 'Shim each so that the seat loads are equal',
      stacks: plan.value.stacks,
      proven: plan.value.proven,
    },
  ];
}

function decisionFor(assessment: Assessment, kind: Kind, words: LengthWords): readonly Decision[] {
  const places = placesOf(assessment, 'installed-height').filter(({ valve }) => valve?.kind === kind);
  if (places.length === 0) return [];
  const sizes = assessment.engine.stock?.springShims ?? [];
  const question = {
    id: 'spring-shims',
    scope: kind,
    title: `Shims under the ${kind} springs`,
    question: `Which shims go under the ${kind} springs?`,
    area: 'springs',
    sources: ['branch-and-bound', 'shop-practice'],
  } as const;
  const springs = places.flatMap((place) => springSeen(assessment, place) ?? []);
  if (springs.length < places.length) return [waiting(question, notMeasured(assessment, 'installed-height', HEIGHT))];
  const alternatives = plansOf(springs, sizes).map((plan) => alternativeOf(springs, plan, sizes, kind, words));
  const stays = alternatives.find(({ id }) => id === 'as-is');
  // What stands well is left alone; else the plans, as printed first.
  const order = stays?.verdict === 'in' ? [stays, ...alternatives.filter((one) => one !== stays)] : alternatives;
  return [
    decided(question, {
      alternatives: order,
      proof:
        sizes.length === 0
          ? 'The sheet names no spring shims.'
          : `Exact search over all stacks of up to ${MOST_SHIMS} shims from stock for each valve.`,
      working: [
        'height = height without shims − shims; load = load on the tester + rate · (height on the tester − height)',
        'room to coil bind = height − lift − bind height; lift from lobe and ratio of the sheet',
      ],
      cautions: ['Installed heights are read without shims: where shims were in, add their thickness first.'],
    }),
  ];
}

/** Shims for intake and exhaust springs. */
export const springShims: Decider = (assessment, words) => [
  ...decisionFor(assessment, 'intake', words),
  ...decisionFor(assessment, 'exhaust', words),
];
