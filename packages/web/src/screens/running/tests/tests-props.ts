import type { CitedWords, CylinderTestsView } from '@gudgeon/core/workbench';
import type { RunningDesk } from '../use-running.js';

export interface TestsProps {
  readonly desk: RunningDesk;
  readonly view: CylinderTestsView;
}

/** The rule and where it is from; the rule once where the finding names it already. */
export const limitOf = (words: string, { words: rule, origin }: CitedWords): string =>
  (words.includes(rule) ? [origin] : [rule, origin]).filter((one) => one !== '').join('; ');
