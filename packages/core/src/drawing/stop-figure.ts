import type { Engine } from '../engine/index.js';
import { compose } from './compose.js';
import { crankPose } from './crank-pose.js';
import type { Figure, Shape } from './figure.js';
import { firingSentence } from './firing-words.js';
import { at, heading, inDegrees, plus, polar, times, within } from './geometry.js';
import type { Shown, StopShown } from './options.js';
import { arrowHead, centreCross, circle, label, line, turnArrow } from './shapes.js';
import { type Scale, scaleFor } from './sheet-scale.js';

const CENTRE = at(0, 0);
const RADIUS = 112;
const WIDTH = 348;

/**
 * The damper at a stop for setting valves, seen from the front: degree marks, pointer at the top, and how far and which way to turn
 * from the stop before. Angles [rad] from firing TDC of cylinder 1 in the running sense; turning is always forward.
 */
export function stopFigure(engine: Engine, stop: StopShown, options: Shown = {}): Figure {
  const scale = scaleFor(WIDTH, options);
  const pose = crankPose(engine, stop.crankAngle);
  const crank = within(inDegrees(stop.crankAngle), 720);
  const turn = stop.previous === undefined ? undefined : forward(crank - inDegrees(stop.previous));
  const words = [turnWords(turn, crank), readingWords(crank), firingSentence(pose)];
  return compose({
    title: `${engine.name}: damper at crank ${short(crank)}\u00b0`,
    description: [
      `The damper seen from the front, turning ${engine.layout.rotation}; the pointer is drawn at the top.`,
      ...words.map((sentence) => `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`),
      pose.note,
    ],
    shapes: [
      ...damperFace(crank, pose.sense, scale),
      ...pointer(scale),
      ...turnShapes(turn, pose.sense, scale),
      ...words.map((sentence, i) => label(at(0, RADIUS + scale.px * (30 + 21 * i)), sentence, scale.text)),
    ],
    margin: scale.margin,
    leastWidth: WIDTH,
  });
}
/** 0 to below 720, with rounding dust taken as no turn. */
const forward = (degrees: number): number => {
  const turn = within(degrees, 720);
  return turn > 719.99 ? 0 : turn;
};
const short = (degrees: number): string => String(Math.round(degrees * 10) / 10);

/** Marks grow against the running sense, so that at crank angle n the mark n stands at the pointer. */
function damperFace(crank: number, sense: 1 | -1, scale: Scale): readonly Shape[] {
  const place = (degrees: number) => sense * (crank - degrees);
  const tick = (degrees: number): Shape => {
    const long = degrees % 90 === 0 ? 18 : degrees % 30 === 0 ? 12 : 6;
    const role = degrees % 90 === 0 ? 'visible' : 'thin';
    return line(polar(CENTRE, RADIUS, place(degrees)), polar(CENTRE, RADIUS - long, place(degrees)), role, {
      part: 'damper',
    });
  };
  const number = (degrees: number): Shape => {
    const text = degrees === 0 ? 'TDC' : `${degrees}\u00b0`;
    const spot = polar(CENTRE, RADIUS - 18 - scale.text * 1.1, place(degrees));
    return label(spot, text, degrees === 0 ? scale.text * 1.1 : scale.small, { part: 'damper' });
  };
  return [
    circle(CENTRE, RADIUS, 'visible', { fill: 'metal', part: 'damper' }),
    circle(CENTRE, 46, 'thin', { fill: 'none', part: 'damper' }),
    circle(CENTRE, 15, 'visible', { fill: 'void', part: 'damper bolt' }),
    ...centreCross(CENTRE, 24),
    ...Array.from({ length: 36 }, (_, i) => tick(i * 10)),
    ...[0, 90, 180, 270].map(number),
  ];
}
function pointer(scale: Scale): readonly Shape[] {
  const tip = plus(CENTRE, at(0, -RADIUS + 1));
  return [
    arrowHead(tip, at(0, 1), scale.px * 20, { part: 'pointer', state: 'lit' }),
    label(plus(tip, at(0, -scale.px * 29)), 'pointer', scale.small, { part: 'pointer' }),
  ];
}
/** The way that the rim goes: an arrow that ends at the pointer. A whole turn and more is drawn as a whole turn. */
function turnShapes(turn: number | undefined, sense: 1 | -1, scale: Scale): readonly Shape[] {
  const radius = RADIUS + scale.px * 12;
  if (turn === undefined || turn < 0.05) {
    return turnArrow(CENTRE, radius, sense * 35, sense * 65, scale.px * 12, { part: 'rotation' });
  }
  const swept = Math.min(turn, 345);
  const from = -sense * swept;
  const end = -sense * 7;
  const start = polar(CENTRE, RADIUS, from);
  return [
    line(start, plus(start, times(heading(from), scale.px * 18)), 'hidden', { part: 'turn' }),
    ...(swept > 12 ? turnArrow(CENTRE, radius, from, end, scale.px * 14, { part: 'turn', state: 'lit' }) : []),
  ];
}
function turnWords(turn: number | undefined, crank: number): string {
  if (turn === undefined) return `bring the crank to ${short(crank)}\u00b0`;
  if (turn < 0.05) return 'leave the crank where it is';
  const whole = Math.floor(turn / 360 + 1e-9);
  const rest = turn - whole * 360;
  if (whole === 0) return `turn on ${short(turn)}\u00b0`;
  return rest < 0.05 ? 'turn on one whole turn' : `turn on one whole turn and ${short(rest)}\u00b0`;
}
function readingWords(crank: number): string {
  const onRim = within(crank, 360);
  const mark = onRim < 0.05 || onRim > 359.95 ? 'TDC mark' : `${short(onRim)}\u00b0 mark`;
  return `${mark} at the pointer, ${crank < 359.95 ? 'first' : 'second'} turn`;
}
