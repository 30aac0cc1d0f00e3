/** Plot of the room between valves and piston through the overlap. */
import type { ValveKind } from '../../../engine/index.js';
import type { DisplaySystem } from '../../../quantity/index.js';
import { axisOver, crankAxis } from '../axis.js';
import type { Curve, Plot, PlotLimit, PlotMark } from '../plot.js';
import { degreesOf, readerUnit } from './reader-units.js';

/** Room of one kind of valve, over crank angle after the top of overlap [rad], in metres. */
export interface RoomShown {
  readonly kind: ValveKind;
  readonly angles: ArrayLike<number>;
  readonly gaps: ArrayLike<number>;
  /** The same with the cam where it stood before it was moved. */
  readonly before?: ArrayLike<number>;
  readonly least: { readonly angle: number; readonly gap: number };
  /** Room that is wanted at least, and who says so. */
  readonly limit?: { readonly at: number; readonly from: string };
}

/** Rooms found in the metal, over crank angle after the top of overlap [rad], in metres. */
export interface RoomPoint {
  readonly kind: ValveKind;
  readonly angle: number;
  readonly gap: number;
}

const STEP = 30;
const LINES: Readonly<Record<ValveKind, Curve['line']>> = { intake: 'solid', exhaust: 'dashed' };
const BEFORE: Readonly<Record<ValveKind, Curve['line']>> = { intake: 'dotted', exhaust: 'chain' };
const SYMBOLS: Readonly<Record<ValveKind, NonNullable<Curve['symbol']>>> = { intake: 'circle', exhaust: 'square' };

/**
 * Room of both kinds of valve through the overlap, each with its limit and the place where it is least. `most` [m] is the highest room
 * drawn: far from the top there is room enough, and the plot is of where there is little. `measured`: found in the metal.
 */
export function valveRoomPlot(
  rooms: readonly RoomShown[],
  system: DisplaySystem,
  most: number,
  measured: readonly RoomPoint[] = [],
): Plot {
  const length = readerUnit('length', system);
  const shown = rooms.map((room) => ({ room, points: pointsOf(room.angles, room.gaps, length.of, most) }));
  const curves = [
    ...shown.map(({ room: { kind }, points }) => curveOf(kind, kind, points, LINES[kind], SYMBOLS[kind])),
    ...rooms.flatMap(({ kind, angles, before }) =>
      before === undefined
        ? []
        : [curveOf(`${kind}-before`, `${kind}, cam as it is`, pointsOf(angles, before, length.of, most), BEFORE[kind])],
    ),
    ...(['intake', 'exhaust'] as const).flatMap((kind) => measuredCurve(kind, measured, length.of)),
  ];
  const xs = curves.flatMap(({ points }) => points.map(([x]) => x));
  const [from, to] = xs.length === 0 ? [-STEP, STEP] : [down(Math.min(...xs)), up(Math.max(...xs))];
  const limits = leastLimits(rooms, length.of);
  const ys = curves.flatMap(({ points }) => points.map(([, y]) => y));
  return {
    id: 'valve-room',
    title: 'Room between valve and piston',
    description: 'Room along the stem of each valve through the overlap, with the least that is wanted.',
    x: crankAxis('crank after top of overlap', from, to),
    left: axisOver('valve to piston', length.unit, ys, [0, ...limits.map(({ at }) => at)]),
    curves,
    limits,
    marks: rooms.map(
      ({ kind, least }): PlotMark => ({
        id: `least-${kind}`,
        name: `least, ${kind}`,
        x: degreesOf(least.angle),
        y: length.of(least.gap),
        axis: 'left',
      }),
    ),
  };
}

const down = (x: number): number => Math.floor(x / STEP) * STEP;
const up = (x: number): number => Math.ceil(x / STEP) * STEP;

const curveOf = (
  id: string,
  name: string,
  points: Curve['points'],
  line: Curve['line'],
  symbol?: Curve['symbol'],
): Curve => ({ id, name, axis: 'left', points, line, ...(symbol && { symbol }) });

const MEASURED: Readonly<Record<ValveKind, NonNullable<Curve['symbol']>>> = { intake: 'cross', exhaust: 'triangle' };
function measuredCurve(kind: ValveKind, all: readonly RoomPoint[], of: (value: number) => number): readonly Curve[] {
  const own = all.filter((one) => one.kind === kind).sort((a, b) => a.angle - b.angle);
  const points = own.map(({ angle, gap }): [number, number] => [degreesOf(angle), of(gap)]);
  return own.length === 0 ? [] : [curveOf(`${kind}-measured`, `${kind}, measured`, points, 'none', MEASURED[kind])];
}

/** The one stretch round the least room in which the room stays under `most`. */
function pointsOf(
  angles: ArrayLike<number>,
  gaps: ArrayLike<number>,
  of: (value: number) => number,
  most: number,
): Curve['points'] {
  let least = 0;
  for (let at = 1; at < gaps.length; at += 1) if (gaps[at]! < gaps[least]!) least = at;
  let [first, last] = [least, least];
  while (first > 0 && gaps[first - 1]! <= most) first -= 1;
  while (last < gaps.length - 1 && gaps[last + 1]! <= most) last += 1;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => [
    degreesOf(angles[first + n]!),
    of(gaps[first + n]!),
  ]);
}

/** Lines of the least room that is wanted; both kinds with one limit have one line. */
export function leastLimits(
  rooms: readonly Pick<RoomShown, 'kind' | 'limit'>[],
  of: (value: number) => number,
): readonly PlotLimit[] {
  const held = rooms.flatMap(({ kind, limit }) => (limit === undefined ? [] : [{ kind, ...limit }]));
  const alike = held.length > 1 && held.every((one) => one.at === held[0]!.at && one.from === held[0]!.from);
  const named = alike
    ? [{ ...held[0]!, name: 'wanted' }]
    : held.map((one) => ({ ...one, name: `wanted, ${one.kind}` }));
  return named.map(({ name, at, from }) => ({ name, axis: 'left', at: of(at), allowed: 'above', from }));
}
