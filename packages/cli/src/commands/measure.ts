import { type Feature, type InspectionPlan, inspectionPlan } from '@gudgeon/core/assess';
import { openBench, worksheetTable } from '@gudgeon/core/workbench';
import type { Command } from 'commander';
import { engineOf } from '../engine-of-sheet.js';
import { BadInput, type Io } from '../io.js';
import { findingsAsJson, findingsAsText, planAsJson, planAsText } from './measure-words.js';
import { decimal, delimiter, display, readTable, type TableFlags } from './readings-table.js';

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

async function assessed(sheet: string, table: string, flags: TableFlags & { json?: boolean }, io: Io): Promise<void> {
  const { assessment, questions } = await readTable('assess', sheet, table, flags, io);
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
