/** Lift of a valve over the crank: from the card, or from what was read at wheel and indicator. */
import { type LiftTable, lobeAt, lobeLift } from '../../calc/cam/index.js';
import { splineAt, splineThrough } from '../../calc/numeric/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { DegreeingAnswer } from './degreeing-model.js';
import { merged } from './degreeing-pairs.js';
import type { Look } from './look.js';
import { type RockerLift, rockerLift } from './rockers-lift.js';
import { type CardLobe, cardLobe } from './timing-lobes.js';

/** Lifts over crank angle after the valve's own top dead centre of overlap. */
export interface ReadCurve {
  readonly table: LiftTable;
  readonly at: 'lobe' | 'valve';
  /** Standard uncertainty of where the lobe stands [rad]; left out: not known. */
  readonly u?: number;
  /** Of one lift [m]. */
  readonly uLift?: number;
}
export type ReadCurves = Partial<Readonly<Record<ValveKind, ReadCurve>>>;

/** Valve lift [m] with its first and second derivative by crank angle [rad]. */
export interface ValvePoint {
  readonly lift: number;
  readonly slope: number;
  readonly bend: number;
}
export interface ValveCurve {
  readonly from: 'card' | 'read';
  /** Crank angle of the highest lift, and the stretch over which the lift is known; outside of it the valve is closed where `whole`. */
  readonly nose: number;
  readonly first: number;
  readonly last: number;
  readonly whole: boolean;
  readonly lash: number;
  /** Lift of the valve if there were no lash [m]. */
  readonly gross: (angle: number) => number;
  readonly point: (angle: number) => ValvePoint;
  readonly meets?: CardLobe['meets'];
  readonly rocker: RockerLift['by'] | 'read at the valve';
  readonly u?: number;
  readonly uLift?: number;
}

/** A flank that was read down to this counts as read to its end. */
const CLOSED = 5e-5;

/** The lift of a kind of valve; undefined where figures for it are lacking, which are then noted. */
export function valveCurve(look: Look, kind: ValveKind, lacking: string, read?: ReadCurve): ValveCurve | undefined {
  return read === undefined ? fromCard(look, kind, lacking) : fromTable(look, read, lacking);
}

const CLOSED_POINT: ValvePoint = { lift: 0, slope: 0, bend: 0 };

function fromCard(look: Look, kind: ValveKind, lacking: string): ValveCurve | undefined {
  const card = cardLobe(look, kind, lacking);
  const rocker = card && rockerLift(look, card.lobe.peakLift, lacking);
  const lash = look.need('valve-lash', lacking);
  if (card === undefined || rocker === undefined || lash === undefined) return undefined;
  const { lobe, nose, meets } = card;
  const lift = lobeLift(lobe);
  return {
    from: 'card',
    nose,
    first: nose - lobe.halfDuration,
    last: nose + lobe.halfDuration,
    whole: true,
    lash,
    gross: (angle) => rocker.at(lift(angle - nose)).lift,
    point: (angle) => {
      const at = lobeAt(lobe, angle - nose);
      return throughRocker(rocker.at(at.lift), at, lash);
    },
    meets,
    rocker: rocker.by,
  };
}

/** The chain of lobe and rocker; a valve whose lash is not taken up stands still. */
function throughRocker(
  rocker: { readonly lift: number; readonly ratio: number; readonly bend: number },
  lobe: { readonly slope: number; readonly bend: number },
  lash: number,
): ValvePoint {
  if (rocker.lift <= lash) return CLOSED_POINT;
  return {
    lift: rocker.lift - lash,
    slope: rocker.ratio * lobe.slope,
    bend: rocker.ratio * lobe.bend + rocker.bend * lobe.slope ** 2,
  };
}

function fromTable(look: Look, read: ReadCurve, lacking: string): ValveCurve | undefined {
  const { angles, lifts } = read.table;
  const atValve = read.at === 'valve';
  const peak = Math.max(...lifts);
  const rocker = atValve ? undefined : rockerLift(look, peak, lacking);
  const lash = atValve ? 0 : look.need('valve-lash', lacking);
  if (lash === undefined || (!atValve && rocker === undefined)) return undefined;
  const spline = splineThrough(angles, lifts, { kind: 'natural' });
  const [first, last] = [angles[0]!, angles.at(-1)!];
  const inside = (angle: number) => angle >= first && angle <= last;
  return {
    from: 'read',
    nose: angles[lifts.indexOf(peak as (typeof lifts)[number])]!,
    first,
    last,
    whole: lifts[0]! <= CLOSED && lifts.at(-1)! <= CLOSED,
    lash,
    gross: (angle) => {
      if (!inside(angle)) return 0;
      const lift = splineAt(spline, angle).value;
      return rocker === undefined ? lift : rocker.at(Math.max(0, lift)).lift;
    },
    point: (angle) => {
      if (!inside(angle)) return CLOSED_POINT;
      const { value, slope, bend } = splineAt(spline, angle);
      const own = rocker?.at(Math.max(0, value)) ?? { lift: value, ratio: 1, bend: 0 };
      return throughRocker(own, { slope, bend }, lash);
    },
    rocker: rocker?.by ?? 'read at the valve',
    ...(read.u !== undefined && { u: read.u }),
    ...(read.uLift !== undefined && { uLift: read.uLift }),
  };
}

/** The degreed lobes as curves: of each kind the one of the lowest cylinder with a middle; repeats at one angle count by their mean. */
export function readCurves({ lobes }: Pick<DegreeingAnswer, 'lobes'>): ReadCurves {
  const of = (kind: ValveKind): ReadCurve | undefined => {
    const best = lobes.find(({ lobe, middle }) => lobe.kind === kind && middle !== undefined);
    const table = best && merged(best.readings);
    if (best === undefined || table === undefined) return undefined;
    const { u } = best.middle!;
    const scatter = best.band.length === 0 ? undefined : Math.max(...best.band);
    return { table, at: 'lobe', ...(u !== undefined && { u }), ...(scatter !== undefined && { uLift: scatter }) };
  };
  const [intake, exhaust] = [of('intake'), of('exhaust')];
  return { ...(intake && { intake }), ...(exhaust && { exhaust }) };
}
