/** What the log holds about the combination: the cam as it was read, and figures as they were stated. */
import type { CamReading, GivenFigure, PushrodTrial, RoomReading, StopReading } from '../assess/index.js';
import { figureKind, figureParts, valveKey } from '../engine/index.js';
import { fromStep, lastPlace, parseQuantity } from '../quantity/index.js';
import type { EntryData, LogEntry, RecordState } from '../record/index.js';

/** A trial with its entry. */
export interface TriedPushrod extends PushrodTrial {
  readonly entry: string;
}
export interface CombinationReadings {
  readonly stops: readonly StopReading[];
  readonly cam: readonly CamReading[];
  /** By `valveKey`; of each length the newest. */
  readonly trials: ReadonlyMap<string, readonly TriedPushrod[]>;
  /** Rooms between valves and pistons as they were found in the metal. */
  readonly rooms: readonly RoomReading[];
  /** The newest of each key that stands. */
  readonly stated: readonly GivenFigure[];
}

const folded = new WeakMap<RecordState, CombinationReadings>();

/** Folds what stands in a record; struck-out entries and those not understood count for nothing. */
export function combinationReadings(state: RecordState): CombinationReadings {
  const known = folded.get(state);
  if (known !== undefined) return known;
  const stops: StopReading[] = [];
  const cam: CamReading[] = [];
  const trials = new Map<string, readonly TriedPushrod[]>();
  const rooms: RoomReading[] = [];
  const stated = new Map<string, GivenFigure>();
  for (const { entry, reading, struck } of state.entries) {
    if (!reading.understood || struck !== undefined) continue;
    const { kind, data } = reading.known;
    if (kind === 'dead-centre-read') stops.push(stopOf(data, entry));
    if (kind === 'cam-read') cam.push(camOf(data, entry));
    if (kind === 'pushrod-tried') addTrial(trials, data, entry);
    if (kind === 'valve-room-read') rooms.push(roomOf(data, entry));
    if (kind === 'figure-stated') stated.set(data.key, statedFigure(data, entry));
  }
  const readings = { stops, cam, trials, rooms, stated: [...stated.values()] };
  folded.set(state, readings);
  return readings;
}

const stopOf = ({ cylinder, first, second }: EntryData['dead-centre-read'], { id }: LogEntry): StopReading => ({
  cylinder,
  first: first.value,
  second: second.value,
  entry: id,
});

const camOf = ({ lobe, wheel, lift, at, sense }: EntryData['cam-read'], { id }: LogEntry): CamReading => ({
  lobe,
  wheel: wheel.value,
  lift: lift.value,
  at,
  ...(sense && { sense }),
  entry: id,
});

/** A reading is as sure as its last place. */
const uOfText = (text: string): number | undefined => {
  const typed = parseQuantity('length', text);
  return typed.ok ? fromStep(lastPlace('length', typed.value)) : undefined;
};

function roomOf({ valve, room, method, wheel }: EntryData['valve-room-read'], { id }: LogEntry): RoomReading {
  const uRead = uOfText(room.text);
  return {
    valve,
    room: room.value,
    method,
    ...(wheel && { wheel: wheel.value }),
    ...(uRead !== undefined && { uRead }),
    entry: id,
  };
}

/** Two readings of a rule are one length within a hundredth of a millimetre. */
const SAME_LENGTH = 1e-5;
function addTrial(
  trials: Map<string, readonly TriedPushrod[]>,
  { valve, length, width, offset }: EntryData['pushrod-tried'],
  { id }: LogEntry,
): void {
  const key = valveKey(valve);
  const others = (trials.get(key) ?? []).filter((one) => Math.abs(one.length - length.value) > SAME_LENGTH);
  const own = { length: length.value, width: width.value, ...(offset && { offset: offset.value }), entry: id };
  trials.set(key, [...others, own]);
}

/** A stated figure is as sure as its last place; one of several words is sure. */
function statedFigure({ key, reading, why }: EntryData['figure-stated'], { person }: LogEntry): GivenFigure {
  const kind = figureKind(figureParts(key).key);
  const typed = kind === undefined || kind.choices ? undefined : parseQuantity(kind.quantity, reading.text);
  const u = kind?.choices ? 0 : typed?.ok && kind ? fromStep(lastPlace(kind.quantity, typed.value)) : undefined;
  return { key, value: reading.value, ...(u !== undefined && { u }), origin: 'stated', from: `${why} (${person})` };
}
