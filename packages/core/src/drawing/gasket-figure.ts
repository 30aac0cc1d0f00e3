import type { Engine, Opening, OpeningKind } from '../engine/index.js';
import { compose } from './compose.js';
import { type Box, shapeBox } from './extent.js';
import type { Figure, Fill, MarkState, Point, Shape, Touch } from './figure.js';
import { at, plus } from './geometry.js';
import { frontWords, type HeadPlan, headOf, headPlan, millimetres, outlineBox, surroundings } from './head-plan.js';
import { markBox, placeLabels, type Wanted } from './lettering.js';
import { markReach, markShapes, stateSentences, withState } from './marks.js';
import type { Marks, PlanOptions } from './options.js';
import { centreCross, circle, line, polygon } from './shapes.js';
import { textLines } from './text-lines.js';

interface Hole {
  readonly opening: Opening;
  readonly centre: Point;
  /** As drawn, mm: never so small that it cannot be seen. */
  readonly radius: number;
  readonly state: MarkState;
}
const KIND_WORDS: Readonly<Record<OpeningKind, string>> = {
  bore: 'bore',
  water: 'water hole',
  oil: 'oil hole',
  pushrod: 'pushrod hole',
  bolt: 'bolt hole',
  dowel: 'dowel hole',
  'timing-drive': 'timing drive opening',
};

/**
 * A head gasket as it lies on the block, with every opening to touch and check, the front arrow, and which way is up.
 * `marks` by opening id. An id without room for its label is left out of the drawing; its touch still has the name.
 */
export function gasketFigure(engine: Engine, headId: string, marks: Marks = {}, options: PlanOptions = {}): Figure {
  const head = headOf(engine, headId);
  const { openings, wayUp } = head.gasket;
  const plan = headPlan(
    engine,
    head,
    openings.map((opening) => millimetres(opening.at)),
    options,
  );
  const holes = openings.map((opening) => placed(plan, opening, marks));
  const around = surroundings(plan);
  const letters = placeLabels(
    holes.flatMap((hole) => wanted(plan, hole)),
    [...around.boxes, ...holes.flatMap((hole) => takenBy(plan, hole))],
    outlineBox(plan),
  );
  const drawn = [
    polygon(plan.outline, 'visible', { fill: 'gasket', part: 'gasket' }),
    ...holes.flatMap((hole) => openingShapes(plan, hole)),
    ...around.shapes,
    ...letters.shapes,
  ];
  return compose({
    title: `Gasket of the ${head.name}`,
    description: [
      `Gasket of the ${head.name} as it lies on the block. ${frontWords(plan.front)} Way up: ${wayUp}.`,
      countWords(openings),
      stateSentences(holes.map((hole) => ({ name: openingName(hole.opening), state: hole.state }))),
      openings.length === 0 ? 'The sheet gives no openings of this gasket.' : '',
    ],
    shapes: [...drawn, ...wayUpLines(plan, drawn, wayUp)],
    touches: holes.map((hole) => touch(plan, hole)),
    margin: plan.scale.margin,
    leastWidth: plan.leastWidth,
  });
}
function placed(plan: HeadPlan, opening: Opening, marks: Marks): Hole {
  const least = plan.scale.px * 3.5;
  return {
    opening,
    centre: plan.page(millimetres(opening.at)),
    radius: Math.max(least, opening.diameter > 0 ? opening.diameter * 500 : 0),
    state: marks[opening.id] ?? 'idle',
  };
}
const reachOf = ({ scale }: HeadPlan, { radius, state }: Hole): number =>
  state === 'idle' ? radius : Math.max(radius, scale.mark * markReach(state));

/** Labels may stand in an open bore, but not on its mark. */
function takenBy(plan: HeadPlan, hole: Hole): readonly Box[] {
  if (hole.opening.kind !== 'bore') return [markBox(hole.centre, reachOf(plan, hole))];
  return hole.state === 'idle' ? [] : [markBox(hole.centre, plan.scale.mark * markReach(hole.state))];
}
function openingShapes(plan: HeadPlan, hole: Hole): readonly Shape[] {
  const { opening, centre, radius, state } = hole;
  const fill: Fill = opening.kind === 'water' || opening.kind === 'oil' ? opening.kind : 'void';
  const look = { part: opening.id, state, fill };
  const rim = circle(centre, radius, 'visible', look);
  const inside = [...kindShapes(hole), ...intentShapes(hole)];
  if (state === 'idle') return [rim, ...inside];
  return [rim, ...markShapes(centre, plan.scale.mark, state, opening.id)];
}
/** What the hole is for, by shape: cross for a bolt, inner ring for a dowel, dot for oil, level line for water, bars for a pushrod. */
function kindShapes({ opening, centre, radius }: Hole): readonly Shape[] {
  const look = { part: opening.id };
  const across = (y: number, half: number) =>
    line(plus(centre, at(-half * radius, y * radius)), plus(centre, at(half * radius, y * radius)), 'thin', look);
  switch (opening.kind) {
    case 'bolt':
      return centreCross(centre, radius * 1.5);
    case 'dowel':
      return [circle(centre, radius * 0.6, 'visible', look)];
    case 'oil':
      return [circle(centre, radius * 0.4, 'thin', { ...look, fill: 'mark' })];
    case 'water':
      return [across(0, 1)];
    case 'pushrod':
      return [across(-0.4, 0.9), across(0.4, 0.9)];
    default:
      return [];
  }
}
/** A metered hole has a dashed smaller one inside, a closed one a slash. */
function intentShapes({ opening, centre, radius }: Hole): readonly Shape[] {
  if (opening.intent === 'metered') return [circle(centre, radius * 0.5, 'hidden', { part: opening.id })];
  if (opening.intent === 'closed') {
    const corner = radius * 0.7;
    return [
      line(plus(centre, at(-corner, corner)), plus(centre, at(corner, -corner)), 'visible', { part: opening.id }),
    ];
  }
  return [];
}
/** A long id is written only where something is to be done or wrong there; the others are told by shape and by touch. */
function wanted(plan: HeadPlan, hole: Hole): readonly Wanted[] {
  const { opening, centre, state } = hole;
  const inBore = opening.kind === 'bore';
  const text = shortId(opening);
  const calls = state !== 'idle' && state !== 'done';
  if (!calls && text.length > MOST_LETTERS) return [];
  const clear = inBore ? (state === 'idle' ? 0 : plan.scale.mark * markReach(state)) : reachOf(plan, hole);
  return [{ text, size: plan.scale.small, centre, clear, part: opening.id, must: calls }];
}
const MOST_LETTERS = 6;
/** `bolt-13` is written `13`, as the head shows its hole; a bore by its cylinder. */
function shortId({ id, kind }: Opening): string {
  const number = /^(?:bolt|bore)[- ]?(\w+)$/i.exec(id)?.[1];
  return (kind === 'bolt' || kind === 'bore') && number !== undefined ? number : id;
}
function wayUpLines(plan: HeadPlan, drawn: readonly Shape[], wayUp: string): readonly Shape[] {
  const boxes = drawn.map(shapeBox);
  const [left, right] = [Math.min(...boxes.map((b) => b.left)), Math.max(...boxes.map((b) => b.right))];
  const bottom = Math.max(...boxes.map((b) => b.bottom));
  return textLines(`Up: ${wayUp}`, left, bottom + plan.scale.px * 4, right - left, plan.scale.small);
}
export function openingName(opening: Opening): string {
  const intent = { open: '', metered: ', metered', closed: ', closed as drawn' }[opening.intent];
  const kind = KIND_WORDS[opening.kind];
  const id = opening.id.toLowerCase().startsWith(opening.kind) ? opening.id : `${kind} ${opening.id}`;
  return `${id}${intent}`;
}
function touch(plan: HeadPlan, hole: Hole): Touch {
  const reach = hole.opening.kind === 'bore' ? Math.max(plan.scale.reach, hole.radius * 0.6) : plan.scale.reach;
  return { part: hole.opening.id, name: withState(openingName(hole.opening), hole.state), centre: hole.centre, reach };
}
function countWords(openings: readonly Opening[]): string {
  const counts = Object.entries(KIND_WORDS).flatMap(([kind, word]) => {
    const count = openings.filter((opening) => opening.kind === kind).length;
    return count === 0 ? [] : [`${count} ${word}${count > 1 ? 's' : ''}`];
  });
  return counts.length === 0 ? '' : `Openings: ${counts.join(', ')}.`;
}
