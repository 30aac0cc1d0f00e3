import { Command, CommanderError } from 'commander';
import { commands } from './commands/index.js';
import { BadInput, type Io } from './io.js';

/** Exit codes: 0 done, 2 the input cannot be used, 1 a defect of ours. */
const DONE = 0;
const DEFECT = 1;
const BAD_INPUT = 2;

/** Runs one command line (without "node" and the script name) and answers its exit code. */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  const program = build(io);
  try {
    await program.parseAsync([...argv], { from: 'user' });
    return DONE;
  } catch (error) {
    return explain(error, io);
  }
}

/** Help text of every command, for the generated page; written at a fixed width. */
export function commandHelp(): readonly { readonly name: string; readonly help: string }[] {
  const silent: Io = {
    out: () => {},
    err: () => {},
    readFile: () => Promise.reject(new Error('help reads nothing')),
    readStdin: () => Promise.reject(new Error('help reads nothing')),
  };
  const walk = (command: Command, above: string): { name: string; help: string }[] => {
    const name = `${above} ${command.name()}`.trim();
    command.configureHelp({ helpWidth: 100 });
    return [{ name, help: command.helpInformation() }, ...command.commands.flatMap((one) => walk(one, name))];
  };
  return walk(build(silent), '');
}

function build(io: Io): Command {
  const program = new Command('gudgeon').description('A bench book that computes, for people who put engines together');
  // Set before the commands are added: sub-commands copy these settings when they are made.
  program.exitOverride().configureOutput({
    writeOut: (text) => io.out(text.trimEnd()),
    writeErr: (text) => io.err(text.trimEnd()),
  });
  for (const register of commands) register(program, io);
  return program;
}

function explain(error: unknown, io: Io): number {
  if (error instanceof BadInput) {
    for (const problem of error.problems) io.err(problem);
    return BAD_INPUT;
  }
  // The parser of the command line has already said its line; help and version count as done.
  if (error instanceof CommanderError) return error.exitCode === 0 ? DONE : BAD_INPUT;
  io.err(
    `gudgeon: this is a defect of the program, not of your input: ${error instanceof Error ? error.message : error}`,
  );
  return DEFECT;
}
