/** What every view of the work is made from, for one moment of the log and one way to show figures. */
import type { Bench } from '../bench.js';
import { shownTime } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import type { Given } from '../views.js';
import { type Work, workAt } from './work-facts.js';

export interface Ground extends Work {
  readonly bench: Bench;
  readonly shown: ShownIn;
}
const USUAL: ShownIn = { length: 'mm' };

export const groundOf = (bench: Bench, shown: ShownIn = USUAL): Ground => ({ ...workAt(bench), bench, shown });

/** Who and when of a fact of the work. */
export const givenOf = ({ at, by, entry = '' }: { at: string; by: string; entry?: string }): Given => ({
  by,
  at: shownTime(at),
  entry,
});
