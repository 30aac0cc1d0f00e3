import type { Angle } from '../quantity/index.js';
import type { Shape } from './figure.js';
import { CENTRE, damperRadius, pointerHeading, type View } from './front-frame.js';
import { heading, inDegrees, polar, times } from './geometry.js';
import { arrowHead, circle, line, turnArrow } from './shapes.js';
import type { Scale } from './sheet-scale.js';

/** The damper is drawn as a ring before the engine, with its notch and a pointer where no cylinder is in the way. */
export function damper(view: View, crankAngle: Angle, scale: Scale): readonly Shape[] {
  const { sizes, crank, bankAngles } = view;
  const radius = damperRadius(sizes);
  const pointer = pointerHeading(bankAngles);
  const notch = pointer + crank.sense * inDegrees(crankAngle);
  const part = 'damper';
  const tick = (turn: number, length: number): Shape =>
    line(polar(CENTRE, radius, notch + turn), polar(CENTRE, radius - length, notch + turn), 'thin', { part });
  const tip = polar(CENTRE, radius, pointer);
  return [
    circle(CENTRE, radius, 'thin', { part }),
    ...[90, 180, 270].map((turn) => tick(turn, scale.px * 6)),
    line(polar(CENTRE, radius, notch), polar(CENTRE, radius - scale.px * 14, notch), 'visible', { part, state: 'lit' }),
    arrowHead(tip, times(heading(pointer), -1), scale.px * 13, { part: 'pointer' }),
    ...turnArrow(CENTRE, radius + scale.px * 9, ...arrowSweep(pointer, crank.sense), scale.px * 10, {
      part: 'rotation',
    }),
  ];
}

const arrowSweep = (pointer: number, sense: 1 | -1): readonly [number, number] =>
  sense === 1 ? [pointer + 22, pointer + 58] : [pointer + 58, pointer + 22];
