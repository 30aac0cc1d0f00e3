/** Rules for what is read of the cam and what a person states of the combination. */
import {
  FIGURE_KINDS,
  type FigureKindOf,
  figureKind,
  figureParts,
  placesOfFigure,
  valveKey,
  valvesOf,
} from '../../engine/index.js';
import { refused } from '../../quantity/outcome.js';
import { canonicalText } from '../canonical.js';
import { FIGURE_UNITS } from '../combination-units.js';
import type { EntryData, Reading } from '../entry.js';
import type { RecordState } from '../state.js';
import { type Decision, engineOf, nothingToAdd, record } from './lookup.js';
import { valveKnown } from './parts.js';
import type { Refusal } from './refusal.js';

/** Two turns either way: farther no wheel counts. */
const FARTHEST = 4 * Math.PI;
/** An indicator may stand a little below 0 on the base circle; no valve opens by 50 mm. */
const LIFTS = { least: -1e-3, most: 0.05 };
const SAME_PLACE = 1e-6;

function angleFault(reading: Reading): Refusal | undefined {
  if (reading.unit !== 'rad') return { code: 'other-unit', given: reading.text, measured: 'an angle', expected: 'rad' };
  if (Math.abs(reading.value) <= FARTHEST) return undefined;
  return { code: 'reading-out-of-range', reading: reading.text, valid: '-720 to 720 degrees on the wheel' };
}

/** One pair of stop readings; the same pair again is a repeat, taken on purpose. */
export function decideDeadCentre(state: RecordState, data: EntryData['dead-centre-read']): Decision {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const { cylinder, first, second } = data;
  const valid = engine.value.layout.cylinders.map(({ number }) => number);
  if (!valid.includes(cylinder)) return refused({ code: 'unknown-cylinder', cylinder, valid });
  const fault = angleFault(first) ?? angleFault(second);
  if (fault !== undefined) return refused(fault);
  if (Math.abs(first.value - second.value) < SAME_PLACE) return refused({ code: 'same-stop', reading: first.text });
  return record({ kind: 'dead-centre-read', data });
}

/** One reading of a lobe; the same again is a repeat and counts as one. */
export function decideCam(state: RecordState, data: EntryData['cam-read']): Decision {
  const { lobe, wheel, lift } = data;
  const known = valveKnown(state, lobe);
  if (known !== undefined) return known;
  const fault = angleFault(wheel) ?? liftFault(lift);
  return fault === undefined ? record({ kind: 'cam-read', data }) : refused(fault);
}

function liftFault({ unit, value, text }: Reading): Refusal | undefined {
  if (unit !== 'm') return { code: 'other-unit', given: text, measured: 'a lift', expected: 'm' };
  if (value >= LIFTS.least && value <= LIFTS.most) return undefined;
  return { code: 'reading-out-of-range', reading: text, valid: '-1 to 50 mm of lift' };
}

/** No pushrod is longer than half a metre, and no stem is thicker than 30 mm. */
const TRIAL = { length: 0.5, stem: 0.03 };

/** A length that was tried and the mark that it left; the same length again is a better look. */
export function decideTrial(state: RecordState, data: EntryData['pushrod-tried']): Decision {
  const { valve, length, width, offset } = data;
  const known = valveKnown(state, valve);
  if (known !== undefined) return known;
  const fault =
    lengthFault(length, 'a pushrod length', [0, TRIAL.length]) ??
    lengthFault(width, 'the width of a mark', [0, TRIAL.stem]) ??
    (offset === undefined ? undefined : lengthFault(offset, 'the place of a mark', [-TRIAL.stem, TRIAL.stem]));
  return fault === undefined ? record({ kind: 'pushrod-tried', data }) : refused(fault);
}

function lengthFault(
  { unit, value, text }: Reading,
  measured: string,
  [least, most]: readonly [number, number],
): Refusal | undefined {
  if (unit !== 'm') return { code: 'other-unit', given: text, measured, expected: 'm' };
  if (value > least && value <= most) return undefined;
  const from = least === 0 ? 'above 0' : `${1000 * least} mm`;
  return { code: 'reading-out-of-range', reading: text, valid: `${from} to ${1000 * most} mm for ${measured}` };
}

/** Where the crank stands counts for a valve that is pressed down; clay shows the thinnest place of a whole turn. */
export function decideValveRoom(state: RecordState, data: EntryData['valve-room-read']): Decision {
  const { valve, room, method, wheel } = data;
  const known = valveKnown(state, valve);
  if (known !== undefined) return known;
  if (method === 'drop' && wheel === undefined) return refused({ code: 'no-wheel' });
  const fault =
    lengthFault(room, 'the room of a valve', [0, LIFTS.most]) ?? (wheel === undefined ? undefined : angleFault(wheel));
  return fault === undefined ? record({ kind: 'valve-room-read', data }) : refused(fault);
}

/** A figure that the combination knows, for a place that it can have, with a value that it can have. */
export function decideFigure(state: RecordState, data: EntryData['figure-stated']): Decision {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const { key, place } = figureParts(data.key);
  const kind = figureKind(key);
  if (kind === undefined)
    return refused({ code: 'unknown-figure', key: data.key, valid: FIGURE_KINDS.map((one) => one.key) });
  const numbers = engine.value.layout.cylinders.map(({ number }) => number);
  const valves = kind.per === 'valve-kind' ? valvesOf(engine.value).map(valveKey) : [];
  const places = [...placesOfFigure(kind, numbers), ...valves];
  if (place !== undefined && !places.includes(place))
    return refused({ code: 'unknown-figure', key: data.key, valid: [key, ...places.map((one) => `${key}@${one}`)] });
  const fault = figureFault(kind, data.reading);
  if (fault !== undefined) return refused(fault);
  return sameAsHeld(state, data) ? nothingToAdd : record({ kind: 'figure-stated', data });
}

function figureFault(
  kind: FigureKindOf,
  { unit, value, text }: EntryData['figure-stated']['reading'],
): Refusal | undefined {
  const expected = FIGURE_UNITS[kind.quantity] ?? '1';
  if (unit !== expected) return { code: 'other-unit', given: text, measured: kind.title, expected };
  const no = (valid: string): Refusal => ({ code: 'not-a-figure', title: kind.title, given: text, valid });
  if (kind.choices !== undefined) return kind.choices[value] === undefined ? no(kind.choices.join(', ')) : undefined;
  if (kind.sign === 'positive' && !(value > 0)) return no('above 0');
  return kind.sign === 'not-negative' && value < 0 ? no('0 or more') : undefined;
}

/** Whether the statement that holds for the key says exactly this. */
function sameAsHeld(state: RecordState, data: EntryData['figure-stated']): boolean {
  const held = state.entries.findLast(
    ({ reading, struck }) =>
      struck === undefined &&
      reading.understood &&
      reading.known.kind === 'figure-stated' &&
      reading.known.data.key === data.key,
  );
  return held?.reading.understood === true && canonicalText(held.reading.known.data) === canonicalText(data);
}
