/** Spring load and the load that the lobe needs, over the crank: what a plot shows. */
import { followForce, type LobePlace, openLoad } from '../../calc/valvetrain/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Acceleration, Force, Length, Mass, Stiffness } from '../../quantity/index.js';
import { type Lobe, lobeOf, type MeasuredLobes } from './lobe.js';
import { Look } from './look.js';
import type { Makeup, MissingFigure } from './model.js';
import { springNumbers } from './spring-numbers.js';

export interface SpringCurve {
  readonly kind: ValveKind;
  readonly from: Lobe['from'];
  /** Crank angle [rad], rising: from the nose for a modelled lobe, as read for a measured one. */
  readonly angles: readonly number[];
  /** At the valve, less the lash [m]. */
  readonly lifts: readonly number[];
  /** Of the spring [N]. */
  readonly loads: readonly number[];
  /** At each speed [rad/s], the load [N] without which the gear leaves the lobe; 0 where the lobe pushes. */
  readonly needed: readonly { readonly speed: number; readonly loads: readonly number[] }[];
  /** Speed at which the gear would part. */
  readonly parts?: number;
}
export interface NoCurve {
  readonly missing: readonly MissingFigure[];
}

/** The curves of intake or exhaust at the speeds given, the highest speed of the makeup where none is; else what is missing for them. */
export function springCurve(
  makeup: Makeup,
  kind: ValveKind,
  speeds?: readonly number[],
  lobes?: MeasuredLobes,
): SpringCurve | NoCurve {
  const look = new Look(makeup, kind);
  const values = springNumbers(look, kind, makeup.engine.valveGear?.kind, lobes);
  const ratio = look.read('rocker-ratio');
  const lobe = ratio === undefined ? undefined : lobeOf(look, kind, ratio, lobes);
  const own = look.read('highest-speed');
  const wanted = speeds ?? (own === undefined ? undefined : [own]);
  const { 'seat-load': seat, rate, 'moving-mass': mass } = values;
  if (lobe === undefined || seat === undefined || rate === undefined || mass === undefined || wanted === undefined)
    return { missing: [...look.missing.values()] };
  const points = bothFlanks(lobe);
  const lash = look.read('valve-lash') ?? 0;
  const lifts = points.map(({ lift }) => Math.max(0, lift - lash));
  const parts = values['separation-speed'];
  return {
    kind,
    from: lobe.from,
    angles: points.map(({ angle }) => angle),
    lifts,
    loads: lifts.map((lift) => openLoad(seat as Force, rate as Stiffness, lift as Length)),
    needed: wanted.map((speed) => ({
      speed,
      loads: points.map(({ bend }) => followForce(mass as Mass, (bend * speed ** 2) as Acceleration)),
    })),
    ...(parts !== undefined && { parts }),
  };
}

/** A modelled lobe is alike on both flanks; in a measured one a reading stands at the end of one piece and the beginning of the next. */
function bothFlanks({ places, from }: Lobe): readonly LobePlace[] {
  if (from === 'measured') return places.filter(({ angle }, at) => angle !== places[at - 1]?.angle);
  const opening = places.slice(1).map((place) => ({ ...place, angle: -place.angle }));
  return [...opening.reverse(), ...places];
}
