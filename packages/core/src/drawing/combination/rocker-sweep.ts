/** Marks that a rocker leaves on the tip of its valve, for each pushrod length that was tried. */
import { formatNumber } from '../../quantity/index.js';
import { compose } from '../compose.js';
import type { Figure, Shape } from '../figure.js';
import { at } from '../geometry.js';
import type { Shown } from '../options.js';
import { arrowHead, circle, label, line, polygon, rectangle } from '../shapes.js';
import { type Scale, scaleFor } from '../sheet-scale.js';

/** Lengths in mm. */
export interface SweepTrial {
  readonly length: number;
  readonly width: number;
  /** Middle of the mark from the middle of the stem, away from the rocker positive. */
  readonly offset: number;
}
export interface SweepShown {
  readonly title: string;
  /** Diameter of its tip; where it is not known the tip is drawn 8 mm across, and said to be. */
  readonly stem?: number;
  readonly trials: readonly SweepTrial[];
  /** Length at which the mark is narrowest, and at which it is centred. */
  readonly narrowest?: number;
  readonly centred?: number;
  /** Unit and places in which the lengths are written, and mm in one of it. */
  readonly unit: { readonly name: string; readonly places: number; readonly mm: number };
}

const WIDTH = 300;
/** Most tips in a row; the longest trials beyond them are left to the table. */
const MOST = 6;
const GAP = 0.22;
/** Stem of a usual valve (common practice, no source). */
const USUAL_STEM = 8;

/**
 * Each trial as the tip of the stem seen from above, shortest pushrod first, the rocker's pivot below: the mark on it is drawn to scale, so that
 * width and place are seen side by side. The narrowest has a thick ring.
 */
export function rockerSweep(shown: SweepShown, options: Shown = {}): Figure {
  const scale = scaleFor(WIDTH, options);
  const trials = [...shown.trials].sort((a, b) => a.length - b.length).slice(0, MOST);
  const cell = WIDTH / Math.max(3, trials.length);
  const narrow = trials.reduce<SweepTrial | undefined>(
    (least, one) => (least === undefined || one.width < least.width ? one : least),
    undefined,
  );
  const tips = trials.flatMap((trial, n) =>
    tip(trial, at((n + 0.5) * cell, 0), (cell * (1 - GAP)) / 2, shown, trial === narrow && trials.length > 1, scale),
  );
  return compose({
    title: shown.title,
    description: words(shown, trials),
    shapes:
      trials.length === 0
        ? [label(at(WIDTH / 2, 0), 'no trial yet', scale.text)]
        : [...tips, ...towards(cell, shown.unit.name, scale)],
    margin: scale.margin,
    leastWidth: WIDTH,
  });
}

function tip(
  { length, width, offset }: SweepTrial,
  centre: { readonly x: number; readonly y: number },
  radius: number,
  { stem = USUAL_STEM, unit }: SweepShown,
  narrowest: boolean,
  scale: Scale,
): readonly Shape[] {
  const k = (2 * radius) / stem;
  const middle = centre.y - offset * k;
  const half = Math.max(0.5, (width * k) / 2);
  const side = radius * 0.62;
  return [
    circle(centre, radius, 'visible', { fill: 'metal', part: 'stem tip' }),
    ...(narrowest ? [circle(centre, radius * 1.09, 'visible', { part: 'narrowest', state: 'lit' })] : []),
    polygon(rectangle(centre.x - side, middle - half, 2 * side, 2 * half), 'visible', { fill: 'mark', part: 'mark' }),
    line(at(centre.x - radius * 1.1, centre.y), at(centre.x + radius * 1.1, centre.y), 'centre'),
    label(at(centre.x, centre.y - radius * 1.12 - scale.text), bare(length, unit), scale.text),
  ];
}
/** Which way the pivot lies, below the tips, and what the numbers above them are. */
function towards(cell: number, unit: string, scale: Scale): readonly Shape[] {
  const low = (cell * (1 - GAP)) / 2 + scale.text * 1.2;
  const end = at(scale.text, low + scale.text * 1.2);
  return [
    line(at(scale.text, low), end, 'thin'),
    arrowHead(end, at(0, 1), scale.px * 10),
    label(at(scale.text * 2, low + scale.text * 0.5), 'to the pivot of the rocker', scale.text, { anchor: 'start' }),
    label(at(0, low + scale.text * 2.4), `above each: pushrod length, ${unit}`, scale.text, { anchor: 'start' }),
  ];
}

const bare = (mm: number, { places, mm: per }: SweepShown['unit']): string => formatNumber(mm / per, places);
const written = (mm: number, { name, places, mm: per }: SweepShown['unit']): string =>
  `${formatNumber(mm / per, places)} ${name}`;

function words({ unit, narrowest, centred, stem }: SweepShown, trials: readonly SweepTrial[]): readonly string[] {
  const each = trials.map(({ length, width, offset }) => {
    const beyond = stem !== undefined && Math.abs(offset) + width / 2 > stem / 2 ? ', over the edge of the stem' : '';
    const side =
      offset === 0 ? 'in the middle' : `${written(Math.abs(offset), unit)} ${offset > 0 ? 'outward' : 'inward'}`;
    return `Pushrod ${written(length, unit)}: mark ${written(width, unit)} wide, ${side}${beyond}.`;
  });
  return [
    'Tips of the stem from above, one for each pushrod tried, with the mark that the rocker left.',
    stem === undefined ? 'The diameter of the stem is not known: it is drawn 8 mm across.' : '',
    ...each,
    narrowest === undefined ? '' : `The mark is narrowest at ${written(narrowest, unit)}.`,
    centred === undefined ? '' : `It is centred at ${written(centred, unit)}.`,
  ];
}
