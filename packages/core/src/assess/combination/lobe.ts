/** Lift of a valve over the crank by the cam: measured readings where there are any, else a curve modelled from the card. */
import { type LiftTable, lobeCurve } from '../../calc/cam/index.js';
import { splineThrough } from '../../calc/numeric/index.js';
import { type LobePlace, placesOn } from '../../calc/valvetrain/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import type { Look } from './look.js';

/** Lobe lifts over crank angle as they were read, by kind of valve. */
export type MeasuredLobes = Partial<Readonly<Record<ValveKind, LiftTable>>>;

export interface Lobe {
  /** Valve lift without lash along the lobe; of a modelled one, which is alike on both flanks, from its nose to one end. */
  readonly places: readonly LobePlace[];
  readonly from: 'measured' | 'modelled';
}
const PLACES = 60;
const STEP = 2;

/** The lobe of a kind of valve at a rocker ratio; undefined where lift, duration or fullness are lacking, which are then noted. */
export function lobeOf(look: Look, kind: ValveKind, ratio: number, measured?: MeasuredLobes): Lobe | undefined {
  const table = measured?.[kind];
  if (table !== undefined) return measuredLobe(table, ratio);
  const lift = look.need('lobe-lift', 'load over the lobe');
  const duration = look.need('lobe-duration', 'load over the lobe');
  const p = look.need('lobe-fullness', 'load over the lobe');
  if (lift === undefined || duration === undefined || p === undefined) return undefined;
  const halfDuration = (duration / 2) as Angle;
  const curve = lobeCurve({
    peakLift: (lift * ratio) as Length,
    halfDuration,
    exponents: [p, p + STEP, p + 2 * STEP],
  });
  const places = Array.from({ length: PLACES + 1 }, (_, at) => {
    const angle = (halfDuration * at) / PLACES;
    const { lift: height, bend } = curve(angle);
    return { angle, lift: height, bend };
  });
  return { places, from: 'modelled' };
}

const measuredLobe = ({ angles, lifts }: LiftTable, ratio: number): Lobe => ({
  places: placesOn(
    splineThrough(
      angles,
      lifts.map((one) => one * ratio),
      { kind: 'natural' },
    ),
  ),
  from: 'measured',
});
