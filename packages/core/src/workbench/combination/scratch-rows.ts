/** What is changed on the scratch copy, beside what it was. */
import { figure } from '../../assess/index.js';
import { figureKind, figureParts } from '../../engine/index.js';
import type { CombinationView, Scratch } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { spotOfPlace, titleOfFigure } from './inputs.js';
import { PLANNED } from './planned.js';
import { shownEnds, shownQuantity } from './shown.js';
import type { Tried } from './tried.js';

/** One row for each changed figure; `was` is empty where the figure was not known. */
export const scratchRows = (tried: Tried, scratch: Scratch, shownIn: ShownIn): CombinationView['scratch'] =>
  [...scratch].map(([key, value]) => ({
    key,
    title: titleOfFigure(key),
    now: figureWords(key, value, shownIn),
    was: wasWords(tried, key, shownIn),
  }));

/** A figure with its unit, or its word where it is one of several. */
export function figureWords(key: string, value: number, shownIn: ShownIn): string {
  const kind = figureKind(figureParts(key).key);
  if (kind?.choices) return (kind.choices[value] ?? '').replaceAll('-', ' ');
  return kind === undefined ? String(value) : shownQuantity(kind.quantity, value, shownIn);
}

function wasWords({ before, engine }: Tried, key: string, shownIn: ShownIn): string {
  const parts = figureParts(key);
  const kind = figureKind(parts.key);
  const spot = spotOfPlace(parts.place);
  const one = figure(before, parts.key, spot);
  const places =
    spot === undefined && kind?.per === 'cylinder' ? engine.layout.cylinders.map(({ number }) => number) : [];
  const each = places.flatMap((place) => figure(before, parts.key, place) ?? []).map(({ value }) => value);
  const [least, most] = [Math.min(...each), Math.max(...each)];
  if (kind !== undefined && !kind.choices && each.length > 0 && most > least)
    return shownEnds(kind.quantity, { low: least, high: most }, shownIn);
  const value = each[0] ?? one?.value ?? (PLANNED.has(parts.key) ? 0 : undefined);
  return value === undefined ? '' : figureWords(key, value, shownIn);
}
