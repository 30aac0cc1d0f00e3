import { aroundPoint, type Box, labelBox, overlap } from './extent.js';
import type { MarkState, Point, Shape } from './figure.js';
import { at, minus, plus, times } from './geometry.js';
import { label, line } from './shapes.js';

/** A label that looks for a free place around its mark. */
export interface Wanted {
  readonly text: string;
  readonly size: number;
  readonly centre: Point;
  /** Other places that the label may stand at as well, e.g. along a line. */
  readonly or?: readonly Point[];
  /** Radius of what stands at the centre; the label lies outside of it. */
  readonly clear: number;
  readonly part?: string;
  readonly state?: MarkState;
  /** Placed before the others, and farther off where there is no room beside the mark. */
  readonly must: boolean;
}
type Candidate = { readonly at: Point; readonly anchor: 'start' | 'middle' | 'end' };

/** Below first, then above, right, left and the corners: the order in which a draughtsman would try. */
function candidates({ centre, clear, size }: Wanted, out: number): readonly Candidate[] {
  const gap = clear + size * (0.12 + out);
  const down = gap + size * 0.55;
  const slant = gap * 0.72;
  const beside = (x: number, y: number): Candidate => ({
    at: at(centre.x + x, centre.y + y),
    anchor: x === 0 ? 'middle' : x > 0 ? 'start' : 'end',
  });
  return [
    ...(clear === 0 && out === 0 ? [beside(0, 0)] : []),
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
 * Places labels one after the other where nothing else stands, inside of `within` where that is possible. Those that `must` stay
 * come first and may stand farther off, on a leader line. A label that finds no free place at all is left out.
 */
export function placeLabels(
  wanted: readonly Wanted[],
  taken: readonly Box[],
  within?: Box,
): { readonly shapes: readonly Shape[]; readonly leftOut: readonly string[] } {
  const busy: Box[] = [...taken];
  const shapes: Shape[] = [];
  const leftOut: string[] = [];
  const boxOf = (one: Candidate, want: Wanted) => labelBox({ ...one, text: want.text, size: want.size });
  const findFree = (want: Wanted, tries: readonly Candidate[]): Candidate | undefined => {
    const boxed = tries.map((one) => ({ one, box: boxOf(one, want) }));
    const open = boxed.filter(({ box }) => !busy.some((other) => overlap(box, other)));
    return (open.find(({ box }) => inside(box, within)) ?? open[0])?.one;
  };
  for (const want of [...wanted].sort((a, b) => Number(b.must) - Number(a.must))) {
    const near = findFree(
      want,
      [want.centre, ...(want.or ?? [])].flatMap((centre) => candidates({ ...want, centre }, 0)),
    );
    const far =
      near === undefined && want.must
        ? findFree(
            want,
            FAR.flatMap((out) => candidates(want, out)),
          )
        : undefined;
    const chosen = near ?? far;
    if (chosen === undefined) {
      leftOut.push(want.text);
      continue;
    }
    busy.push(boxOf(chosen, want));
    if (far !== undefined) shapes.push(leader(want, far));
    shapes.push(letters(want, chosen));
  }
  return { shapes, leftOut };
}
/** As `placeLabels`, and off what stands in `rather` too: only a label that finds no room that way stands across it. */
export function placeLabelsRather(
  wanted: readonly Wanted[],
  taken: readonly Box[],
  rather: readonly Box[],
  within?: Box,
): ReturnType<typeof placeLabels> {
  const clear = placeLabels(wanted, [...taken, ...rather], within);
  if (clear.leftOut.length === 0) return clear;
  const placed = clear.shapes.flatMap((shape) => (shape.kind === 'label' ? [labelBox(shape)] : []));
  const rest = placeLabels(
    wanted.filter(({ text }) => clear.leftOut.includes(text)),
    [...taken, ...placed],
    within,
  );
  return { shapes: [...clear.shapes, ...rest.shapes], leftOut: rest.leftOut };
}

/** Steps outward for a label without room beside its mark, in letter heights. */
const FAR = [1, 2.1, 3.2, 4.3];
function letters({ text, size, part, state }: Wanted, { at: place, anchor }: Candidate): Shape {
  return label(place, text, size, {
    anchor,
    ...(part === undefined ? {} : { part }),
    ...(state === undefined ? {} : { state }),
  });
}
function leader({ centre, clear, size }: Wanted, { at: place }: Candidate): Shape {
  const way = minus(place, centre);
  const length = Math.hypot(way.x, way.y) || 1;
  return line(plus(centre, times(way, clear / length)), plus(centre, times(way, 1 - (size * 0.5) / length)), 'thin');
}
const inside = (box: Box, frame: Box | undefined): boolean =>
  frame === undefined ||
  (box.left >= frame.left && box.right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom);
/** The room that a mark takes, for labels to keep out of. */
export const markBox = (centre: Point, reach: number): Box => aroundPoint(centre, reach * 0.92);
