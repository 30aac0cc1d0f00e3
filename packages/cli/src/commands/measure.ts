import { type Feature, type InspectionPlan, inspectionPlan } from '@gudgeon/core/assess';
import type { Engine } from '@gudgeon/core/engine';
import { type LogEntry, type NewEntry, NO_PREVIOUS, sealEntry } from '@gudgeon/core/record';
import { assessmentOf, type Bench, importWorksheet, openBench, worksheetTable } from '@gudgeon/core/workbench';
import { type Command, InvalidArgumentError } from 'commander';
import { engineOf, nameOf } from '../engine-of-sheet.js';
import { BadInput, type Io, readText } from '../io.js';
import { findingsAsJson, findingsAsText, planAsJson, planAsText } from './measure-words.js';

interface TableFlags {
  readonly delimiter: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
  readonly display: 'mm' | 'in';
}

function delimiter(word: string): TableFlags['delimiter'] {
  const signs = { comma: ',', semicolon: ';', tab: '\t' } as const;
  const found = Object.entries(signs).find(([name]) => name === word);
  if (found === undefined) throw new InvalidArgumentError('Valid: comma, semicolon, tab.');
  return found[1];
}
function decimal(word: string): TableFlags['decimal'] {
  if (word === 'point') return '.';
  if (word === 'comma') return ',';
  throw new InvalidArgumentError('Valid: point, comma.');
}
function display(word: string): TableFlags['display'] {
  if (word === 'inch') return 'in';
  if (word === 'metric') return 'mm';
  throw new InvalidArgumentError('Valid: inch, metric.');
}

/** `gudgeon inspect`: everything that the engine of a sheet has to be measured, in the order of walking round it. */
export function inspect(program: Command, io: Io): void {
  program
    .command('inspect')
    .description('print what an engine has to be measured: features, places, counts, gauges')
    .argument('<sheet>', 'engine sheet; "-" reads standard input')
    .option('--json', 'print one JSON object, with every place and reading')
    .action(async (sheet: string, flags: { json?: boolean }) => {
      const engine = await engineOf(sheet, io);
      const plan = inspectionPlan(engine);
      io.out(flags.json ? JSON.stringify(planAsJson(engine, plan), null, 2) : planAsText(engine, plan));
    });
}

function featureOf(plan: InspectionPlan, id: string): Feature {
  const found = plan.features.find(({ kind }) => kind.id === id);
  if (found !== undefined) return found;
  const valid = plan.features.map(({ kind }) => kind.id).join(', ');
  throw new BadInput([`worksheet: "${id}" is nothing to measure on this engine; valid: ${valid}`]);
}

/** `gudgeon worksheet`: an empty worksheet as CSV, to print, to fill in and to bring back with `gudgeon assess`. */
export function worksheet(program: Command, io: Io): void {
  program
    .command('worksheet')
    .description('write an empty worksheet as CSV: one row a reading')
    .argument('<sheet>', 'engine sheet; "-" reads standard input')
    .argument('[feature]', 'feature as `gudgeon inspect` names it, such as cylinder-bore; all when left out')
    .option('--delimiter <word>', 'comma, semicolon or tab', delimiter, ',')
    .option('--display <system>', 'unit of the empty rows: inch or metric', display, 'mm')
    .action(async (sheet: string, feature: string | undefined, flags: TableFlags) => {
      const engine = await engineOf(sheet, io);
      if (feature !== undefined) featureOf(inspectionPlan(engine), feature);
      const style = { length: flags.display, delimiter: flags.delimiter };
      io.out(worksheetTable(openBench(engine, []), feature, style).trimEnd());
    });
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

async function assessed(sheet: string, table: string, flags: TableFlags & { json?: boolean }, io: Io): Promise<void> {
  if (sheet === '-' && table === '-') throw new BadInput(['assess: only one of the two can be standard input']);
  const engine = await engineOf(sheet, io);
  const text = await readText(io, table);
  const read = importWorksheet(openBench(engine, []), text, { decimalMark: flags.decimal, instruments: 'not read' });
  if (!read.ok) throw new BadInput(read.fault.map(({ line, words }) => `${nameOf(table)}:${line}: ${words}`));
  const assessment = assessmentOf(benchWith(engine, read.value.entries));
  const questions = read.value.questions.map(({ line, words }) => `${nameOf(table)}:${line}: ${words}`);
  const shown = { length: flags.display };
  io.out(
    flags.json
      ? JSON.stringify(findingsAsJson(assessment, questions, shown), null, 2)
      : findingsAsText(assessment, questions, shown),
  );
}

/** `gudgeon assess`: sizes, clearances and verdicts of a sheet and a table of readings. */
export function assess(program: Command, io: Io): void {
  program
    .command('assess')
    .description('judge readings against a sheet: sizes, clearances, verdicts, and what to look at again')
    .argument('<sheet>', 'engine sheet; "-" reads standard input')
    .argument('<readings>', 'worksheet as CSV, as `gudgeon worksheet` writes it; "-" reads standard input')
    .option('--decimal <word>', 'decimal mark of the file: point or comma', decimal, '.')
    .option('--display <system>', 'show figures in inch or metric', display, 'mm')
    .option('--json', 'print one JSON object')
    .action((sheet: string, table: string, flags: TableFlags & { json?: boolean }) =>
      assessed(sheet, table, flags, io),
    );
}
