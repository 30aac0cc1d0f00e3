/** Every size of the plan judged, with what is missing for those that are not there yet. */
import type { Engine } from '../../engine/index.js';
import { newWindow } from '../limits/index.js';
import type { Finding, InspectionPlan, VerdictWord } from '../model.js';
import type { SizeEntry } from '../sizes/index.js';
import { againFor } from './again.js';
import { generalWear } from './general-wear.js';
import { type HeldAll, heldAgainst } from './held.js';
import type { LimitsAt } from './limits-at.js';

export interface Judging {
  readonly engine: Engine;
  readonly plan: InspectionPlan;
  readonly limits: LimitsAt;
  /** Guard band as a share of the expanded uncertainty. */
  readonly guardFactor: number;
}

/** One finding for each size, in the order of the sizes. Without readings, or without a limit, the verdict is "no data". */
export const findingsOf = (judging: Judging, entries: readonly SizeEntry[]): readonly Finding[] =>
  entries.map((entry) => findingOf(judging, entry));

function findingOf(judging: Judging, entry: SizeEntry): Finding {
  const { key, property, place, title, measured, size, missing, needed } = entry;
  const base = { key, property, place: place.id, placeName: place.name, title, measured, missing };
  if (size === undefined) {
    const read = needed - missing.length;
    return { ...base, held: [], verdict: 'no data', words: read === 0 ? 'not read' : `${read} of ${needed} read` };
  }
  const known = { ...entry, size };
  const limits = judging.limits.of(property, place, size.value);
  const all = heldAgainst(known, limits, judging.guardFactor);
  const disagrees = entry.disagreement !== undefined;
  const verdict: VerdictWord = all.use?.verdict ?? 'no data';
  const fresh = limits.map(newWindow).find((window) => window !== undefined);
  const advised =
    all.use?.by === 'wear' || verdict === 'check again'
      ? undefined
      : generalWear(judging.engine, judging.plan, entry, size.value, fresh);
  const again = againFor(known, verdict);
  return {
    ...base,
    size,
    held: all.held,
    verdict,
    words: [
      disagrees && all.use === undefined ? 'readings disagree' : wordsOf(all),
      ...(advised === undefined ? [] : [advised.words]),
    ].join('; '),
    ...(again !== undefined && { again }),
    ...(advised !== undefined && { advice: advised }),
  };
}

/** What became of the part, in the words of the trade. */
function wordsOf({ asNew, use }: HeldAll): string {
  if (use === undefined) return 'no limit printed';
  if (use.verdict === 'check again') return 'readings disagree';
  if (use.verdict === 'out') return use.worn ? 'past the wear limit' : 'outside the new range';
  if (asNew === 'in' || asNew === 'near') return 'as new';
  return 'worn, usable';
}
