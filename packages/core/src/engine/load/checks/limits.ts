import type { InspectionLimit, WearLimit, Window } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { SheetReader } from '../reader.js';

/** Rows about the same size of the same part agree with each other, and a wear limit leaves room for the new part. */
export function checkLimits(limits: readonly BuiltLimit[], reader: SheetReader): void {
  const first = new Map<string, BuiltLimit>();
  for (const each of limits) {
    checkWearAgainstNew(each, each, reader);
    checkAllowance(each, reader);
    const name = nameOf(each.limit);
    const earlier = first.get(name);
    if (earlier === undefined) first.set(name, each);
    else checkPair(earlier, each, reader);
  }
}

const nameOf = (limit: InspectionLimit) =>
  [limit.part, limit.what, limit.scope ?? ''].map((each) => each.trim().toLowerCase()).join('|');

function checkPair(a: BuiltLimit, b: BuiltLimit, reader: SheetReader): void {
  const both = `${b.limit.part}, ${b.limit.what}`;
  const allowed = a.unit === b.unit ? 0 : 0.51 * (a.step + b.step);
  const [newA, newB] = [a.limit.whenNew, b.limit.whenNew];
  if (newA !== undefined && newB !== undefined && differ(newA.window, newB.window, allowed)) {
    reader.caution(
      'stated-twice',
      b.path,
      `${both}: ${newB.text} here; an earlier row (${a.limit.from.text}) has ${newA.text}`,
    );
  }
  const [wearA, wearB] = [a.limit.wear, b.limit.wear];
  if (wearA !== undefined && wearB !== undefined && wearsDiffer(wearA, wearB, allowed)) {
    reader.caution(
      'stated-twice',
      b.path,
      `${both}: wear limit ${wearB.text} here; an earlier row (${a.limit.from.text}) has ${wearA.text}`,
    );
  }
  checkWearAgainstNew(a, b, reader);
  checkWearAgainstNew(b, a, reader);
}

/** A size and a change from new cannot be compared without the part when new: that they differ in form is worth a question. */
function wearsDiffer(a: WearLimit, b: WearLimit, allowed: number): boolean {
  if (a.form === 'change-from-new' && b.form === 'change-from-new')
    return Math.abs(a.change - b.change) > Math.max(allowed, 1e-9 * a.change);
  if (a.form === 'change-from-new' || b.form === 'change-from-new') return true;
  return differ(a.window, b.window, allowed);
}

/** Two prints of one figure agree where both print that end and they are equal; in two units, to the rounding of both. */
function differ(a: Window<number>, b: Window<number>, allowed: number): boolean {
  const unequal = (x: number | undefined, y: number | undefined) =>
    x !== undefined &&
    y !== undefined &&
    Math.abs(x - y) > Math.max(allowed, 1e-9 * Math.max(Math.abs(x), Math.abs(y)));
  return unequal(a.low, b.low) || unequal(a.high, b.high);
}

/** A part inside its new window must not already be worn out. */
function checkWearAgainstNew(fresh: BuiltLimit, worn: BuiltLimit, reader: SheetReader): void {
  const [whenNew, wear] = [fresh.limit.whenNew, worn.limit.wear];
  if (whenNew === undefined || wear === undefined || wear.form === 'change-from-new') return;
  const { low, high } = whenNew.window;
  const slack = 1e-9 * Math.max(Math.abs(low ?? 0), Math.abs(high ?? 0));
  const above = wear.window.high !== undefined && high !== undefined && high > wear.window.high + slack;
  const below = wear.window.low !== undefined && low !== undefined && low < wear.window.low - slack;
  if (!above && !below) return;
  const name = `${worn.limit.part}, ${worn.limit.what}`;
  reader.caution(
    'worn-when-new',
    worn.path,
    `${name}: a new part may be ${whenNew.text}, which the wear limit ${wear.text} already refuses`,
  );
}

/** A wear limit at the very end of the new window leaves nothing to wear: often a slip of the maker's, sometimes meant. */
function checkAllowance({ limit, path }: BuiltLimit, reader: SheetReader): void {
  const { whenNew, wear } = limit;
  if (whenNew === undefined || wear === undefined || wear.form === 'change-from-new') return;
  const meets = (end: 'low' | 'high') => {
    const [fresh, worn] = [whenNew.window[end], wear.window[end]];
    return fresh !== undefined && worn !== undefined && Math.abs(fresh - worn) <= 1e-9 * Math.abs(worn);
  };
  if (!meets('low') && !meets('high')) return;
  const what = `${limit.part}, ${limit.what}: a new part may be ${whenNew.text}, and the wear limit is ${wear.text}`;
  reader.caution('no-allowance', path, `${what}: nothing is left for wear`);
}
