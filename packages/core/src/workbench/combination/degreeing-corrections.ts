/** Every way to bring the cam nearer to where it is wanted, side by side, with what each does to the valve room. */
import {
  type Answered,
  type Correction,
  camCorrection,
  figure,
  type LobeDegreed,
  type Makeup,
  type ReadCurves,
} from '../../assess/index.js';
import type { ShownIn } from '../measure-views.js';
import { chanceWords } from './answers.js';
import { wantedMiddle } from './degreeing-lobe.js';
import { degreesText, laterText } from './degreeing-shown.js';
import type { CorrectionRow, PartsAtHand } from './degreeing-views.js';
import { shownQuantity } from './shown.js';
import { timingParts, toBuy } from './timing-stock.js';
import type { CamCarries } from './valve-room-asked.js';

export interface CorrectionsAsked {
  readonly lobe: LobeDegreed;
  readonly atHand: PartsAtHand;
  readonly carries: CamCarries;
  readonly read: ReadCurves;
  /** Figures with the cam where it stands. */
  readonly standing: Makeup;
}
export interface CorrectionsShown {
  readonly rows: readonly CorrectionRow[];
  readonly answered: Answered;
}

export function corrections(
  makeup: Makeup,
  { lobe, atHand, carries, read, standing }: CorrectionsAsked,
  shownIn: ShownIn,
): CorrectionsShown {
  const answered = camCorrection(makeup, lobe, {
    parts: timingParts(makeup.engine, atHand.parts),
    read,
    cylinder: lobe.lobe.cylinder,
    standing,
    ...(atHand.crankTeeth !== undefined && { crankTeeth: atHand.crankTeeth }),
    ...(carries !== 'both' && { moves: [carries] }),
  });
  const wanted = wantedMiddle(makeup, lobe.lobe);
  if (wanted === undefined) return { rows: [], answered };
  const planned = figure(makeup, 'cam-advance')?.value ?? 0;
  const rows = answered.choices.map((one) => ({
    ...rowOf(one),
    ...bought(makeup, one),
    rooms: roomsOf(makeup, one, shownIn),
    advance: wanted + planned - one.middle,
  }));
  return { rows, answered };
}

function rowOf(one: Correction): Omit<CorrectionRow, 'rooms' | 'advance'> {
  const { part, teeth, change, left, verdict, inside } = one;
  return {
    key: `${part?.id ?? 'none'} ${part?.turnedRound ?? false} ${teeth}`,
    name: nameOf(one),
    change: change === 0 ? 'not moved' : `${degreesText(change)} ${change > 0 ? 'earlier' : 'later'}`,
    left: `${laterText(left)} than wanted`,
    verdict,
    ...(inside !== undefined && { chance: chanceWords(inside) }),
  };
}

function bought({ engine }: Makeup, { part }: Correction): Pick<CorrectionRow, 'buy'> {
  const buy = toBuy(engine, part?.id);
  return buy === undefined ? {} : { buy };
}

const roomsOf = (makeup: Makeup, { rooms }: Correction, shownIn: ShownIn): CorrectionRow['rooms'] =>
  (['intake', 'exhaust'] as const).flatMap((kind) => {
    const room = rooms[kind];
    if (room === undefined) return [];
    const limit = figure(makeup, 'valve-room-least', kind)?.value;
    const wanted = limit === undefined ? '' : `, at least ${shownQuantity('length', limit, shownIn)} wanted`;
    return [
      {
        kind,
        words: `${shownQuantity('length', room.gap, shownIn)}${wanted}`,
        ...(room.kept !== undefined && { kept: room.kept }),
      },
    ];
  });

function nameOf({ part, teeth }: Correction): string {
  const tooth =
    teeth === 0
      ? []
      : [`${Math.abs(teeth)} ${Math.abs(teeth) === 1 ? 'tooth' : 'teeth'} ${teeth > 0 ? 'earlier' : 'later'}`];
  const own = part === undefined ? [] : [`${part.name}${part.turnedRound ? ', other way round' : ''}`];
  const all = [...own, ...tooth];
  return all.length === 0 ? 'As it is' : all.join(', ');
}
