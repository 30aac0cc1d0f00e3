/** Engine and readings seen together: sizes, and what is found about them. */
import type { Engine } from '../engine/index.js';
import { inspectionPlan } from './features/index.js';
import { findingsOf, LimitWindows } from './findings/index.js';
import { limitsOf } from './limits/index.js';
import type { Assessment, Finding, InspectionPlan, Instrument, InstrumentCheck, Readings, Size } from './model.js';
import {
  type Bench,
  benchOf,
  type GaugeStory,
  type Habits,
  type PlannedSizes,
  plannedSizes,
  type SizeEntry,
  type Sizes,
  sizesOf,
  USUAL_HABITS,
} from './sizes/index.js';

/** What follows from the sheet alone is worked out once for it, and the moment last assessed is kept beside. */
interface OfSheet {
  readonly plan: InspectionPlan;
  readonly planned: PlannedSizes;
  readonly limits: LimitWindows;
  last?: Moment;
}
interface Moment extends Sizes {
  readonly bySlot: Readings['bySlot'];
  readonly story: GaugeStory;
  readonly bench: Bench;
  readonly findings: readonly Finding[];
}
const SHEETS = new WeakMap<Engine, OfSheet>();
function ofSheet(engine: Engine): OfSheet {
  const known = SHEETS.get(engine);
  if (known !== undefined) return known;
  const plan = inspectionPlan(engine);
  const made: OfSheet = {
    plan,
    planned: plannedSizes(engine, plan, (property, place) => limitsOf(engine, property, place)),
    limits: new LimitWindows(engine),
  };
  SHEETS.set(engine, made);
  return made;
}

/**
 * Sizes with their doubt, and the verdict on each, from the readings that stand. Pure: the same sheet and readings give the same
 * assessment, whatever the order in which independent readings arrived. Nothing that was not read is in. Sizes that the moment
 * assessed before on the same sheet already had are kept: one reading more costs its own sizes only.
 */
export function assess(engine: Engine, readings: Readings, habits: Habits = USUAL_HABITS): Assessment {
  const sheet = ofSheet(engine);
  const before = sheet.last !== undefined && sameBench(sheet.last, readings, habits) ? sheet.last : undefined;
  // Copied: what a caller hands in may grow after it was assessed.
  const story = before?.story ?? { instruments: new Map(readings.instruments), checks: [...readings.checks] };
  const bench = before?.bench ?? benchOf(engine, story, habits);
  const { bySlot, grewFrom } = readings;
  const since = before !== undefined && grewFrom?.bySlot === before.bySlot ? grewFrom.slots : undefined;
  const { read, entries, touched } = sizesOf(bench, sheet.planned, bySlot, before, since);
  const sizes = new SizesByKey(entries);
  const { limits, plan } = sheet;
  const { guardFactor } = habits;
  const judging = {
    engine,
    limits,
    guardFactor,
    get sizes() {
      return sizes.all;
    },
  };
  const findings = findingsOf(judging, entries, before && { ...before, touched });
  sheet.last = { story, bench, read, entries, findings, bySlot };
  return {
    engine,
    plan,
    readings,
    get sizes() {
      return sizes.all;
    },
    findings,
  };
}

/** Put together when somebody looks a size up: most moments of keying pass without. */
class SizesByKey {
  readonly #entries: readonly SizeEntry[];
  #all: ReadonlyMap<string, Size> | undefined;

  constructor(entries: readonly SizeEntry[]) {
    this.#entries = entries;
  }
  get all(): ReadonlyMap<string, Size> {
    this.#all ??= new Map(this.#entries.flatMap(({ size }) => (size === undefined ? [] : [[size.key, size] as const])));
    return this.#all;
  }
}

/** Whether gauges, their checks and the habits are those of a moment; every size hangs on them. */
function sameBench({ bench, story }: Moment, { instruments, checks }: Readings, habits: Habits): boolean {
  if (bench.habits !== habits || story.instruments.size !== instruments.size) return false;
  if (story.checks.length !== checks.length || !story.checks.every((one, at) => sameCheck(one, checks[at]!)))
    return false;
  return [...instruments].every(([id, gauge]) => sameGauge(story.instruments.get(id), gauge));
}
const sameGauge = (one: Instrument | undefined, other: Instrument): boolean =>
  one === other ||
  (one?.name === other.name &&
    one.kind === other.kind &&
    one.resolution === other.resolution &&
    one.expanded === other.expanded);
const sameCheck = (one: InstrumentCheck, other: InstrumentCheck): boolean =>
  one === other ||
  (one.entry === other.entry &&
    one.instrument === other.instrument &&
    one.moment === other.moment &&
    one.standard === other.standard &&
    one.read === other.read &&
    one.at === other.at);
