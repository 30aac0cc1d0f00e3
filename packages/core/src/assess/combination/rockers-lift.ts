/** What the valve does for a lift at the lobe: by the exact rocker where its geometry is known, else by its ratio. */
import { splineAt, splineThrough } from '../../calc/numeric/index.js';
import { type RockerGeometry, rockerAt } from '../../calc/valvetrain/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import type { Look } from './look.js';

/** Valve lift without lash [m] with its first and second derivative by lobe lift. */
export interface RockerPoint {
  readonly lift: number;
  readonly ratio: number;
  readonly bend: number;
}
export interface RockerLift {
  readonly by: 'geometry' | 'ratio' | 'direct';
  readonly at: (lobeLift: number) => RockerPoint;
}

/** Arms of the rocker with their angles at rest; undefined where one of them is not known. Nothing is noted as missing. */
export function rockerGeometry(look: Look): RockerGeometry | undefined {
  const [valveArm, pushrodArm] = ['valve-arm', 'pushrod-arm'].map((key) => look.read(key) as Length | undefined);
  if (valveArm === undefined || pushrodArm === undefined) return undefined;
  const [above, below] = ['valve-arm-above', 'pushrod-arm-below'].map((key) => look.read(key) as Angle | undefined);
  if (above === undefined || below === undefined) return undefined;
  return {
    valveArm,
    valveArmAbove: above,
    pushrodArm,
    pushrodArmBelow: below,
    pushrodTilt: (look.read('pushrod-tilt') ?? 0) as Angle,
    pushrodLength: look.read('pushrod-length') as Length | undefined,
  };
}

const PIECES = 24;

/** Lift of the valve for lobe lifts up to `peak`; undefined where neither geometry nor ratio is known, or the arm cannot follow. */
export function rockerLift(look: Look, peak: number, lacking: string): RockerLift | undefined {
  const geometry = rockerGeometry(look);
  const exact = geometry && exactLift(geometry, peak);
  if (exact !== undefined) return { by: 'geometry', at: exact };
  const ratio = look.need('rocker-ratio', lacking);
  const by = look.makeup.engine.valveGear?.kind === 'overhead-bucket' ? 'direct' : 'ratio';
  return ratio === undefined ? undefined : { by, at: (lobe) => ({ lift: lobe * ratio, ratio, bend: 0 }) };
}

/** A spline through exact places of the rocker, with its true ratio at both ends. */
function exactLift(geometry: RockerGeometry, peak: number): RockerLift['at'] | undefined {
  const lobes = Array.from({ length: PIECES + 1 }, (_, at) => (peak * at) / PIECES);
  const places = lobes.flatMap((one) => {
    const found = rockerAt(geometry, one as Length);
    return found.ok ? [found.value] : [];
  });
  if (places.length < lobes.length) return undefined;
  const spline = splineThrough(
    lobes,
    places.map(({ lift }) => lift),
    { kind: 'clamped', first: places[0]!.ratio, last: places.at(-1)!.ratio },
  );
  return (lobe) => {
    const { value, slope, bend } = splineAt(spline, lobe);
    return { lift: value, ratio: slope, bend };
  };
}
