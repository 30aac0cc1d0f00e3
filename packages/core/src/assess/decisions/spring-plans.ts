/** Ways to shim some valve springs: to the middle of the printed heights, to equal heights, to equal seat loads, or as they stand. */
import { commonHeight, heightForLoad, type Stack, springShims as shimsFor } from '../../calc/selection/index.js';
import type { ThicknessStock } from '../../engine/index.js';
import type { Force, Length } from '../../quantity/index.js';
import { closed, middle } from './judged.js';
import { MOST_SHIMS } from './shim-stacks.js';
import type { SpringSeen } from './spring-seen.js';

/** Partial plans looked at; a plan that is not proven by then says so. */
const STEPS = 20_000;

export interface Plan {
  readonly id: string;
  readonly words: string;
  readonly stacks: readonly (Stack | undefined)[];
  readonly proven: boolean;
}

export const NONE: Stack = { shims: [], height: 0 as Length };

/** Every plan that can be worked out from what is known. */
export function plansOf(springs: readonly SpringSeen[], sizes: readonly ThicknessStock[]): readonly Plan[] {
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
