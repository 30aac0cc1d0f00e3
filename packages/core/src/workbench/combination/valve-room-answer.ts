/** Rooms with their doubts, and how far the cam may be moved, for figures that rest. */
import {
  type Answered,
  type CamWindowAnswer,
  camWindowOf,
  type MeasuredRoomAnswer,
  measuredRooms,
  type ValveRoomAnswer,
  type ValveRoomOptions,
  valveRoomOf,
} from '../../assess/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import { combinationReadings } from '../combination-readings.js';
import { type CamStanding, camStanding } from './cam-standing.js';
import type { Tried } from './tried.js';
import { askedOf, type CamCarries, type ValveRoomAsked, type ValveRoomWish } from './valve-room-asked.js';

export interface ValveRoomFound {
  readonly asked: ValveRoomAsked;
  /** By how much the scratch copy turns the cam ahead of where it stands [rad]. */
  readonly advance: number;
  readonly room: ValveRoomAnswer;
  readonly window: CamWindowAnswer;
  readonly answered: Answered;
}

export function valveRoomAnswer(bench: Bench, tried: Tried, wish: ValveRoomWish = {}): ValveRoomFound {
  const asked = askedOf(bench, tried, wish);
  const { cylinder, carries, read } = asked;
  const standing = camStanding(bench, tried, carries);
  const room = roomOf(standing, { read, cylinder }, carries);
  const window = camWindowOf(standing.carried, { read, cylinder, ...(carries !== 'both' && { kinds: [carries] }) });
  const measured = measuredOf(bench, tried);
  const answered: Answered = {
    ...room,
    figures: [...measured.figures, ...room.figures, ...window.figures],
    working: [...measured.working, ...room.working, ...window.working],
    missing: [...room.missing, ...window.missing],
    assumed: [...new Set([...room.assumed, ...measured.assumed])],
    cautions: [...new Set([...measured.cautions, ...room.cautions, ...window.cautions])],
  };
  return { asked, advance: standing.move, room, window, answered };
}

const kept = new WeakMap<Tried, MeasuredRoomAnswer>();
/** Rooms as they were found in the metal; what is tried on the scratch copy does not move them. */
export function measuredOf(bench: Bench, tried: Tried): MeasuredRoomAnswer {
  const known = kept.get(tried);
  if (known !== undefined) return known;
  const { rooms, stops } = combinationReadings(bench.state);
  const made = measuredRooms(tried, rooms, stops);
  kept.set(tried, made);
  return made;
}

/** The room of valves whose cam is not moved stays what it is. */
function roomOf(
  { carried, others, move }: CamStanding,
  options: ValveRoomOptions,
  carries: CamCarries,
): ValveRoomAnswer {
  const moved = valveRoomOf(carried, { ...options, advance: move });
  if (carries === 'both') return moved;
  const still = valveRoomOf(others, options);
  const turns = ({ kind }: { readonly kind?: ValveKind }) => kind === undefined || kind === carries;
  return {
    ...moved,
    figures: [...moved.figures.filter(turns), ...still.figures.filter((one) => !turns(one))],
    rooms: [...moved.rooms.filter(turns), ...still.rooms.filter((one) => !turns(one))],
    working: [
      ...moved.working.filter((line) => line.startsWith(carries)),
      ...still.working.filter((line) => !line.startsWith(carries)),
    ],
  };
}
