/** Readings from a worksheet in CSV, judged against a sheet, without a log. */
import type { Assessment } from '@gudgeon/core/assess';
import type { Engine } from '@gudgeon/core/engine';
import { type LogEntry, type NewEntry, NO_PREVIOUS, sealEntry } from '@gudgeon/core/record';
import { assessmentOf, type Bench, importWorksheet, openBench } from '@gudgeon/core/workbench';
import { InvalidArgumentError } from 'commander';
import { engineOf, nameOf } from '../engine-of-sheet.js';
import { BadInput, type Io, readText } from '../io.js';

export interface TableFlags {
  readonly delimiter: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
  readonly display: 'mm' | 'in';
}

export function delimiter(word: string): TableFlags['delimiter'] {
  const signs = { comma: ',', semicolon: ';', tab: '\t' } as const;
  const found = Object.entries(signs).find(([name]) => name === word);
  if (found === undefined) throw new InvalidArgumentError('Valid: comma, semicolon, tab.');
  return found[1];
}
export function decimal(word: string): TableFlags['decimal'] {
  if (word === 'point') return '.';
  if (word === 'comma') return ',';
  throw new InvalidArgumentError('Valid: point, comma.');
}
export function display(word: string): TableFlags['display'] {
  if (word === 'inch') return 'in';
  if (word === 'metric') return 'mm';
  throw new InvalidArgumentError('Valid: inch, metric.');
}

/** A bench that holds readings which are in no log: sealed as one device would write them, at no time. */
function benchWith(engine: Engine, entries: readonly NewEntry[]): Bench {
  const log: LogEntry[] = [];
  for (const { kind, data } of entries) {
    const counter = log.length + 1;
    const id = `00000000-0000-7000-8000-${String(counter).padStart(12, '0')}`;
    const envelope = { id, job: 'file', device: 'file', counter, at: '1970-01-01T00:00:00Z', person: 'file' };
    log.push(sealEntry({ ...envelope, kind, version: 1, data }, log.at(-1)?.hash ?? NO_PREVIOUS));
  }
  return openBench(engine, log);
}

export interface ReadTable {
  readonly assessment: Assessment;
  /** Rows to look at again, each with its line. */
  readonly questions: readonly string[];
}
/** Sheet and table of one command; refuses with a line for each row that cannot be used. */
export async function readTable(
  command: string,
  sheet: string,
  table: string,
  flags: Pick<TableFlags, 'decimal'>,
  io: Io,
): Promise<ReadTable> {
  if (sheet === '-' && table === '-') throw new BadInput([`${command}: only one of the two can be standard input`]);
  const engine = await engineOf(sheet, io);
  const text = await readText(io, table);
  const read = importWorksheet(openBench(engine, []), text, { decimalMark: flags.decimal, instruments: 'not read' });
  if (!read.ok) throw new BadInput(read.fault.map(({ line, words }) => `${nameOf(table)}:${line}: ${words}`));
  return {
    assessment: assessmentOf(benchWith(engine, read.value.entries)),
    questions: read.value.questions.map(({ line, words }) => `${nameOf(table)}:${line}: ${words}`),
  };
}
