/** Degree wheel on the nose of the crank, turned as it stands now, with what was read round its rim. */
import { compose } from '../compose.js';
import type { Figure, Shape } from '../figure.js';
import { at, plus, polar, within } from '../geometry.js';
import { markShapes } from '../marks.js';
import type { Shown } from '../options.js';
import { arrowHead, circle, label, line, polygon, rectangle, turnArrow } from '../shapes.js';
import { type Scale, scaleFor } from '../sheet-scale.js';
import { fromDeadCentre } from './dead-centre-words.js';

/** A place on the wheel: what was read there, or where to read next. Degrees of the wheel. */
export interface WheelMark {
  readonly reading: number;
  readonly kind: 'read' | 'off' | 'next' | 'stop';
}
export interface WheelShown {
  readonly title: string;
  /** What the wheel reads under the pointer [°]. */
  readonly reading: number;
  /** What it reads at true top dead centre; absent until it was found. */
  readonly top?: number;
  readonly rotation: 'clockwise' | 'anticlockwise';
  readonly marks: readonly WheelMark[];
  /** Throw over rod length; absent: the piston is not drawn. */
  readonly throwOverRod?: number;
}

const CENTRE = at(0, 0);
const WIDTH = 320;
const RIM = 128;
const RING = { ticks: 118, long: 112, numbers: 98, inner: 84 } as const;
/** Throw as drawn inside of the wheel. mm. */
const THROW = 22;

/**
 * The wheel turns with the crank under a fixed pointer above it, so its numbers rise against the way that the crank turns. Inside of it stand
 * throw, rod and piston of the cylinder, its axis upright.
 */
export function degreeWheel(shown: WheelShown, options: Shown = {}): Figure {
  const scale = scaleFor(WIDTH, options);
  const turn = shown.rotation === 'clockwise' ? 1 : -1;
  /** Heading on the page of a number of the wheel: the one that is read stands at the top. */
  const headingOf = (number: number): number => turn * (shown.reading - number);
  return compose({
    title: shown.title,
    description: words(shown),
    shapes: [
      circle(CENTRE, RIM, 'visible', { fill: 'metal', part: 'wheel' }),
      ...ticks(headingOf, scale),
      ...marksOf(shown, headingOf, scale),
      circle(CENTRE, RING.inner, 'thin', { fill: 'void' }),
      ...crankOf(shown, turn),
      ...pointer(shown.reading, scale),
      ...turnArrow(CENTRE, RING.inner - 7, turn * 110, turn * 165, scale.px * 11, { part: 'direction' }),
    ],
    frame: [circle(CENTRE, RIM + scale.mark * 3, 'thin')],
    margin: scale.margin,
    leastWidth: WIDTH,
  });
}

function ticks(headingOf: (number: number) => number, scale: Scale): readonly Shape[] {
  return Array.from({ length: 72 }, (_, n) => n * 5).flatMap((number): readonly Shape[] => {
    const towards = headingOf(number);
    const long = number % 10 === 0;
    const tick = line(
      polar(CENTRE, RIM, towards),
      polar(CENTRE, long ? RING.long : RING.ticks, towards),
      number % 30 === 0 ? 'visible' : 'thin',
    );
    return number % 30 === 0 ? [tick, label(polar(CENTRE, RING.numbers, towards), String(number), scale.text)] : [tick];
  });
}

function marksOf({ marks, top }: WheelShown, headingOf: (n: number) => number, scale: Scale): readonly Shape[] {
  const out = RIM + scale.mark * 1.2;
  const shapes = marks.flatMap(({ reading, kind }): readonly Shape[] => {
    const towards = headingOf(reading);
    if (kind === 'off') return markShapes(polar(CENTRE, out, towards), scale.mark * 0.8, 'wrong', 'off');
    if (kind === 'next') return markShapes(polar(CENTRE, out, towards), scale.mark * 0.8, 'next', 'next');
    const reach = kind === 'stop' ? 1.6 : 0.9;
    return [
      line(polar(CENTRE, RIM, towards), polar(CENTRE, RIM + scale.mark * reach, towards), 'visible', { part: kind }),
    ];
  });
  return top === undefined ? shapes : [...shapes, ...topMark(headingOf(top), scale)];
}
/** True top on the wheel: an arrow head on its rim, and the word inside. */
const topMark = (towards: number, scale: Scale): readonly Shape[] => {
  const tip = polar(CENTRE, RIM, towards);
  return [
    arrowHead(tip, polar(CENTRE, 1, towards + 180), scale.px * 14, { part: 'top', state: 'lit' }),
    label(polar(CENTRE, RIM + scale.mark * 2.1, towards), 'top', scale.small, { part: 'top' }),
  ];
};

/** Fixed pointer above the wheel; the number under it is written large. */
function pointer(reading: number, scale: Scale): readonly Shape[] {
  const tip = polar(CENTRE, RIM - 4, 0);
  return [
    line(polar(CENTRE, RIM + scale.mark * 3, 0), tip, 'visible', { part: 'pointer', state: 'lit' }),
    arrowHead(tip, at(0, 1), scale.px * 18, { part: 'pointer', state: 'lit' }),
    label(at(0, RIM + scale.mark * 3 + scale.text), `wheel at ${degreesText(reading)}`, scale.text * 1.2, {
      part: 'pointer',
    }),
  ];
}

/** Throw, rod and piston; the axis of the cylinder stands upright. */
function crankOf({ reading, top, throwOverRod }: WheelShown, turn: number): readonly Shape[] {
  const hub = circle(CENTRE, 5, 'visible', { fill: 'metal' });
  if (top === undefined || throwOverRod === undefined) return [hub];
  const past = turn * (reading - top);
  const pin = polar(CENTRE, THROW, past);
  const rod = Math.min(THROW / throwOverRod, RING.inner - THROW - 16);
  const high = -pin.y + Math.sqrt(Math.max(0, rod ** 2 - pin.x ** 2));
  const wrist = at(0, -high);
  return [
    circle(CENTRE, THROW, 'centre'),
    line(at(0, THROW + 10), at(0, -RING.inner + 2), 'centre'),
    polygon(rectangle(-17, wrist.y - 8, 34, 18), 'visible', { fill: 'gasket', part: 'piston' }),
    line(CENTRE, pin, 'visible', { part: 'throw' }),
    line(pin, wrist, 'visible', { part: 'rod' }),
    hub,
    circle(pin, 4, 'visible', { fill: 'metal', part: 'crankpin' }),
    circle(plus(wrist, at(0, 0)), 3, 'visible', { fill: 'void', part: 'pin' }),
  ];
}

function words({ reading, top, marks }: WheelShown): readonly string[] {
  const count = (kind: WheelMark['kind']) => marks.filter((one) => one.kind === kind).length;
  const next = marks.filter(({ kind }) => kind === 'next').map((one) => degreesText(within(one.reading)));
  return [
    `The wheel reads ${degreesText(reading)} under the pointer.`,
    top === undefined
      ? 'Its true top dead centre is not found yet.'
      : `That is ${fromDeadCentre(within(reading - top)).words} dead centre; at true top it reads ${degreesText(top)}.`,
    count('read') + count('off') > 0 ? `Read at ${count('read') + count('off')} places.` : '',
    count('off') > 0 ? `${count('off')} of them look wrong and are crossed.` : '',
    next.length > 0 ? `Places that would help most: ${next.join(', ')}.` : '',
  ];
}
const degreesText = (degrees: number): string => `${Math.round(degrees * 100) / 100}°`;
