/** A table of text taken apart: header, rows with their lines, faults with theirs. */
import Papa from 'papaparse';
import { done, type Outcome, refused } from '../quantity/index.js';
import { COLUMNS, type Column, columnOf, DELIMITERS, type Delimiter, NEEDED, restored } from './table-cells.js';

export interface TableFault {
  /** Line of the file, from 1. */
  readonly line: number;
  /** What is wrong there and what is valid. */
  readonly words: string;
}
export interface TableRow {
  readonly line: number;
  readonly cells: Readonly<Record<Column, string>>;
}
/** A V8 has some 1,500 readings; ten times that is no worksheet. */
const MOST_ROWS = 15_000;
const MOST_SIGNS = 4_000_000;
const LONGEST_CELL = 200;
/** More lines than this help nobody: the first ones name the cause. */
const MOST_FAULTS = 100;

const rowsOf = (text: string, delimiter: Delimiter, preview = 0) =>
  Papa.parse<string[]>(text, { delimiter, ...(preview > 0 && { preview }) });

/** The delimiter by which the first line gives every column that is needed; names hold no delimiter, so only one can. */
function delimiterOf(text: string): Delimiter | undefined {
  return DELIMITERS.find((delimiter) => {
    const columns = (rowsOf(text, delimiter, 1).data[0] ?? []).map(columnOf);
    return NEEDED.every((column) => columns.includes(column));
  });
}

function headerFaults(header: readonly string[]): readonly string[] {
  const names = header.map((cell) => cell.trim());
  const strange = names.filter((name) => name !== '' && columnOf(name) === undefined);
  const twice = COLUMNS.filter((column) => names.filter((name) => columnOf(name) === column).length > 1);
  return [
    ...strange.map((name) => `column "${shortened(name)}" is not known; there are ${COLUMNS.join(', ')}`),
    ...twice.map((column) => `column "${column}" stands twice`),
  ];
}
const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text).replace(/\s+/g, ' ');

/** Line on which each row begins: a quoted cell may hold line ends. */
function linesOf(text: string, delimiter: Delimiter): readonly number[] {
  const lines: number[] = [];
  let [line, from] = [1, 0];
  Papa.parse<string[]>(text, {
    delimiter,
    step: ({ meta }) => {
      lines.push(line);
      line += text.slice(from, meta.cursor).match(/\r\n|\n|\r/g)?.length ?? 0;
      from = meta.cursor;
    },
  });
  return lines;
}

/** Reads the text of a table. Nothing is guessed: header, delimiter and columns are as they must be, or a line says what is not. */
export function readTable(given: string): Outcome<readonly TableRow[], readonly TableFault[]> {
  const text = given.replace(/^\uFEFF/, '');
  if (text.length > MOST_SIGNS) {
    return refused([{ line: 1, words: `the file has ${text.length} signs; a worksheet has at most ${MOST_SIGNS}` }]);
  }
  const delimiter = delimiterOf(text);
  if (delimiter === undefined) {
    const words = `the first line must name the columns ${NEEDED.join(', ')}, with commas, semicolons or tabs between them`;
    return refused([{ line: 1, words }]);
  }
  const { data, errors } = rowsOf(text, delimiter);
  const lines = linesOf(text, delimiter);
  const lineOf = (row: number) => lines[row] ?? 1;
  const [header = [], ...rows] = data;
  const faults: TableFault[] = [
    ...headerFaults(header).map((words) => ({ line: 1, words })),
    ...errors
      .filter(({ type }) => type === 'Quotes')
      .map(({ row = 0 }) => ({ line: lineOf(row), words: 'a quoted cell is not closed as it should be' })),
  ];
  if (rows.length > MOST_ROWS) faults.push({ line: 1, words: `more than ${MOST_ROWS} rows` });
  if (faults.length > 0) return refused(faults.slice(0, MOST_FAULTS));
  const columns = header.map(columnOf);
  const read = rows.flatMap((cells, index) => (cells.every((cell) => cell.trim() === '') ? [] : [{ cells, index }]));
  const bad = read.flatMap(({ cells, index }) => {
    const words = rowFault(cells, columns);
    return words === undefined ? [] : [{ line: lineOf(index + 1), words }];
  });
  if (bad.length > 0) return refused(bad.slice(0, MOST_FAULTS));
  return done(read.map(({ cells, index }) => ({ line: lineOf(index + 1), cells: named(cells, columns) })));
}

function rowFault(cells: readonly string[], columns: readonly (Column | undefined)[]): string | undefined {
  const beyond = cells.find((cell, at) => columns[at] === undefined && cell.trim() !== '');
  if (beyond !== undefined) return `"${shortened(beyond)}" stands under no column`;
  const long = cells.findIndex((cell) => cell.length > LONGEST_CELL);
  return long < 0 ? undefined : `${columns[long]} has ${cells[long]?.length} signs; a cell has at most ${LONGEST_CELL}`;
}
function named(cells: readonly string[], columns: readonly (Column | undefined)[]): TableRow['cells'] {
  const row = Object.fromEntries(COLUMNS.map((column) => [column, '']));
  columns.forEach((column, at) => {
    if (column !== undefined) row[column] = restored((cells[at] ?? '').trim());
  });
  return row as TableRow['cells'];
}
