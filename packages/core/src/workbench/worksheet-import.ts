/** A table of text back into readings: all of it or nothing, every bad row named by its line. */
import type { Feature, Readings, Slot, SlotReading } from '../assess/index.js';
import { done, type Outcome, refused, unitsOf } from '../quantity/index.js';
import type { EntryData, NewEntry } from '../record/index.js';
import type { Bench } from './bench.js';
import { occasionOf, typedReading } from './measuring-commands.js';
import { propose } from './propose.js';
import { gateQuestion, judgeWith, type Keying } from './reading-gate.js';
import { readingsOf } from './readings.js';
import { type SlotPlace, slotAt, slotsOf } from './slot-names.js';
import { type Column, sameWords } from './table-cells.js';
import { readTable, type TableFault, type TableRow } from './table-text.js';

export type { TableFault };
export interface TableQuestion {
  readonly line: number;
  readonly words: string;
}
export interface TableRead {
  /** One for each reading that is new; those that stand already add nothing. */
  readonly entries: readonly NewEntry[];
  /** What the gate asks about. The entries are for a person who has answered all of them with yes. */
  readonly questions: readonly TableQuestion[];
}

/** The slot that a row names, by ids or by the words of the worksheet; or what would be valid. */
function slotOfRow({ bench, features }: Going, { cells }: TableRow): Outcome<SlotPlace, string> {
  const feature = chosen(
    'feature',
    cells.feature,
    features.map((one) => ({ one, id: one.kind.id, name: one.kind.title })),
  );
  if (!feature.ok) return feature;
  const place = chosen(
    'place',
    cells.place,
    feature.value.places.map((one) => ({ one, id: one.id, name: one.name })),
  );
  if (!place.ok) return place;
  const station = chosen(
    'reading',
    cells.reading,
    place.value.stations.map((one) => ({ one, id: one.id, name: one.name })),
  );
  if (!station.ok) return station;
  const at = slotsOf(bench.engine).get(slotAt(feature.value, place.value, station.value));
  return at === undefined ? refused('nothing to measure there') : done(at);
}
const MOST_NAMED = 8;
function chosen<T>(
  column: Column,
  cell: string,
  from: readonly { readonly one: T; readonly id: string; readonly name: string }[],
): Outcome<T, string> {
  const found = from.filter(({ id, name }) => sameWords(id, cell) || sameWords(name, cell));
  if (found.length === 1) return done(found[0]!.one);
  const names = from.map(({ name }) => name);
  const valid = `${names.slice(0, MOST_NAMED).join('; ')}${names.length > MOST_NAMED ? '; …' : ''}`;
  return refused(`${column} "${cell}" is ${found.length === 0 ? 'not known' : 'more than one'}; valid: ${valid}`);
}

export interface ImportStyle extends Pick<Keying, 'decimalMark'> {
  /** A sheet without a log keeps no gauges: their names are then not looked at. */
  readonly instruments?: 'not read';
}
/** What has been read so far while the rows go by: the gate compares each with those above it. */
interface Going {
  readonly bench: Bench;
  readonly features: readonly Feature[];
  readonly style: ImportStyle;
  readonly readings: Readings;
  readonly bySlot: Map<Slot, readonly SlotReading[]>;
  readonly seen: Map<Slot, number>;
  readonly entries: NewEntry[];
  readonly questions: TableQuestion[];
}

const instrumentOf = ({ readings, style }: Going, cell: string): Outcome<string | undefined, string> => {
  if (cell === '' || style.instruments === 'not read') return done(undefined);
  const all = [...readings.instruments.values()];
  if (all.length === 0) return refused(`instrument "${cell}" is not known; none is kept yet, leave the cell empty`);
  return chosen(
    'instrument',
    cell,
    all.map(({ id, name }) => ({ one: id, id, name })),
  );
};

const sameValue = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.abs(other);

/** The nth figure of a row: adds it, adds nothing where it stands already, or says what is wrong. */
function take(going: Going, row: TableRow, at: SlotPlace, column: 'value' | 'second value'): string | undefined {
  const { bench, bySlot } = going;
  const { cells, line } = row;
  const repeat = column === 'second value';
  const text = `${cells[column]} ${cells.unit}`;
  const instrument = instrumentOf(going, cells.instrument);
  if (!instrument.ok) return instrument.fault;
  const { measured } = at.feature.kind;
  if (cells.unit === '')
    return `unit is missing; valid: ${unitsOf(measured)
      .slice(0, 4)
      .map((one) => one.name)
      .join(', ')}`;
  const reading = typedReading(measured, text, going.style.decimalMark);
  if (!reading.ok) return `${column}: ${reading.fault}`;
  const standing = bySlot.get(at.slot) ?? [];
  const same = standing[repeat ? 1 : 0];
  if (same !== undefined) {
    if (sameValue(same.value, reading.value.value)) return undefined;
    return `${column} ${text}: ${same.text} stands there already; strike that out first`;
  }
  if (repeat && standing.length === 0) return 'a second value needs a first one';
  const keying = {
    ...(going.style.decimalMark && { decimalMark: going.style.decimalMark }),
    ...(instrument.value !== undefined && { instrument: instrument.value }),
  };
  const gate = judgeWith(bench.engine, going.readings, at.slot, text, keying);
  if (gate.level === 'impossible') return `${column}: ${gate.reason}`;
  const question = gateQuestion(text, gate);
  const data: EntryData['measured'] = {
    slot: at.slot,
    occasion: occasionOf(bench, at.slot),
    reading: reading.value,
    repeat,
    source: 'table',
    ...(instrument.value !== undefined && { instrument: instrument.value }),
    ...(question !== undefined && { answered: [question] }),
  };
  return record(going, line, data, question);
}

function record(going: Going, line: number, data: EntryData['measured'], question: string | undefined) {
  const { bench, bySlot } = going;
  const { slot, reading, occasion } = data;
  // A second reading of a row whose first is as new as itself: the record cannot know that one yet.
  const firstIsNew = data.repeat && !readingsOf(bench).bySlot.has(slot);
  const proposal = firstIsNew
    ? done([{ kind: 'measured' as const, data }])
    : propose(bench, { kind: 'measured', data });
  if (!proposal.ok) return proposal.fault;
  going.entries.push(...proposal.value);
  if (question !== undefined) going.questions.push({ line, words: question });
  const added = { slot, entry: '', text: reading.text, value: reading.value, occasion, at: '', by: '' };
  bySlot.set(slot, [...(bySlot.get(slot) ?? []), added]);
  return undefined;
}

function takeRow(going: Going, row: TableRow): string | undefined {
  const { cells, line } = row;
  if (cells.value === '' && cells['second value'] === '') return undefined;
  const at = slotOfRow(going, row);
  if (!at.ok) return at.fault;
  const before = going.seen.get(at.value.slot);
  if (before !== undefined) return `the same reading as on line ${before}`;
  going.seen.set(at.value.slot, line);
  const first = cells.value === '' ? undefined : take(going, row, at.value, 'value');
  if (first !== undefined || cells['second value'] === '') return first;
  return take(going, row, at.value, 'second value');
}

/**
 * Reads a worksheet back. Columns in any order, commas, semicolons or tabs; features, places and readings by their words or
 * ids. Rows without a value are left out. Who, when and what was struck out are the record's own and are not read: new readings are
 * those of the person who brings them in. Refuses with every bad row by its line, and then nothing is taken. A figure that could be
 * read in two ways (`1,250`) is a bad row unless the decimal mark of the file is said.
 */
export function importWorksheet(
  bench: Bench,
  text: string,
  style: ImportStyle = {},
): Outcome<TableRead, readonly TableFault[]> {
  const table = readTable(text);
  if (!table.ok) return table;
  const readings = readingsOf(bench);
  const bySlot = new Map(readings.bySlot);
  const going: Going = {
    bench,
    features: [...new Set([...slotsOf(bench.engine).values()].map((at) => at.feature))],
    style,
    readings: { ...readings, bySlot },
    bySlot,
    seen: new Map(),
    entries: [],
    questions: [],
  };
  const faults = table.value.flatMap((row) => {
    const words = takeRow(going, row);
    return words === undefined ? [] : [{ line: row.line, words }];
  });
  return faults.length > 0 ? refused(faults) : done({ entries: going.entries, questions: going.questions });
}
