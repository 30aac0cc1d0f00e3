/** The person's gauges: unit, places, and what the last look at a standard said. */
import {
  type FeatureKind,
  type Instrument,
  type InstrumentCheck,
  placesOfStep,
  type Readings,
} from '../assess/index.js';
import { formatQuantity, toUnit } from '../quantity/index.js';
import { shownTime } from './bench.js';
import type { InstrumentView } from './measure-views.js';

/** Places in which a gauge shows its figures: 4 for steps of 0.0001 or 0.0005. */
const placesOf = ({ measured, resolution, unit }: Instrument): number =>
  placesOfStep(toUnit(measured, resolution, unit) - toUnit(measured, 0, unit));

const dayOf = (at: string): string => at.slice(0, 10);
const error = (check: InstrumentCheck): number => check.read - check.standard;

function errorWords(instrument: Instrument, check: InstrumentCheck): string {
  const off = error(check);
  if (Math.abs(off) < instrument.resolution / 2) return 'reads the standard';
  const figure = formatQuantity(instrument.measured, Math.abs(off), instrument.unit, placesOf(instrument));
  return `reads ${figure} ${off > 0 ? 'high' : 'low'}`;
}
function driftWords(instrument: Instrument, checks: readonly InstrumentCheck[]): string | undefined {
  const start = checks.findLast((check) => check.moment === 'start');
  const later = start && checks.slice(checks.indexOf(start) + 1).at(-1);
  if (start === undefined || later === undefined) return undefined;
  const drift = error(later) - error(start);
  if (Math.abs(drift) < instrument.resolution / 2) return `no drift since ${shownTime(start.at).slice(11)}`;
  const figure = formatQuantity(instrument.measured, Math.abs(drift), instrument.unit, placesOf(instrument));
  return `drifted ${figure} ${drift > 0 ? 'up' : 'down'} since ${shownTime(start.at).slice(11)}`;
}

/** One gauge. `today` is the day on which the screen is looked at: a check of another day does not count for it. */
export function instrumentView(instrument: Instrument, { checks }: Readings, today: string): InstrumentView {
  const own = checks.filter((check) => check.instrument === instrument.id);
  const ofToday = own.filter((check) => dayOf(check.at) === today);
  const last = ofToday.at(-1);
  const drift = driftWords(instrument, ofToday);
  return {
    id: instrument.id,
    name: instrument.name,
    kind: instrument.kind,
    unit: instrument.unit,
    places: placesOf(instrument),
    check: last
      ? `checked ${shownTime(last.at).slice(11)}, ${errorWords(instrument, last)}`
      : own.length > 0
        ? `not checked today, last ${shownTime(own.at(-1)?.at ?? '')}`
        : 'never checked against a standard',
    checked: last !== undefined,
    ...(drift !== undefined && { drift }),
  };
}

/** Gauges that can read a feature, the usual kind first. */
export function gaugesFor({ instruments }: Readings, kind: FeatureKind): readonly Instrument[] {
  const able = [...instruments.values()].filter((one) => one.measured === kind.measured);
  return [...able].sort((a, b) => Number(b.kind === kind.instrument) - Number(a.kind === kind.instrument));
}
