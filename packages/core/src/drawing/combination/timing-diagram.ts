/** Timing diagram: two turns of the crank as a spiral, with the time that each valve is open. */
import type { ValveKind } from '../../engine/index.js';
import { compose } from '../compose.js';
import { type Box, boxesAlong, labelBox, shapeBox } from '../extent.js';
import type { Figure, Fill, LineRole, Point, Shape } from '../figure.js';
import { at, polar } from '../geometry.js';
import { placeLabelsRather, type Wanted } from '../lettering.js';
import type { Shown } from '../options.js';
import { circle, label, line, polygon, polyline, turnArrow } from '../shapes.js';
import { type Scale, scaleFor } from '../sheet-scale.js';
import { fromDeadCentre } from './dead-centre-words.js';

/** A valve open from one crank angle to another, in degrees after the firing top dead centre, 0 to 720. */
export interface OpenArc {
  readonly kind: ValveKind;
  readonly opens: number;
  readonly closes: number;
  /** "from seat to seat", "at 1.27 mm of lift". */
  readonly basis: string;
}
export interface TimingShown {
  readonly title: string;
  /** The first basis is drawn as a band with its events named, a further one as a line within it. */
  readonly arcs: readonly OpenArc[];
  readonly overlap?: { readonly from: number; readonly to: number };
  readonly rotation: 'clockwise' | 'anticlockwise';
}

const CENTRE = at(0, 0);
const WIDTH = 320;
/** Radius at the firing top, growth of it in a turn, and half width of a band. mm. */
const SPIRAL = { start: 42, turn: 44, band: 8 } as const;
const CYCLE = 720;
const CRANK = circle(CENTRE, 6, 'visible', { fill: 'void' });
/** In pieces, so that the boxes along it are short. */
const HALF_TURNS = [0, 180, 360, 540];
/** Which way the crank turns: radius [mm], and from where to where; on the side where no valve opens or closes. */
const ARROW = { radius: SPIRAL.start * 0.55, from: 230, to: 340 } as const;
/** Where the overlap is told: the free room under the crank. mm. */
const MIDDLE = 28;
const LETTERS: Readonly<Record<ValveKind, string>> = { intake: 'I', exhaust: 'E' };

/**
 * Spiral of two crank turns, firing top dead centre at its inner end, tops above and bottoms below. The exhaust runs on the inner side of
 * the line and the intake on the outer one, so that both are seen where they overlap.
 */
export function timingDiagram(shown: TimingShown, options: Shown = {}): Figure {
  const scale = scaleFor(WIDTH, options);
  const turn = shown.rotation === 'clockwise' ? 1 : -1;
  const main = shown.arcs.filter(({ basis }) => basis === shown.arcs[0]?.basis);
  const others = shown.arcs.filter((arc) => !main.includes(arc));
  const bands = main.flatMap((arc) => band(arc, turn));
  const lines = others.map((arc) => along(arc, turn, 'hidden'));
  const face = faceOf(shown, turn, scale);
  const overlap = shown.overlap === undefined ? [] : overlapShapes(shown.overlap, turn);
  const names = placeLabelsRather(
    main.flatMap((arc) => eventNames(arc, turn, scale)),
    [...[...bands, ...lines].flatMap(boxesOf), ...face.letters.map(shapeBox)],
    [
      ...HALF_TURNS.flatMap((from) => boxesAlong(run(from, from + 180, 0, turn))),
      ...boxesAlong(arrowRun(turn)),
      shapeBox(CRANK),
    ],
  );
  return compose({
    title: shown.title,
    description: words(shown),
    shapes: [...face.shapes, ...bands, ...overlap, ...lines, ...face.letters, ...names.shapes],
    margin: scale.margin,
    leastWidth: WIDTH + 2 * scale.margin,
  });
}

const radiusAt = (degrees: number): number => SPIRAL.start + (SPIRAL.turn * degrees) / 360;
const spot = (degrees: number, off: number, turn: number): Point =>
  polar(CENTRE, radiusAt(degrees) + off, turn * degrees);

/** Points along the spiral, at a distance from its line. */
function run(from: number, to: number, off: number, turn: number): readonly Point[] {
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / 5));
  return Array.from({ length: steps + 1 }, (_, n) => spot(from + ((to - from) * n) / steps, off, turn));
}
const arrowRun = (turn: number): readonly Point[] =>
  Array.from({ length: 12 }, (_, n) =>
    polar(CENTRE, ARROW.radius, turn * (ARROW.from + ((ARROW.to - ARROW.from) * n) / 11)),
  );
const sideOf = (kind: ValveKind): number => (kind === 'intake' ? 1 : -1);
const FILLS: Readonly<Record<ValveKind, Fill>> = { intake: 'gasket', exhaust: 'metal' };

/** Open time of a valve as a band on its side of the spiral. */
function band({ kind, opens, closes }: OpenArc, turn: number): readonly Shape[] {
  const far = sideOf(kind) * SPIRAL.band;
  const outline = [...run(opens, closes, 0, turn), ...run(closes, opens, far, turn)];
  return [polygon(outline, 'visible', { fill: FILLS[kind], part: `${kind} open` })];
}
/** A further basis: a line in the middle of the band. */
const along = ({ kind, opens, closes }: OpenArc, turn: number, role: LineRole): Shape =>
  polyline(run(opens, closes, (sideOf(kind) * SPIRAL.band) / 2, turn), role, { part: `${kind} open at lift` });

/** The overlap hatched across both bands. */
function overlapShapes({ from, to }: NonNullable<TimingShown['overlap']>, turn: number): readonly Shape[] {
  const strokes = Math.max(2, Math.round((to - from) / 6));
  return Array.from({ length: strokes }, (_, n) => {
    const degrees = from + ((n + 0.5) * (to - from)) / strokes;
    return line(spot(degrees - 1.5, -SPIRAL.band, turn), spot(degrees + 1.5, SPIRAL.band, turn), 'thin', {
      part: 'overlap',
    });
  });
}

function faceOf(
  { overlap }: TimingShown,
  turn: number,
  scale: Scale,
): { readonly shapes: readonly Shape[]; readonly letters: readonly Shape[] } {
  const rim = radiusAt(CYCLE) + SPIRAL.band;
  const out = rim + scale.small * 0.9;
  return {
    shapes: [
      ...[0, 90, 180, 270].map((degrees) => line(polar(CENTRE, 6, degrees), polar(CENTRE, rim, degrees), 'centre')),
      CRANK,
      polyline(run(0, CYCLE, 0, turn), 'thin'),
      ...turnArrow(CENTRE, ARROW.radius, turn * ARROW.from, turn * ARROW.to, scale.px * 10, { part: 'direction' }),
    ],
    letters: [
      label(polar(CENTRE, out, 0), 'top dead centre', scale.small),
      label(polar(CENTRE, out, 180), 'bottom dead centre', scale.small),
      label(polar(CENTRE, SPIRAL.start + scale.small * 0.75, 0), 'fires', scale.small),
      ...(overlap === undefined ? [] : overlapLetters(overlap, scale)),
    ],
  };
}

/** In two lines, so that they keep clear of the inner end of the spiral. */
const overlapLetters = ({ from, to }: NonNullable<TimingShown['overlap']>, { text }: Scale): readonly Shape[] =>
  ['overlap', `${Math.round(to - from)}°`].map((words, row) =>
    label(at(0, MIDDLE + row * text * 1.15), words, text, { part: 'overlap' }),
  );

function eventNames(arc: OpenArc, turn: number, scale: Scale): readonly Wanted[] {
  const name = (event: 'O' | 'C', degrees: number): Wanted => ({
    text: `${LETTERS[arc.kind]}${event} ${Math.round(fromDeadCentre(degrees).degrees)}°`,
    size: scale.text,
    centre: spot(degrees, (sideOf(arc.kind) * SPIRAL.band) / 2, turn),
    clear: SPIRAL.band * 0.6,
    part: `${arc.kind} open`,
    must: true,
  });
  return [name('O', arc.opens), name('C', arc.closes)];
}
/** What a label keeps clear of: bands and lines in short boxes. */
function boxesOf(shape: Shape): readonly Box[] {
  if (shape.kind === 'label') return [labelBox(shape)];
  return shape.kind === 'polyline' ? boxesAlong(shape.points) : [shapeBox(shape)];
}

function words({ arcs, overlap }: TimingShown): readonly string[] {
  if (arcs.length === 0) return ['The valve events are not known: no open times are drawn.'];
  return [
    'Two turns of the crank as a spiral: it fires at the inner end; tops above, bottoms below.',
    ...arcs.map(
      ({ kind, opens, closes, basis }) =>
        `${kind === 'intake' ? 'Intake' : 'Exhaust'} ${basis}: opens ${fromDeadCentre(opens).words}, closes ${fromDeadCentre(closes).words}, open for ${degreesText(closes - opens)}.`,
    ),
    overlap === undefined
      ? 'Both valves are never open together.'
      : `Both are open together for ${degreesText(overlap.to - overlap.from)} around the top dead centre.`,
  ];
}
const degreesText = (degrees: number): string => `${Math.round(degrees * 10) / 10}°`;
