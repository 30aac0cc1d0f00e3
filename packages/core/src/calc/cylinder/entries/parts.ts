/** The parts of the clearance volume as inputs, and their volumes; shared by the ratio and its backward solutions. */
import { done, type Length, type Outcome, type Volume } from '../../../quantity/index.js';
import { type Caution, type Conflict, conflict, type Values } from '../../catalogue/index.js';
import type { ClearanceParts } from '../ratio.js';
import { creviceVolume, discVolume } from '../volumes.js';
import { bore, height, roomOrNone, signedLength, signedRoom, size, stroke } from './inputs.js';

export const geometry = { bore, stroke } as const;
export const chamber = roomOrNone('V1', 'combustion chamber in the head, with valves and plug in place');
export const gasketThickness = height('tg', 'head gasket, compressed thickness');
export const gasketBore = {
  ...size('Bg', 'bore of the head gasket, diameter; left out: the cylinder bore'),
  optional: true,
} as const;
export const gasketVolume = {
  ...roomOrNone('Vg', 'volume inside the head gasket, in place of its thickness and bore'),
  optional: true,
} as const;
export const gasket = {
  gasketThickness: { ...gasketThickness, optional: true },
  gasketBore,
  gasketVolume,
} as const;
export const deckClearance = signedLength(
  'd',
  'deck clearance: crown flat below the deck positive, proud of it negative, at top dead centre',
);
export const pistonVolume = signedRoom(
  'Vp',
  'volume of the piston crown: dish and valve reliefs positive, dome negative',
);
/** Parts that no backward solution is asked for. */
export const smallParts = {
  pocketVolume: {
    ...roomOrNone('Vv', 'valve pockets, where they are not counted in the piston volume'),
    optional: true,
  },
  creviceVolume: { ...roomOrNone('Vk', 'crevice above the top ring'), optional: true },
  landHeight: { ...height('h', 'top land, crown to top ring, in place of the crevice volume'), optional: true },
  landDiameter: { ...size('dl', 'diameter of the top land, with the land height'), optional: true },
  otherVolume: {
    ...signedRoom('Vo', 'anything else: plug, chamfer, or several parts as one sum; what takes up room is negative'),
    optional: true,
  },
} as const;
export const allParts = {
  chamber,
  ...gasket,
  deckClearance: { ...deckClearance, optional: true },
  pistonVolume: { ...pistonVolume, optional: true },
  ...smallParts,
} as const;

type Given = Partial<Values<typeof allParts>>;

/** Volumes of the parts that are given, in a cylinder of this bore. */
export function partsOf(v: Given, bore: Length): Outcome<ClearanceParts, Conflict> {
  const twice = v.gasketVolume !== undefined && (v.gasketThickness !== undefined || v.gasketBore !== undefined);
  if (twice) return conflict(['gasketVolume', 'gasketThickness', 'gasketBore'], 'the gasket is given twice');
  if (v.gasketBore !== undefined && v.gasketThickness === undefined) {
    return conflict(['gasketBore'], 'a gasket bore says nothing without the gasket thickness');
  }
  const crevice = creviceOf(v, bore);
  if (!crevice.ok) return crevice;
  return done({
    chamber: v.chamber,
    gasket: v.gasketThickness === undefined ? v.gasketVolume : discVolume(v.gasketBore ?? bore, v.gasketThickness),
    deck: v.deckClearance === undefined ? undefined : discVolume(bore, v.deckClearance),
    piston: v.pistonVolume,
    pocket: v.pocketVolume,
    crevice: crevice.value,
    other: v.otherVolume,
  });
}

function creviceOf(v: Given, bore: Length): Outcome<Volume | undefined, Conflict> {
  const { landHeight, landDiameter } = v;
  if (landHeight === undefined && landDiameter === undefined) return done(v.creviceVolume);
  if (v.creviceVolume !== undefined) {
    return conflict(['creviceVolume', 'landHeight', 'landDiameter'], 'the crevice is given twice');
  }
  if (landHeight === undefined || landDiameter === undefined) {
    return conflict(['landHeight', 'landDiameter'], 'height and diameter of the top land are needed together');
  }
  if (landDiameter > bore) {
    return conflict(['landDiameter', 'bore'], 'the land does not go into the bore', {
      input: 'landDiameter',
      to: bore,
    });
  }
  return done(creviceVolume(bore, landDiameter, landHeight));
}

const COUNTED: readonly (readonly [keyof ClearanceParts, string])[] = [
  ['gasket', 'head gasket'],
  ['deck', 'deck clearance'],
  ['piston', 'piston volume'],
  ['crevice', 'crevice above the top ring'],
];

/** What a reader should know about the parts: those left out, and a gasket that hangs into the bore. */
export function partCautions(v: Given, parts: ClearanceParts, bore: Length, solved?: keyof ClearanceParts): Caution[] {
  const bundled = parts.other === undefined ? '' : ', unless they are in the other volume';
  const missing = COUNTED.filter(([part]) => part !== solved && parts[part] === undefined).map(([, name]) => name);
  const small = v.gasketBore !== undefined && v.gasketBore < bore;
  return [
    ...(missing.length > 0
      ? [{ code: 'part-left-out', text: `not given and therefore not counted: ${missing.join(', ')}${bundled}` }]
      : []),
    ...(small ? [{ code: 'gasket-in-bore', text: 'the gasket bore is smaller than the cylinder bore' }] : []),
  ];
}
