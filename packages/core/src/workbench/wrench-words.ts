/** A torque wrench in words: its range, what a standard said of it, how old that is. */
import { type Instrument, type InstrumentCheck, placesOfStep, type Readings } from '../assess/index.js';
import { LEAST_SHARE_OF_TOP, type WrenchJudgement } from '../plan/index.js';
import { formatNumber, formatQuantity, formatWindow, fromUnit, toUnit } from '../quantity/index.js';

/** Beyond this a clicking wrench is out of its class: ISO 6789, from memory. */
const USUAL_ERROR = 0.04;

const stepOf = ({ resolution, unit }: Instrument): number => toUnit('torque', resolution, unit);
const places = (wrench: Instrument): number => placesOfStep(stepOf(wrench));
/** A torque in the unit of the wrench, one place finer than it shows. */
export const finer = (wrench: Instrument, torque: number): string =>
  formatQuantity('torque', torque, wrench.unit, places(wrench) + 1);
const shown = (wrench: Instrument, torque: number): string =>
  formatQuantity('torque', torque, wrench.unit, places(wrench));
const percent = (share: number): string => `${formatNumber(Math.abs(share) * 100, 1)} %`;

/** The mark of the scale that lies nearest. */
export function nearestMark(wrench: Instrument, torque: number): { readonly number: string; readonly value: number } {
  const step = stepOf(wrench);
  const marked = Math.round(toUnit('torque', torque, wrench.unit) / step) * step;
  return { number: formatNumber(marked, places(wrench)), value: fromUnit('torque', marked, wrench.unit) };
}

/** Why it fits or not. */
export function fitWords(wrench: Instrument, { verdict, setting, aim }: WrenchJudgement): string {
  const wanted = shown(wrench, setting ?? aim);
  const range = formatWindow('torque', wrench.range ?? {}, wrench.unit, places(wrench));
  switch (verdict) {
    case 'fits':
      return `${wanted} lies well within its range, ${range}`;
    case 'below':
      return `${wanted} lies below its range, ${range}`;
    case 'above':
      return `${wanted} lies above its range, ${range}`;
    case 'low-end':
      return `${wanted} lies in the lowest ${LEAST_SHARE_OF_TOP * 100} % of ${range}, where a wrench is not to be trusted (common practice, no source)`;
    case 'range-unknown':
      return 'how far it reaches was never noted';
    case 'adapter-turns-back':
      return 'with the adapter folded back so far the fastener would turn the other way';
  }
}

/** Newest look at a standard of one wrench. */
export const newestCheck = ({ checks }: Readings, id: string): InstrumentCheck | undefined =>
  checks.filter((one) => one.instrument === id && one.standard > 0 && one.read > 0).at(-1);

/** What it shows over the true torque; 1 where nobody looked. */
export const readsTimes = (check: InstrumentCheck | undefined): number =>
  check === undefined ? 1 : check.read / check.standard;

/** Less than half a mark, nobody sees. */
const isSeen = (wrench: Instrument, check: InstrumentCheck): boolean =>
  Math.abs(check.read - check.standard) >= wrench.resolution / 2;

/** What the newest check found, and what that makes of this target. */
export function errorWords(wrench: Instrument, check: InstrumentCheck, aim: number): string {
  const held = `${finer(wrench, check.read)} on a standard of ${finer(wrench, check.standard)}, ${check.at.slice(0, 10)}`;
  if (!isSeen(wrench, check)) return `Reads the standard: ${held}.`;
  const error = readsTimes(check) - 1;
  const gets = finer(wrench, aim / readsTimes(check));
  const beyond =
    Math.abs(error) > USUAL_ERROR + 1e-9
      ? ' More than the 4 % of its class (ISO 6789, from memory): have it adjusted.'
      : '';
  return `Reads ${percent(error)} ${error > 0 ? 'high' : 'low'}: ${held}. Set to the target itself it would give ${gets}; the setting allows for that.${beyond}`;
}
export const isOff = (wrench: Instrument, check: InstrumentCheck): boolean => isSeen(wrench, check);

/** A year back on the calendar. */
const yearBefore = (day: string): string => `${Number(day.slice(0, 4)) - 1}${day.slice(4)}`;

/** When it was last known to be right; a warning where that is never or too long ago. Common practice, no source: a year. */
export function ageWords(
  wrench: Instrument,
  check: InstrumentCheck | undefined,
  today: string,
): { readonly words: string; readonly old: boolean } {
  const days = [wrench.certified, check?.at.slice(0, 10)].flatMap((day) => day ?? []).sort();
  const last = days.at(-1);
  if (last === undefined)
    return { words: 'Never held against a standard: what it really gives is unknown.', old: true };
  const by = last === wrench.certified ? 'Certified' : 'Held against a standard';
  const old = last < yearBefore(today);
  return { words: `${by} ${last}${old ? ': more than twelve months ago' : ''}.`, old };
}

/** Its expanded uncertainty beside the target. */
export function doubtWords(wrench: Instrument, aim: number): string {
  if (wrench.expanded === undefined) return 'Its uncertainty was never noted.';
  return `Its uncertainty, ±${shown(wrench, wrench.expanded)}, is ${percent(wrench.expanded / aim)} of this target.`;
}
