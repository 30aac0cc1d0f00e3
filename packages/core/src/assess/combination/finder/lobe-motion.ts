/** Lift of a lobe by crank angle, from its card or its readings. */
import { curveThrough, liftTable, lobeFromCard, lobeLift } from '../../../calc/cam/index.js';
import type { Angle, Length } from '../../../quantity/index.js';
import { sizeValue } from './choices.js';
import type { LobeMotion, Size, ValveSide } from './model.js';

/** Exponents where the card has a single duration, and the angles from the top at which room can be least. */
const FIRST = 6;
const STEP = 2;

export type LobeCurve = (angle: number) => number;

/** A lobe is fitted once: its curve is asked for with every place of the cam. */
const CURVES = new WeakMap<LobeMotion, Partial<Record<ValveSide, LobeCurve | undefined>>>();

/** Lift at the lobe [m] by crank angle after the top of overlap; undefined for a card or readings that make no lobe. */
export function lobeCurve(lobe: LobeMotion, side: ValveSide): LobeCurve | undefined {
  const held = CURVES.get(lobe) ?? {};
  CURVES.set(lobe, held);
  if (!(side in held)) held[side] = made(lobe, side);
  return held[side];
}

function made(lobe: LobeMotion, side: ValveSide): LobeCurve | undefined {
  if (lobe.kind === 'table') {
    const table = liftTable(lobe.angles as readonly Angle[], lobe.lifts as readonly Length[]);
    if (!table.ok) return undefined;
    const { angles } = table.value;
    const [first, last] = [angles[0]!, angles.at(-1)!];
    const curve = curveThrough(table.value, 'spline');
    // Beyond the readings the valve is taken as closed.
    return (angle) => (angle < first || angle > last ? 0 : Math.max(0, curve(angle)));
  }
  if (lobe.kind === 'modelled') {
    const [peak, half] = [sizeValue(lobe.peakLift) as Length, sizeValue(lobe.halfDuration) as Angle];
    if (!(peak > 0 && half > 0)) return undefined;
    return about(lobeLift({ peakLift: peak, halfDuration: half, exponents: lobe.exponents }), lobe.centreline, side);
  }
  const card = lobe.durations.map(({ lift, duration }) => ({
    lift: sizeValue(lift) as Length,
    duration: sizeValue(duration) as Angle,
  }));
  const fit = card.length === 0 ? undefined : lobeFromCard(sizeValue(lobe.peakLift) as Length, card, FIRST, STEP);
  if (!fit?.ok) return undefined;
  return about(lobeLift(fit.value.lobe), lobe.centreline, side);
}

/** An intake lobe stands after the top of overlap, an exhaust lobe before it. */
function about(liftAt: LobeCurve, centreline: Size, side: ValveSide): LobeCurve {
  const nose = (side === 'intake' ? 1 : -1) * sizeValue(centreline);
  return (angle) => liftAt(angle - nose);
}

/** Highest lift of a lobe [m]: that of its card, or its highest reading. */
export function peakLift(lobe: LobeMotion | undefined): number {
  if (lobe === undefined) return Number.NaN;
  return lobe.kind === 'table' ? Math.max(...lobe.lifts) : sizeValue(lobe.peakLift);
}
