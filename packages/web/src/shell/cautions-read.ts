import type { Caution } from '@gudgeon/core/workbench';

/** Cautions read since the page was opened, by person: what is repeated before every sheet is soon not read at all. */
const read = new Set<string>();
const nameOf = (person: string, { word, can, act }: Caution): string => [person, word, can, act].join('|');

export const haveRead = (person: string, cautions: readonly Caution[]): boolean =>
  cautions.every((caution) => read.has(nameOf(person, caution)));

export function noteRead(person: string, cautions: readonly Caution[]): void {
  for (const caution of cautions) read.add(nameOf(person, caution));
}
