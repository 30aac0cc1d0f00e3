/** Room along the stem with the valve closed and the piston at its top, as the parts will be put together. */
import { CROWNS, type Crown, gapChange } from '../../calc/valvetrain/index.js';
import type { CylinderNumber, ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { deckOf } from './cylinder-room.js';
import type { Look } from './look.js';
import { figure } from './makeup.js';

export interface ValveSeat {
  readonly crown: Crown;
  readonly valveAngle: Angle;
  /** Room at the top along the stem [m]. */
  readonly gapAtTop: number;
  /** Piston to head at the top along the bore [m], where it is known. */
  readonly deckRoom?: number;
}
export const ROOM = 'room between valve and piston';

/** What a valve meets and how far away that is; undefined where figures are lacking. `cylinder`: of which the piston is taken. */
export function seatOf(look: Look, kind: ValveKind, cylinder: CylinderNumber): ValveSeat | undefined {
  const angle = look.need('valve-angle', ROOM) as Angle | undefined;
  const crown = CROWNS[look.need('crown', ROOM) ?? -1];
  if (angle === undefined || crown === undefined) return undefined;
  const own = look.at(cylinder);
  const direct = figure(look.makeup, 'valve-drop', kind);
  const gapAtTop =
    direct === undefined ? composed(look, own, cylinder, crown, angle) : corrected(look, own, crown, angle);
  if (gapAtTop === undefined) return undefined;
  return { crown, valveAngle: angle, gapAtTop };
}

const cuts = (own: Look): number => own.planned('deck-cut') + own.planned('head-cut');

/** As it was taken, with the gasket that will be fitted and the cuts that are still to be made. */
function corrected(look: Look, own: Look, crown: Crown, angle: Angle): number | undefined {
  const drop = look.read('valve-drop');
  if (drop === undefined) return undefined;
  const taken = look.read('valve-drop-gasket');
  const gasket =
    taken === undefined ? undefined : own.need('gasket-thickness', `${ROOM} with the gasket that is fitted`);
  const more = taken === undefined || gasket === undefined ? 0 : gasket - taken;
  return drop + changed(look, crown, angle, more - cuts(own), 0);
}

/** From the recess of the valve in the head, gasket, deck clearance and pocket. */
function composed(look: Look, own: Look, cylinder: CylinderNumber, crown: Crown, angle: Angle): number | undefined {
  const recess = look.read('valve-recess');
  const pocket = look.read('pocket-depth');
  if (recess === undefined || pocket === undefined) {
    look.lack('valve-drop', ROOM);
    return undefined;
  }
  const gasket = own.need('gasket-thickness', ROOM);
  const deck = deckOf(own, cylinder);
  if (gasket === undefined || deck === undefined) return undefined;
  return recess + changed(look, crown, angle, gasket + deck.after - own.planned('head-cut'), pocket);
}

const changed = (look: Look, crown: Crown, angle: Angle, alongBore: number, pocketDeeper: number): number =>
  gapChange(crown, angle, {
    alongBore: alongBore as Length,
    pocketDeeper: pocketDeeper as Length,
    valveSunk: look.planned('valve-sunk') as Length,
    liftMore: 0 as Length,
  });

/** Piston to head at the top along the bore; undefined where it is not known. Nothing is noted as missing. */
export function deckRoomOf(own: Look, cylinder: CylinderNumber): number | undefined {
  const gasket = own.read('gasket-thickness');
  const lacked = new Map(own.missing);
  const deck = deckOf(own, cylinder);
  for (const key of own.missing.keys()) if (!lacked.has(key)) own.missing.delete(key);
  return gasket === undefined || deck === undefined ? undefined : gasket + deck.after - own.planned('head-cut');
}
