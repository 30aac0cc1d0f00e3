/** One way to shim the liners of a bank: how they stand with it, what it takes, what the shop is told. */
import { linersKeep, type Stack } from '../../calc/selection/index.js';
import type { ThicknessStock } from '../../engine/index.js';
import type { Length } from '../../quantity/index.js';
import type { Alternative, OrderLine } from '../model.js';
import { blocked, figure, possible, worstVerdict } from './decision.js';
import { judged } from './judged.js';
import type { LengthWords } from './length-words.js';
import { type Bank, HEIGHT, type Liner } from './liner-bank.js';
import { shimText, takenBy } from './shim-stacks.js';
import { buysOf, shortOf } from './stock-taken.js';

export interface Shimmed {
  readonly liner: Liner;
  readonly stack: Stack;
}

function judgedBank({ asked, rules }: Bank, shimmed: readonly Shimmed[]) {
  const heights = shimmed.map(({ liner, stack }) => liner.size.value + stack.height);
  const kept = linersKeep(heights as Length[], rules);
  const verdicts = shimmed.map(({ liner }, at) => judged({ value: heights[at] ?? 0, u: liner.size.u }, asked.window));
  return { heights, kept, verdict: worstVerdict([...verdicts, ...(kept.stepKept ? [] : (['out'] as const))]) };
}

export function linerAlternative(
  bank: Bank,
  draft: Pick<Alternative, 'id' | 'words'>,
  shimmed: readonly Shimmed[],
  sizes: readonly ThicknessStock[],
  words: LengthWords,
): Alternative {
  const { heights, kept, verdict } = judgedBank(bank, shimmed);
  const taken = takenBy(
    shimmed.map(({ stack }) => stack),
    sizes,
    'liners',
    words,
  );
  const short = shortOf(taken);
  const alternative = possible({
    ...draft,
    figures: [
      ...shimmed.map(({ liner, stack }, at) =>
        figure(
          liner.place.name,
          `${shimText(stack, sizes, words)}: stands ${words.sure(heights[at] ?? 0, liner.size.u)}`,
        ),
      ),
      figure('largest step between neighbours', words.length(kept.step)),
    ],
    verdict,
    against: kept.stepKept ? [] : ['neighbours stand further apart than the sheet allows'],
    orders: taken.length === 0 ? [] : [shimOrder(bank, shimmed, sizes, words)],
    buys: buysOf(taken),
  });
  return short.length === 0 ? alternative : blocked({ ...alternative, against: short });
}

function shimOrder(
  { liners, asked }: Bank,
  shimmed: readonly Shimmed[],
  sizes: readonly ThicknessStock[],
  words: LengthWords,
): OrderLine {
  return {
    id: `liner-shims/${liners[0]?.place.bank ?? 'all'}`,
    operation: 'Shim the liners',
    part: 'liners',
    property: HEIGHT,
    places: liners.map(({ place }) => place.id),
    target: asked.window,
    measured: 'length',
    with: 'liners held down at the maker’s clamping torque, seals out',
    notes: shimmed.map(({ liner, stack }) => `${liner.place.name}: ${shimText(stack, sizes, words)} under the flange.`),
  };
}
