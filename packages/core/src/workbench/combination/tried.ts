/** All figures of a job with what is tried on the scratch copy, beside those without it. */
import { type DecidedOversize, decidedOversize, type GivenFigure, type Makeup, makeupOf } from '../../assess/index.js';
import { assessmentOf } from '../assessment.js';
import type { Bench } from '../bench.js';
import { combinationReadings } from '../combination-readings.js';
import type { Scratch } from '../combination-views.js';

export interface Tried extends Makeup {
  /** Without the scratch copy. */
  readonly before: Makeup;
  /** Of which oversize pistons must be. */
  readonly pistonSize: DecidedOversize;
}

const unchanged = new WeakMap<Bench, Makeup>();
function before(bench: Bench): Makeup {
  const known = unchanged.get(bench) ?? overLog(bench);
  unchanged.set(bench, known);
  return known;
}

function overLog(bench: Bench, scratch?: Scratch): Makeup {
  return makeupOf(bench.engine, assessmentOf(bench), combinationReadings(bench.state).stated, scratch);
}

const kept = new WeakMap<Scratch, WeakMap<Bench, Tried>>();

/** The figures that count with the scratch copy laid over the log. One scratch copy at one moment of the log always has the same ones. */
export function triedOf(bench: Bench, scratch: Scratch): Tried {
  const ofScratch = kept.get(scratch) ?? new WeakMap<Bench, Tried>();
  kept.set(scratch, ofScratch);
  const known = ofScratch.get(bench);
  if (known !== undefined) return known;
  const makeup = scratch.size === 0 ? before(bench) : overLog(bench, scratch);
  const tried = { ...makeup, before: before(bench), pistonSize: decidedOversize(assessmentOf(bench)) };
  ofScratch.set(bench, tried);
  return tried;
}

const hasty = new WeakMap<Tried, Tried>();
const sures = new WeakMap<GivenFigure, GivenFigure>();

/** One and the same copy each time, so that what follows from a figure that is not moved can be kept by it. */
function sure(one: GivenFigure): GivenFigure {
  if (one.u === undefined || one.u === 0) return one;
  const known = sures.get(one) ?? { ...one, u: 0 };
  sures.set(one, known);
  return known;
}

/**
 * The same figures as if each were sure, for the moment in which a hand moves a slider: values follow at once, doubts and chances when
 * it rests. A figure without a stated doubt stays without, so that nothing is judged that must not be.
 */
export function asIfSure(tried: Tried): Tried {
  const known = hasty.get(tried);
  if (known !== undefined) return known;
  const figures = new Map<string, GivenFigure>();
  for (const [key, one] of tried.figures) figures.set(key, sure(one));
  const all = { ...tried, figures };
  hasty.set(tried, all);
  return all;
}
