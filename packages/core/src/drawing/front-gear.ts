import { type Pose, pinAbove } from './crank-pose.js';
import type { Shape } from './figure.js';
import { blockCam } from './front-case.js';
import { CENTRE, inBank, type View } from './front-frame.js';
import { at, hull, polar, signed } from './geometry.js';
import { centreCross, circle, line, polygon, ringSector } from './shapes.js';
import type { DrawnSizes } from './sizes.js';

export function runningGear(view: View): readonly Shape[] {
  const { sizes, shown } = view;
  const { bore } = sizes;
  const shownPins = shown.map((pose) => pose.crankpin);
  const rest = hiddenPins(view);
  return [
    circle(CENTRE, sizes.throw, 'centre', { part: 'crank circle' }),
    ...[...new Set(shownPins.map((pin) => Math.round(pin)))].flatMap((pin) => crankWeb(sizes, pin)),
    ...rest.map((pose) =>
      circle(polar(CENTRE, sizes.throw, pose.crankpin), bore * 0.23, 'hidden', { part: `crankpin ${pose.cylinder}` }),
    ),
    ...shown.flatMap((pose) => pistonAndRod(sizes, pose)),
    circle(CENTRE, bore * 0.26, 'visible', { fill: 'metal', part: 'crankshaft' }),
    ...centreCross(CENTRE, bore * 0.36),
    ...blockCam(view),
  ];
}

/** Crankpins of cylinders that are not drawn in section and that do not lie behind a pin that is. */
export function hiddenPins({ crank, shown }: View): readonly Pose[] {
  const seen = shown.map((pose) => pose.crankpin);
  return [...crank.poses.values()].filter(
    (pose) => !shown.includes(pose) && !seen.some((pin) => Math.abs(signed(pin - pose.crankpin)) < 1),
  );
}

function crankWeb(sizes: DrawnSizes, pin: number): readonly Shape[] {
  const { bore } = sizes;
  const weight = ringSector(CENTRE, bore * 0.3, sizes.throw + bore * 0.28, pin + 122, pin + 238);
  return [
    polygon(weight, 'visible', { fill: 'metal', part: 'counterweight' }),
    polygon(hull(CENTRE, bore * 0.36, polar(CENTRE, sizes.throw, pin), bore * 0.3), 'visible', {
      fill: 'metal',
      part: 'crank web',
    }),
  ];
}

function pistonAndRod(sizes: DrawnSizes, pose: Pose): readonly Shape[] {
  const { bore } = sizes;
  const part = `cylinder ${pose.cylinder}`;
  const up = pinAbove(sizes, pose.pastAxis);
  const pin = inBank(pose.bank, up, 0);
  const crankpin = polar(CENTRE, sizes.throw, pose.crankpin);
  const crown = up + sizes.crownHeight;
  const half = bore * 0.488;
  const outline = [at(-half, crown), at(half, crown), at(half, up - bore * 0.3), at(half * 0.8, up - bore * 0.3)];
  const mirrored = outline.map((p) => at(-p.x, p.y)).reverse();
  const piston = [
    ...outline.slice(1),
    at(bore * 0.26, up - bore * 0.12),
    at(-bore * 0.26, up - bore * 0.12),
    ...mirrored.slice(0, 3),
    outline[0] ?? at(0, 0),
  ];
  const groove = (share: number) => crown - sizes.crownHeight * share;
  return [
    polygon(
      piston.map((p) => inBank(pose.bank, p.y, p.x)),
      'visible',
      { fill: 'metal', part },
    ),
    ...[0.16, 0.3, 0.45].map((share) =>
      line(inBank(pose.bank, groove(share), -half), inBank(pose.bank, groove(share), half), 'thin', { part }),
    ),
    polygon(hull(pin, bore * 0.17, crankpin, bore * 0.24), 'visible', { fill: 'metal', part }),
    circle(pin, bore * 0.11, 'visible', { fill: 'void', part }),
    circle(crankpin, bore * 0.31, 'visible', { fill: 'metal', part }),
    circle(crankpin, bore * 0.23, 'visible', { fill: 'void', part }),
  ];
}
