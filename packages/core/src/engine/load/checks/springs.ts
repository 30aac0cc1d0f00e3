import { formatQuantity, parseQuantity } from '../../../quantity/index.js';
import type { Engine } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { SheetReader } from '../reader.js';
import { valveLifts } from './lifts.js';
import { middleOf } from './ranges.js';
import { NUMBER, textOf } from './row-words.js';

/** A printed load at its height, in SI; the free length is the height without load. */
interface SpringPoint {
  readonly height: number;
  readonly load: number;
  readonly row: BuiltLimit;
}
/** The height in words such as "load at 42.0 mm". */
const HEIGHT = new RegExp(`(${NUMBER})\\s*(mm|in)\\b`, 'i');
/** Rates that differ by less come from rounded loads. From memory: testers read to about two percent. */
const STRAIGHT = 0.05;
/** Share of the lift by which the open height may miss it: the maker rounds heights. */
const MISSED = 0.02;

/** Loads grow as the spring is pressed, one rate joins them and the free length, and the heights are a lift apart. */
export function checkSprings(engine: Engine, limits: readonly BuiltLimit[], reader: SheetReader): void {
  for (const rows of springsOf(limits)) {
    const points = rows.flatMap(pointOf).sort((a, b) => b.height - a.height);
    const [seat, open] = [points[0], points.at(-1)];
    if (seat === undefined || open === undefined || seat === open || seat.height === open.height) continue;
    const wrong = points.find((each, index) => index > 0 && each.load <= points[index - 1]!.load);
    if (wrong !== undefined) {
      const what = `${wrong.row.limit.what}: ${wrong.row.limit.whenNew?.text} is not more than the load at the taller height`;
      reader.caution('spring-loads', wrong.row.path, what);
      continue;
    }
    const rate = (open.load - seat.load) / (seat.height - open.height);
    checkRate(rows, rate, reader);
    checkFree(rows, seat, rate, reader);
    checkOpenHeight(engine, limits, seat, open, reader);
  }
}

/** Rows of one spring: inner and outer, intake and exhaust springs stand apart. */
function springsOf(limits: readonly BuiltLimit[]): readonly (readonly BuiltLimit[])[] {
  const groups = new Map<string, BuiltLimit[]>();
  for (const each of limits) {
    if (!/spring/.test(textOf(each.limit))) continue;
    const name = (textOf(each.limit).match(/\b(inner|outer|intake|inlet|exhaust)\b/g) ?? []).sort().join(' ');
    groups.set(name, [...(groups.get(name) ?? []), each]);
  }
  return [...groups.values()];
}

function pointOf(row: BuiltLimit): readonly SpringPoint[] {
  const text = HEIGHT.exec(row.limit.what);
  const load = middleOf(row);
  if (row.limit.quantity !== 'force' || text === null || load === undefined) return [];
  const height = parseQuantity('length', `${text[1]?.replace(',', '.')} ${text[2]?.toLowerCase()}`);
  return height.ok ? [{ height: height.value.value, load, row }] : [];
}

function checkRate(rows: readonly BuiltLimit[], rate: number, reader: SheetReader): void {
  for (const row of rows) {
    const { low, high } = row.limit.whenNew?.window ?? {};
    if (row.limit.quantity !== 'stiffness' || low === undefined || high === undefined) continue;
    if (rate >= low * (1 - STRAIGHT) && rate <= high * (1 + STRAIGHT)) continue;
    const unit = row.unit;
    reader.caution(
      'spring-rate',
      row.path,
      `${row.limit.whenNew?.text} is printed, but the two loads give ${formatQuantity('stiffness', rate, unit, 1)}`,
    );
  }
}

function checkFree(rows: readonly BuiltLimit[], seat: SpringPoint, rate: number, reader: SheetReader): void {
  const free = rows.find((each) => each.limit.quantity === 'length' && /free (length|height)/.test(textOf(each.limit)));
  const length = free === undefined ? undefined : middleOf(free);
  if (free === undefined || length === undefined) return;
  if (length <= seat.height) {
    reader.caution(
      'spring-loads',
      free.path,
      `${free.limit.whenNew?.text} free is not more than the height under load`,
    );
    return;
  }
  const first = seat.load / (length - seat.height);
  const apart = Math.abs(first - rate) / rate;
  if (apart <= STRAIGHT) return;
  const show = (value: number) => formatQuantity('stiffness', value, 'N/mm', 2);
  reader.caution(
    'spring-not-straight',
    free.path,
    `the two loads give ${show(rate)}, the free length and the first load ${show(first)}, ${Math.round(apart * 100)} % apart: the spring is progressive or the free length approximate; do not reckon loads from the free length`,
  );
}

/** The heights of the two loads are a valve lift apart, with or without the lash. */
function checkOpenHeight(
  engine: Engine,
  limits: readonly BuiltLimit[],
  seat: SpringPoint,
  open: SpringPoint,
  reader: SheetReader,
): void {
  const pressed = seat.height - open.height;
  const lifts = valveLifts(engine, limits);
  const misses = lifts.map(({ least, most }) => Math.max(least - pressed, pressed - most, 0) / most);
  const nearest = misses.indexOf(Math.min(...misses));
  const lift = lifts[nearest];
  if (lift === undefined || misses[nearest]! <= MISSED) return;
  const unit = /\bin\b/.test(open.row.limit.what) ? 'in' : 'mm';
  const show = (value: number) => formatQuantity('length', value, unit, unit === 'in' ? 4 : 2);
  const short = pressed < lift.least;
  const by = show(short ? lift.least - pressed : pressed - lift.most);
  reader.caution(
    'open-height',
    open.row.path,
    `from ${show(seat.height)} to ${show(open.height)} the spring is pressed by ${show(pressed)}, but the valve lifts ${show(lift.most)}: the printed open height is ${by} ${short ? 'short of' : 'past'} full lift`,
  );
}
