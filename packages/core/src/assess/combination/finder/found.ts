/** What the search found, in the terms of the engine. */
import type { Combined, CombineProblem, Relaxation } from '../../../calc/selection/index.js';
import type { Choice, FinderInput, FoundCombination, FoundRelaxation, MissingSize } from './model.js';
import type { Need } from './need.js';
import { groupOf, METRES_OF_METAL, scaleOf, WHOLE_PRICES } from './problem.js';

/** An input with its choices, what must hold, and the problem that they make. */
export interface Posed {
  readonly input: FinderInput;
  readonly choices: readonly Choice[];
  readonly needs: readonly Need[];
  readonly problem: CombineProblem;
  /** What could not be computed and was left out. */
  readonly missing: readonly MissingSize[];
}

export function foundCombination({ choices, needs }: Posed, one: Combined): FoundCombination {
  const [metal, unpriced, cost] = one.goals as [number, number, number];
  return {
    picked: one.options,
    options: choices.map(({ key, options }, at) => ({ choice: key, option: options[one.options[at]!]! })),
    figures: needs.map((need, at) => {
      const { key, name, quantity, low, high } = need;
      return {
        key,
        name,
        quantity,
        value: one.figures[at]!,
        ...(low !== undefined && { low }),
        ...(high !== undefined && { high }),
        margin: one.margins[at]!,
        shareOf: scaleOf(need).of,
      };
    }),
    metal: metal * METRES_OF_METAL,
    cost: cost / WHOLE_PRICES,
    unpriced,
    worst: one.worst,
  };
}

export function foundRelaxation(posed: Posed, { loosened, share, combined }: Relaxation): FoundRelaxation {
  return {
    loosened: loosened.map(({ requirement, end, to, share: own }) => {
      const need = posed.needs[requirement]!;
      const { quantity, place } = need;
      return {
        key: groupOf(need),
        name: place?.title ?? need.name,
        quantity,
        end,
        from: need[end]!,
        to,
        share: own,
        shareOf: scaleOf(need).of,
      };
    }),
    share,
    with: foundCombination(posed, combined),
  };
}
