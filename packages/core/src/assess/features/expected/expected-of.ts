import type { InspectionLimit } from '../../../engine/index.js';
import { limitsOf } from '../../limits/limits-of.js';
import { newWindow, wearWindow } from '../../limits/windows.js';
import type { Expected, FeatureKind, Place } from '../../model.js';
import type { Anatomy } from '../anatomy.js';
import { reworked } from './reworked.js';
import type { Typical } from './typical.js';
import { TYPICAL_ABOVE } from './typical-above.js';
import { TYPICAL_BELOW } from './typical-below.js';

/** A reading ten times off must fall outside: the window's ends are less than ten times apart. */
const WIDEST = 9.8;

/**
 * What one reading at a place usually is, and what it can be at all [SI].
 *
 * Where the sheet limits the main size of the feature, `usual` goes from the smallest size that is good when new or worn to the largest,
 * and a little past it, because people also measure what is worn out; parts that are made over- or undersize widen it. Where it
 * prints none, a figure of the sheet or a usual share of the bore serves. The ends of `usual` lie less than ten
 * times apart, so that a slip of the decimal point or of the unit falls outside; figures that begin at zero (a run-out, a
 * gap under the straight edge) have no such lower end. `possible` is far wider: beyond it no such part exists.
 */
export function expectedOf(anatomy: Anatomy, kind: FeatureKind, place: Place): Expected | undefined {
  const range =
    fromLimits(anatomy, kind, place) ?? (TYPICAL_BELOW[kind.id] ?? TYPICAL_ABOVE[kind.id])?.(anatomy, place);
  if (range === undefined) return undefined;
  const widened = reworked(anatomy, kind.id, range);
  const usual = { low: tightened(widened), high: widened.high };
  return {
    nominal: widened.nominal ?? (usual.low + usual.high) / 2,
    usual,
    possible: possibleFor(usual, kind),
    why: widened.why,
  };
}

function tightened({ low, high }: Typical): number {
  return low > 0 ? Math.max(low, high / WIDEST) : low;
}

function possibleFor({ low, high }: { low: number; high: number }, kind: FeatureKind): Expected['possible'] {
  if (low > 0) return { low: low / 3, high: high * 3 };
  const span = high - low;
  return { low: low < 0 ? low - 3 * span : 0, high: high + 12 * span * (kind.measured === 'length' ? 1 : 0.5) };
}

function fromLimits(anatomy: Anatomy, kind: FeatureKind, place: Place): Typical | undefined {
  const main = kind.sizes[0];
  if (main === undefined) return undefined;
  const rows = limitsOf(anatomy.engine, main.property, place);
  const ends = rows.flatMap((row) => endsOf(row, kind));
  if (ends.length === 0) return undefined;
  const fresh = rows.flatMap((row) => both(newWindow(row)));
  const nominal = middle(fresh);
  const lowest = Math.min(...ends);
  const highest = Math.max(...ends);
  const why = rows.map(printed).join('; ');
  if (lowest === highest && fresh.length === 0) return oneSided(rows, highest, why);
  const tight = lowest > 0 && (highest - lowest) / highest < 0.05;
  const room = tight ? Math.max(0.4 * (highest - lowest), 0.0015 * highest) : 0;
  return {
    ...(nominal === undefined ? {} : { nominal }),
    low: tight ? lowest - room : belowLoose(rows, lowest),
    high: tight ? highest + room : highest * (hasWear(rows) ? 1.3 : 2),
    why: `${why}, and a little past it`,
  };
}

/** Only "not under" or only "not over" is printed. */
function oneSided(rows: readonly InspectionLimit[], end: number, why: string): Typical {
  const under = rows.some((row) => row.wear?.form !== 'change-from-new' && row.wear?.window.low !== undefined);
  return under
    ? { low: end * 0.5, high: end * 4.5, why: `${why}, the other end as is usual` }
    : { low: 0, high: end * 1.3, why: `${why}, and a little past it` };
}

/** A clearance or gap: half the smallest, since parts come tighter than the book; nothing where it may be nothing. */
function belowLoose(rows: readonly InspectionLimit[], lowest: number): number {
  const open = rows.every((row) => newWindow(row)?.low === undefined && lowOfWear(row) === undefined);
  return open ? Math.min(0, lowest) : lowest * (lowest < 0 ? 1.5 : 0.5);
}
const lowOfWear = ({ wear }: InspectionLimit) =>
  wear === undefined || wear.form === 'change-from-new' ? undefined : wear.window.low;

function endsOf(row: InspectionLimit, kind: FeatureKind): readonly number[] {
  return [...both(newWindow(row)), ...both(wearWindow(row, kind.sense))];
}
function both(window: { readonly low?: number; readonly high?: number } | undefined): readonly number[] {
  return [window?.low, window?.high].filter((each) => each !== undefined);
}
function middle(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : (Math.min(...values) + Math.max(...values)) / 2;
}
const hasWear = (rows: readonly InspectionLimit[]) => rows.some((row) => row.wear !== undefined);

function printed(row: InspectionLimit): string {
  const fresh = row.whenNew === undefined ? undefined : `${row.whenNew.text} new`;
  const wear = row.wear === undefined ? undefined : wearWords(row.wear);
  return `printed ${[fresh, wear].filter((each) => each !== undefined).join(', ')}`;
}
const wearWords = (wear: NonNullable<InspectionLimit['wear']>) =>
  wear.form === 'change-from-new' ? `wear of ${wear.text}` : `${wear.text} worn`;
