/** Room between valves and pistons as it was found in the metal: the least of each kind, held against what is wanted. */
import { type ValveId, type ValveKind, valveKey } from '../../engine/index.js';
import { fromHalfWidth, mm } from '../../quantity/index.js';
import { answered, type Naming, type Part, together, told } from './answering.js';
import type { Answered, Makeup } from './model.js';
import { VALVE_KINDS } from './sizes-as-figures.js';
import { aroundZero, type StopReading, trueDeadCentre, wheelAtTopOf } from './true-dead-centre.js';

/** One room in the metal: at a place of the wheel with the valve pressed down, or the thinnest place of clay. */
export interface RoomReading {
  readonly valve: ValveId;
  readonly room: number;
  readonly method: 'clay' | 'drop';
  /** [rad] */
  readonly wheel?: number;
  /** Standard uncertainty of the reading itself [m]; left out: not known. */
  readonly uRead?: number;
  readonly entry?: string;
}
export interface MeasuredRoom {
  readonly kind: ValveKind;
  /** [m] */
  readonly gap: number;
  /** Crank angle after the top of overlap of the valve's own cylinder [rad]; clay and a wheel without a known top have none. */
  readonly angle?: number;
  readonly reading: RoomReading;
}
export interface MeasuredRoomAnswer extends Answered {
  readonly rooms: readonly MeasuredRoom[];
}

const NAMING: Naming = {
  key: 'valve-room-measured',
  name: 'least room as measured',
  quantity: 'length',
  low: 'valve-room-least',
};
/** Clay springs back and is cut by hand: so far either way (common practice, no source). */
const CLAY = fromHalfWidth(mm(0.15));
/** An indicator over a valve that is pressed by hand repeats so far either way (common practice, no source). */
const PRESSED = fromHalfWidth(mm(0.05));
const PRACTICE = 'common practice, no source';

/**
 * The least room of each kind of valve among those that were measured, with the doubt of its method: its own last place, and for clay 0.15 mm, for a valve
 * pressed down 0.05 mm either way (common practice, no source). Rooms hold for the parts that were fitted when they were measured. Angles count from the
 * top that the stops found; without stops a room counts, without its place.
 */
export function measuredRooms(
  makeup: Makeup,
  readings: readonly RoomReading[],
  stops: readonly StopReading[] = [],
): MeasuredRoomAnswer {
  const rooms = readings.map((reading) => placedRoom(makeup, reading, stops));
  const answer = together(
    VALVE_KINDS.map((kind) => partOf(makeup, kind, rooms)),
    ['valvetrain.valve-to-piston'],
  );
  const used = new Set(readings.map(({ method }) => method));
  const assumed = [
    ...(used.has('clay') ? [`clay is good to ${told('length', mm(0.15))} either way: ${PRACTICE}`] : []),
    ...(used.has('drop')
      ? [`a valve pressed down repeats to ${told('length', mm(0.05))} either way: ${PRACTICE}`]
      : []),
  ];
  return { ...answer, assumed, rooms };
}

function placedRoom(makeup: Makeup, reading: RoomReading, stops: readonly StopReading[]): MeasuredRoom {
  const own = { kind: reading.valve.kind, gap: reading.room, reading };
  const zero = trueDeadCentre(stops);
  const top = zero && wheelAtTopOf(makeup, zero, reading.valve.cylinder);
  return reading.wheel === undefined || top === undefined ? own : { ...own, angle: aroundZero(reading.wheel - top) };
}

function partOf(makeup: Makeup, kind: ValveKind, rooms: readonly MeasuredRoom[]): Part {
  const own = rooms.filter((one) => one.kind === kind);
  if (own.length === 0) return { figures: [], computed: [] };
  const least = own.reduce((best, one) => (one.gap < best.gap ? one : best));
  const { valve, method, uRead } = least.reading;
  const u = uRead === undefined ? undefined : Math.hypot(uRead, method === 'clay' ? CLAY : PRESSED);
  const known = { value: least.gap, ...(u !== undefined && { u }), effects: new Map<string, number>() };
  return {
    figures: [answered(makeup, NAMING, known, { kind, valve: valveKey(valve) }, kind)],
    computed: [],
    working: [
      `${kind}: ${own.length} measured, least ${told('length', least.gap)}${least.angle === undefined ? '' : ` at ${told('angle', Math.abs(least.angle))} ${least.angle < 0 ? 'before' : 'after'} top`}`,
    ],
    cautions: cautionsOf(kind, own, least),
  };
}

function cautionsOf(kind: ValveKind, own: readonly MeasuredRoom[], least: MeasuredRoom): readonly string[] {
  const placed = own
    .filter(({ reading }) => reading.method === 'drop' && valveKey(reading.valve) === valveKey(least.reading.valve))
    .flatMap(({ angle }) => angle ?? [])
    .sort((a, b) => a - b);
  const atEnd = least.angle !== undefined && (least.angle === placed[0] || least.angle === placed.at(-1));
  const unplaced = own.some(({ reading, angle }) => reading.wheel !== undefined && angle === undefined);
  return [
    'measured rooms hold for the gasket, cuts and cam that were fitted then',
    ...(atEnd ? [`${kind}: the least room lies at the end of what was measured: it may be less beyond`] : []),
    ...(unplaced ? [`${kind}: the true top was not found by a stop: measured rooms have no place on the plot`] : []),
  ];
}
