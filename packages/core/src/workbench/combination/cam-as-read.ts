/** The cam as it was read at wheel and indicator, and the place of the cam from which a what-if moves it. */
import { type DegreeingAnswer, degreeing, type Makeup, type ReadCurves, readCurves } from '../../assess/index.js';
import type { Bench } from '../bench.js';
import { combinationReadings } from '../combination-readings.js';
import type { Tried } from './tried.js';

/** Where the lift of a valve comes from. */
export type LiftFrom = 'card' | 'read';

export const ADVANCE = 'cam-advance';

/**
 * The figures with the cam where card and decision have it. A cam that is moved on the scratch copy is a wish for later: what was read is
 * judged without it.
 */
export function camAtRest(tried: Tried): Makeup {
  const known = rested.get(tried.before);
  const figures = new Map(tried.figures);
  const own = tried.before.figures.get(ADVANCE);
  if (own === undefined) figures.delete(ADVANCE);
  else figures.set(ADVANCE, own);
  // While a slider moves the cam nothing else changes: what was worked out from the same figures still holds.
  if (known !== undefined && alike(known.figures, figures)) return known;
  const made = { engine: tried.engine, figures };
  rested.set(tried.before, made);
  return made;
}
/** The last one of each state of the log. */
const rested = new WeakMap<Makeup, Makeup>();

function alike(one: Makeup['figures'], other: Makeup['figures']): boolean {
  if (one.size !== other.size) return false;
  for (const [key, figure] of one) {
    const there = other.get(key);
    if (there !== figure && (there?.value !== figure.value || there.origin !== figure.origin)) return false;
  }
  return true;
}

const answers = new WeakMap<Makeup, DegreeingAnswer>();

/** Every lobe that was read, with the cam where it stands. */
export function degreeingOf(bench: Bench, tried: Tried): DegreeingAnswer {
  const makeup = camAtRest(tried);
  const known = answers.get(makeup);
  if (known !== undefined) return known;
  const { cam, stops } = combinationReadings(bench.state);
  const made = degreeing(makeup, cam, stops);
  answers.set(makeup, made);
  return made;
}

/** Lift curves of the lobes that were read; none before anything was. */
export function curvesRead(bench: Bench, tried: Tried): ReadCurves {
  if (combinationReadings(bench.state).cam.length === 0) return NOTHING_READ;
  const answer = degreeingOf(bench, tried);
  const known = curves.get(answer) ?? readCurves(answer);
  curves.set(answer, known);
  return known;
}
export const NOTHING_READ: ReadCurves = {};
const curves = new WeakMap<DegreeingAnswer, ReadCurves>();

/** A valve whose lobe lifts no more than this is all but closed. */
const ALL_BUT_CLOSED = 1e-4;
/**
 * Of the lobes that were read those that were read down to their base on the flank that meets the piston: the opening one of an intake, the
 * closing one of an exhaust. Of the others nothing is known where the room is least.
 */
export function curvesThroughOverlap(bench: Bench, tried: Tried): ReadCurves {
  const all = curvesRead(bench, tried);
  const known = through.get(all);
  if (known !== undefined) return known;
  const [first, last] = [all.intake?.table.lifts[0], all.exhaust?.table.lifts.at(-1)];
  const made = {
    ...(all.intake && first! <= ALL_BUT_CLOSED && { intake: all.intake }),
    ...(all.exhaust && last! <= ALL_BUT_CLOSED && { exhaust: all.exhaust }),
  };
  through.set(all, made);
  return made;
}
const through = new WeakMap<ReadCurves, ReadCurves>();
