/** The sheets that come with the program: one YAML file each, named by its id. */
import { type Dirent, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadSheet } from '@gudgeon/core/engine/load';
import type { SheetSummary } from '../api/index.js';

export interface SheetLibrary {
  readonly list: () => readonly SheetSummary[];
  readonly textOf: (id: string) => string | undefined;
}

/**
 * Reads all sheets below a folder once. A sheet with faults is left out of the list; the project's tests look for that.
 * The list is made when it is first asked for, since reading every sheet takes longer than all the rest of starting.
 */
export function readSheetLibrary(folder: string): SheetLibrary {
  const texts = new Map(sheetFiles(folder).map((file) => [idOf(file), readFileSync(file, 'utf8')] as const));
  let summaries: readonly SheetSummary[] | undefined;
  const list = () => {
    summaries ??= [...texts].flatMap(([id, text]) => summaryOf(id, text));
    return summaries;
  };
  return { list, textOf: (id) => texts.get(id) };
}

const SUFFIX = /\.ya?ml$/;

function sheetFiles(folder: string): string[] {
  const below = (entry: Dirent): string[] => {
    const path = join(entry.parentPath, entry.name);
    return entry.isDirectory() ? sheetFiles(path) : SUFFIX.test(entry.name) ? [path] : [];
  };
  return readdirSync(folder, { withFileTypes: true })
    .sort((a, b) => a.name.localeCompare(b.name, 'en'))
    .flatMap(below);
}

const idOf = (file: string) => file.split(/[\\/]/).at(-1)!.replace(SUFFIX, '');

function summaryOf(id: string, text: string): SheetSummary[] {
  const loaded = loadSheet(text);
  if (!loaded.ok) return [];
  const { name, invented, description } = loaded.value;
  return [{ id, name, invented, description }];
}
