import { apart, CYCLE, DEGREE, ONE_TURN, wrapped } from '../../angles.js';
import { axisPastFirst, firingDeadCentres } from '../../dead-centres.js';
import type { Layout } from '../../model.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';

const ORDER: Path = ['layout', 'firingOrder'];
/** Angles are printed to the degree or half of it. */
const TOLERANCE = 0.75 * DEGREE;
const degrees = (angle: number) => `${Math.round((angle / DEGREE) * 10) / 10}°`;

/** The firing order names every cylinder once, its intervals fill two turns, and the crank can run it. */
export function checkFiring(layout: Layout, reader: SheetReader): void {
  if (layout.firingOrder.length === 0) {
    if (layout.firingIntervals !== undefined)
      reader.caution('intervals-alone', ['layout', 'firingIntervals'], 'intervals without a firing order say nothing');
    return;
  }
  if (!ordersEveryCylinder(layout, reader) || !intervalsFillTheCycle(layout, reader)) return;
  if (layout.cylinders.some((each) => each.crankpin !== undefined)) checkCrankpins(layout, reader);
  else checkPairsOfAVee(layout, reader);
}

function ordersEveryCylinder(layout: Layout, reader: SheetReader): boolean {
  const numbers = layout.cylinders.map((each) => each.number).sort((a, b) => a - b);
  const twice = repeated(layout.firingOrder);
  const missing = numbers.filter((number) => !layout.firingOrder.includes(number));
  const strange = [...new Set(layout.firingOrder.filter((number) => !numbers.includes(number)))];
  const parts = [
    ...twice.map((number) => `cylinder ${number} stands twice`),
    ...missing.map((number) => `cylinder ${number} is missing`),
    ...strange.map((number) => `there is no cylinder ${number}`),
  ];
  if (parts.length > 0)
    reader.fault('firing-order', ORDER, `${parts.join(', ')}; each of the ${numbers.length} cylinders fires once`);
  return parts.length === 0;
}

function intervalsFillTheCycle(layout: Layout, reader: SheetReader): boolean {
  const intervals = layout.firingIntervals;
  if (intervals === undefined) return true;
  const path: Path = ['layout', 'firingIntervals'];
  const sum = intervals.reduce((total, each) => total + each, 0);
  if (intervals.length !== layout.firingOrder.length) {
    reader.fault(
      'intervals',
      path,
      `${intervals.length} intervals are given for ${layout.firingOrder.length} cylinders`,
    );
  } else if (intervals.some((each) => each <= 0)) {
    reader.fault('intervals', path, 'an interval is more than zero');
  } else if (Math.abs(sum - CYCLE) > TOLERANCE) {
    reader.fault('intervals', path, `the intervals add up to ${degrees(sum)}; a four-stroke engine needs 720°`);
  } else return true;
  return false;
}

/** Every stated throw must bring its piston to dead centre when the firing order says so. */
function checkCrankpins(layout: Layout, reader: SheetReader): void {
  const centres = firingDeadCentres(layout);
  if (!centres.ok) return;
  const wanted = (number: number) =>
    wrapped(axisPastFirst(layout, number) - (centres.value.get(number) ?? 0), ONE_TURN);
  const wrong: string[] = [];
  const first = layout.cylinders.find((each) => each.number === 1)?.throwAngle ?? 0;
  for (const cylinder of layout.cylinders) {
    if (cylinder.throwAngle === undefined) continue;
    const stated = wrapped(cylinder.throwAngle - first, ONE_TURN);
    if (apart(stated, wanted(cylinder.number), ONE_TURN) <= TOLERANCE) continue;
    wrong.push(
      `cylinder ${cylinder.number} (its pin is at ${degrees(stated)}, the order needs ${degrees(wanted(cylinder.number))})`,
    );
  }
  const pairs = sharedPins(layout).filter(([a, b]) => apart(wanted(a), wanted(b), ONE_TURN) > TOLERANCE);
  for (const [a, b] of pairs) {
    wrong.push(
      `cylinders ${a} and ${b} (they share a pin, the order would need pins ${degrees(apart(wanted(a), wanted(b), ONE_TURN))} apart)`,
    );
  }
  if (wrong.length === 0) return;
  const every = pairs.length > 1 && pairs.length === sharedPins(layout).length;
  const hint = every
    ? '; every pair disagrees: are the bank angles those seen from the front, clockwise positive?'
    : '';
  reader.fault('order-against-crank', ORDER, `this crank cannot fire so: ${wrong.join(', ')}${hint}`);
}

function sharedPins(layout: Layout): readonly (readonly [number, number])[] {
  return layout.cylinders.flatMap((a) =>
    layout.cylinders
      .filter((b) => a.crankpin !== undefined && b.crankpin === a.crankpin && b.number > a.number)
      .map((b) => [a.number, b.number] as const),
  );
}

/**
 * A vee whose sheet names no crankpins most often has one for each pair of neighbours along the crank. An order that
 * such a crank cannot fire is doubtful, not wrong: split pins exist.
 */
function checkPairsOfAVee(layout: Layout, reader: SheetReader): void {
  if (layout.form !== 'vee' || layout.cylinders.length % 2 !== 0 || layout.cylinders.length < 4) return;
  const centres = firingDeadCentres(layout);
  if (!centres.ok) return;
  const inPlace = [...layout.cylinders].sort((a, b) => a.place - b.place);
  const wanted = (number: number) =>
    wrapped(axisPastFirst(layout, number) - (centres.value.get(number) ?? 0), ONE_TURN);
  const apartPairs: string[] = [];
  for (let k = 0; k + 1 < inPlace.length; k += 2) {
    const [a, b] = [inPlace[k]!, inPlace[k + 1]!];
    if (a.bank === b.bank) return;
    const gap = apart(wanted(a.number), wanted(b.number), ONE_TURN);
    if (gap > TOLERANCE) apartPairs.push(`${a.number} and ${b.number} (${degrees(gap)})`);
  }
  if (apartPairs.length === 0) return;
  reader.caution(
    'pairs-not-on-one-pin',
    ORDER,
    `neighbours ${apartPairs.join(', ')} cannot share a crankpin with this order; right only for split pins: check the order and the banks, or list the crankpins`,
  );
}
