/** Room between valves and pistons as its screen shows it, with doubts, the window of the cam and what moves the room. */
import type { AnsweredFigure, CamWindowAnswer, RoomOfKind } from '../../assess/index.js';
import { roomAdvancePlot } from '../../drawing/plots/index.js';
import {
  type CylinderNumber,
  type ValveId,
  type ValveKind,
  valveKey,
  valveName,
  valvesOf,
} from '../../engine/index.js';
import { type Bench, givenBy } from '../bench.js';
import { combinationReadings } from '../combination-readings.js';
import type { SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import type { LiftFrom } from './cam-as-read.js';
import type { ReadRow } from './degreeing-views.js';
import { keyedWords } from './keyed-words.js';
import { shownQuantity, systemOf } from './shown.js';
import { subjectView } from './subject.js';
import type { Tried } from './tried.js';
import { valveRoomAnswer } from './valve-room-answer.js';
import { type CamCarries, roomInputs, type ValveRoomWish } from './valve-room-asked.js';

export interface SensitivityRow {
  readonly key: string;
  readonly name: string;
  /** "+0.10 mm"; empty where it is not known. */
  readonly intake: string;
  readonly exhaust: string;
}
export interface ValveRoomView extends SubjectView {
  readonly cylinder: CylinderNumber;
  readonly cylinders: readonly CylinderNumber[];
  readonly from: LiftFrom;
  readonly canRead: boolean;
  readonly carries: CamCarries;
  readonly sensitivities: readonly SensitivityRow[];
  /** Rooms that were measured in the metal, as they were keyed. */
  readonly measured: readonly ReadRow[];
  /** Valves whose room can be measured. */
  readonly valves: readonly { readonly id: ValveId; readonly key: string; readonly name: string }[];
  /** "From where it stands the cam may be advanced by 6.9° and retarded by 9.4°." */
  readonly window: string;
}

/** What the screen shows of figures that rest; while a slider moves, `valveRoomMoving` draws. */
export function valveRoomView(bench: Bench, tried: Tried, shownIn: ShownIn, wish: ValveRoomWish): ValveRoomView {
  const { asked, advance, room, window, answered } = valveRoomAnswer(bench, tried, wish);
  const { cylinder, carries, canRead, from } = asked;
  const plots = window.window === undefined ? [] : [roomAdvancePlot(window, advance, systemOf(shownIn))];
  return {
    ...subjectView(
      bench,
      tried,
      { id: 'valve-room', inputs: roomInputs(cylinder), answered, plots, shown: isTold },
      shownIn,
    ),
    cylinder,
    cylinders: bench.engine.layout.cylinders.map(({ number }) => number),
    from,
    canRead,
    carries,
    sensitivities: sensitivityRows(room.rooms, shownIn),
    measured: measuredRows(bench),
    valves: valvesOf(bench.engine).map((id) => ({ id, key: valveKey(id), name: valveName(bench.engine, id) })),
    window: windowWords(window, shownIn),
  };
}
const measuredRows = (bench: Bench): readonly ReadRow[] =>
  combinationReadings(bench.state).rooms.flatMap(({ valve, entry = '' }) => {
    const given = givenBy(bench, entry);
    return given === undefined
      ? []
      : [{ entry, given, words: `${valveName(bench.engine, valve)}: ${keyedWords(bench, entry)}` }];
  });

/** Where the room is least stands with the plot. */
const isTold = ({ key }: AnsweredFigure): boolean => key !== 'valve-room-at';

function sensitivityRows(rooms: readonly RoomOfKind[], shownIn: ShownIn): readonly SensitivityRow[] {
  const names = new Map(rooms.flatMap(({ sensitivities }) => sensitivities.map(({ key, name }) => [key, name])));
  const effect = (kind: ValveKind, key: string): string => {
    const found = rooms.find((one) => one.kind === kind)?.sensitivities.find((one) => one.key === key);
    if (found === undefined) return '';
    const sign = found.effect > 0 ? '+' : '';
    return `${sign}${shownQuantity('length', found.effect, shownIn)}`;
  };
  return [...names].map(([key, name]) => ({
    key,
    name,
    intake: effect('intake', key),
    exhaust: effect('exhaust', key),
  }));
}

/** How far the cam may go, in one sentence; empty where no limit is known. */
function windowWords({ window, table }: CamWindowAnswer, shownIn: ShownIn): string {
  if (window === undefined) return '';
  const reach = shownQuantity('angle', table.at(-1)?.advance ?? 0, shownIn);
  const end = (angle: number | undefined) =>
    angle === undefined ? `at least ${reach}` : shownQuantity('angle', Math.abs(angle), shownIn);
  if (window.keptNow)
    return `From where it stands the cam may be advanced by ${end(window.most)} and retarded by ${end(window.least)}.`;
  if (window.most === undefined && window.least === undefined)
    return `No place of the cam within ${reach} keeps the room that is wanted.`;
  return `The cam keeps the room only from ${way(window.least, reach, shownIn)} to ${way(window.most, reach, shownIn)}.`;
}
const way = (angle: number | undefined, reach: string, shownIn: ShownIn): string => {
  if (angle === undefined) return `beyond ${reach}`;
  return `${shownQuantity('angle', Math.abs(angle), shownIn)} ${angle < 0 ? 'retarded' : 'advanced'}`;
};
