/** Every figure at hand, the best of each, and where it comes from. */
import type { CylinderNumber, Engine, ValveId, ValveKind } from '../../engine/index.js';
import { figureKey, figureParts, valveKey } from '../../engine/index.js';
import type { Assessment } from '../model.js';
import { assumedFigures } from './assumed-figures.js';
import { measuredFigures } from './measured-figures.js';
import type { GivenFigure, Makeup, Origin } from './model.js';
import { preloadFigures } from './preload-figures.js';
import { printedFigures } from './printed-figures.js';
import { sheetFigures } from './sheet-figures.js';
import { cardFigures } from './timing-card.js';

/** For which cylinder, kind of valve or single valve a figure is asked; left out: for the engine. */
export type Spot = CylinderNumber | ValveKind | ValveId;

const RANK: Readonly<Record<Origin, number>> = { scratch: 0, stated: 1, measured: 2, sheet: 3, assumed: 4 };

/** What the sheet alone gives is gathered once for it: a slider asks for a new makeup with every step. */
const SHEETS = new WeakMap<Engine, readonly GivenFigure[]>();
function ofSheet(engine: Engine): readonly GivenFigure[] {
  const known = SHEETS.get(engine) ?? [
    ...sheetFigures(engine),
    ...cardFigures(engine),
    ...preloadFigures(engine),
    ...printedFigures(engine),
    ...assumedFigures(engine),
  ];
  SHEETS.set(engine, known);
  return known;
}
const MEASURED = new WeakMap<Assessment, readonly GivenFigure[]>();
function measuredOf(assessment: Assessment): readonly GivenFigure[] {
  const known = MEASURED.get(assessment) ?? measuredFigures(assessment);
  MEASURED.set(assessment, known);
  return known;
}

/**
 * All figures at hand for an engine: what is tried on the scratch copy before what a person stated, that before what was measured,
 * printed or assumed. A figure that nobody gives is absent: unknown is never zero.
 *
 * `scratch` holds SI values by key, taken as exactly that. Of two figures of one rank the first counts: a figure under `figures` of the
 * sheet before its other sections, those before the middle of a printed window.
 */
export function makeupOf(
  engine: Engine,
  assessment?: Assessment,
  stated: readonly GivenFigure[] = [],
  scratch: ReadonlyMap<string, number> = new Map(),
): Makeup {
  const tried = [...scratch].map(
    ([key, value]): GivenFigure => ({ key, value, u: 0, origin: 'scratch', from: 'what is tried here' }),
  );
  const figures = new Map<string, GivenFigure>();
  const all = [...tried, ...stated, ...(assessment === undefined ? [] : measuredOf(assessment)), ...ofSheet(engine)];
  for (const one of all) {
    const held = figures.get(one.key);
    if (held === undefined || RANK[one.origin] < RANK[held.origin]) figures.set(one.key, one);
  }
  return { engine, figures };
}

const FOUND = new WeakMap<Makeup, Map<string, Map<Spot | undefined, GivenFigure | undefined>>>();

/**
 * The figure that counts for a cylinder, a kind of valve, a single valve or the engine; undefined where nobody gives it. The best
 * origin counts; of one origin the narrower figure. For a kind of valve whose valves were measured one by one it is their mean, with
 * the doubt in which one of them may stand.
 */
export function figure(makeup: Makeup, key: string, spot?: Spot): GivenFigure | undefined {
  const all = FOUND.get(makeup) ?? new Map<string, Map<Spot | undefined, GivenFigure | undefined>>();
  FOUND.set(makeup, all);
  const cache = all.get(key) ?? new Map<Spot | undefined, GivenFigure | undefined>();
  all.set(key, cache);
  const known = cache.get(spot);
  if (known !== undefined || cache.has(spot)) return known;
  const found = best(makeup, key, spot);
  cache.set(spot, found);
  return found;
}

/** The narrowest first; a wider one counts only where its origin is better. */
function best(makeup: Makeup, key: string, spot: Spot | undefined): GivenFigure | undefined {
  const { figures } = makeup;
  const own = spot === undefined ? undefined : narrowest(figures, key, spot);
  const found = better(own, figures.get(key));
  return typeof spot === 'string' ? better(found, meanOfKind(makeup, key, spot)) : found;
}

function narrowest(figures: Makeup['figures'], key: string, spot: Spot): GivenFigure | undefined {
  if (typeof spot !== 'object') return figures.get(figureKey(key, spot));
  return better(figures.get(figureKey(key, valveKey(spot))), figures.get(figureKey(key, spot.kind)));
}

/** The first counts where both are of one origin. */
function better(first: GivenFigure | undefined, other: GivenFigure | undefined): GivenFigure | undefined {
  if (first === undefined || other === undefined) return first ?? other;
  return RANK[other.origin] < RANK[first.origin] ? other : first;
}

const OF_VALVES = new WeakMap<Makeup, ReadonlyMap<string, readonly GivenFigure[]>>();

/** Figures of single valves by key and kind, sorted once: every figure of a spring asks for them. */
function ofValves(makeup: Makeup): ReadonlyMap<string, readonly GivenFigure[]> {
  const known = OF_VALVES.get(makeup);
  if (known !== undefined) return known;
  const sorted = new Map<string, GivenFigure[]>();
  for (const one of makeup.figures.values()) {
    const { key, place } = figureParts(one.key);
    const kind = place === undefined ? undefined : /-(intake|exhaust)-/.exec(place)?.[1];
    if (kind === undefined) continue;
    const list = sorted.get(`${key} ${kind}`);
    if (list === undefined) sorted.set(`${key} ${kind}`, [one]);
    else list.push(one);
  }
  OF_VALVES.set(makeup, sorted);
  return sorted;
}

/** Valves of one kind that have a figure of their own, by key: `3-intake-1`. */
export const valvesWith = (makeup: Makeup, key: string, kind: ValveKind): readonly GivenFigure[] =>
  ofValves(makeup).get(`${key} ${kind}`) ?? [];

function meanOfKind(makeup: Makeup, key: string, kind: ValveKind): GivenFigure | undefined {
  const own = valvesWith(makeup, key, kind);
  const [first] = own;
  if (first === undefined) return undefined;
  const value = own.reduce((sum, one) => sum + one.value, 0) / own.length;
  const scatter = own.reduce((sum, one) => sum + (one.value - value) ** 2, 0) / Math.max(1, own.length - 1);
  const doubts = own.map(({ u }) => u);
  const known = doubts.every((u) => u !== undefined);
  const reading = doubts.reduce<number>((sum, u) => sum + (u ?? 0) ** 2, 0) / own.length;
  return {
    key: figureKey(key, kind),
    value,
    ...(known && { u: Math.sqrt(reading + scatter) }),
    origin: first.origin,
    from: own.length === 1 ? first.from : `mean of ${own.length} ${kind} valves`,
  };
}
