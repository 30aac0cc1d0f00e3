import { marginOnBaseCircle, type OpenWindow, openWindows } from '../calc/cam/index.js';
import type { CamEvents, CylinderNumber, Engine, ValveKind } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import { compose } from './compose.js';
import { crankPose, strokeWord } from './crank-pose.js';
import type { Figure, MarkState, Point, Shape, Touch } from './figure.js';
import { firingSentence } from './firing-words.js';
import { at, inDegrees, polar, signed, within } from './geometry.js';
import { markShapes, stateSentences, withState } from './marks.js';
import type { CamDialOptions, Marks } from './options.js';
import { arc, arrowHead, circle, label, line, polygon, ringSector, turnArrow } from './shapes.js';
import { type Scale, scaleFor } from './sheet-scale.js';

const CENTRE = at(0, 0);
const WIDTH = 348;
/** Rings from the middle outward: strokes, exhaust, intake, then the cylinders. mm, 348 across. */
const RING = { hub: 7, exhaust: [92, 110], intake: [112, 130], rim: 133, cylinders: 153 } as const;
const KINDS: readonly ValveKind[] = ['intake', 'exhaust'];

interface Marker {
  readonly cylinder: CylinderNumber;
  readonly phase: number;
  readonly state: MarkState;
  /** Steps outward where several cylinders share a place. */
  readonly lane: number;
  readonly chosen: boolean;
  /** Distance of the marker from the centre, and of the next lane from this one. */
  readonly radius: number;
}

/**
 * One cylinder's cycle of 720 crank degrees once round: firing TDC at the top, clockwise. The bands show when each valve is open and,
 * dashed, the margin in which it must not be set. Each cylinder stands outside at the point of its own cycle where it is at
 * `crankAngle` [rad, from firing TDC of cylinder 1]. `events` are seat events; `marks` and touches by cylinder number.
 */
export function camDial(
  engine: Engine,
  crankAngle: Angle,
  events: CamEvents | undefined,
  margin: Angle,
  marks: Marks = {},
  options: CamDialOptions = {},
): Figure {
  const scale = scaleFor(WIDTH, options);
  const pose = crankPose(engine, crankAngle);
  const phases = [...pose.poses.values()].flatMap(({ cylinder, phase }) =>
    phase === undefined ? [] : [{ cylinder, phase }],
  );
  // A mark has its number outside of it, so its lane is wider than that of a plain number.
  const lane = scale.mark * (Object.keys(marks).length > 0 ? 4 : 2.2);
  const markers = laned(phases, scale).map(
    (one): Marker => ({
      ...one,
      state: marks[String(one.cylinder)] ?? 'idle',
      chosen: one.cylinder === options.cylinder,
      radius: RING.cylinders + one.lane * lane,
    }),
  );
  const outermost = Math.max(RING.cylinders, ...markers.map((marker) => marker.radius));
  const under = outermost + scale.mark * 1.4 + scale.text * 2;
  const windows = events === undefined ? undefined : openWindows(events);
  const words = `crank ${rounded(within(inDegrees(crankAngle), 720))}\u00b0`;
  return compose({
    title: `${engine.name}: cam dial at ${words}`,
    description: [
      'One cycle of 720 crank degrees once round, firing TDC at the top, clockwise.',
      windows === undefined
        ? 'The cam events are not stated: no open windows are drawn.'
        : KINDS.map((kind) => windowWords(kind, windows[kind])).join(' '),
      windows === undefined ? '' : `The margin is ${rounded(inDegrees(margin))}\u00b0 on both sides of each window.`,
      ...markers.map((marker) => `${sentence(markerWords(marker, windows, margin))}.`),
      stateSentences(markers.map((marker) => ({ name: `cylinder ${marker.cylinder}`, state: marker.state }))),
      pose.note,
    ],
    shapes: [
      ...dialFace(scale),
      ...(windows === undefined ? [] : KINDS.flatMap((kind) => band(kind, windows[kind], inDegrees(margin), scale))),
      ...markers.flatMap((marker) => markerShapes(marker, scale)),
      label(
        at(0, under),
        windows === undefined ? `${words}, cam not stated` : `${words}, margin ${rounded(inDegrees(margin))}\u00b0`,
        scale.text,
      ),
      label(at(0, under + scale.text * 1.35), firingSentence(pose), scale.text),
    ],
    touches: markers.map((marker) => touch(marker, windows, margin, scale)),
    frame: [circle(CENTRE, RING.cylinders + scale.reach, 'thin')],
    margin: scale.margin,
    leastWidth: WIDTH,
  });
}
const rounded = (degrees: number): string => String(Math.round(degrees * 10) / 10);
const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
/** 720 crank degrees are one turn of the dial, as they are of the cam. */
const onDial = (crankDegrees: number): number => crankDegrees / 2;

/** Cylinders too near each other on the rim move one lane outward. */
function laned(
  phases: readonly { readonly cylinder: CylinderNumber; readonly phase: number }[],
  scale: Scale,
): readonly { readonly cylinder: CylinderNumber; readonly phase: number; readonly lane: number }[] {
  const room = inDegrees((scale.mark * 2.3) / RING.cylinders);
  const placed: { cylinder: CylinderNumber; phase: number; lane: number }[] = [];
  for (const one of phases) {
    const near = placed.filter((other) => Math.abs(signed(onDial(other.phase) - onDial(one.phase))) < room);
    const lane = [0, 1, 2, 3].find((free) => near.every((other) => other.lane !== free)) ?? near.length;
    placed.push({ ...one, lane });
  }
  return placed;
}
function dialFace(scale: Scale): readonly Shape[] {
  const word = (text: string, x: number, y: number) => label(at(x, y), text, scale.small, { part: 'dial' });
  const edge = RING.exhaust[0] - 5 - scale.small * 0.6;
  return [
    circle(CENTRE, RING.rim, 'visible', { fill: 'metal', part: 'dial' }),
    circle(CENTRE, RING.exhaust[0] - 2, 'thin', { fill: 'void', part: 'dial' }),
    ...[0, 90, 180, 270].map((turn) => line(polar(CENTRE, RING.hub, turn), polar(CENTRE, RING.rim, turn), 'centre')),
    circle(CENTRE, RING.hub, 'visible', { fill: 'void', part: 'dial' }),
    word('firing TDC', 0, -edge),
    word('TDC', 0, edge),
    word('BDC', edge - scale.small * 0.6, 0),
    word('BDC', scale.small * 0.6 - edge, 0),
    word('power', 42, -28),
    word('exhaust', 42, 28),
    word('intake', -42, 28),
    word('compression', -43, -28),
    ...turnArrow(CENTRE, 20, 200, 330, scale.px * 9, { part: 'direction' }),
  ];
}
function band(kind: ValveKind, window: OpenWindow, margin: number, scale: Scale): readonly Shape[] {
  const [inner, outer] = RING[kind];
  const [opens, closes] = [onDial(inDegrees(window.opens)), onDial(inDegrees(window.closes))];
  const wide = onDial(margin);
  const part = `${kind} window`;
  const zone = (from: number, to: number): Shape =>
    polygon(ringSector(CENTRE, inner, outer, from, to), 'hidden', { part: `${kind} margin` });
  return [
    arc(CENTRE, (inner + outer) / 2, closes + wide, opens - wide + 360, 'thin', { part: `${kind} on base circle` }),
    ...(wide > 0.01 ? [zone(opens - wide, opens), zone(closes, closes + wide)] : []),
    polygon(ringSector(CENTRE, inner, outer, opens, closes), 'visible', { fill: 'gasket', part }),
    label(
      polar(CENTRE, (inner + outer) / 2, (opens + closes) / 2),
      kind === 'intake' ? 'I open' : 'E open',
      scale.small,
      { part },
    ),
  ];
}
const markerAt = (marker: Marker): Point => polar(CENTRE, marker.radius, onDial(marker.phase));
function markerShapes(marker: Marker, scale: Scale): readonly Shape[] {
  const part = String(marker.cylinder);
  const turn = onDial(marker.phase);
  const centre = markerAt(marker);
  const tip = polar(CENTRE, RING.rim, turn);
  const inward = { x: -centre.x, y: -centre.y };
  const plain = marker.state === 'idle';
  const number = label(plain ? centre : polar(centre, scale.mark * 1.4 + scale.text * 0.6, turn), part, scale.text, {
    part,
    state: marker.state,
  });
  const mark = plain
    ? [circle(centre, scale.mark * 1.05, marker.chosen ? 'visible' : 'thin', { fill: 'void', part })]
    : markShapes(centre, scale.mark * 0.9, marker.state, part);
  const hand = marker.chosen
    ? [line(polar(CENTRE, RING.exhaust[0], turn), tip, 'visible', { part, state: 'lit' })]
    : [];
  return [
    line(tip, centre, 'thin', { part }),
    arrowHead(tip, inward, scale.px * (marker.chosen ? 14 : 9), { part }),
    ...hand,
    ...mark,
    number,
  ];
}
function windowWords(kind: ValveKind, window: OpenWindow): string {
  return `${sentence(kind)} open from ${rounded(inDegrees(window.opens))}\u00b0 to ${rounded(inDegrees(window.closes))}\u00b0 after firing TDC.`;
}
/** "cylinder 3, 180° after firing TDC: intake may be set, exhaust is open" */
function markerWords(
  marker: Marker,
  windows: Readonly<Record<ValveKind, OpenWindow>> | undefined,
  margin: Angle,
): string {
  const place = `cylinder ${marker.cylinder}, ${rounded(marker.phase)}\u00b0 after firing TDC, ${strokeWord(marker.phase)}`;
  if (windows === undefined) return place;
  const phase = ((marker.phase * Math.PI) / 180) as Angle;
  const states = KINDS.map((kind) => `${kind} ${verdict(marginOnBaseCircle(windows[kind], phase), margin)}`);
  return `${place}: ${states.join(', ')}`;
}
/** Rounding dust of a whole number of degrees must not decide: the margin is inclusive. */
const DUST = 1e-9;
function verdict(away: number, margin: number): string {
  if (away < -DUST) return 'is open';
  return away + DUST >= margin ? 'may be set' : 'is too near its window';
}
function touch(
  marker: Marker,
  windows: Readonly<Record<ValveKind, OpenWindow>> | undefined,
  margin: Angle,
  scale: Scale,
): Touch {
  const name = withState(markerWords(marker, windows, margin), marker.state);
  return { part: String(marker.cylinder), name, centre: markerAt(marker), reach: scale.reach };
}
