/** Room between one kind of valve and its piston, ready to be asked for any crank angle and any place of the cam. */
import { lowest } from '../../calc/numeric/index.js';
import { gapCurve, roomPerTravel } from '../../calc/valvetrain/index.js';
import type { CylinderNumber, ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { type ReadCurves, type ValveCurve, valveCurve } from './lift-motion-curve.js';
import type { Look } from './look.js';
import { ROOM, seatOf } from './valve-room-drop.js';

export interface RoomModel {
  readonly kind: ValveKind;
  readonly curve: ValveCurve;
  /** Room along the stem for each unit along the bore. */
  readonly perTravel: number;
  /** Room with the valve closed [m] by crank angle [rad] after the piston's highest place at overlap. */
  readonly closed: (angle: number) => number;
}
export interface RoomOptions {
  /** Read lobes stand in place of the card. */
  readonly read?: ReadCurves;
  /** Of which the piston is taken; left out: 1. */
  readonly cylinder?: CylinderNumber;
}

export interface ValveRoomOptions extends RoomOptions {
  /** Crank angle [rad] by which the cam is turned ahead of where its lift curves stand; negative retards. */
  readonly advance?: number;
}

/** The model of one kind of valve; undefined where figures are lacking, which are then noted. */
export function roomModel(look: Look, kind: ValveKind, { read, cylinder = 1 }: RoomOptions): RoomModel | undefined {
  const curve = valveCurve(look, kind, ROOM, read?.[kind]);
  const seat = seatOf(look, kind, cylinder);
  const own = look.at(cylinder);
  const [stroke, rodLength, pinOffset] = ['stroke', 'rod-length', 'pin-offset'].map((key) => own.need(key, ROOM));
  if (curve === undefined || seat === undefined) return undefined;
  if (stroke === undefined || rodLength === undefined || pinOffset === undefined) return undefined;
  const { crown, valveAngle, gapAtTop } = seat;
  const crank = { crankRadius: (stroke / 2) as Length, rodLength: rodLength as Length, pinOffset: pinOffset as Length };
  const closed = gapCurve({ crank, valveAngle, crown, gapAtTop: gapAtTop as Length }, () => 0);
  if (!closed.ok) return undefined;
  return { kind, curve, perTravel: roomPerTravel(crown, valveAngle as Angle), closed: closed.value };
}

/** Net lift with the cam advanced [rad] and the gear shorter at the valve by `less` [m]: more lash, a lifter bled down. */
export const netLift = ({ curve }: RoomModel, angle: number, advance: number, less = 0): number =>
  Math.max(0, curve.gross(angle + advance) - curve.lash - less);

/** Room at one crank angle. */
export const roomAt = (model: RoomModel, angle: number, advance = 0, less = 0): number =>
  model.closed(angle) - netLift(model, angle, advance, less);

const DEGREE = Math.PI / 180;
const WHOLE = 360;

/** Degrees either way beyond which no valve comes near the piston. */
export const THROUGH_OVERLAP = 120;

/** Whole degrees, one turn (or `reach`) either way of the top of overlap, or as far as the lift is known with the cam advanced so. */
export function anglesOf({ curve }: RoomModel, advance = 0, reach = WHOLE): Float64Array {
  const from = curve.whole ? -reach : Math.max(-reach, Math.ceil((curve.first - advance) / DEGREE));
  const to = curve.whole ? reach : Math.min(reach, Math.floor((curve.last - advance) / DEGREE));
  return Float64Array.from({ length: Math.max(0, to - from + 1) }, (_, at) => (from + at) * DEGREE);
}

/** Room at each of many angles. */
export function gapsAt(model: RoomModel, angles: Float64Array, advance = 0): Float64Array {
  const gaps = new Float64Array(angles.length);
  for (let at = 0; at < angles.length; at += 1) gaps[at] = roomAt(model, angles[at]!, advance);
  return gaps;
}

export interface LeastRoom {
  readonly angle: number;
  readonly gap: number;
  /** At the end of what is known of the lift: it may be less beyond. */
  readonly atEnd: boolean;
}
/** Farther from the top the piston has gone down by more than any valve opens. */
const NEAR = THROUGH_OVERLAP * DEGREE;
const LOOK = 2 * DEGREE;

/** Least room over the overlap, and where. */
export function leastRoom(model: RoomModel, advance = 0, less = 0): LeastRoom {
  const { curve } = model;
  const from = curve.whole ? -NEAR : Math.max(-NEAR, curve.first - advance);
  const to = curve.whole ? NEAR : Math.min(NEAR, curve.last - advance);
  const count = Math.max(2, Math.ceil((to - from) / LOOK));
  const places = Array.from({ length: count + 1 }, (_, at) => from + ((to - from) * at) / count);
  const { at, value, atEnd } = lowest((angle) => roomAt(model, angle, advance, less), places);
  return { angle: at, gap: value, atEnd };
}
