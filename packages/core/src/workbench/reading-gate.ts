/** The number gate with what the bench knows: the gauge, what the sheet expects, and the readings of like places. */
import {
  type GateQuestion,
  type NumberGate,
  type Place,
  type Readings,
  readingGate,
  type Sisters,
  type Slot,
} from '../assess/index.js';
import type { Engine } from '../engine/index.js';
import type { Bench } from './bench.js';
import { readingsOf } from './readings.js';
import { placeWords, type SlotPlace, slotAt, slotsOf } from './slot-names.js';

export interface Keying {
  readonly instrument?: string;
  readonly decimalMark?: '.' | ',';
}

/** Places whose readings are alike by intent: the same valves, the same ring, the same size in the sheet. */
const alike = (one: Place, other: Place): boolean =>
  one.id !== other.id &&
  one.grade === other.grade &&
  one.valve?.kind === other.valve?.kind &&
  one.expected?.nominal === other.expected?.nominal;

function sisterWords({ valve, cylinder }: Place): string {
  if (valve !== undefined) return `the other ${valve.kind} valves`;
  return cylinder === undefined ? 'the other places' : 'the other cylinders';
}

/** The first reading that stands of each slot: a repeat of one slot must not weigh twice. */
const firstOf = ({ bySlot }: Readings, slots: readonly Slot[]) => slots.flatMap((slot) => bySlot.get(slot)?.[0] ?? []);

/** Stations of one place that are read for one size; a figure of its own has no others beside it. */
function stationsBeside({ feature, place, station }: SlotPlace): readonly Slot[] {
  const together = feature.kind.sizes.some(
    ({ form, stations }) => form !== 'single' && (stations?.includes(station.id) ?? true),
  );
  if (!together) return [];
  return place.stations.filter((one) => one.id !== station.id).map((one) => slotAt(feature, place, one));
}

/** What the gate is asked about a text keyed for a slot. */
function questionFor(at: SlotPlace, readings: Readings, text: string, keying: Keying): GateQuestion {
  const { feature, place, station } = at;
  const { kind } = feature;
  const others = feature.places.filter((one) => alike(one, place)).map((one) => slotAt(feature, one, station));
  const read = firstOf(readings, others);
  const here = firstOf(readings, stationsBeside(at));
  const gauge = keying.instrument === undefined ? undefined : readings.instruments.get(keying.instrument);
  const written = (read.at(-1) ?? here.at(-1))?.text;
  const sisters: readonly Sisters[] = [
    { words: sisterWords(place), values: read.map((one) => one.value) },
    { words: 'the other readings here', values: here.map((one) => one.value) },
  ];
  return {
    text,
    what: placeWords(at),
    measured: kind.measured,
    kind: kind.instrument,
    step: kind.resolution,
    ...(gauge && { gauge }),
    ...(written !== undefined && { written }),
    ...(place.expected && { expected: place.expected }),
    sisters,
    ...(keying.decimalMark && { decimalMark: keying.decimalMark }),
  };
}

/** As `judgeKeyed`, with readings that are not in the log yet: the rows of a table above this one. */
export function judgeWith(
  engine: Engine,
  readings: Readings,
  slot: Slot,
  text: string,
  keying: Keying = {},
): NumberGate {
  const at = slotsOf(engine).get(slot);
  if (at === undefined) return { level: 'impossible', reason: `"${slot}" is nothing to measure on this engine.` };
  const { instrument } = keying;
  const gauge = instrument === undefined ? undefined : readings.instruments.get(instrument);
  const { measured } = at.feature.kind;
  if (instrument !== undefined && gauge === undefined)
    return { level: 'impossible', reason: `No instrument "${instrument}" in this record.` };
  if (gauge !== undefined && gauge.measured !== measured)
    return { level: 'impossible', reason: `${gauge.name} measures ${gauge.measured}; ${measured} is wanted here.` };
  return readingGate(questionFor(at, readings, text, keying));
}

/**
 * Judges what was keyed for a slot before it is recorded; the text has its unit. Refused: what cannot be. Asked about: what is
 * unlike its sisters, outside of what the sheet expects, or has other places than the gauge. The first reading of the slot
 * itself is not looked at, so that a second one stays a check.
 */
export function judgeKeyed(bench: Bench, slot: Slot, text: string, keying: Keying = {}): NumberGate {
  const { instrument } = keying;
  // A point is the decimal mark anyway, where there is no comma beside it.
  const decimalMark = keying.decimalMark === '.' && !text.includes(',') ? undefined : keying.decimalMark;
  const last = judged.get(bench);
  // On its way to the log one reading is judged by the field, by the desk and by the record's rules.
  if (last?.slot === slot && last.text === text && last.instrument === instrument && last.decimalMark === decimalMark)
    return last.gate;
  const gate = judgeWith(bench.engine, readingsOf(bench), slot, text, keying);
  judged.set(bench, { slot, text, instrument, decimalMark, gate });
  return gate;
}
interface Judged {
  readonly slot: Slot;
  readonly text: string;
  readonly instrument: string | undefined;
  readonly decimalMark: Keying['decimalMark'] | undefined;
  readonly gate: NumberGate;
}
const judged = new WeakMap<Bench, Judged>();

/** The question of the gate as one line, as it is shown and kept with the reading once answered; undefined without one. */
export function gateQuestion(text: string, gate: NumberGate): string | undefined {
  if (gate.level !== 'unlikely') return undefined;
  const { expected, hint } = gate;
  return `${text}? Expected ${expected}.${hint === undefined ? '' : ` Was it ${hint}`}`;
}
