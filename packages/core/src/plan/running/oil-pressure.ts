/** Oil pressure against the windows of the sheet that hold for the speed and oil temperature read with it. */
import type { Engine, OilPressureWindow } from '../../engine/model.js';
import { factsOf, type RunningFact, type RunningFactOf } from './facts.js';
import { againstLimit, type Gauge, type GaugeJudgement, type GaugeLimit } from './gauge-limit.js';
import { secondsBetween } from './run-in-clock.js';

/** A pressure window that is printed for a speed and a temperature holds this near to them. Common practice, no source. */
const AT = { speed: 0.1, kelvin: 10 };
/** What was read longer ago than this says nothing about now [s]. */
const STILL_SO = { speed: 180, temperature: 900 };

/** All windows of the sheet, as they are shown before anything is read. */
export function pressureLimit({ running }: Engine): GaugeLimit | undefined {
  const rows = running?.oilPressure ?? [];
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

/** A gauge at zero, or below a window that holds, stops the engine. */
export function judgePressure(
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
    againstLimit('oil-pressure', value, {
      window: row.pressure.window,
      text: rowText(row),
      origin: row.pressure.from.text,
    }),
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
