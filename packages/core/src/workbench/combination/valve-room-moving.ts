/** What of the room between valve and piston changes while a slider moves: curves and least rooms, nothing of doubt. */
import {
  figure,
  type Makeup,
  type MeasuredRoom,
  type ReadCurves,
  type RoomOfKind,
  roomSweep,
} from '../../assess/index.js';
import { type Plot, type RoomShown, valveRoomPlot } from '../../drawing/plots/index.js';
import type { CylinderNumber, ValveKind } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import type { InputView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { camInput, camStanding } from './cam-standing.js';
import { inputViews } from './inputs.js';
import { shownQuantity, systemOf } from './shown.js';
import type { Tried } from './tried.js';
import { measuredOf } from './valve-room-answer.js';
import { askedOf, roomInputs, type ValveRoomWish } from './valve-room-asked.js';

export interface ValveRoomMoving {
  /** None where the room of neither kind is known. */
  readonly plots: readonly Plot[];
  readonly inputs: readonly InputView[];
  /** "cam advance" with its slider. */
  readonly cam: InputView;
  /** Least room of each kind as the cam stands now: "2.53 mm at 8° after top". */
  readonly least: readonly { readonly kind: ValveKind; readonly words: string; readonly kept?: boolean }[];
}
type Room = Pick<RoomOfKind, 'kind' | 'angles' | 'gaps' | 'least'>;

/** `every`: a point is drawn for every so many degrees; while a slider moves the eye sees no more than every second. */
export function valveRoomMoving(
  bench: Bench,
  tried: Tried,
  shownIn: ShownIn,
  wish: ValveRoomWish,
  every = 1,
): ValveRoomMoving {
  const { cylinder, carries, read } = askedOf(bench, tried, wish);
  const standing = camStanding(bench, tried, carries);
  const { carried, others, move } = standing;
  const own = sweepOf(carried, { read, cylinder });
  const rest = carries === 'both' ? own.rest : ofBoth(carries, own.rest, sweepOf(others, { read, cylinder }).rest);
  const now = move === 0 ? own.rest : own.sweep(move);
  const rooms = rest.map((before): RoomShown => {
    const { kind } = before;
    const turned = move !== 0 && (carries === 'both' || carries === kind);
    const after = turned ? now.find((one) => one.kind === kind) : undefined;
    const limit = figure(tried, 'valve-room-least', kind);
    return { ...shownRoom(every, after ?? before, after && before), ...(limit && { limit: limitOf(limit) }) };
  });
  return {
    plots: plotOf(rooms, rest, measuredOf(bench, tried).rooms, shownIn),
    inputs: inputViews(tried, roomInputs(cylinder), shownIn),
    cam: camInput(tried, standing, shownIn),
    least: rooms.map(({ kind, least, limit }) => ({
      kind,
      words: `${shownQuantity('length', least.gap, shownIn)} at ${placeWords(least.angle)}`,
      ...(limit && { kept: least.gap >= limit.at }),
    })),
  };
}

/** What was measured stands in the plot where its place is known. */
function plotOf(
  rooms: readonly RoomShown[],
  rest: readonly Room[],
  measured: readonly MeasuredRoom[],
  shownIn: ShownIn,
): readonly Plot[] {
  const points = measured.flatMap(({ kind, angle, gap }) => (angle === undefined ? [] : [{ kind, angle, gap }]));
  if (rooms.length === 0 && points.length === 0) return [];
  return [valveRoomPlot(rooms, systemOf(shownIn), highestShown(rest), points)];
}

/** Of each kind the room of its own cam. */
const ofBoth = (carries: ValveKind, own: readonly Room[], others: readonly Room[]): readonly Room[] => [
  ...own.filter(({ kind }) => kind === carries),
  ...others.filter(({ kind }) => kind !== carries),
];

interface Swept {
  readonly read: ReadCurves;
  readonly cylinder: CylinderNumber;
  readonly sweep: ReturnType<typeof roomSweep>;
  readonly rest: readonly Room[];
}
/** The last one of each state of the figures: a slider that moves the cam asks for it with every step. */
const swept = new WeakMap<Makeup, Swept>();
function sweepOf(makeup: Makeup, { read, cylinder }: Pick<Swept, 'read' | 'cylinder'>): Swept {
  const known = swept.get(makeup);
  if (known?.read === read && known.cylinder === cylinder) return known;
  const sweep = roomSweep(makeup, { read, cylinder });
  const made = { read, cylinder, sweep, rest: sweep(0) };
  swept.set(makeup, made);
  return made;
}

const limitOf = ({ value, from }: { readonly value: number; readonly from: string }) => ({ at: value, from });

/** Through the overlap: farther from the top the piston has gone down by more than any valve opens [rad]. */
const NEAR = (2 * Math.PI) / 3;

function shownRoom(every: number, { kind, angles, gaps, least }: Room, before: Room | undefined): RoomShown {
  const first = Math.max(
    0,
    angles.findIndex((angle) => angle >= -NEAR),
  );
  const last = angles.findLastIndex((angle) => angle <= NEAR);
  const count = Math.max(0, Math.floor((last - first) / every) + 1);
  const at = (n: number) => first + n * every;
  const places = Float64Array.from({ length: count }, (_, n) => angles[at(n)]!);
  return {
    kind,
    least,
    angles: places,
    gaps: places.map((_, n) => gaps[at(n)]!),
    ...(before && { before: Float64Array.from(places, (angle) => gapNear(before, angle)) }),
  };
}
/** What was read may reach less far with the cam where it was: there is no room known there. */
function gapNear({ angles, gaps }: Room, angle: number): number {
  const [first = 0, second = 1] = [angles[0], angles[1]];
  return gaps[Math.round((angle - first) / (second - first))] ?? Number.POSITIVE_INFINITY;
}

/** Half a centimetre over the least room with the cam at rest: farther up there is nothing to see, and the axis stands still. */
const OVER = 5e-3;
const highestShown = (rest: readonly Room[]): number => Math.max(...rest.map(({ least }) => least.gap)) + OVER;

const placeWords = (angle: number): string => {
  const degrees = Math.round(Math.abs((angle * 180) / Math.PI));
  return degrees === 0 ? 'top' : `${degrees}° ${angle < 0 ? 'before' : 'after'} top`;
};
