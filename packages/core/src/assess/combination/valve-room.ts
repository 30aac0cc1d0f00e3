/** Room between valves and piston through the overlap: where it is least, how sure, and what it follows. */
import type { ValveKind } from '../../engine/index.js';
import { answered, type Naming, type Part, together, told, toldSurely } from './answering.js';
import type { ReadCurve } from './lift-motion-curve.js';
import { type Computed, computed, type Known, Look } from './look.js';
import type { Answered, AnsweredFigure, Makeup } from './model.js';
import { VALVE_KINDS } from './sizes-as-figures.js';
import { type HotRoom, hotRoom } from './valve-room-hot.js';
import { type LifterRoom, lifterRoom } from './valve-room-lifter.js';
import {
  anglesOf,
  gapsAt,
  type LeastRoom,
  leastRoom,
  netLift,
  type RoomModel,
  type RoomOptions,
  roomAt,
  roomModel,
  THROUGH_OVERLAP,
  type ValveRoomOptions,
} from './valve-room-model.js';
import { type RoomSensitivity, sensitivitiesOf } from './valve-room-sensitivity.js';

/** Room of one kind of valve; angles [rad] after the piston's highest place at overlap, rooms along the stem [m]. */
export interface RoomOfKind {
  readonly kind: ValveKind;
  readonly from: 'card' | 'read';
  readonly angles: Float64Array;
  readonly gaps: Float64Array;
  /** With the cam where its lift curve stands, at the same angles; absent where it is not moved. */
  readonly before?: Float64Array;
  readonly least: { readonly angle: number; readonly gap: number; readonly u?: number; readonly lift: number };
  readonly limit?: { readonly at: number; readonly from: string };
  readonly sensitivities: readonly RoomSensitivity[];
}
export interface ValveRoomAnswer extends Answered {
  readonly rooms: readonly RoomOfKind[];
}

const SOURCES = [
  'valvetrain.valve-to-piston-from-card',
  'valvetrain.valve-to-piston',
  'valvetrain.gap-correction',
  'valvetrain.cam-window',
  'valvetrain.collapsed-lifter',
  'valvetrain.hot-margin',
];
const LEAST: Naming = {
  key: 'valve-room',
  name: 'least room, valve to piston',
  quantity: 'length',
  low: 'valve-room-least',
};
const WHERE: Naming = { key: 'valve-room-at', name: 'least room at, after top', quantity: 'angle' };

/**
 * Least room of intake and exhaust over the whole overlap, from the cam card or from lobes that were read, with its doubt, what moves it, and what is
 * left with a lifter bled down, pumped up, and hot at speed.
 *
 * The doubt is that of the figures at the closest place, which itself hardly moves with them, and of where a read lobe stands. A lift from the card is
 * a model; how well it meets the lobe is not in the doubt, and the answer says so.
 */
export function valveRoomOf(makeup: Makeup, options: ValveRoomOptions = {}): ValveRoomAnswer {
  const each = VALVE_KINDS.map((kind) => oneKind(makeup, kind, options));
  const answer = together(
    each.map(({ part }) => part),
    SOURCES,
  );
  return { ...answer, rooms: each.flatMap(({ room }) => room ?? []) };
}

/**
 * The curves and their least places alone, for a cam that is moved by a slider: nothing of doubt or sensitivity is worked out. Prepared once;
 * each call takes another advance [rad].
 */
export function roomSweep(
  makeup: Makeup,
  options: RoomOptions = {},
): (advance: number) => readonly Pick<RoomOfKind, 'kind' | 'angles' | 'gaps' | 'least'>[] {
  const models = VALVE_KINDS.flatMap((kind) => roomModel(new Look(makeup, kind), kind, options) ?? []);
  return (advance) =>
    models.map((model) => {
      const angles = anglesOf(model, advance, THROUGH_OVERLAP);
      const { angle, gap } = leastRoom(model, advance);
      return {
        kind: model.kind,
        angles,
        gaps: gapsAt(model, angles, advance),
        least: { angle, gap, lift: netLift(model, angle, advance) },
      };
    });
}

interface OneKind {
  readonly part: Part;
  readonly room?: RoomOfKind;
}

function oneKind(makeup: Makeup, kind: ValveKind, options: ValveRoomOptions): OneKind {
  const { advance = 0, read } = options;
  const look = new Look(makeup, kind);
  const model = roomModel(look, kind, options);
  if (model === undefined) return { part: { figures: [], computed: [noted(look)] } };
  const least = leastRoom(model, advance);
  const found = computed(makeup, kind, (moved) => {
    const own = roomModel(moved, kind, options);
    return own === undefined ? {} : { room: roomAt(own, least.angle, advance) };
  });
  const known = withRead(found.values.get('room'), model, least, advance, read?.[kind]);
  const main = answered(makeup, LEAST, known, { kind }, kind);
  const where: AnsweredFigure = answered(makeup, WHERE, { value: least.angle, effects: new Map() }, { kind });
  const lifter = lifterRoom(makeup, kind, options, known);
  const hot = hotRoom(makeup, model, options.cylinder ?? 1, known);
  const angles = anglesOf(model, advance);
  const { limit } = main;
  return {
    part: {
      figures: [main, where, ...lifter.figures, ...hot.figures],
      computed: [found, ...lifter.computed, ...hot.computed],
      working: workingOf(kind, model, known, least, [lifter, hot]),
      cautions: cautionsOf(makeup, kind, model, least),
    },
    room: {
      kind,
      from: model.curve.from,
      angles,
      gaps: gapsAt(model, angles, advance),
      ...(advance !== 0 && { before: gapsAt(model, angles) }),
      least: {
        angle: least.angle,
        gap: least.gap,
        lift: netLift(model, least.angle, advance),
        ...(known.u !== undefined && { u: known.u }),
      },
      ...(limit?.low !== undefined && { limit: { at: limit.low, from: limit.from } }),
      sensitivities: sensitivitiesOf(model, least, advance, lifter.bled),
    },
  };
}

const noted = (look: Look): Computed => ({
  values: new Map(),
  used: [...look.used.values()],
  missing: [...look.missing.values()],
});

const STEP = 1e-4;
/** Where the lobe stands, and each lift of it, are doubtful too once it was read. */
function withRead(
  found: Known | undefined,
  model: RoomModel,
  least: LeastRoom,
  advance: number,
  read: ReadCurve | undefined,
): Known {
  const known: Known = {
    value: least.gap,
    effects: found?.effects ?? new Map(),
    ...(found?.u !== undefined && { u: found.u }),
  };
  if (read === undefined) return known;
  const { u: bare, ...rest } = known;
  if (bare === undefined || read.u === undefined) return rest;
  const slope = (roomAt(model, least.angle, advance + STEP) - roomAt(model, least.angle, advance - STEP)) / (2 * STEP);
  return { ...rest, u: Math.hypot(bare, slope * read.u, read.uLift ?? 0) };
}

function workingOf(
  kind: ValveKind,
  { curve }: RoomModel,
  known: Known,
  { angle }: LeastRoom,
  more: readonly (HotRoom | LifterRoom)[],
): readonly string[] {
  const from = curve.from === 'card' ? 'lift by the card' : 'lift as read';
  const side = angle < 0 ? 'before' : 'after';
  return [
    `${kind}: ${from}; least room ${toldSurely('length', known)} at ${told('angle', Math.abs(angle))} ${side} top`,
    ...more.flatMap(({ working }) => working),
  ];
}

function cautionsOf(makeup: Makeup, kind: ValveKind, { curve }: RoomModel, least: LeastRoom): readonly string[] {
  const moved = curve.from === 'read' && makeup.figures.has('cam-advance');
  return [
    ...(curve.from === 'card'
      ? [
          `${kind}: the lift is a model through the card (${curve.meets}), not a measured lobe; its misfit is not in the doubt`,
        ]
      : []),
    ...(least.gap <= 0 ? [`${kind}: the valve meets the piston`] : []),
    ...(least.atEnd ? [`${kind}: the least room lies at the end of the readings: it may be less beyond`] : []),
    ...(moved ? ['the lobes are taken where they were read: the stated cam advance is not added'] : []),
    ...(curve.u === undefined && curve.from === 'read'
      ? [`${kind}: where the lobe stands was read without a stop: how sure the room is, is not known`]
      : []),
  ];
}

export type { ValveRoomOptions };
