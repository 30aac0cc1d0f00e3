import type { AdjusterPlace } from '../engine/index.js';
import type { Point, Shape } from './figure.js';
import { cam, type Drawn, type Setting, TIP } from './gear-setting.js';
import { at, hull, plus, times } from './geometry.js';
import { circle, polygon } from './shapes.js';
import { lifter, nut, shortenedRod, VALVE_LENGTH, valveAssembly } from './valve-parts.js';

const NEAR_ARM = 27;

/** The rocker about its pivot; `down` is how far its valve end has gone. */
function rocker(
  pivot: Point,
  near: number,
  far: number,
  down: number,
): { readonly shapes: readonly Shape[]; readonly nearEnd: Point; readonly farEnd: Point } {
  const lean = Math.asin(Math.max(-0.6, Math.min(0.6, down / far)));
  const along = at(Math.cos(lean), Math.sin(lean));
  const nearEnd = plus(pivot, times(along, -near));
  const farEnd = plus(pivot, times(along, far));
  const body = (end: Point, radius: number): Shape =>
    polygon(hull(pivot, 9, end, radius), 'visible', { fill: 'metal', part: 'rocker' });
  return {
    shapes: [body(nearEnd, 5.5), body(farEnd, 5), circle(pivot, 5, 'visible', { fill: 'void', part: 'rocker pivot' })],
    nearEnd,
    farEnd,
  };
}

/** Rocker, valve and adjuster, for both gears that have a rocker above its follower. */
function rockerAndValve(setting: Setting, pivot: Point): Drawn & { readonly nearEnd: Point } {
  const { motion, adjuster, valve } = setting;
  const far = NEAR_ARM * Math.min(2.2, Math.max(0.8, motion.ratio));
  const arm = rocker(pivot, NEAR_ARM, far, motion.valveLift - motion.fullLift / 2);
  const shutTip = pivot.y - motion.fullLift / 2 + TIP;
  const x = pivot.x + far;
  const assembly = valveAssembly({
    x,
    shutTip,
    lift: motion.valveLift,
    headDiameter: setting.headDiameter,
    kind: valve.kind,
  });
  const screws: Partial<Record<AdjusterPlace, Point>> = {
    'stud-nut': plus(pivot, at(0, -13)),
    'pushrod-end-screw': plus(arm.nearEnd, at(0, -7)),
    'valve-end-screw': plus(arm.farEnd, at(0, -7)),
  };
  const screw = screws[adjuster];
  return {
    shapes: [...assembly, ...arm.shapes, ...(screw === undefined ? [] : nut(screw, 'adjuster'))],
    nearEnd: arm.nearEnd,
    names: [
      ...(screw === undefined ? [] : [{ text: 'adjust here', at: plus(screw, at(0, -18)), anchor: 'middle' as const }]),
      { text: 'rocker', at: plus(pivot, at(0, 17)), anchor: 'middle' },
      { text: 'valve', at: at(x + 6, shutTip + VALVE_LENGTH + motion.fullLift + 9), anchor: 'start' },
      { text: 'spring', at: at(x + 20, shutTip + 26), anchor: 'start' },
    ],
  };
}

export function pushrodGear(setting: Setting): Drawn {
  const { motion, base, roller } = setting;
  const contact = -(base + motion.lobeLift);
  const tappet = lifter(0, contact, roller);
  const restCup = tappet.cup.y + motion.lobeLift;
  const pivot = at(NEAR_ARM, restCup - 96 - motion.fullLift / motion.ratio / 2);
  const top = rockerAndValve(setting, pivot);
  return {
    shapes: [
      ...cam(at(0, 0), 0, setting),
      ...tappet.shapes,
      ...shortenedRod(plus(tappet.cup, at(0, -1)), plus(top.nearEnd, at(0, 4)), 3.6, 'pushrod'),
      ...top.shapes,
    ],
    names: [
      ...top.names,
      { text: 'cam', at: at(-base - motion.lobe.lift - 4, 4), anchor: 'end' },
      { text: 'lifter', at: at(-14, contact - 26), anchor: 'end' },
      { text: 'pushrod', at: at(-8, restCup - 40), anchor: 'end' },
    ],
  };
}

export function overheadRockerGear(setting: Setting): Drawn {
  const { motion, base, roller } = setting;
  const pad = roller > 0 ? roller : TIP;
  const pivot = at(NEAR_ARM, -(base + pad) - motion.lobe.lift / 2);
  const top = rockerAndValve(setting, pivot);
  const wheel = roller > 0 ? [circle(top.nearEnd, roller, 'visible', { fill: 'void', part: 'roller' })] : [];
  return {
    // The rounded end of the rocker touches the lobe as a roller of its radius would.
    shapes: [...top.shapes, ...wheel, ...cam(at(0, 0), 0, { ...setting, roller: pad })],
    names: [...top.names, { text: 'cam', at: at(-base - motion.lobe.lift - 4, 4), anchor: 'end' }],
  };
}
