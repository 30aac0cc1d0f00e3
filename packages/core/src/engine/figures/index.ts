/** Every kind of figure of the combination, and how its keys are written: `gasket-bore`, `chamber-volume@3`, `valve-angle@intake`. */
import type { CylinderNumber, ValveKind } from '../model.js';
import { cylinderFigures } from './cylinder.js';
import { headFigures } from './head-and-gasket.js';
import type { FigureKindOf } from './kind.js';
import { limitFigures } from './limits.js';
import { movingFigures } from './moving-parts.js';
import { springFigures } from './springs.js';
import { camFigures, valveGearFigures } from './valve-gear.js';
import { valveRoomFigures } from './valve-room.js';

export type { FigureGroup, FigureKindOf } from './kind.js';

export const FIGURE_KINDS: readonly FigureKindOf[] = [
  ...cylinderFigures,
  ...headFigures,
  ...camFigures,
  ...valveGearFigures,
  ...springFigures,
  ...movingFigures,
  ...limitFigures,
  ...valveRoomFigures,
];
const BY_KEY: ReadonlyMap<string, FigureKindOf> = new Map(FIGURE_KINDS.map((kind) => [kind.key, kind]));

/** The kind of a figure by its key without a place; undefined for a word that is none. */
export const figureKind = (key: string): FigureKindOf | undefined => BY_KEY.get(key);

/** For which cylinder or kind of valve a figure holds; left out: for all. */
export type FigurePlace = CylinderNumber | ValveKind;

/** `chamber-volume@3`; without a place the figure of the whole engine. */
export const figureKey = (key: string, place?: FigurePlace | string): string =>
  place === undefined ? key : `${key}@${place}`;

/** Key without its place, and the text after the first `@`. */
export function figureParts(key: string): { readonly key: string; readonly place?: string } {
  const at = key.indexOf('@');
  return at < 0 ? { key } : { key: key.slice(0, at), place: key.slice(at + 1) };
}

/** Places that a figure can be given for, by the words of a sheet. */
export function placesOfFigure({ per }: FigureKindOf, cylinders: readonly CylinderNumber[]): readonly string[] {
  if (per === 'engine') return [];
  return per === 'cylinder' ? cylinders.map(String) : ['intake', 'exhaust'];
}
