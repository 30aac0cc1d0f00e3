/** Every size of the plan judged, with what is missing for those that are not there yet. */
import type { Engine } from '../../engine/index.js';
import type { Finding } from '../model.js';
import type { SizeEntry } from '../sizes/index.js';
import { againFor } from './again.js';
import { generalWear, type SizesByKey } from './general-wear.js';
import { COVERAGE, type HeldAll, heldAgainst, type KnownSize } from './held.js';
import type { LimitWindows } from './limit-windows.js';

export interface Judging {
  readonly engine: Engine;
  readonly limits: LimitWindows;
  /** All sizes that are known. */
  readonly sizes: SizesByKey;
  /** Guard band as a share of the expanded uncertainty. */
  readonly guardFactor: number;
}

/** The findings of an earlier moment, and which entries can be others since; absent: any of them. */
export interface Judged {
  readonly entries: readonly SizeEntry[];
  readonly findings: readonly Finding[];
  readonly touched?: readonly number[] | undefined;
}

/**
 * One finding for each size, in the order of the sizes. Without readings, or without a limit, the verdict is "no data". A size that is
 * the same as at an earlier moment is not judged anew.
 */
export function findingsOf(judging: Judging, entries: readonly SizeEntry[], before?: Judged): readonly Finding[] {
  if (before?.touched === undefined)
    return entries.map((entry, at) =>
      before?.entries[at] === entry ? before.findings[at]! : findingOf(judging, entry),
    );
  const findings = before.findings.slice();
  for (const at of before.touched) findings[at] = findingOf(judging, entries[at]!);
  return findings;
}

function findingOf(judging: Judging, entry: SizeEntry): Finding {
  const { engine, limits, guardFactor } = judging;
  if (!isKnown(entry)) return unread(limits, entry);
  const { planned, size, missing, disagreement } = entry;
  const { key, property, place, title, measured } = planned;
  const { all: windows, grades } = limits.of(planned, size.value, COVERAGE * size.u);
  const all = heldAgainst(entry, windows, guardFactor);
  const verdict = all.use ?? 'no data';
  const advice =
    all.byWear || disagreement !== undefined
      ? undefined
      : generalWear(engine, planned, size.value, windows, judging.sizes);
  const again = againFor(entry, verdict, all.near);
  const said = disagreement === undefined ? `${wordsOf(all)}${gradeWords(all, grades)}` : 'readings disagree';
  const words = advice === undefined ? said : `${said}; ${advice.words}`;
  const finding = {
    key,
    property,
    place: place.id,
    placeName: place.name,
    title,
    measured,
    size,
    missing,
    held: all.held,
    verdict,
    words,
  };
  if (again === undefined && advice === undefined) return finding;
  return { ...finding, ...(again !== undefined && { again }), ...(advice !== undefined && { advice }) };
}

const isKnown = (entry: SizeEntry): entry is KnownSize => entry.size !== undefined;

function unread(limits: LimitWindows, { planned, missing, needed }: SizeEntry): Finding {
  const { key, property, place, title, measured } = planned;
  const read = needed - missing.length;
  const words = read === 0 ? 'not read' : `${read} of ${needed} read`;
  const ahead = limits.ahead(planned);
  return {
    key,
    property,
    place: place.id,
    placeName: place.name,
    title,
    measured,
    missing,
    held: [],
    ...(ahead.length > 0 && { ahead }),
    verdict: 'no data',
    words,
  };
}

/** What became of the part, in the words of the trade. */
function wordsOf({ asNew, use, byWear, worn }: HeldAll): string {
  if (use === undefined) return 'no limit printed';
  if (use === 'out') return worn ? 'past the wear limit' : 'outside the new range';
  if (asNew === 'in' || asNew === 'near') return 'as new';
  return byWear ? 'worn, usable' : 'no data';
}

/** Which grade the part is by its size, where nobody noted it. */
function gradeWords({ use, asNew }: HeldAll, grades: readonly string[]): string {
  if (use === undefined || grades.length === 0) return '';
  const asked =
    use === 'out' || asNew === 'out' ? `nearest grade ${grades.join(' or ')}` : `grade ${grades.join(' or ')}`;
  return `, ${asked}`;
}
