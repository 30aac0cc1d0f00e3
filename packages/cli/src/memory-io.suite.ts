import { BadInput, run } from './index.js';

/** What a command said: its output as one text, its complaints line by line. */
export interface Said {
  readonly code: number;
  readonly out: string;
  readonly err: readonly string[];
}

/** Runs a command line in-process on files of the test's own; "-" is standard input. */
export async function gudgeon(argv: readonly string[], files: Readonly<Record<string, string>> = {}): Promise<Said> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await run(argv, {
    out: (text) => void out.push(text),
    err: (text) => void err.push(text),
    readFile: async (path) => {
      const text = files[path];
      if (text === undefined) throw new BadInput([`${path}: no such file`]);
      return text;
    },
    readStdin: async () => files['-'] ?? '',
  });
  return { code, out: out.join('\n'), err: err.flatMap((text) => text.split('\n')) };
}
