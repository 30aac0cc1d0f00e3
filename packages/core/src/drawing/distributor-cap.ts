/** Cap of the distributor from above: posts in the order in which the rotor passes them, rotor at the post of cylinder one. */
import type { CylinderNumber } from '../engine/index.js';
import { compose, listed } from './compose.js';
import type { Figure, Shape } from './figure.js';
import { at, polar } from './geometry.js';
import type { Shown } from './options.js';
import { arrowHead, circle, label, line, polygon, turnArrow } from './shapes.js';
import { type Scale, scaleFor } from './sheet-scale.js';

export interface CapShown {
  /** In the order of the rotor; `past` the first post in degrees the way that the rotor runs. */
  readonly posts: readonly { readonly cylinder: CylinderNumber; readonly past: number }[];
  /** Absent: not known; drawn clockwise and said so. */
  readonly rotor?: 'clockwise' | 'anticlockwise';
  /** Of the first post, clockwise from the front of the engine; absent: not known, drawn straight up. */
  readonly firstAt?: number;
}

const CENTRE = at(0, 0);
const WIDTH = 300;
const CAP = 100;
const POST = { ring: 72, radius: 11 } as const;
const ROTOR = { tip: 56, half: 8 } as const;

/** The front of the engine lies at the top of the page. With one post the cap has nothing to say and is drawn all the same. */
export function distributorCap(shown: CapShown, options: Shown = {}): Figure {
  const scale = scaleFor(WIDTH, options);
  const sense = shown.rotor === 'anticlockwise' ? -1 : 1;
  const first = shown.firstAt ?? 0;
  const heading = (past: number): number => first + sense * past;
  return compose({
    title: 'Distributor cap from above',
    description: words(shown),
    shapes: [
      circle(CENTRE, CAP, 'visible', { fill: 'metal', part: 'cap' }),
      ...shown.posts.flatMap((post, index) => postOf(post.cylinder, index, heading(post.past), scale)),
      ...rotor(first),
      ...(shown.rotor === undefined
        ? []
        : turnArrow(CENTRE, 38, first + sense * 30, first + sense * 100, scale.px * 12, { part: 'direction' })),
      ...front(shown, scale),
    ],
    margin: scale.margin,
    leastWidth: WIDTH,
  });
}

/** A post with its cylinder outside the cap; the first one is marked by the arrow of the rotor. */
function postOf(cylinder: CylinderNumber, index: number, towards: number, scale: Scale): readonly Shape[] {
  const part = `post-${cylinder}`;
  return [
    circle(polar(CENTRE, POST.ring, towards), POST.radius, 'visible', {
      fill: 'void',
      part,
      ...(index === 0 && { state: 'lit' as const }),
    }),
    label(polar(CENTRE, CAP + scale.text * 0.9, towards), String(cylinder), scale.text * 1.2, { part }),
  ];
}

function rotor(towards: number): readonly Shape[] {
  const side = (turn: number, out: number) => polar(polar(CENTRE, out, towards), ROTOR.half, towards + turn);
  return [
    polygon([side(90, 0), side(90, ROTOR.tip - 16), side(-90, ROTOR.tip - 16), side(-90, 0)], 'visible', {
      fill: 'gasket',
      part: 'rotor',
    }),
    arrowHead(polar(CENTRE, ROTOR.tip, towards), polar(CENTRE, 1, towards), 18, { part: 'rotor', state: 'lit' }),
    circle(CENTRE, 10, 'visible', { fill: 'metal', part: 'rotor' }),
  ];
}

function front({ firstAt }: CapShown, scale: Scale): readonly Shape[] {
  if (firstAt === undefined) return [];
  const y = -CAP - scale.text * 2.2;
  return [
    line(at(0, y + scale.text * 1.1), at(0, y + scale.text * 0.7), 'thin', { part: 'front' }),
    label(at(0, y), 'front of the engine', scale.small, { part: 'front' }),
  ];
}

function words({ posts, rotor: sense, firstAt }: CapShown): readonly string[] {
  const order = posts.map(({ cylinder }) => cylinder);
  return [
    `The rotor points to the post of cylinder ${order[0] ?? 'one'}.`,
    sense === undefined
      ? 'Which way it runs is not known; the leads are drawn clockwise.'
      : `It runs ${sense} seen from above, and passes cylinders ${listed(order)} in this order.`,
    firstAt === undefined ? 'Where the first post stands on the engine is not known; it is drawn at the top.' : '',
  ];
}
