import { aroundPoint, type Box, labelBox, overlap } from './extent.js';
import type { MarkState, Point, Shape } from './figure.js';
import { at } from './geometry.js';
import { label } from './shapes.js';

/** A label that looks for a free place around its mark. */
export interface Wanted {
  readonly text: string;
  readonly size: number;
  readonly centre: Point;
  /** Radius of what stands at the centre; the label lies outside of it. */
  readonly clear: number;
  readonly part?: string;
  readonly state?: MarkState;
  /** Stays in the drawing even where no free place is found. */
  readonly must: boolean;
}
type Candidate = { readonly at: Point; readonly anchor: 'start' | 'middle' | 'end' };

/** Below first, then above, right, left and the corners: the order in which a draughtsman would try. */
function candidates({ centre, clear, size }: Wanted): readonly Candidate[] {
  const gap = clear + size * 0.12;
  const down = gap + size * 0.55;
  const slant = gap * 0.72;
  const beside = (x: number, y: number): Candidate => ({
    at: at(centre.x + x, centre.y + y),
    anchor: x === 0 ? 'middle' : x > 0 ? 'start' : 'end',
  });
  return [
    ...(clear === 0 ? [beside(0, 0)] : []),
    beside(0, down),
    beside(0, -down),
    beside(gap, 0),
    beside(-gap, 0),
    beside(slant, slant + size * 0.35),
    beside(-slant, slant + size * 0.35),
    beside(slant, -slant - size * 0.35),
    beside(-slant, -slant - size * 0.35),
  ];
}
/**
 * Places labels one after the other where nothing else stands, inside of `within` where that is possible. A label without a free place is left out, unless it must
 * stay. Returns the labels drawn and the texts left out.
 */
export function placeLabels(
  wanted: readonly Wanted[],
  taken: readonly Box[],
  within?: Box,
): { readonly shapes: readonly Shape[]; readonly leftOut: readonly string[] } {
  const busy: Box[] = [...taken];
  const shapes: Shape[] = [];
  const leftOut: string[] = [];
  for (const want of [...wanted].sort((a, b) => Number(b.must) - Number(a.must))) {
    const tries = candidates(want);
    const open = tries.filter((one) => {
      const box = labelBox({ ...one, text: want.text, size: want.size });
      return !busy.some((other) => overlap(box, other));
    });
    const free = open.find((one) => inside(labelBox({ ...one, text: want.text, size: want.size }), within)) ?? open[0];
    const chosen = free ?? (want.must ? tries[0] : undefined);
    if (chosen === undefined) {
      leftOut.push(want.text);
      continue;
    }
    const { part, state } = want;
    const drawn = label(chosen.at, want.text, want.size, {
      anchor: chosen.anchor,
      ...(part === undefined ? {} : { part }),
      ...(state === undefined ? {} : { state }),
    });
    busy.push(labelBox({ ...chosen, text: want.text, size: want.size }));
    shapes.push(drawn);
  }
  return { shapes, leftOut };
}
const inside = (box: Box, frame: Box | undefined): boolean =>
  frame === undefined ||
  (box.left >= frame.left && box.right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom);
/** The room that a mark takes, for labels to keep out of. */
export const markBox = (centre: Point, reach: number): Box => aroundPoint(centre, reach * 0.92);
