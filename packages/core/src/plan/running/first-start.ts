/** First start: how long an engine may run without oil pressure, and what a go at the starter tells. */
import type { Verdict } from '../../calc/metrology/index.js';
import type { Engine } from '../../engine/model.js';
import type { RunningFactData } from './facts.js';
import { judgeGauge } from './gauges.js';
import { COMMON_PRACTICE } from './schedules.js';

/** Where the sheet says nothing [s]. Common practice, no source: five to ten seconds are agreed on at benches. */
export const DRY_SECONDS = 8;
/** Longer on the starter wipes the paste off the lobes [s]. Common practice, no source. */
export const LONGEST_CRANKING = 10;

export interface StopRule {
  readonly seconds: number;
  readonly origin: string;
}
/** Seconds [s] without oil pressure after which it is stopped: the sheet's, else `DRY_SECONDS` as common practice. */
export function stopRule({ running }: Engine): StopRule {
  const stated = running?.stopWithoutPressure;
  return stated === undefined
    ? { seconds: DRY_SECONDS, origin: COMMON_PRACTICE }
    : { seconds: stated.value, origin: stated.from.text };
}

export interface StartJudgement {
  readonly verdict: Verdict;
  readonly says: string;
}
/**
 * What a go at the starter tells. With oil pressure in time it runs well (`in`); late, without it, or with less than the sheet allows at any speed, it is out and must stand until the cause
 * is found. Nobody read the gauge, or how soon it moved: no data, which is no good start. It did not fire: out where the cranking was long, else no data.
 */
export function judgeStart(engine: Engine, data: RunningFactData['start-tried']): StartJudgement {
  const { seconds } = stopRule(engine);
  const { pressureAfterSeconds: after, pressure, outcome, crankedSeconds } = data;
  const none = pressure !== undefined && pressure.value <= 0;
  if (outcome === 'no-start') {
    const pressureWords = none ? ' No oil pressure while it turned: prime it anew.' : '';
    return crankedSeconds > LONGEST_CRANKING
      ? {
          verdict: 'out',
          says: `Longer than ${LONGEST_CRANKING} s on the starter: the paste may be off the lobes. Find fuel, spark and timing before it turns again; oil the cam anew.${pressureWords}`,
        }
      : {
          verdict: none ? 'out' : 'no data',
          says: `It did not fire: look at fuel, spark and timing before it turns again.${pressureWords}`,
        };
  }
  if (none) return { verdict: 'out', says: `No oil pressure: it stands until the cause is found, and is primed anew.` };
  if (after === undefined && pressure === undefined)
    return { verdict: 'no data', says: 'Nobody read the oil pressure: read it now, or stop.' };
  if (after !== undefined && after > seconds)
    return {
      verdict: 'out',
      says: `Oil pressure came ${round(after)} s after the start, later than ${round(seconds)} s: stop, find out why, prime anew.`,
    };
  const low = lowWords(engine, data);
  if (after === undefined)
    return {
      verdict: low === '' ? 'no data' : 'out',
      says: `There is oil pressure; after how many seconds nobody said.${low}`,
    };
  const fell = outcome === 'stopped' ? ' It was stopped all the same: say why in a note.' : '';
  return { verdict: low === '' ? 'in' : 'out', says: `Oil pressure in time.${fell}${low}` };
}

/** A pressure that the sheet's own floor refuses, whatever the speed was. */
function lowWords(engine: Engine, { pressure }: RunningFactData['start-tried']): string {
  if (pressure === undefined) return '';
  const read = { kind: 'running-read', data: { what: 'oil-pressure', reading: pressure }, at: '', by: '' } as const;
  const judged = judgeGauge(engine, [], read, undefined);
  return judged.verdict === 'out' ? ` It is ${judged.says}.` : '';
}
const round = (seconds: number): string => `${Math.round(seconds * 10) / 10}`;
