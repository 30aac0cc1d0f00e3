import type { InspectionLimit, WearLimit, Window } from '../../../engine/index.js';
import { limitsOf } from '../../limits/limits-of.js';
import { newWindow, wearWindow } from '../../limits/windows.js';
import type { FeatureKind, Place } from '../../model.js';
import type { Anatomy } from '../anatomy.js';
import type { Typical } from './typical.js';

/** A size whose printed ends lie closer together than this share is a fit, not a clearance. */
const FIT = 0.05;
/** How far, as a share of the size, parts stray from the printed ends: below and above. Common practice, no source. */
const STRAY: readonly [number, number] = [0.0015, 0.0015];
/** One printed figure without tolerance: parts stray more than its words say. */
const STRAY_OF_ONE: readonly [number, number] = [0.02, 0.02];
const STRAYS: Readonly<Record<string, readonly [number, number]>> = {
  'cylinder-bore': [0.002, 0.02],
  'piston-skirt': [0.003, 0.02],
  'main-journal': [0.02, 0.001],
  crankpin: [0.02, 0.001],
  'main-shell': [0.05, 0.2],
  'rod-shell': [0.05, 0.2],
  'deck-height': [0.003, 0.002],
  'head-thickness': [0.008, 0.004],
  'chamber-volume': [0.08, 0.06],
  'lobe-lift': [0.05, 0.01],
  'lobe-height': [0.02, 0.005],
  'installed-height': [0.02, 0.03],
  'spring-free-length': [0.03, 0.02],
  'pushrod-length': [0.01, 0.01],
  'compression-height': [0.02, 0.01],
};

/**
 * Range of a reading from the limits of the sheet for the main size of its feature: from the smallest to the largest that is good when new or
 * worn, and past it by what parts stray. Where the sheet prints one end only, the other is the usual one. Undefined: no limit.
 */
export function fromLimits(anatomy: Anatomy, kind: FeatureKind, place: Place, usual: Typical): Typical | undefined {
  const main = kind.sizes[0];
  const rows = main === undefined ? [] : limitsOf(anatomy.engine, main.property, place);
  const windows = rows.flatMap((row) => [newWindow(row), wearWindow(row, kind.sense)]);
  const low = least(windows.map((window) => window?.low));
  const high = most(windows.map((window) => window?.high));
  if (low === undefined && high === undefined) return undefined;
  const nominal = middleOf(rows);
  const why = `${[...new Set(rows.map(printed))].join('; ')}, and past it as parts stray`;
  return {
    ...(nominal === undefined ? {} : { nominal }),
    ...ends(kind, { low, high }, rows, usual),
    allowed: { low, high },
    why,
  };
}

interface Ends {
  readonly low: number | undefined;
  readonly high: number | undefined;
}
function ends(kind: FeatureKind, { low, high }: Ends, rows: readonly InspectionLimit[], usual: Typical) {
  if (low !== undefined && high !== undefined && low > 0 && (high - low) / high < FIT && kind.measured !== 'force') {
    const [below, above] = STRAYS[kind.id] ?? (low === high ? STRAY_OF_ONE : STRAY);
    const room = 0.4 * (high - low);
    return { low: low - Math.max(room, below * low), high: high + Math.max(room, above * high) };
  }
  return { low: lowOfLoose(low, high, usual), high: highOfLoose(low, high, rows, usual) };
}

/** Parts come tighter than the book; a figure that is only "not over" begins where such figures usually begin. */
function lowOfLoose(low: number | undefined, high: number | undefined, usual: Typical): number {
  if (low !== undefined) return low < 0 ? low * 1.5 : low * 0.5;
  return Math.min(usual.low, (high ?? 0) / 2);
}
function highOfLoose(
  low: number | undefined,
  high: number | undefined,
  rows: readonly InspectionLimit[],
  usual: Typical,
) {
  if (high === undefined) return Math.max(usual.high, (low ?? 0) * 1.5);
  return high * (rows.some(({ wear }) => wear !== undefined) ? 1.3 : 2);
}

const least = (values: readonly (number | undefined)[]) => endOf(Math.min, values);
const most = (values: readonly (number | undefined)[]) => endOf(Math.max, values);
function endOf(pick: (...values: number[]) => number, values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((each) => each !== undefined);
  return known.length === 0 ? undefined : pick(...known);
}

/** Middle of what is printed for new parts, where both ends are. */
function middleOf(rows: readonly InspectionLimit[]): number | undefined {
  const windows = rows.map(newWindow).filter((window): window is Required<Window<number>> => {
    return window?.low !== undefined && window.high !== undefined;
  });
  const low = least(windows.map((window) => window.low));
  const high = most(windows.map((window) => window.high));
  return low === undefined || high === undefined ? undefined : (low + high) / 2;
}

function printed({ whenNew, wear }: InspectionLimit): string {
  const words = [whenNew && `${whenNew.text} new`, wear && wearWords(wear)].filter((each) => each !== undefined);
  return `printed ${words.join(', ')}`;
}
const wearWords = (wear: WearLimit) => (wear.form === 'change-from-new' ? `wear of ${wear.text}` : `${wear.text} worn`);
