import { loadSheet, type SheetFault } from '@gudgeon/core/engine/load';
import type { Command } from 'commander';
import { BadInput, type Io, readText } from '../io.js';

/** `file:line:column: what, where, what is valid`, as editors and terminals link it. */
function placed(name: string, at: { readonly line?: number; readonly column?: number }, message: string): string {
  const place = [at.line, at.column].filter((each) => each !== undefined).join(':');
  return `${name}${place === '' ? '' : `:${place}`}: ${message}`;
}

function counted(count: number, one: string): string {
  return `${count === 0 ? 'no' : count} ${count === 1 ? one : `${one}s`}`;
}

/** Refused sheets go to standard error, or with `--json` as one object to standard output; both end with exit code 2. */
function refuse(name: string, faults: readonly SheetFault[], json: boolean, io: Io): never {
  if (!json) throw new BadInput(faults.map((fault) => placed(name, fault, fault.message)));
  io.out(JSON.stringify({ ok: false, faults, cautions: [] }, null, 2));
  throw new BadInput([]);
}

async function check(path: string, json: boolean, io: Io): Promise<void> {
  const name = path === '-' ? 'standard input' : path;
  const sheet = loadSheet(await readText(io, path));
  if (!sheet.ok) refuse(name, sheet.fault, json, io);
  const { cautions, gaps, joints, limits, name: engine } = sheet.value;
  if (json) {
    io.out(JSON.stringify({ ok: true, name: engine, faults: [], cautions, gaps }, null, 2));
    return;
  }
  for (const caution of cautions) io.out(placed(name, caution, `caution: ${caution.message}`));
  const parts = [counted(joints.length, 'joint'), counted(limits.length, 'limit'), counted(gaps.length, 'gap')];
  io.out(`${name}: ${engine}: no fault, ${counted(cautions.length, 'caution')}; ${parts.join(', ')}`);
}

/** `gudgeon sheet check`: every fault and caution of an engine sheet with its line. */
export function sheet(program: Command, io: Io): void {
  program
    .command('sheet')
    .description('work with engine sheets')
    .command('check')
    .description('print every fault and caution of a sheet with its line; exit code 2 when there is a fault')
    .argument('<file>', 'engine sheet; "-" reads standard input')
    .option('--json', 'print one JSON object')
    .action((file: string, flags: { json?: boolean }) => check(file, flags.json ?? false, io));
}
