/** Lift of a valve over the crank by the cam: measured readings where there are any, else a curve modelled from the card. */
import { type LiftTable, lobeAt } from '../../calc/cam/index.js';
import { splineAt, splineThrough } from '../../calc/numeric/index.js';
import { type LiftAt, placesAlong } from '../../calc/valvetrain/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import type { Look } from './look.js';

/** Lobe lifts over crank angle as they were read, by kind of valve. */
export type MeasuredLobes = Partial<Readonly<Record<ValveKind, LiftTable>>>;

export interface Lobe {
  /** Valve lift without lash [m] and its bend, by crank angle; a modelled lobe counts from its nose. */
  readonly at: LiftAt;
  readonly places: readonly number[];
  readonly from: 'measured' | 'modelled';
}
const PLACES = 90;
const STEP = 2;

/** The lobe of a kind of valve at a rocker ratio; undefined where lift, duration or fullness are lacking, which are then noted. */
export function lobeOf(look: Look, kind: ValveKind, ratio: number, measured?: MeasuredLobes): Lobe | undefined {
  const table = measured?.[kind];
  if (table !== undefined) return measuredLobe(table, ratio);
  const lift = look.need('lobe-lift', 'load over the lobe');
  const duration = look.need('lobe-duration', 'load over the lobe');
  const p = look.need('lobe-fullness', 'load over the lobe');
  if (lift === undefined || duration === undefined || p === undefined) return undefined;
  const lobe = {
    peakLift: (lift * ratio) as Length,
    halfDuration: (duration / 2) as Angle,
    exponents: [p, p + STEP, p + 2 * STEP] as const,
  };
  const half = lobe.halfDuration;
  return {
    at: (angle) => {
      const { lift: value, bend } = lobeAt(lobe, angle);
      return { value, bend };
    },
    places: Array.from({ length: PLACES + 1 }, (_, at) => (half * at) / PLACES),
    from: 'modelled',
  };
}

function measuredLobe({ angles, lifts }: LiftTable, ratio: number): Lobe {
  const curve = splineThrough(
    angles,
    lifts.map((one) => one * ratio),
    { kind: 'natural' },
  );
  return { at: (angle) => splineAt(curve, angle), places: placesAlong(curve), from: 'measured' };
}
