/** Which part at hand, with which tooth, brings the cam nearest to its wanted centreline, and what that does to the valve room. */
import { betterOffset, type OffsetPlace, offsetChoices, timingOfOffset } from '../../calc/cam/index.js';
import { TURN } from '../../calc/crank/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { type Part, together, told } from './answering.js';
import { againstAim, CENTRELINE_AIM, wantedMiddle } from './degreeing-figures.js';
import type { LobeDegreed } from './degreeing-model.js';
import { Look } from './look.js';
import type { Answered, AnsweredFigure, Makeup } from './model.js';
import { VALVE_KINDS } from './sizes-as-figures.js';
import { leastRoom, type RoomOptions, roomModel } from './valve-room-model.js';

/** A part that turns the cam: marked in degrees of crank or cam, or known by its offset and where it sits. */
export type TimingPart = { readonly id: string; readonly name: string } & (
  | { readonly angle: number; readonly marked: 'crank' | 'cam' }
  | { readonly place: OffsetPlace; readonly offset: number; readonly radius: number }
);
export interface CorrectionOptions extends RoomOptions {
  readonly parts: readonly TimingPart[];
  /** Whether a part may be fitted either way round; left out: yes. */
  readonly bothWays?: boolean;
  /** Teeth of the crank sprocket, where chain or belt may be moved, and how many teeth either way. */
  readonly crankTeeth?: number;
  readonly mostTeeth?: number;
  /** Lobes that the cam carries; left out: both kinds. */
  readonly moves?: readonly ValveKind[];
  /** Figures with the cam where it stands as degreed, for the rooms of its lobes by the card; left out: where the card puts it. */
  readonly standing?: Makeup;
}
export interface Correction {
  /** Absent: no part. */
  readonly part?: { readonly id: string; readonly name: string; readonly turnedRound: boolean };
  /** Positive advances. */
  readonly teeth: number;
  /** Crank angle by which the cam is turned ahead [rad], and what is then left to wish for. */
  readonly change: number;
  readonly left: number;
  /** Middle of the lobe afterwards, after its own top of overlap [rad]. */
  readonly middle: number;
  readonly verdict: NonNullable<AnsweredFigure['verdict']>;
  readonly inside?: number;
  /** Least rooms afterwards [m], as far as they are known. */
  readonly rooms: Partial<Readonly<Record<ValveKind, { readonly gap: number; readonly kept?: boolean }>>>;
}
export interface CorrectionAnswer extends Answered {
  /** Nearest to the wanted centreline first; of like ones the fewest teeth. */
  readonly choices: readonly Correction[];
}

const SOURCES = ['cam.offset-choice', 'cam.offset-part', 'valvetrain.cam-window'];
/** A middle that comes later is a cam that is retarded: to bring it back it is advanced by as much. */
const wantedChange = (middle: number, wanted: number): number => middle - wanted;

/**
 * Every choice of one part at hand, or none, with every tooth allowed: what it does, what is left of the wanted change, and the least rooms.
 *
 * `lobe` as degreed; without a middle or a wanted centreline there is no choice and the answer says what is missing. A choice that comes nearer by less than
 * the doubt of the middle is not better for sure: its verdict shows it.
 */
export function camCorrection(makeup: Makeup, lobe: LobeDegreed, options: CorrectionOptions): CorrectionAnswer {
  const look = new Look(makeup, lobe.lobe);
  const wanted = wantedMiddle(look, lobe.lobe.kind);
  if (wanted === undefined) look.lack('centreline-wanted', 'correction of the cam');
  const { middle } = lobe;
  const noted = { values: new Map(), used: [...look.used.values()], missing: [...look.missing.values()] };
  const empty: Part = { figures: [], computed: [noted] };
  if (wanted === undefined || middle === undefined) return { ...together([empty], SOURCES), choices: [] };
  const ways = waysOf(options);
  const change = wantedChange(middle.value, wanted) as Angle;
  const tooth = options.crankTeeth === undefined ? 0 : TURN / options.crankTeeth;
  const all = offsetChoices(
    change,
    ways.map(({ angle }) => angle as Angle),
    tooth,
    options.crankTeeth === undefined ? 0 : (options.mostTeeth ?? 1),
  );
  const sorted = [...all].sort((a, b) => (betterOffset(a, b) ? -1 : betterOffset(b, a) ? 1 : 0));
  const rooms = roomsOf(makeup, options);
  const choices = sorted.map((one): Correction => {
    const way = one.part === undefined ? undefined : ways[one.part]!;
    const { verdict, inside } = againstAim(one.left, middle.u, CENTRELINE_AIM, '');
    return {
      ...(way && { part: { id: way.part.id, name: way.part.name, turnedRound: way.turnedRound } }),
      teeth: one.teeth,
      change: one.change,
      left: one.left,
      middle: middle.value - one.change,
      verdict: verdict ?? 'no data',
      ...(inside !== undefined && { inside }),
      rooms: rooms(one.change),
    };
  });
  return { ...together([{ ...empty, ...wordsAndFigures(change, middle.u, choices[0]) }], SOURCES), choices };
}

interface Way {
  readonly part: TimingPart;
  readonly turnedRound: boolean;
  readonly angle: number;
}
function waysOf({ parts, bothWays = true }: CorrectionOptions): readonly Way[] {
  return parts.flatMap((part) => {
    const angle = angleOf(part);
    const own: Way = { part, turnedRound: false, angle };
    return bothWays && angle !== 0 ? [own, { part, turnedRound: true, angle: -angle }] : [own];
  });
}
function angleOf(part: TimingPart): number {
  if ('angle' in part) return part.marked === 'cam' ? 2 * part.angle : part.angle;
  return timingOfOffset(part.place, part.offset as Length, part.radius as Length);
}

const ROUNDING = 1e-9;
/** Least rooms by how far the cam is advanced; of lobes that the cam does not carry, as they are. */
function roomsOf(makeup: Makeup, options: CorrectionOptions): (advance: number) => Correction['rooms'] {
  const { moves = VALVE_KINDS, standing = makeup } = options;
  const sides = VALVE_KINDS.flatMap((kind) => {
    const look = new Look(moves.includes(kind) ? standing : makeup, kind);
    const model = roomModel(look, kind, options);
    return model === undefined ? [] : [{ kind, model, limit: look.read('valve-room-least') }];
  });
  return (advance) =>
    Object.fromEntries(
      sides.map(({ kind, model, limit }) => {
        const { gap } = leastRoom(model, moves.includes(kind) ? advance : 0);
        return [kind, { gap, ...(limit !== undefined && { kept: gap >= limit - ROUNDING }) }];
      }),
    );
}

function wordsAndFigures(
  change: number,
  u: number | undefined,
  best: Correction | undefined,
): Pick<Part, 'figures' | 'working' | 'cautions'> {
  const way = change < 0 ? 'retard' : 'advance';
  const figures: readonly AnsweredFigure[] = [
    {
      key: 'change-wanted',
      name: 'advance wanted (retard negative)',
      quantity: 'angle',
      value: change,
      ...(u !== undefined && { u }),
    },
    ...(best === undefined
      ? []
      : [{ key: 'change-left', name: 'left after the nearest choice', quantity: 'angle', value: best.left } as const]),
  ];
  const spoiled = best === undefined ? [] : VALVE_KINDS.filter((kind) => best.rooms[kind]?.kept === false);
  return {
    figures,
    working: [
      `wanted: ${told('angle', Math.abs(change))} of ${way}`,
      ...(best === undefined ? [] : [`nearest: ${wordsOf(best)}, leaves ${told('angle', Math.abs(best.left))}`]),
    ],
    cautions: [
      ...(u !== undefined && Math.abs(change) <= 2 * u
        ? ['the change wanted is no larger than the doubt of the middle']
        : []),
      ...spoiled.map((kind) => `the nearest choice does not keep the ${kind} room`),
    ],
  };
}

function wordsOf({ part, teeth }: Correction): string {
  const moves = [
    ...(part === undefined ? [] : [`${part.name}${part.turnedRound ? ', the other way round' : ''}`]),
    ...(teeth === 0
      ? []
      : [`${Math.abs(teeth)} ${Math.abs(teeth) === 1 ? 'tooth' : 'teeth'} ${teeth > 0 ? 'advanced' : 'retarded'}`]),
  ];
  return moves.length === 0 ? 'leave it as it is' : moves.join(' and ');
}
