/** A worksheet as a table of text, for a spreadsheet or for paper; `worksheet-import.ts` reads it back. */
import Papa from 'papaparse';
import type { Slot, SlotReading } from '../assess/index.js';
import { type Bench, shownTime } from './bench.js';
import type { ShownIn } from './measure-views.js';
import { readingsOf } from './readings.js';
import { shownUnit } from './shown-figures.js';
import { type SlotPlace, slotsOf } from './slot-names.js';
import { COLUMNS, type Column, type Delimiter, defused } from './table-cells.js';

export interface TableStyle extends ShownIn {
  readonly delimiter?: Delimiter;
  readonly decimalMark?: '.' | ',';
}

const FIGURE = /^([+-]?[\d.,/ ]*[\d.,])\s*(.*)$/;
/** "4.0302 in" as the two cells "4.0302" and "in". */
function apart(text: string, decimalMark: '.' | ','): { readonly figure: string; readonly unit: string } {
  const [, figure = text, unit = ''] = FIGURE.exec(text.trim()) ?? [];
  return { figure: figure.trim().replace(/[.,]/, decimalMark), unit };
}

/** "4.0320 in (misread)" for what was struck out of each slot. */
function struckOf(bench: Bench): ReadonlyMap<Slot, string> {
  const struck = new Map<Slot, string>();
  for (const { reading, struck: strike } of bench.state.entries) {
    if (!reading.understood || reading.known.kind !== 'measured' || strike === undefined) continue;
    const { slot, reading: read } = reading.known.data;
    const words = `${read.text} (${strike.reason})`;
    const before = struck.get(slot);
    struck.set(slot, before === undefined ? words : `${before}; ${words}`);
  }
  return struck;
}

function rowOf(
  at: SlotPlace,
  [first, second]: readonly SlotReading[],
  struck: string | undefined,
  style: TableStyle,
): Record<Column, string> {
  const mark = style.decimalMark ?? '.';
  const read = first && apart(first.text, mark);
  return {
    feature: at.feature.kind.title,
    place: at.place.name,
    reading: at.station.name,
    value: read?.figure ?? '',
    'second value': second === undefined ? '' : apart(second.text, mark).figure,
    unit: read?.unit ?? shownUnit(at.feature.kind.measured, style),
    instrument: first?.instrument ?? '',
    by: first?.by ?? '',
    at: first === undefined ? '' : shownTime(first.at),
    struck: struck ?? '',
  };
}

/**
 * The table of one worksheet, or of all of them: one row a slot with what stands, its second reading, and what was struck out.
 * Empty rows carry the unit in which they are to be filled. Cells that a spreadsheet would compute get a quote in front.
 * A second reading in another unit than the first is left to the record: a row has one unit.
 */
export function worksheetTable(bench: Bench, feature: string | undefined, style: TableStyle): string {
  const readings = readingsOf(bench);
  const struck = struckOf(bench);
  const rows = [...slotsOf(bench.engine).values()]
    .filter((at) => feature === undefined || at.feature.kind.id === feature)
    .map((at) => rowOf(at, inOneUnit(readings.bySlot.get(at.slot) ?? []), struck.get(at.slot), style))
    .map((row) => COLUMNS.map((column) => defused(row[column])));
  return Papa.unparse([[...COLUMNS], ...rows], { delimiter: style.delimiter ?? ',', newline: '\r\n' });
}
function inOneUnit(readings: readonly SlotReading[]): readonly SlotReading[] {
  const [first, ...more] = readings;
  if (first === undefined) return [];
  const { unit } = apart(first.text, '.');
  return [first, ...more.filter((one) => apart(one.text, '.').unit === unit)];
}
