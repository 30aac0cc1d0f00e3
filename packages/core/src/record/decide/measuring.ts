/** Rules for readings, gauges, work that came back and decisions. What a slot can read, the number gate judges before. */
import { findUnit } from '../../quantity/index.js';
import { type Outcome, refused } from '../../quantity/outcome.js';
import { canonicalText } from '../canonical.js';
import type { EntryData, Reading } from '../entry.js';
import { foldMeasuring, type Measuring, placeOfSlot } from '../measuring.js';
import type { MeasuredKind } from '../measuring-data.js';
import type { RecordState } from '../state.js';
import { dayFault } from './day.js';
import { type Decision, nothingToAdd, record } from './lookup.js';
import type { Refusal } from './refusal.js';

const SI: Readonly<Record<MeasuredKind, Reading['unit']>> = {
  length: 'm',
  volume: 'm3',
  mass: 'kg',
  force: 'N',
  angle: 'rad',
  torque: 'N.m',
};

const otherUnit = (reading: Reading, measured: string, expected: Reading['unit']): Refusal | undefined =>
  reading.unit === expected ? undefined : { code: 'other-unit', given: reading.text, measured, expected };

/** The first refusal of a list of questions, asked one after the other. */
const firstOf = (...refusals: readonly (Refusal | undefined)[]): Outcome<never, Refusal> | undefined => {
  const first = refusals.find((one) => one !== undefined);
  return first && refused(first);
};

function unknownGauge(held: Measuring, id: string | undefined): Refusal | undefined {
  if (id === undefined || held.instruments.has(id)) return undefined;
  return { code: 'unknown-instrument', instrument: id, valid: [...held.instruments.keys()] };
}

/**
 * The same figure of the same slot again is the same reading, unless it is a second one taken as a check. Another figure
 * is refused: the first is struck out before, so that a reading never changes quietly.
 */
export function decideMeasured(state: RecordState, data: EntryData['measured']): Decision {
  const { slot, occasion, reading, repeat, instrument, temperature } = data;
  const place = placeOfSlot(slot);
  if (place === undefined) return refused({ code: 'not-a-slot', slot });
  const held = foldMeasuring(state);
  const gauge = instrument === undefined ? undefined : held.instruments.get(instrument);
  const expected = held.occasions.get(place) ?? 1;
  const wrong = firstOf(
    unknownGauge(held, instrument),
    gauge && otherUnit(reading, gauge.measured, SI[gauge.measured]),
    temperature && otherUnit(temperature, 'temperature', 'K'),
    occasion === expected ? undefined : { code: 'other-occasion', slot, given: occasion, expected },
  );
  if (wrong !== undefined) return wrong;
  const first = held.bySlot.get(slot)?.[0];
  if (repeat) {
    return first === undefined ? refused({ code: 'nothing-to-repeat', slot }) : record({ kind: 'measured', data });
  }
  if (first === undefined) return record({ kind: 'measured', data });
  const same = first.text === reading.text && first.value === reading.value;
  return same ? nothingToAdd : refused({ code: 'read-already', slot, reading: first.text });
}

const notALength = (reading: Reading): Refusal | undefined => {
  const wrong = otherUnit(reading, 'length', 'm');
  return wrong ?? (reading.value > 0 ? undefined : { code: 'no-length', given: reading.text });
};

export function decideInstrument(state: RecordState, data: EntryData['instrument-kept']): Decision {
  const { measured, unit, resolution, low, high, expanded, gripLength, certified } = data;
  const given = [resolution, low, high, expanded].flatMap((one) => one ?? []);
  const wrong = firstOf(
    findUnit(measured, unit) === undefined
      ? { code: 'other-unit', given: unit, measured, expected: SI[measured] }
      : undefined,
    ...given.map((one) => otherUnit(one, measured, SI[measured])),
    gripLength && notALength(gripLength),
    dayFault(certified),
    resolution.value > 0 ? undefined : { code: 'no-resolution', resolution: resolution.text },
    low !== undefined && high !== undefined && low.value >= high.value
      ? { code: 'range-turned', low: low.text, high: high.text }
      : undefined,
  );
  if (wrong !== undefined) return wrong;
  return sameAsLast(state, 'instrument-kept', data, (one) => one.id === data.id)
    ? nothingToAdd
    : record({ kind: 'instrument-kept', data });
}

export function decideCheck(state: RecordState, data: EntryData['instrument-checked']): Decision {
  const held = foldMeasuring(state);
  const measured = held.instruments.get(data.instrument)?.measured ?? 'length';
  const wrong = firstOf(
    unknownGauge(held, data.instrument),
    ...[data.standard, data.reading].map((one) => otherUnit(one, measured, SI[measured])),
  );
  return wrong ?? record({ kind: 'instrument-checked', data });
}

export function decideTemperature(_: RecordState, data: EntryData['temperature-noted']): Decision {
  const given = [data.room, data.part].flatMap((one) => one ?? []);
  if (given.length === 0) return refused({ code: 'no-temperature' });
  return (
    firstOf(...given.map((one) => otherUnit(one, 'temperature', 'K'))) ?? record({ kind: 'temperature-noted', data })
  );
}

/** Places that came back and were not measured since came back once. */
export function decideReturned(state: RecordState, data: EntryData['work-returned']): Decision {
  if (data.places.length === 0) return refused({ code: 'no-places', feature: data.feature });
  const held = foldMeasuring(state);
  const read = new Set([...held.bySlot.keys()].map(placeOfSlot));
  const back = data.places
    .map((place) => `${data.feature}/${place}`)
    .every((place) => (held.occasions.get(place) ?? 1) > 1 && !read.has(place));
  return back ? nothingToAdd : record({ kind: 'work-returned', data });
}

export function decideChoice(state: RecordState, data: EntryData['decided']): Decision {
  const about = (one: EntryData['decided']) => one.decision === data.decision && one.scope === data.scope;
  return sameAsLast(state, 'decided', data, about) ? nothingToAdd : record({ kind: 'decided', data });
}

/** Whether the last standing entry of a kind about the same thing says exactly this. */
function sameAsLast<K extends 'decided' | 'instrument-kept'>(
  state: RecordState,
  kind: K,
  data: EntryData[K],
  about: (one: EntryData[K]) => boolean,
): boolean {
  const last = state.entries.findLast(
    ({ reading, struck }) =>
      struck === undefined &&
      reading.understood &&
      reading.known.kind === kind &&
      about(reading.known.data as EntryData[K]),
  );
  return last?.reading.understood === true && canonicalText(last.reading.known.data) === canonicalText(data);
}
