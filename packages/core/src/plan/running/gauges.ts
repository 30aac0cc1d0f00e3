/** Gauges of the running engine against what the sheet allows. */
import type { Engine, Stated } from '../../engine/model.js';
import { factsOf, type RunningFact, type RunningFactOf, type RunningWhat } from './facts.js';
import { againstLimit, GAUGES, type Gauge, type GaugeJudgement, type GaugeLimit } from './gauge-limit.js';
import { judgePressure, pressureLimit } from './oil-pressure.js';
import { COMMON_PRACTICE, type ScheduledStep } from './schedules.js';

/** A speed printed as one figure is kept within this share of it. Common practice, no source. */
const SPEED_HELD = 0.05;

/**
 * A gauge reading against the sheet: temperatures against their highest, speed against the step that runs, oil pressure against the windows whose speed and
 * oil temperature were read with it. Without a limit, or without the speed that a window needs, there is no verdict: `no data`.
 * Any pressure of zero, a pressure below its window and a temperature above its highest stop the engine.
 */
export function judgeGauge(
  engine: Engine,
  facts: readonly RunningFact[],
  read: RunningFactOf<'running-read'>,
  step: ScheduledStep | undefined,
): GaugeJudgement {
  const { what, reading } = read.data;
  if (what === 'load-words' || reading === undefined) return { verdict: 'no data', says: 'told in words' };
  if (what === 'oil-pressure') return judgePressure(engine, facts, read, reading.value);
  if (what === 'speed') return judgeSpeed(step, reading.value);
  return judgeTemperature(engine, what, reading.value);
}

/** Limit that a screen shows before anything is read. */
export function limitShown(engine: Engine, what: Gauge, step: ScheduledStep | undefined): GaugeLimit | undefined {
  if (what === 'speed') return speedLimit(step);
  return what === 'oil-pressure' ? pressureLimit(engine) : temperatureLimit(engine, what);
}
function temperatureLimit(engine: Engine, what: Exclude<Gauge, 'oil-pressure' | 'speed'>): GaugeLimit | undefined {
  const { running } = engine;
  const most: Stated<number> | undefined = {
    'oil-temperature': running?.oilTemperatureMost,
    'coolant-temperature': running?.coolantMost,
    'exhaust-temperature': running?.exhaustMost,
  }[what];
  return most && { window: { high: most.value }, text: `at most ${most.text}`, origin: most.from.text };
}

function judgeTemperature(
  engine: Engine,
  what: Exclude<Gauge, 'oil-pressure' | 'speed'>,
  value: number,
): GaugeJudgement {
  const limit = temperatureLimit(engine, what);
  if (limit === undefined) return { verdict: 'no data', says: 'the sheet gives no limit' };
  const judged = againstLimit(what, value, limit);
  if (judged.verdict !== 'out') return judged;
  const exhaust = what === 'exhaust-temperature';
  return exhaust
    ? { ...judged, says: `${judged.says}; take load off` }
    : { ...judged, stop: `${GAUGES[what].title} ${judged.says}` };
}

function speedLimit(step: ScheduledStep | undefined): GaugeLimit | undefined {
  if (step?.speed === undefined) return undefined;
  const { text, window } = step.speed;
  const { low, high } = window;
  const single = low !== undefined && low === high;
  const around = { low: (low ?? 0) * (1 - SPEED_HELD), high: (high ?? 0) * (1 + SPEED_HELD) };
  return { window: single ? around : window, text, origin: step.origin };
}
function judgeSpeed(step: ScheduledStep | undefined, value: number): GaugeJudgement {
  const limit = speedLimit(step);
  return limit === undefined
    ? { verdict: 'no data', says: 'no speed is asked for now' }
    : againstLimit('speed', value, limit);
}

/** The newest reading of each gauge. */
export function newestReadings(facts: readonly RunningFact[]): ReadonlyMap<RunningWhat, RunningFactOf<'running-read'>> {
  return new Map(factsOf(facts, 'running-read').map((one) => [one.data.what, one]));
}

/**
 * Why the engine is to be stopped at once, by the newest reading of each gauge since it was last started. Empty while it stands, and
 * while nothing that was read asks for it.
 */
export function stopNow(
  engine: Engine,
  facts: readonly RunningFact[],
  step: ScheduledStep | undefined,
): readonly string[] {
  const begun = facts.findLastIndex(({ kind }) => kind === 'run-in-begun' || kind === 'start-tried');
  const since = facts.slice(Math.max(0, begun));
  if (since.some(({ kind }) => kind === 'run-in-stopped')) return [];
  return [...newestReadings(since).values()].flatMap((read) => judgeGauge(engine, facts, read, step).stop ?? []);
}

/** What stops the engine whatever the sheet says. Common practice, no source. */
export const STOPS_AT_ONCE = [
  'Fire, smoke or fuel that runs.',
  'A knock that was not there, or one that grows with speed.',
  'Oil pressure that falls, or a lamp that comes on.',
  'Coolant or oil that runs out.',
  'Somebody calls the word.',
].map((words) => ({ words, origin: COMMON_PRACTICE }));
