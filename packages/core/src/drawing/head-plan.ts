import type { Engine, Head, Place } from '../engine/index.js';
import { type Box, shapeBox } from './extent.js';
import type { Point, Shape } from './figure.js';
import { at, distance } from './geometry.js';
import type { PlanOptions } from './options.js';
import { arrow, label, roundedRectangle } from './shapes.js';
import { type Scale, scaleFor } from './sheet-scale.js';

/** Least width of a plan over its height: a longer one would run off a phone screen. */
const TALLEST = 0.6;
/** A touch of 44 px and room for a label beside it. */
const ROOMY_PX = 56;
/** Room for cylinder numbers beside a plan with the front at the top. */
const SIDES_PX = 48;

/** Page frame of one head's gasket face seen from above its bank. */
export interface HeadPlan {
  readonly head: Head;
  readonly front: 'left' | 'top';
  readonly page: (place: { readonly x: number; readonly y: number }) => Point;
  readonly outline: readonly Point[];
  /** Outline in head millimetres: `x` from the front end, `y` toward the exhaust side. */
  readonly length: number;
  readonly low: number;
  readonly high: number;
  readonly bore: number;
  readonly scale: Scale;
  /** mm; see `TALLEST`. */
  readonly leastWidth: number;
}
export const millimetres = (place: Place): { x: number; y: number } => ({ x: place.x * 1000, y: place.y * 1000 });

/** The head that a caller names. An unknown id is a defect of the caller: every id comes from the engine itself. */
export function headOf(engine: Engine, headId: string): Head {
  const head = engine.heads.find((each) => each.id === headId);
  if (head === undefined) throw new RangeError(`no head "${headId}" in this engine`);
  return head;
}

/**
 * Lays a head on the page. With the front to the left, the exhaust side is below for an upright bank or one that leans to the
 * right seen from the front, and above for one that leans to the left: so it lies for a person who bends over the bank,
 * as long as the exhaust is on the outer side. `top` turns the page a quarter clockwise.
 *
 * @param holes places in mm that the outline must hold.
 */
export function headPlan(
  engine: Engine,
  head: Head,
  holes: readonly { readonly x: number; readonly y: number }[],
  options: PlanOptions,
): HeadPlan {
  const lean = engine.layout.banks.find((bank) => bank.id === head.bank)?.angle ?? 0;
  const down = lean < -1e-6 ? -1 : 1;
  const { length, low, high } = extent(head, holes);
  const front = options.front ?? roomyFront(length, holes, options);
  const page = ({ x, y }: { x: number; y: number }) => (front === 'left' ? at(x, y * down) : at(-y * down, x));
  const bore = boreOf(engine, head, length);
  const corners = front === 'left' ? ([length, high - low] as const) : ([high - low, length] as const);
  const scale = scaleFor(
    Math.max(corners[0], corners[1] * TALLEST),
    options,
    corners[0] > corners[1] * TALLEST ? SIDES_PX : 0,
  );
  const [a, b] = [page({ x: 0, y: low }), page({ x: length, y: high })];
  const outline = roundedRectangle(
    Math.min(a.x, b.x),
    Math.min(a.y, b.y),
    corners[0] ?? 0,
    corners[1] ?? 0,
    bore * 0.12,
  );
  return { head, front, page, outline, length, low, high, bore, scale, leastWidth: corners[1] * TALLEST };
}
/** Left where the holes then lie far enough apart for fingers and labels, else top. */
function roomyFront(
  length: number,
  holes: readonly { readonly x: number; readonly y: number }[],
  options: PlanOptions,
): 'left' | 'top' {
  const { px } = scaleFor(length, options);
  const nearest = holes.reduce(
    (least, a, i) => holes.slice(i + 1).reduce((found, b) => Math.min(found, distance(a, b)), least),
    Number.POSITIVE_INFINITY,
  );
  return nearest / px < ROOMY_PX ? 'top' : 'left';
}
/** The stated size, widened where a hole would lie outside of it. */
function extent(head: Head, holes: readonly { readonly x: number; readonly y: number }[]) {
  const centres = Object.values(head.cylinderCentres).map(millimetres);
  const all = [...holes, ...centres];
  const middle = centres.length === 0 ? 0 : centres.reduce((sum, centre) => sum + centre.y, 0) / centres.length;
  const half = head.width > 0 ? (head.width * 1000) / 2 : 80;
  const rim = 9;
  return {
    length: Math.max(head.length > 0 ? head.length * 1000 : 0, ...all.map((p) => p.x + rim), 60),
    low: Math.min(middle - half, ...all.map((p) => p.y - rim)),
    high: Math.max(middle + half, ...all.map((p) => p.y + rim)),
  };
}
/** Bore in mm; where the sheet has none, what fits into the pitch of the head. */
function boreOf(engine: Engine, head: Head, length: number): number {
  const stated = engine.crankTrain.bore?.value;
  return stated !== undefined && stated > 0 ? stated * 1000 : (length / Math.max(1, head.cylinders.length)) * 0.8;
}

/** Front arrow, side name and cylinder numbers around the outline, and the room that they take. */
export function surroundings(plan: HeadPlan): { readonly shapes: readonly Shape[]; readonly boxes: readonly Box[] } {
  const shapes = [...(plan.front === 'left' ? frontAtLeft(plan) : frontAtTop(plan)), ...cylinderNumbers(plan)];
  return { shapes, boxes: shapes.map(shapeBox) };
}
export const outlineBox = ({ outline }: HeadPlan) => ({
  left: Math.min(...outline.map((p) => p.x)),
  right: Math.max(...outline.map((p) => p.x)),
  top: Math.min(...outline.map((p) => p.y)),
  bottom: Math.max(...outline.map((p) => p.y)),
});
function frontAtLeft(plan: HeadPlan): readonly Shape[] {
  const { scale, page, high } = plan;
  const box = outlineBox(plan);
  const exhaustBelow = page({ x: 0, y: high }).y > page({ x: 0, y: high - 1 }).y;
  const y = exhaustBelow ? box.bottom + scale.text * 0.95 : box.top - scale.text * 0.95;
  const tail = at(box.left + scale.px * 30, y);
  return [
    ...arrow(tail, at(box.left, y), scale.px * 12, { part: 'front' }),
    label(at(tail.x + scale.px * 4, y), 'FRONT', scale.small, { anchor: 'start', part: 'front' }),
    label(at(box.right, y), 'exhaust side', scale.small, { anchor: 'end', part: 'exhaust side' }),
  ];
}
function frontAtTop(plan: HeadPlan): readonly Shape[] {
  const { scale, page, high } = plan;
  const box = outlineBox(plan);
  const middle = (box.left + box.right) / 2;
  const toRight = page({ x: 0, y: high }).x > page({ x: 0, y: high - 1 }).x;
  const y = box.bottom + scale.text;
  const edge = toRight ? box.right : box.left;
  const inward = toRight ? -1 : 1;
  const above = box.top - scale.px * 6;
  return [
    ...arrow(at(middle - scale.px * 32, above), at(middle - scale.px * 32, above - scale.px * 20), scale.px * 12, {
      part: 'front',
    }),
    label(at(middle - scale.px * 20, above - scale.px * 10), 'FRONT', scale.small, { anchor: 'start', part: 'front' }),
    ...arrow(at(edge + inward * scale.px * 26, y), at(edge, y), scale.px * 10, { part: 'exhaust side' }),
    label(at(edge + inward * scale.px * 30, y), 'exhaust side', scale.small, {
      anchor: toRight ? 'end' : 'start',
      part: 'exhaust side',
    }),
  ];
}
/** Along the intake edge, outside of the outline, where nothing else stands. */
function cylinderNumbers({ head, page, low, scale }: HeadPlan): readonly Shape[] {
  return head.cylinders.flatMap((cylinder) => {
    const centre = head.cylinderCentres[String(cylinder)];
    if (centre === undefined) return [];
    const place = page({ x: centre.x * 1000, y: low - scale.text * 0.95 });
    return [label(place, String(cylinder), scale.text * 1.1, { part: `cylinder ${cylinder}` })];
  });
}
/** How a person must hold the page, in words. */
export const frontWords = (front: 'left' | 'top'): string =>
  front === 'left' ? 'The front of the engine is at the left.' : 'The front of the engine is at the top.';
