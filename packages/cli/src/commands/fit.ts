import { type Decision, decisionsOf } from '@gudgeon/core/assess';
import type { Command } from 'commander';
import { BadInput, type Io } from '../io.js';
import { decisionAsText, decisionsAsJson, decisionsAsText } from './fit-words.js';
import { decimal, display, readTable, type TableFlags } from './readings-table.js';

interface FitFlags extends Pick<TableFlags, 'decimal' | 'display'> {
  readonly decision?: string;
  readonly json?: boolean;
}

/** Decisions of one name, `bore-oversize`, or of one scope of it, `shells/main`. */
function named(decisions: readonly Decision[], name: string): readonly Decision[] {
  const found = decisions.filter(({ id, scope }) => name === id || name === `${id}/${scope}`);
  if (found.length > 0) return found;
  const valid = decisions.map(({ id, scope }) => `${id}/${scope}`).join(', ');
  throw new BadInput([`--decision: "${name}" is no decision of this engine; valid: ${valid}`]);
}

async function fitted(sheet: string, table: string, flags: FitFlags, io: Io): Promise<void> {
  const { assessment, questions } = await readTable('fit', sheet, table, flags, io);
  const all = decisionsOf(assessment, flags.display);
  const shown = flags.decision === undefined ? all : named(all, flags.decision);
  if (flags.json) io.out(JSON.stringify(decisionsAsJson(assessment, shown, questions), null, 2));
  else if (flags.decision === undefined) io.out(decisionsAsText(assessment, shown, questions));
  else io.out(shown.map(decisionAsText).join('\n\n'));
}

/** `gudgeon fit`: what can be decided from a sheet and a table of readings, alternatives side by side. */
export function fit(program: Command, io: Io): void {
  program
    .command('fit')
    .description('weigh the decisions that readings ask for: alternatives side by side, figures, proof')
    .argument('<sheet>', 'engine sheet; "-" reads standard input')
    .argument('<readings>', 'worksheet as CSV, as `gudgeon worksheet` writes it; "-" reads standard input')
    .option('--decision <name>', 'one decision in full, such as bore-oversize or shells/main')
    .option('--decimal <word>', 'decimal mark of the file: point or comma', decimal, '.')
    .option('--display <system>', 'show figures in inch or metric', display, 'mm')
    .option('--json', 'print one JSON object, with every alternative in full')
    .action((sheet: string, table: string, flags: FitFlags) => fitted(sheet, table, flags, io));
}
