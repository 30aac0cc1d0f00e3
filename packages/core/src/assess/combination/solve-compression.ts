/** The other way round: which chamber, gasket, crown or cut gives the wanted ratio, cylinder by cylinder. */
import {
  clearanceForRatio,
  clearanceVolume,
  cutForVolume,
  discArea,
  discVolume,
  staticForEffective,
  strokeLeft,
} from '../../calc/cylinder/index.js';
import type { CylinderNumber } from '../../engine/index.js';
import type { Angle, Area, Length, Ratio, Volume } from '../../quantity/index.js';
import { answered, type Naming, type Part, together } from './answering.js';
import { closingOf } from './cylinder-numbers.js';
import { chamberArea, lackingParts, type Room, type RoomPart, roomOf, volumesOf } from './cylinder-room.js';
import { computed, type Look, type Values } from './look.js';
import type { Answered, AnsweredFigure, Makeup } from './model.js';

/** What is wanted: a static ratio, or an effective one from which it follows; beside it a quench. */
export type RatioGoal = ({ readonly ratio: number } | { readonly effective: number }) & { readonly quench?: number };

const QUENCH = { quantity: 'length', low: 'quench-least', high: 'quench-most' } as const;
const NUMBERS: readonly Naming[] = [
  { key: 'ratio-needed', name: 'static ratio needed', quantity: 'ratio', low: 'ratio-least', high: 'ratio-most' },
  { key: 'clearance-needed', name: 'clearance volume needed', quantity: 'volume' },
  { key: 'chamber-needed', name: 'chamber volume needed', quantity: 'volume' },
  { key: 'head-cut-needed', name: 'further head cut needed', quantity: 'length' },
  { key: 'gasket-needed', name: 'gasket thickness needed', quantity: 'length' },
  { key: 'quench-with-gasket', name: 'quench with that gasket', ...QUENCH },
  { key: 'piston-needed', name: 'crown volume needed', quantity: 'volume' },
  { key: 'deck-needed', name: 'deck clearance needed', quantity: 'length' },
  { key: 'deck-cut-needed', name: 'further deck cut needed', quantity: 'length' },
  { key: 'quench-with-deck', name: 'quench with that deck', ...QUENCH },
  { key: 'room-needed', name: 'room to find, or to fill where negative', quantity: 'volume' },
  { key: 'gasket-for-quench', name: 'gasket thickness for the quench', quantity: 'length' },
];
const SOURCES = [
  'cylinder.chamber-for-ratio',
  'cylinder.gasket-for-ratio',
  'cylinder.piston-for-ratio',
  'cylinder.deck-for-ratio',
  'cylinder.mill-for-volume',
  'cylinder.static-for-effective',
  'cylinder.gasket-for-quench',
];

/**
 * What each part alone would have to be for the goal, the others as they are with the cuts already planned. A negative gasket or
 * chamber means that no such part exists: a caution says so. Each needs all parts but itself.
 */
export function solveCompression(makeup: Makeup, goal: RatioGoal): Answered {
  const cylinders = makeup.engine.layout.cylinders.map(({ number }) => number).sort((a, b) => a - b);
  return together(
    cylinders.map((cylinder) => cylinderPart(makeup, cylinder, goal)),
    SOURCES,
  );
}

function cylinderPart(makeup: Makeup, cylinder: CylinderNumber, goal: RatioGoal): Part {
  const found = computed(makeup, cylinder, (look) => needs(look, cylinder, goal));
  const figures = NUMBERS.flatMap((naming) => {
    const known = found.values.get(naming.key);
    return known === undefined ? [] : [answered(makeup, naming, known, { cylinder })];
  });
  return { figures, computed: [found], cautions: figures.flatMap((one) => impossible(one) ?? []) };
}

const LEAST_ZERO: Readonly<Record<string, string>> = {
  'chamber-needed': 'the other parts already take more room than the ratio allows: no chamber is small enough',
  'gasket-needed': 'no gasket is thin enough for the ratio',
  'gasket-for-quench': 'the piston stands higher than the quench allows with any gasket',
};
function impossible({ key, value, cylinder }: AnsweredFigure): string | undefined {
  const words = LEAST_ZERO[key];
  return words !== undefined && value < 0 ? `cylinder ${cylinder}: ${words}` : undefined;
}

function needs(look: Look, cylinder: CylinderNumber, goal: RatioGoal): Values {
  const room = roomOf(look, cylinder);
  const stroke = look.need('stroke', 'swept volume') as Length | undefined;
  const ratio = ratioNeeded(look, goal);
  const quench =
    goal.quench === undefined || room.deck === undefined ? {} : { 'gasket-for-quench': goal.quench - room.deck.after };
  if (room.bore === undefined || stroke === undefined || ratio === undefined) return quench;
  const target = clearanceForRatio(discVolume(room.bore, stroke), ratio);
  const free = (part: RoomPart): number | undefined =>
    lackingParts(room, part).length > 0 ? undefined : target - clearanceVolume(volumesOf(room, part));
  return {
    ...quench,
    'ratio-needed': 'effective' in goal ? ratio : undefined,
    'clearance-needed': target,
    ...ofChamber(look, room, free('chamber')),
    ...ofGasket(look, room, free('gasket')),
    'piston-needed': free('piston'),
    ...ofDeck(look, room, target, room.bore),
    'room-needed': free('other'),
  };
}

function ratioNeeded(look: Look, goal: RatioGoal): Ratio | undefined {
  if ('ratio' in goal) return goal.ratio > 1 ? (goal.ratio as Ratio) : undefined;
  const stroke = look.read('stroke');
  const rodLength = look.need('rod-length', 'effective ratio') as Length | undefined;
  const pinOffset = look.read('pin-offset') as Length | undefined;
  const closing = closingOf(look) as Angle | undefined;
  if (stroke === undefined || rodLength === undefined || pinOffset === undefined || closing === undefined)
    return undefined;
  const left = strokeLeft({ crankRadius: (stroke / 2) as Length, rodLength, pinOffset }, closing);
  return left.ok ? staticForEffective(goal.effective as Ratio, left.value) : undefined;
}

function ofChamber(look: Look, { parts }: Room, needed: number | undefined): Values {
  if (needed === undefined) return {};
  const less = parts.chamber === undefined ? undefined : ((parts.chamber - needed) as Volume);
  const area = less === undefined ? undefined : chamberArea(look, 'head cut for a ratio');
  const cut = less === undefined || area === undefined ? undefined : cutForVolume(less, area);
  return { 'chamber-needed': needed, 'head-cut-needed': cut };
}

function ofGasket(look: Look, { deck }: Room, room: number | undefined): Values {
  const bore = look.read('gasket-bore') as Length | undefined;
  if (room === undefined || bore === undefined) return {};
  const thickness = room / discArea(bore);
  return { 'gasket-needed': thickness, 'quench-with-gasket': deck && deck.after + thickness };
}

/** A cut takes the disc of the bore out of the whole room, wherever the deck clearance is counted. */
function ofDeck(look: Look, room: Room, target: Volume, bore: Length): Values {
  if (lackingParts(room).length > 0) return {};
  const area: Area = discArea(bore);
  const cut = (clearanceVolume(volumesOf(room)) - target) / area;
  const deck = room.deck && room.deck.after - cut;
  const gasket = look.read('gasket-thickness');
  return {
    'deck-cut-needed': cut,
    'deck-needed': deck,
    'quench-with-deck': deck === undefined || gasket === undefined ? undefined : deck + gasket,
  };
}
