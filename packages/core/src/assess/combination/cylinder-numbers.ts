/** What follows from the room at the top of one cylinder: ratio, quench, effective ratio, cranking pressure. */
import {
  airPressure,
  clearanceVolume,
  compressionRatio,
  crankingPressure,
  discVolume,
  effectiveRatio,
  quench,
  strokeLeft,
} from '../../calc/cylinder/index.js';
import type { Angle, Length, Ratio, Volume } from '../../quantity/index.js';
import { lackingParts, ROOM_PARTS, type Room, roomOf, volumesOf } from './cylinder-room.js';
import type { Look, Values } from './look.js';

/** Name of a part among the values: `part-chamber`. */
export const partValue = (part: string): string => `part-${part}`;

/** Every number of one cylinder that its figures allow. */
export function cylinderNumbers(look: Look, cylinder: number): Values {
  const room = roomOf(look, cylinder);
  const swept = sweptOf(look, room);
  const whole = lackingParts(room).length === 0;
  const clearance = whole ? clearanceVolume(volumesOf(room)) : undefined;
  const ratio =
    clearance !== undefined && clearance > 0 && swept !== undefined ? compressionRatio(swept, clearance) : undefined;
  return {
    ...Object.fromEntries(ROOM_PARTS.map((part) => [partValue(part), room.parts[part]])),
    swept,
    clearance,
    ratio,
    'deck-clearance': room.deck?.after,
    quench: quenchOf(look, room),
    ...trapped(look, ratio),
    ...thicknesses(look),
  };
}

function sweptOf(look: Look, { bore }: Room): Volume | undefined {
  const stroke = look.need('stroke', 'swept volume') as Length | undefined;
  return bore === undefined || stroke === undefined ? undefined : discVolume(bore, stroke);
}

function quenchOf(look: Look, { deck }: Room): number | undefined {
  const gasket = look.need('gasket-thickness', 'quench') as Length | undefined;
  return deck === undefined || gasket === undefined ? undefined : quench(deck.after as Length, gasket);
}

/** Crank angle after bottom dead centre at which the charge is trapped: printed, later by its allowance, earlier by the cam's advance. */
export function closingOf(look: Look): number | undefined {
  const printed = look.need('intake-closes', 'effective ratio');
  return printed === undefined ? undefined : printed + look.planned('closing-allowance') - look.planned('cam-advance');
}

function trapped(look: Look, ratio: Ratio | undefined): Values {
  const stroke = look.read('stroke');
  const rodLength = look.need('rod-length', 'effective ratio') as Length | undefined;
  const pinOffset = look.read('pin-offset') as Length | undefined;
  const closing = closingOf(look) as Angle | undefined;
  if (stroke === undefined || rodLength === undefined || pinOffset === undefined || closing === undefined) return {};
  const left = strokeLeft({ crankRadius: (stroke / 2) as Length, rodLength, pinOffset }, closing);
  if (!left.ok) return {};
  const rise = { 'closing-rise': left.value.rise };
  if (ratio === undefined) return rise;
  const effective = effectiveRatio(ratio, left.value);
  return { ...rise, 'effective-ratio': effective, 'cranking-pressure': cranking(look, effective) };
}

/** Over the pressure of the air: what a gauge shows. */
function cranking(look: Look, effective: Ratio): number | undefined {
  const exponent = look.read('cranking-exponent') as Ratio | undefined;
  const height = look.read('site-height') as Length | undefined;
  if (exponent === undefined || height === undefined) return undefined;
  const air = airPressure(height);
  return crankingPressure(effective, exponent, air) - air;
}

/** What is left of block and head after the planned cuts. */
function thicknesses(look: Look): Values {
  const deck = look.read('deck-height');
  const head = look.read('head-thickness');
  return {
    'deck-height-left': deck === undefined ? undefined : deck - look.planned('deck-cut'),
    'head-thickness-left': head === undefined ? undefined : head - look.planned('head-cut'),
  };
}
