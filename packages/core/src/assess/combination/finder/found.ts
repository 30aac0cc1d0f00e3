/** What the search found, in the terms of the engine. */
import type { Combined, CombineProblem, Relaxation } from '../../../calc/selection/index.js';
import type { Choice, FinderInput, FoundCombination, FoundRelaxation } from './model.js';
import type { Need } from './need.js';
import { METRES_OF_METAL, WHOLE_PRICES } from './problem.js';

/** An input with its choices, what must hold, and the problem that they make. */
export interface Posed {
  readonly input: FinderInput;
  readonly choices: readonly Choice[];
  readonly needs: readonly Need[];
  readonly problem: CombineProblem;
}

export function foundCombination({ choices, needs }: Posed, one: Combined): FoundCombination {
  const [metal, unpriced, cost] = one.goals as [number, number, number];
  return {
    picked: one.options,
    options: choices.map(({ key, options }, at) => ({ choice: key, option: options[one.options[at]!]! })),
    figures: needs.map(({ key, name, quantity, low, high }, at) => ({
      key,
      name,
      quantity,
      value: one.figures[at]!,
      ...(low !== undefined && { low }),
      ...(high !== undefined && { high }),
      margin: one.margins[at]!,
    })),
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
      const { key, name, quantity } = need;
      return { key, name, quantity, end, from: need[end]!, to, share: own };
    }),
    share,
    with: foundCombination(posed, combined),
  };
}
