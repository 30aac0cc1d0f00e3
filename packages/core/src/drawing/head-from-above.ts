import { type Engine, type Head, type Joint, jointById, jointsOfHead, valveKey } from '../engine/index.js';
import { compose } from './compose.js';
import { type Box, labelBox, overlap } from './extent.js';
import type { Figure, MarkState, Shape, Touch } from './figure.js';
import { hull } from './geometry.js';
import { frontWords, type HeadPlan, headOf, headPlan, millimetres, outlineBox, surroundings } from './head-plan.js';
import { type PlacedHole, placeHoles } from './hole-places.js';
import { markBox, placeLabels, type Wanted } from './lettering.js';
import { markReach, markShapes, stateSentences, withState } from './marks.js';
import type { HeadOptions, Marks } from './options.js';
import { centreCross, circle, label, line, polygon } from './shapes.js';

/** A hole with what is known of its turn. */
interface Turn extends PlacedHole {
  readonly state: MarkState;
  /** Place in the visiting order, from 1. */
  readonly turn?: number;
}

/**
 * A head seen from above its bank: outline, bores, chambers, valves, and every fastener hole with its id, its place in the
 * visiting order and its mark. `marks` by hole id. Holes without a stated place are laid out in rows and the description says so.
 */
export function headFromAbove(engine: Engine, headId: string, marks: Marks = {}, options: HeadOptions = {}): Figure {
  const head = headOf(engine, headId);
  const joint = options.joint === undefined ? jointsOfHead(engine, headId)[0] : jointById(engine, options.joint);
  const placed = placeHoles(head, joint?.holes ?? []);
  const plan = headPlan(engine, head, placed.holes, options);
  const order = options.order ?? joint?.order?.holes ?? [];
  const turns = placed.holes.map((hole) => withTurn(hole, order, marks));
  const around = surroundings(plan);
  const holeBoxes = turns.map((turn) => markBox(plan.page(turn), plan.scale.mark * markReach(turn.state)));
  const valves = valveShapes(plan).filter((shape) => isFree(shape, holeBoxes));
  const holes = turns.flatMap((turn) => holeShapes(plan, turn));
  const taken = [
    ...around.boxes,
    ...valves.flatMap((shape) => (shape.kind === 'label' ? [labelBox(shape)] : [])),
    ...holeBoxes,
  ];
  const letters = placeLabels(wantedLabels(plan, turns), taken, outlineBox(plan));
  return compose({
    title: `${head.name} from above`,
    description: [...describe(plan, joint, turns, placed.note), roomWords(letters.leftOut)],
    shapes: [...headShapes(plan), ...valves, ...around.shapes, ...holes, ...letters.shapes],
    touches: turns.map((turn) => touch(plan, turn, order.length)),
    margin: plan.scale.margin,
    leastWidth: plan.leastWidth,
  });
}
/** A valve letter gives way to the mark of a hole. */
const isFree = (shape: Shape, holes: readonly Box[]): boolean =>
  shape.kind !== 'label' || !holes.some((box) => overlap(box, labelBox(shape)));
function withTurn(hole: PlacedHole, order: readonly string[], marks: Marks): Turn {
  const turn = order.indexOf(hole.id) + 1;
  return { ...hole, state: marks[hole.id] ?? 'idle', ...(turn > 0 ? { turn } : {}) };
}

function headShapes(plan: HeadPlan): readonly Shape[] {
  const { head, page, outline, bore, length } = plan;
  const centres = Object.entries(head.cylinderCentres).map(([cylinder, place]) => ({
    cylinder,
    ...millimetres(place),
  }));
  const y = centres[0]?.y ?? 0;
  return [
    polygon(outline, 'visible', { fill: 'metal', part: head.id }),
    line(page({ x: -length * 0.01, y }), page({ x: length * 1.01, y }), 'centre'),
    ...centres.flatMap((centre) => [
      circle(page(centre), bore / 2, 'hidden', { part: `bore ${centre.cylinder}` }),
      line(
        page({ x: centre.x, y: centre.y - bore * 0.56 }),
        page({ x: centre.x, y: centre.y + bore * 0.56 }),
        'centre',
      ),
    ]),
  ];
}
/** Chamber and valves of each cylinder; valve letters where they are big enough to be read. */
function valveShapes(plan: HeadPlan): readonly Shape[] {
  const { head, page, bore, scale } = plan;
  const valves = head.valves.map((valve) => ({
    valve,
    centre: page(millimetres(valve.at)),
    radius: valve.diameter !== undefined && valve.diameter > 0 ? valve.diameter * 500 : bore * 0.17,
  }));
  const chambers = head.cylinders.flatMap((cylinder) => {
    const [one, two, ...more] = valves.filter((each) => each.valve.cylinder === cylinder);
    if (one === undefined || two === undefined || more.length > 0) return [];
    const rim = bore * 0.035;
    const outline = hull(one.centre, one.radius + rim, two.centre, two.radius + rim);
    return [polygon(outline, 'thin', { fill: 'void', part: `chamber ${cylinder}` })];
  });
  const letters = valves.filter((each) => each.radius > scale.small * 0.55);
  return [
    ...chambers,
    ...valves.map((each) =>
      circle(each.centre, each.radius, 'thin', { fill: 'void', part: `valve ${valveKey(each.valve)}` }),
    ),
    ...letters.map((each) => label(each.centre, each.valve.kind === 'intake' ? 'I' : 'E', scale.small)),
  ];
}
function holeShapes({ page, scale }: HeadPlan, hole: Turn): readonly Shape[] {
  const centre = page(hole);
  const cross = hole.state === 'idle' ? centreCross(centre, scale.mark * 0.5) : [];
  return [...markShapes(centre, scale.mark, hole.state, hole.id), ...cross];
}
/** Ids always; the place in the order too where it differs from the id and finds room. */
function wantedLabels({ page, scale }: HeadPlan, turns: readonly Turn[]): readonly Wanted[] {
  const same = turns.every((turn) => turn.turn === undefined || String(turn.turn) === turn.id);
  return turns.flatMap((turn) => {
    const common = { centre: page(turn), clear: scale.mark * markReach(turn.state), part: turn.id };
    const id = { ...common, text: turn.id, size: scale.text, must: true };
    if (same || turn.turn === undefined) return [id];
    return [id, { ...common, text: ordinal(turn.turn), size: scale.small, must: false }];
  });
}
/** 1st, 2nd, 3rd, 4th: not to be taken for an id. */
export function ordinal(n: number): string {
  const teen = n % 100 > 10 && n % 100 < 14;
  return `${n}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')}`;
}
function touch({ page, scale }: HeadPlan, hole: Turn, count: number): Touch {
  const place = hole.turn === undefined ? '' : `, ${hole.turn} of ${count} in order`;
  return {
    part: hole.id,
    name: withState(`hole ${hole.id}${place}`, hole.state),
    centre: page(hole),
    reach: scale.reach,
  };
}
function describe(plan: HeadPlan, joint: Joint | undefined, turns: readonly Turn[], note: string): readonly string[] {
  const { head, front } = plan;
  const order = turns
    .filter((turn) => turn.turn !== undefined)
    .sort((a, b) => (a.turn ?? 0) - (b.turn ?? 0))
    .map((turn) => turn.id);
  return [
    `${head.name} with cylinders ${head.cylinders.join(', ')}. ${frontWords(front)}`,
    joint === undefined ? 'The sheet gives no fasteners for this head.' : `${joint.name}: ${turns.length} holes.`,
    order.length === 0 ? '' : `Order: ${order.join(', ')}.`,
    stateSentences(turns.map((turn) => ({ name: `hole ${turn.id}`, state: turn.state }))),
    valveWords(head),
    note,
    'The exhaust side is drawn on the outer side of its bank.',
  ];
}
const roomWords = (leftOut: readonly string[]): string =>
  leftOut.length === 0 ? '' : `Not written for want of room: ${leftOut.join(', ')}.`;
const valveWords = (head: Head): string =>
  head.valves.length === 0 ? 'The sheet gives no valve places.' : `${head.valves.length} valves; I intake, E exhaust.`;
