import type { Station } from '../model.js';

/** `Top of the bore` -> `top-of-the-bore`: ids are written in letters, digits and hyphens. */
export function slug(words: string): string {
  return words
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** One station at the place: its name is not spoken. */
export function one(id: string): readonly Station[] {
  return [{ id, name: id.replaceAll('-', ' ') }];
}

/** Stations side by side, by their names. */
export function points(...names: readonly string[]): readonly Station[] {
  return names.map((name, index) => ({ id: slug(name), name, height: 0, direction: index }));
}

export interface Line {
  readonly id: string;
  readonly name: string;
}
export const lines = (...names: readonly string[]): readonly Line[] => names.map((name) => ({ id: slug(name), name }));

/** Every height in every direction: `top-thrust`, "top, thrust direction". */
export function grid(heights: readonly Line[], directions: readonly Line[]): readonly Station[] {
  return heights.flatMap((height, row) =>
    directions.map((direction, column) => ({
      id: `${height.id}-${direction.id}`,
      name: `${height.name}, ${direction.name}`,
      height: row,
      direction: column,
    })),
  );
}

export const ENDS = lines('front', 'rear');
/** Two diameters at right angles; `a` in line with the throw or the cylinder. */
export const AXES: readonly Line[] = [
  { id: 'a', name: 'first diameter' },
  { id: 'b', name: 'at right angles' },
];
/** Three diameters of a split bore, none on the parting line. */
export const CLOCK: readonly Line[] = [
  { id: 'vertical', name: 'square to the parting line' },
  { id: 'left', name: '60° to the left' },
  { id: 'right', name: '60° to the right' },
];
export const QUARTERS = points('first', 'second', 'third', 'fourth');
