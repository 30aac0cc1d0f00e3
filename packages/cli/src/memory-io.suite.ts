import { BadInput, run } from './index.js';

/** Runs a command line in-process on files and standard input of the test's own. */
export async function gudgeon(
  argv: readonly string[],
  world: { readonly files?: Readonly<Record<string, string>>; readonly stdin?: string } = {},
): Promise<{ readonly code: number; readonly out: string; readonly err: string }> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await run(argv, {
    out: (text) => void out.push(text),
    err: (text) => void err.push(text),
    readFile: async (path) => {
      const text = world.files?.[path];
      if (text === undefined) throw new BadInput([`${path}: no such file`]);
      return text;
    },
    readStdin: async () => world.stdin ?? '',
  });
  return { code, out: out.join('\n'), err: err.join('\n') };
}
