/** One reading of a gauge against one limit. */
import { type Limits, nearestLimit, type Verdict, verdictOf } from '../../calc/metrology/index.js';
import type { Window } from '../../engine/model.js';
import { formatQuantity, type QuantityKind } from '../../quantity/index.js';
import type { RunningWhat } from './facts.js';

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

/** One value against one limit, with the distance in words. */
export function againstLimit(what: Gauge, value: number, limit: GaugeLimit): GaugeJudgement {
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
