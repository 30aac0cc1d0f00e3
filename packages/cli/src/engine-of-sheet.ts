import type { Engine } from '@gudgeon/core/engine';
import { loadSheet } from '@gudgeon/core/engine/load';
import { BadInput, type Io, readText } from './io.js';

export const nameOf = (path: string): string => (path === '-' ? 'standard input' : path);

/** The engine of a sheet ("-" for standard input). Rejects with a `BadInput`: one line a fault, with file and line. */
export async function engineOf(path: string, io: Io): Promise<Engine> {
  const sheet = loadSheet(await readText(io, path));
  if (sheet.ok) return sheet.value;
  throw new BadInput(
    sheet.fault.map((f) => `${nameOf(path)}${f.line === undefined ? '' : `:${f.line}`}: ${f.message}`),
  );
}
