/** Valve springs with the shims of one plan: heights, loads and room, what it takes, what the shop is told. */
import { loadAtHeight, type Stack } from '../../calc/selection/index.js';
import type { ThicknessStock } from '../../engine/index.js';
import { inch, type Length } from '../../quantity/index.js';
import type { Alternative, VerdictWord } from '../model.js';
import { blocked, figure, possible, worstVerdict } from './decision.js';
import { judged } from './judged.js';
import type { LengthWords } from './length-words.js';
import { forceWords } from './other-words.js';
import { shimText, takenBy } from './shim-stacks.js';
import { NONE, type Plan } from './spring-plans.js';
import { HEIGHT, roomToBind, type SpringSeen } from './spring-seen.js';
import { buysOf, shortOf } from './stock-taken.js';

export type Kind = 'intake' | 'exhaust';
/** Least room to coil bind at full lift that the trade leaves. Common practice, no source. */
const USUAL_ROOM = inch(0.06);

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
export function springAlternative(
  springs: readonly SpringSeen[],
  plan: Plan,
  sizes: readonly ThicknessStock[],
  kind: Kind,
  words: LengthWords,
): Alternative {
  const { made, figures, least } = figuresOf(springs, plan, sizes, words);
  const taken = takenBy(
    plan.stacks.flatMap((stack) => stack ?? []),
    sizes,
    `${kind} springs`,
    words,
  );
  const unserved = made.filter((_, at) => plan.stacks[at] === undefined).map(({ seen }) => seen.place.name);
  const against = [
    ...shortOf(taken),
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
    buys: buysOf(taken),
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
