import { FIGURE_KINDS, type FigureKindOf, figureKind, figureParts, placesOfFigure } from '../../figures/index.js';
import type { Layout, Stated } from '../../model.js';
import type { Path } from '../document.js';
import { nearestName } from '../nearest.js';
import type { RawFigure, SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';

/** Figures of the combination. Refuses keys that are none, places that the engine has not, and figures that stand elsewhere. */
export function buildFigures(
  sheet: Sheet,
  layout: Layout,
  reader: SheetReader,
): Readonly<Record<string, Stated<number>>> | undefined {
  if (sheet.figures === undefined) return undefined;
  const numbers = layout.cylinders.map(({ number }) => number);
  const read = Object.entries(sheet.figures).flatMap(([key, raw]) => {
    const kind = kindOf(key, numbers, reader);
    const stated = kind && readFigure(kind, raw, ['figures', key], reader);
    return stated === undefined ? [] : [[key, stated] as const];
  });
  return Object.fromEntries(read);
}

function kindOf(given: string, numbers: readonly number[], reader: SheetReader): FigureKindOf | undefined {
  const path: Path = ['figures', given];
  const { key, place } = figureParts(given);
  const kind = figureKind(key);
  if (kind === undefined) {
    const near = nearestName(key, WRITABLE);
    const hint = near === undefined ? `known: ${WRITABLE.join(', ')}` : `did you mean "${near}"?`;
    reader.fault('unknown-figure', path, `"${key.slice(0, 60)}" is no figure of the combination; ${hint}`);
    return undefined;
  }
  if (kind.stands !== undefined) {
    reader.fault('stands-elsewhere', path, `the ${kind.title} is written at ${kind.stands}`);
    return undefined;
  }
  const places = placesOfFigure(kind, numbers);
  if (place === undefined || places.includes(place)) return kind;
  const valid = places.length === 0 ? `write "${key}", it holds for the whole engine` : `valid: ${places.join(', ')}`;
  reader.fault('no-such-place', path, `there is no "${place.slice(0, 20)}" for ${kind.title}; ${valid}`);
  return undefined;
}
const WRITABLE = FIGURE_KINDS.filter(({ stands }) => stands === undefined).map(({ key }) => key);

function readFigure(kind: FigureKindOf, raw: RawFigure, path: Path, reader: SheetReader): Stated<number> | undefined {
  if (kind.choices !== undefined) return readChoice(kind.choices, raw, path, reader);
  const read = reader.stated(kind.quantity, raw, path) as Stated<number> | undefined;
  if (read === undefined) return undefined;
  const least = read.window?.low ?? read.value;
  const fits = kind.sign === 'any' || least > 0 || (kind.sign === 'not-negative' && least === 0);
  if (fits) return read;
  const valid = kind.sign === 'positive' ? 'more than zero' : 'zero or more';
  reader.fault('not-positive', path, `"${read.text}" is not ${valid}`);
  return undefined;
}

function readChoice(
  choices: readonly string[],
  raw: RawFigure,
  path: Path,
  reader: SheetReader,
): Stated<number> | undefined {
  const figure = typeof raw === 'object' ? raw : { value: raw };
  const from = reader.from(figure.from, [...path, 'from']);
  const text = String(figure.value).trim();
  const value = choices.indexOf(text);
  if (value >= 0) return { text, value, from, ...(figure.note === undefined ? {} : { note: figure.note }) };
  reader.fault('not-one-of', path, `"${text.slice(0, 40)}" is not known; one of: ${choices.join(', ')}`);
  return undefined;
}
