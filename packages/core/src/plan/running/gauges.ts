/** Gauges of the running engine against what the sheet allows. */
import { type Limits, nearestLimit, type Verdict, verdictOf } from '../../calc/metrology/index.js';
import type { Engine, OilPressureWindow, Stated, Window } from '../../engine/model.js';
import { formatQuantity, type QuantityKind } from '../../quantity/index.js';
import { factsOf, type RunningFact, type RunningFactOf, type RunningWhat } from './facts.js';
import { secondsBetween } from './run-in-clock.js';
import { COMMON_PRACTICE, type ScheduledStep } from './schedules.js';

export type Gauge = Exclude<RunningWhat, 'load-words'>;
export interface GaugeLimit {
  readonly window: Window<number>;
  readonly text: string;
  readonly origin: string;
}
export interface GaugeJudgement {
  readonly verdict: Verdict;
  readonly limit?: GaugeLimit;
  /** "0.4 bar above the low end"; why there is no verdict. */
  readonly says: string;
  /** Not absent: the engine is stopped at once. */
  readonly stop?: string;
}

export const GAUGES: Readonly<
  Record<Gauge, { readonly title: string; readonly kind: QuantityKind; readonly unit: string; readonly places: number }>
> = {
  'oil-pressure': { title: 'oil pressure', kind: 'pressure', unit: 'bar', places: 1 },
  'oil-temperature': { title: 'oil temperature', kind: 'temperature', unit: '°C', places: 0 },
  'coolant-temperature': { title: 'coolant temperature', kind: 'temperature', unit: '°C', places: 0 },
  'exhaust-temperature': { title: 'exhaust temperature', kind: 'temperature', unit: '°C', places: 0 },
  speed: { title: 'speed', kind: 'angular-speed', unit: 'rpm', places: 0 },
};
/** So near to a limit that it is said: 5 % of a pressure or speed, 5 K of a temperature. Common practice, no source. */
const NEAR = { share: 0.05, kelvin: 5 };
/** A speed printed as one figure is kept within this share of it. Common practice, no source. */
const SPEED_HELD = 0.05;
/** A pressure window that is printed for a speed and a temperature holds this near to them. Common practice, no source. */
const AT = { speed: 0.1, kelvin: 10 };
/** What was read longer ago than this says nothing about now [s]. */
const STILL_SO = { speed: 180, temperature: 900 };

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
  if (what !== 'oil-pressure') return temperatureLimit(engine, what);
  const rows = engine.running?.oilPressure ?? [];
  if (rows.length === 0) return undefined;
  return {
    window: {},
    text: rows.map(rowText).join('; '),
    origin: [...new Set(rows.map((row) => row.pressure.from.text))].join('; '),
  };
}
const rowText = ({ pressure, speed, temperature }: OilPressureWindow): string =>
  [pressure.text, ...(speed ? [`at ${speed.text}`] : []), ...(temperature ? [`oil ${temperature.text}`] : [])].join(
    ' ',
  );

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
  const judged = judged1(what, value, limit);
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
    : judged1('speed', value, limit);
}

function judgePressure(
  engine: Engine,
  facts: readonly RunningFact[],
  read: RunningFactOf<'running-read'>,
  value: number,
): GaugeJudgement {
  if (value <= 0) return { verdict: 'out', says: 'no oil pressure', stop: 'no oil pressure' };
  const rows = engine.running?.oilPressure ?? [];
  if (rows.length === 0) return { verdict: 'no data', says: 'the sheet gives no window' };
  const speed = lately(facts, 'speed', read.at, STILL_SO.speed);
  const temperature = lately(facts, 'oil-temperature', read.at, STILL_SO.temperature);
  const holding = rows.filter((row) => holds(row, speed, temperature));
  if (holding.length === 0) return { verdict: 'no data', says: whyNone(rows, speed, temperature) };
  const judged = holding.map((row) =>
    judged1('oil-pressure', value, { window: row.pressure.window, text: rowText(row), origin: row.pressure.from.text }),
  );
  const worst = ['out', 'near', 'in'].flatMap((word) => judged.filter((one) => one.verdict === word))[0]!;
  const low = worst.limit?.window.low;
  return worst.verdict === 'out' && low !== undefined && value < low
    ? { ...worst, stop: `oil pressure ${worst.says}` }
    : worst;
}

/** A window without a high end is a floor: it also holds faster and colder than where it was printed. */
function holds(row: OilPressureWindow, speed: number | undefined, temperature: number | undefined): boolean {
  const floor = row.pressure.window.high === undefined;
  return speedHolds(row, floor, speed) && temperatureHolds(row, floor, temperature);
}
function speedHolds({ speed: at }: OilPressureWindow, floor: boolean, speed: number | undefined): boolean {
  if (at === undefined) return true;
  if (speed === undefined) return false;
  return floor ? speed >= at.value * (1 - AT.speed) : Math.abs(speed - at.value) <= at.value * AT.speed;
}
function temperatureHolds({ temperature: at }: OilPressureWindow, floor: boolean, temperature: number | undefined) {
  if (at === undefined) return true;
  if (temperature === undefined) return floor;
  return floor ? temperature <= at.value + AT.kelvin : Math.abs(temperature - at.value) <= AT.kelvin;
}
function whyNone(
  rows: readonly OilPressureWindow[],
  speed: number | undefined,
  temperature: number | undefined,
): string {
  const missing = [
    ...(speed === undefined && rows.some((row) => row.speed) ? ['speed'] : []),
    ...(temperature === undefined && rows.some((row) => row.temperature) ? ['oil temperature'] : []),
  ];
  if (missing.length > 0) return `read ${missing.join(' and ')} too: ${rows.map(rowText).join('; ')}`;
  return `no window is printed for this speed and temperature: ${rows.map(rowText).join('; ')}`;
}

/** The newest reading that was taken not long before, or within a minute after. */
function lately(facts: readonly RunningFact[], what: Gauge, at: string, within: number): number | undefined {
  const MINUTE = 60;
  const found = factsOf(facts, 'running-read').findLast(
    ({ data, at: then }) =>
      data.what === what && secondsBetween(then, at) <= within && secondsBetween(at, then) <= MINUTE,
  );
  return found?.data.reading?.value;
}

/** One value against one limit, with the distance in words. */
function judged1(what: Gauge, value: number, limit: GaugeLimit): GaugeJudgement {
  const nearest = nearestLimit(value, limit.window as Limits);
  if (nearest === undefined) return { verdict: 'no data', says: 'the sheet gives no limit' };
  const near = GAUGES[what].kind === 'temperature' ? NEAR.kelvin : NEAR.share * Math.abs(nearest.limit);
  const verdict = verdictOf(nearest.distance, { rule: 'simple', guard: 0, near });
  const end = nearest.side === 'low' ? 'low' : 'high';
  const away = differenceText(what, Math.abs(nearest.distance));
  const inside = nearest.distance >= 0;
  const side = (nearest.side === 'low') === inside ? 'above' : 'below';
  return { verdict, limit, says: `${away} ${side} the ${end} end` };
}
function differenceText(what: Gauge, size: number): string {
  const { kind, unit, places } = GAUGES[what];
  if (kind !== 'temperature') return formatQuantity(kind, size, unit, places);
  return formatQuantity('temperature-difference', size, 'K', 0);
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
