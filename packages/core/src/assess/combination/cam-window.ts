/** How far the cam may be advanced or retarded before a valve comes too near its piston. */
import { type CamWindow, camWindow } from '../../calc/valvetrain/index.js';
import type { ValveKind } from '../../engine/index.js';
import { type Part, together, told } from './answering.js';
import { computed, Look } from './look.js';
import type { Answered, AnsweredFigure, Makeup } from './model.js';
import { VALVE_KINDS } from './sizes-as-figures.js';
import { leastRoom, type RoomModel, type RoomOptions, roomAt, roomModel } from './valve-room-model.js';

export interface CamWindowOptions extends RoomOptions {
  /** How far either way is looked [rad of crank]; left out: 20 degrees. */
  readonly reach?: number;
  /** Which valves one cam moves: on two camshafts each has its own window. Left out: both together. */
  readonly kinds?: readonly ValveKind[];
}
/** Least room [m] at one place of the cam. */
export interface RoomAtAdvance {
  /** Crank angle [rad] from where the lift curves stand, earlier positive. */
  readonly advance: number;
  readonly intake?: number;
  readonly exhaust?: number;
}
export interface CamWindowAnswer extends Answered {
  readonly table: readonly RoomAtAdvance[];
  readonly window?: CamWindow;
  readonly limits: Partial<Readonly<Record<ValveKind, { readonly at: number; readonly from: string }>>>;
}

const DEGREE = Math.PI / 180;
const REACH = 20 * DEGREE;
const FOR = 'how far the cam may be moved';

interface Side {
  readonly kind: ValveKind;
  readonly model: RoomModel;
  readonly limit: number;
  readonly from: string;
}

function sideOf(makeup: Makeup, kind: ValveKind, options: RoomOptions): { readonly side?: Side; readonly part: Part } {
  const look = new Look(makeup, kind);
  const model = roomModel(look, kind, options);
  const limit = look.need('valve-room-least', FOR);
  const from = [...look.used.values()].find(({ key }) => key.startsWith('valve-room-least'))?.from ?? '';
  const computed = [{ values: new Map(), used: [...look.used.values()], missing: [...look.missing.values()] }];
  const part = { figures: [], computed };
  return model === undefined || limit === undefined ? { part } : { part, side: { kind, model, limit, from } };
}

/**
 * Least room of both kinds of valve over cam advance, and the stretch of it that keeps both limits. Where the room of one kind is not known, the window is that
 * of the other, and the answer says so.
 */
export function camWindowOf(makeup: Makeup, options: CamWindowOptions = {}): CamWindowAnswer {
  const { reach = REACH, kinds = VALVE_KINDS } = options;
  const each = kinds.map((kind) => sideOf(makeup, kind, options));
  const sides = each.flatMap(({ side }) => side ?? []);
  const window =
    sides.length === 0
      ? undefined
      : camWindow(
          sides.map(({ model, limit }) => ({ leastGap: (advance) => leastRoom(model, advance).gap, limit })),
          reach,
        );
  const own: Part = {
    figures: window === undefined ? [] : figuresOf(makeup, window, sides, options),
    computed: [],
    working: [
      ...sides.map(({ kind, limit, from }) => `${kind}: at least ${told('length', limit)} (${from})`),
      ...openEnds(window, reach),
    ],
    cautions: cautionsOf(window, sides, kinds, reach),
  };
  return {
    ...together([...each.map(({ part }) => part), own], ['valvetrain.cam-window']),
    table: tableOf(sides, reach),
    ...(window && { window }),
    limits: Object.fromEntries(sides.map(({ kind, limit, from }) => [kind, { at: limit, from }])),
  };
}

function figuresOf(
  makeup: Makeup,
  { most, least }: CamWindow,
  sides: readonly Side[],
  options: RoomOptions,
): readonly AnsweredFigure[] {
  const edge = (key: string, name: string, at: number | undefined, sign: 1 | -1): readonly AnsweredFigure[] => {
    if (at === undefined) return [];
    const u = doubtOf(makeup, at, sides, options);
    return [{ key, name, quantity: 'angle', value: sign * at, ...(u !== undefined && { u }) }];
  };
  return [...edge('most-advance', 'most advance', most, 1), ...edge('most-retard', 'most retard', least, -1)];
}

const STEP = 1e-4;
/** Doubt of where a room meets its limit: that of the room there, over how fast it changes with the cam. A read lobe brings that of its own place. */
function doubtOf(makeup: Makeup, at: number, sides: readonly Side[], options: RoomOptions): number | undefined {
  const spare = ({ model, limit }: Side) => leastRoom(model, at).gap - limit;
  const [first, ...others] = sides;
  if (first === undefined) return undefined;
  const { kind, model } = others.reduce((tight, one) => (spare(one) < spare(tight) ? one : tight), first);
  const { angle } = leastRoom(model, at);
  const found = computed(makeup, kind, (look) => {
    const own = roomModel(look, kind, options);
    return own === undefined ? {} : { room: roomAt(own, angle, at) };
  });
  const room = found.values.get('room')?.u;
  const slope = (leastRoom(model, at + STEP).gap - leastRoom(model, at - STEP).gap) / (2 * STEP);
  const read = model.curve.from === 'read' ? model.curve.u : 0;
  if (room === undefined || read === undefined || slope === 0) return undefined;
  return Math.hypot(Math.hypot(room, model.curve.uLift ?? 0) / slope, read);
}

/** Ends that were looked for and not met. */
function openEnds(window: CamWindow | undefined, reach: number): readonly string[] {
  if (window === undefined || (!window.keptNow && window.most === undefined && window.least === undefined)) return [];
  const far = told('angle', reach);
  return [
    ...(window.most === undefined ? [`advanced by up to ${far} the rooms are kept`] : []),
    ...(window.least === undefined ? [`retarded by up to ${far} the rooms are kept`] : []),
  ];
}

function tableOf(sides: readonly Side[], reach: number): readonly RoomAtAdvance[] {
  const steps = Math.floor(reach / DEGREE + 1e-9);
  return Array.from({ length: 2 * steps + 1 }, (_, at) => {
    const advance = (at - steps) * DEGREE;
    return {
      advance,
      ...Object.fromEntries(sides.map(({ kind, model }) => [kind, leastRoom(model, advance).gap])),
    };
  });
}

function cautionsOf(
  window: CamWindow | undefined,
  sides: readonly Side[],
  kinds: readonly ValveKind[],
  reach: number,
): readonly string[] {
  const lacking = kinds.filter((kind) => sides.every((one) => one.kind !== kind));
  const none = window !== undefined && window.most === undefined && window.least === undefined && !window.keptNow;
  const outside = window !== undefined && !window.keptNow && !none;
  return [
    ...(window !== undefined && lacking.length > 0
      ? [`the ${lacking.join(' and ')} room is not known: the window does not keep it`]
      : []),
    ...(none ? [`no place of the cam within ${told('angle', reach)} either way keeps the rooms`] : []),
    ...(outside ? ['as the cam stands the rooms are not kept; the window is the nearest stretch that keeps them'] : []),
  ];
}
