import type { Head, Hole } from '../engine/index.js';
import { millimetres } from './head-plan.js';

export interface PlacedHole {
  readonly id: string;
  /** Head millimetres. */
  readonly x: number;
  readonly y: number;
}
export interface PlacedHoles {
  readonly holes: readonly PlacedHole[];
  readonly note: string;
}

/**
 * Where the holes of a joint are drawn. Holes without a stated place stand in rows, in the order of the sheet: on the head when
 * no hole has a place, beside its exhaust edge when only some lack one. The note says so.
 */
export function placeHoles(head: Head, holes: readonly Hole[]): PlacedHoles {
  const stated = holes.flatMap((hole) => (hole.at === undefined ? [] : [{ id: hole.id, ...millimetres(hole.at) }]));
  const lost = holes.filter((hole) => hole.at === undefined);
  if (lost.length === 0) return { holes: stated, note: '' };
  const length = head.length > 0 ? head.length * 1000 : 400;
  const width = head.width > 0 ? head.width * 1000 : 160;
  if (stated.length === 0) {
    const rows = lost.length > 2 ? 2 : 1;
    return {
      holes: grid(lost, rows, length, -width * 0.34, width * 0.34),
      note: 'The sheet gives no places for the holes: they stand in rows, in the order of the sheet. Do not take their place from this drawing.',
    };
  }
  const edge = Math.max(width / 2, ...stated.map((hole) => hole.y)) + 14;
  return {
    holes: [...stated, ...grid(lost, 1, length, edge, edge)],
    note: `No place is given for hole ${lost.map((hole) => hole.id).join(', ')}: drawn beside the exhaust edge.`,
  };
}
function grid(holes: readonly Hole[], rows: number, length: number, low: number, high: number): readonly PlacedHole[] {
  const columns = Math.ceil(holes.length / rows);
  return holes.map((hole, i) => ({
    id: hole.id,
    x: (length * ((i % columns) + 0.5)) / columns,
    y: low + ((high - low) * Math.floor(i / columns)) / Math.max(1, rows - 1),
  }));
}
