/** The room that the charge is squeezed into at the top of one cylinder, part by part, with the cuts that are still to be made. */
import {
  type ClearanceParts,
  circleOfPerimeter,
  creviceVolume,
  deckClearance,
  discVolume,
  downfill,
} from '../../calc/cylinder/index.js';
import type { Area, Length, Volume } from '../../quantity/index.js';
import type { Look } from './look.js';
import { figure } from './makeup.js';
import type { GivenFigure, Origin } from './model.js';

/** Parts of the clearance volume; `below` is all that a downfill measures at once. */
export const ROOM_PARTS = [
  'chamber',
  'gasket',
  'deck',
  'piston',
  'pocket',
  'crevice',
  'other',
] as const satisfies readonly (keyof ClearanceParts)[];
export type RoomPart = (typeof ROOM_PARTS)[number];
export const PART_NAMES: Readonly<Record<RoomPart, string>> = {
  chamber: 'chamber',
  gasket: 'head gasket',
  deck: 'deck clearance',
  piston: 'crown',
  pocket: 'valve pockets',
  crevice: 'crevice above the top ring',
  other: 'other',
};

const RATIO = 'compression ratio';
const QUENCH = 'quench and compression ratio';

/** Deck clearance now and after the planned cut. */
export interface Deck {
  readonly now: number;
  readonly after: number;
}
const BEFORE: Readonly<Record<Origin, number>> = { scratch: 0, stated: 1, measured: 2, sheet: 3, assumed: 4 };
const HEIGHTS = ['deck-height', 'stroke', 'rod-length', 'compression-height'] as const;

/**
 * Deck clearance as given; from the heights where it is not, or where one of them is tried or stated and outranks it (another piston
 * on the scratch copy does not stand where the measured one stood). Less the cut that is still to be made.
 */
export function deckOf(look: Look, cylinder: number): Deck | undefined {
  const direct = figure(look.makeup, 'deck-clearance', cylinder);
  const newer = HEIGHTS.some((key) => outranks(figure(look.makeup, key, cylinder), direct));
  const now = direct !== undefined && !newer ? look.read('deck-clearance') : fromHeights(look);
  if (now === undefined) return undefined;
  return { now, after: now - look.planned('deck-cut') };
}
const outranks = (one: GivenFigure | undefined, other: GivenFigure | undefined): boolean =>
  one !== undefined && other !== undefined && BEFORE[one.origin] < BEFORE[other.origin];

function fromHeights(look: Look): number | undefined {
  const [deckHeight, stroke, rodLength, compressionHeight] = HEIGHTS.map((key) => look.read(key) as Length | undefined);
  if (deckHeight === undefined || stroke === undefined || rodLength === undefined || compressionHeight === undefined) {
    look.lack('deck-clearance', QUENCH);
    return undefined;
  }
  return deckClearance({ deckHeight, stroke, rodLength, compressionHeight });
}

/** Chamber after the planned cut of the head. */
export function chamberOf(look: Look): number | undefined {
  const chamber = look.need('chamber-volume', RATIO);
  const cut = look.planned('head-cut');
  if (chamber === undefined || cut === 0) return chamber;
  const area = chamberArea(look, 'chamber after the head cut');
  return area === undefined ? undefined : chamber - area * cut;
}

/** Area of the chamber on the face: traced, else the circle of its perimeter, which is too large for a kidney shape. */
export function chamberArea(look: Look, lacking: string): Area | undefined {
  const traced = look.read('chamber-area') as Area | undefined;
  if (traced !== undefined) return traced;
  const perimeter = look.read('chamber-perimeter') as Length | undefined;
  if (perimeter !== undefined) return circleOfPerimeter(perimeter);
  look.lack('chamber-area', lacking);
  return undefined;
}

function gasketOf(look: Look): number | undefined {
  const bore = look.need('gasket-bore', RATIO);
  const thickness = look.need('gasket-thickness', RATIO);
  if (bore === undefined || thickness === undefined) return undefined;
  return discVolume(bore as Length, thickness as Length);
}

/** Crevice as given, else from the land above the top ring. */
export function creviceOf(look: Look, bore: Length | undefined): number | undefined {
  const volume = look.read('crevice-volume');
  if (volume !== undefined) return volume;
  const diameter = look.read('land-diameter') as Length | undefined;
  const height = look.read('land-height') as Length | undefined;
  if (bore !== undefined && diameter !== undefined && height !== undefined)
    return creviceVolume(bore, diameter, height);
  look.lack(diameter === undefined ? 'land-diameter' : 'land-height', 'crevice above the top ring: it is not counted');
  return undefined;
}

const DECK = 1;

export interface Room {
  readonly bore?: Length;
  readonly deck?: Deck;
  readonly parts: Readonly<Partial<Record<RoomPart, number>>>;
  /** A downfill measured crown, pockets and crevice at once; from the highest place of the piston the deck clearance too. */
  readonly downfilled: 'no' | 'crown' | 'crown-and-deck';
}

/** Every part that is known; the rest is noted as missing. */
export function roomOf(look: Look, cylinder: number): Room {
  const bore = look.need('bore', RATIO) as Length | undefined;
  const deck = deckOf(look, cylinder);
  const head = { chamber: chamberOf(look), gasket: gasketOf(look), other: look.read('other-volume') };
  const own = { ...(bore !== undefined && { bore }), ...(deck && { deck }) };
  const deckRoom = deck && bore && discVolume(bore, deck.after as Length);
  const filled = look.read('downfill-volume') as Volume | undefined;
  const depth = look.read('downfill-depth') as Length | undefined;
  if (filled !== undefined && depth !== undefined && bore !== undefined) {
    const extra = downfill(filled, bore, depth);
    if (look.read('downfill-zero') === DECK)
      return { ...own, parts: known({ ...head, deck: deckRoom, piston: extra }), downfilled: 'crown' };
    const cut = discVolume(bore, look.planned('deck-cut') as Length);
    look.missing.delete('deck-clearance');
    return { ...own, parts: known({ ...head, piston: extra - cut }), downfilled: 'crown-and-deck' };
  }
  const crown = {
    deck: deckRoom,
    piston: look.need('piston-volume', RATIO),
    pocket: look.read('pocket-volume'),
    crevice: creviceOf(look, bore),
  };
  return { ...own, parts: known({ ...head, ...crown }), downfilled: 'no' };
}
const known = (parts: Readonly<Record<string, number | undefined>>): Room['parts'] =>
  Object.fromEntries(Object.entries(parts).filter(([, value]) => value !== undefined));

/** Without these there is no ratio; pockets, crevice and the rest are small and are said to be left out. */
const NEEDED: readonly RoomPart[] = ['chamber', 'gasket', 'deck', 'piston'];

/** Parts without which nothing whole can be said, `free` left out. */
export const lackingParts = ({ parts, downfilled }: Room, free?: RoomPart): readonly RoomPart[] =>
  NEEDED.filter(
    (part) => part !== free && parts[part] === undefined && !(part === 'deck' && downfilled === 'crown-and-deck'),
  );

/** The parts as `calc` takes them, one of them left out where it is what is looked for. */
export const volumesOf = ({ parts }: Room, free?: RoomPart): ClearanceParts =>
  Object.fromEntries(Object.entries(parts).filter(([part]) => part !== free)) as ClearanceParts;
