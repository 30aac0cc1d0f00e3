/** What a command may do to the outside world. Tests hand in their own, so every command runs in-process. */
export interface Io {
  /** Writes one block of text to standard output; a line end is added. */
  out(text: string): void;
  /** Writes one line to standard error; a line end is added. */
  err(text: string): void;
  /** Text of a file. Rejects with a `BadInput` when it cannot be read. */
  readFile(path: string): Promise<string>;
  readStdin(): Promise<string>;
}

/**
 * Thrown by a command for input that it cannot use. `main` prints one line for each problem on standard error and
 * ends with exit code 2; nobody sees a stack trace.
 */
export class BadInput extends Error {
  readonly problems: readonly string[];
  constructor(problems: readonly string[]) {
    super(problems.join('\n'));
    this.problems = problems;
  }
}

/** Text of `path`, or of standard input when `path` is "-". */
export function readText(io: Io, path: string): Promise<string> {
  return path === '-' ? io.readStdin() : io.readFile(path);
}

/** JSON of `path` ("-" for standard input). Rejects with a `BadInput` that names the file. */
export async function readJson(io: Io, path: string): Promise<unknown> {
  const text = await readText(io, path);
  const name = path === '-' ? 'standard input' : path;
  if (text.trim() === '') throw new BadInput([`${name}: empty; a JSON object is needed`]);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new BadInput([
      `${name}: not JSON: ${error instanceof Error ? error.message.replaceAll('\n', ' ') : 'unreadable'}`,
    ]);
  }
}
