/** From what a person keys at wheel, indicator and rule to entries of the log. */
import { type CylinderNumber, type ValveId, valveName } from '../../engine/index.js';
import { done, type Outcome, parseQuantity, refused } from '../../quantity/index.js';
import type { EntryData, Reading } from '../../record/index.js';
import type { Bench } from '../bench.js';
import { typedReading } from '../measuring-commands.js';
import { type Proposal, propose } from '../propose.js';

/** Names in the order in which they are keyed; the first that cannot be read is refused with its name. */
function allTyped<K extends string>(
  measured: 'angle' | 'length',
  texts: Readonly<Record<K, string>>,
): Outcome<Readonly<Record<K, Reading>>, string> {
  const read: Partial<Record<K, Reading>> = {};
  for (const [name, text] of Object.entries(texts) as [K, string][]) {
    const one = typedReading(measured, text);
    if (!one.ok) return refused(`${name}: ${one.fault}`);
    read[name] = one.value;
  }
  return done(read as Record<K, Reading>);
}

/** The entry for a pair of stop readings, each with its unit: "36.5 deg". */
export function proposeStop(
  bench: Bench,
  { cylinder, first, second }: { readonly cylinder: CylinderNumber; readonly first: string; readonly second: string },
): Proposal {
  const read = allTyped('angle', { first, second });
  return read.ok ? propose(bench, { kind: 'dead-centre-read', data: { cylinder, ...read.value } }) : read;
}

export interface CamWish {
  readonly lobe: ValveId;
  readonly wheel: string;
  readonly lift: string;
  readonly at: EntryData['cam-read']['at'];
}
/** The entry for wheel and indicator at one place of a lobe. */
export function proposeCamRead(bench: Bench, { lobe, wheel, lift, at }: CamWish): Proposal {
  const angle = allTyped('angle', { wheel });
  if (!angle.ok) return angle;
  const length = allTyped('length', { lift });
  if (!length.ok) return length;
  return propose(bench, { kind: 'cam-read', data: { lobe, ...angle.value, ...length.value, at } });
}

export interface TrialWish {
  readonly valve: ValveId;
  readonly length: string;
  readonly width: string;
  readonly offset: string;
}
/** The entry for a pushrod that was tried and the mark that it left. */
export function proposeTrial(bench: Bench, { valve, ...texts }: TrialWish): Proposal {
  const read = allTyped('length', texts);
  return read.ok ? propose(bench, { kind: 'pushrod-tried', data: { valve, ...read.value } }) : read;
}

export interface RoomWish {
  readonly valve: ValveId;
  readonly method: EntryData['valve-room-read']['method'];
  readonly room: string;
  /** Not asked for clay. */
  readonly wheel?: string;
}
/** The entry for the room between a valve and its piston as it was found in the metal. */
export function proposeRoom(bench: Bench, { valve, method, room, wheel }: RoomWish): Proposal {
  const angle = wheel === undefined ? done({}) : allTyped('angle', { wheel });
  if (!angle.ok) return angle;
  const length = allTyped('length', { room });
  if (!length.ok) return length;
  return propose(bench, { kind: 'valve-room-read', data: { valve, method, ...length.value, ...angle.value } });
}

/** "cylinder 1 intake, wheel 72.5 deg, lift 3.21 mm": what is said back. */
export const camSaid = (bench: Bench, { lobe, wheel, lift }: CamWish): string =>
  `${valveName(bench.engine, lobe)}: wheel ${wheel}, lift ${lift}`;

/** SI value of a typed angle; undefined for what is none. */
export function angleKeyed(text: string): number | undefined {
  const read = parseQuantity('angle', text);
  return read.ok ? read.value.value : undefined;
}
