import type { CylinderNumber, Engine } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import { caseOutline } from './case-outline.js';
import { compose, listed } from './compose.js';
import { type CrankPose, crankPose, type Pose, pinAbove, strokeWord } from './crank-pose.js';
import { type Box, boundsOf, joined, overlap, shapeBox } from './extent.js';
import type { Figure, Point, Shape, Touch } from './figure.js';
import { firingSentence } from './firing-words.js';
import { at, heading, hull, inDegrees, plus, polar, signed, times, within } from './geometry.js';
import type { FrontViewOptions } from './options.js';
import {
  arrowHead,
  centreCross,
  circle,
  label,
  line,
  polygon,
  ringSector,
  roundedRectangle,
  turnArrow,
} from './shapes.js';
import { type Scale, scaleFor } from './sheet-scale.js';
import { type DrawnSizes, drawnSizes } from './sizes.js';

const CENTRE = at(0, 0);
interface View {
  readonly engine: Engine;
  readonly sizes: DrawnSizes;
  readonly crank: CrankPose;
  readonly shown: readonly Pose[];
  readonly bankAngles: readonly number[];
}
/** A point of a cylinder: `up` along its axis from the crank centre, `across` to the right of it seen from the front. */
const inBank = (bank: number, up: number, across: number): Point =>
  plus(times(heading(bank), up), times(heading(bank + 90), across));

/**
 * The engine seen from the front, cut through one cylinder of each bank, at a crank angle [rad] counted from firing TDC of
 * cylinder 1 in the running sense. The other cylinders show their crankpins. Sizes missing in the sheet are drawn in usual
 * proportion and the description says which.
 */
export function frontView(engine: Engine, crankAngle: Angle, options: FrontViewOptions = {}): Figure {
  const crank = crankPose(engine, crankAngle);
  const view: View = {
    engine,
    crank,
    sizes: drawnSizes(engine),
    shown: shownCylinders(engine, crank, options.cylinder),
    bankAngles: engine.layout.banks.map((bank) => inDegrees(bank.angle)),
  };
  const body = [...engineCase(view), ...runningGear(view)];
  const rough = boundsOf(body, [], 0);
  // A tall engine gets a wider page, so that it does not run off a phone screen.
  const scale = scaleFor(Math.max(rough.width, rough.height * 0.8), options);
  const shapes = [...body, ...damper(view, crankAngle, scale), ...lettering(view, crankAngle, scale)];
  return compose({
    title: `${engine.name}: front view`,
    description: describe(view, crankAngle),
    shapes,
    touches: view.shown.map((pose) => touch(view, pose, scale)),
    margin: scale.margin,
    leastWidth: rough.height * 0.8,
  });
}

/** One cylinder of each bank: the wanted one and its neighbours of the same row. */
function shownCylinders(engine: Engine, crank: CrankPose, wanted?: CylinderNumber): readonly Pose[] {
  const rows = engine.layout.banks.map((bank) =>
    engine.layout.cylinders.filter((each) => each.bank === bank.id).sort((a, b) => a.place - b.place),
  );
  const row = Math.max(0, ...rows.map((cylinders) => cylinders.findIndex((each) => each.number === wanted)));
  return rows.flatMap((cylinders) => {
    const cylinder = cylinders[Math.min(row, cylinders.length - 1)];
    const pose = cylinder === undefined ? undefined : crank.poses.get(cylinder.number);
    return pose === undefined ? [] : [pose];
  });
}

const caseRadius = ({ throw: r, bore }: DrawnSizes): number => r + bore * 0.44;
const damperRadius = (sizes: DrawnSizes): number => caseRadius(sizes) + sizes.bore * 0.24;

function engineCase(view: View): readonly Shape[] {
  const { sizes, bankAngles } = view;
  const wall = sizes.bore * 0.11;
  const inner = caseRadius(sizes);
  return [
    ...oilPan(view),
    ...bankAngles.flatMap((bank) => headOutline(view, bank)),
    ...caseOutline(bankAngles, sizes.bore / 2 + wall, inner + wall, sizes.deck).map((points) =>
      polygon(points, 'visible', { fill: 'metal', part: 'block' }),
    ),
    ...caseOutline(bankAngles, sizes.bore / 2, inner, sizes.deck).map((points) =>
      polygon(points, 'visible', { fill: 'void', part: 'block' }),
    ),
    ...bankAngles.flatMap((bank) => [
      line(inBank(bank, sizes.deck, -sizes.bore * 0.68), inBank(bank, sizes.deck, sizes.bore * 0.68), 'visible', {
        part: 'deck',
      }),
      line(inBank(bank, 0, 0), inBank(bank, sizes.deck + sizes.bore * 0.75, 0), 'centre'),
    ]),
  ];
}
/** The pan hangs below the crank whatever the banks do. */
function oilPan({ sizes }: View): readonly Shape[] {
  const half = caseRadius(sizes) * 0.86;
  const bottom = caseRadius(sizes) + sizes.bore * 0.42;
  const points = [at(-half, half * 0.5), at(-half * 0.9, bottom), at(half * 0.9, bottom), at(half, half * 0.5)];
  return [polygon(points, 'visible', { fill: 'metal', part: 'oil pan' })];
}
function headOutline(view: View, bank: number): readonly Shape[] {
  const { sizes } = view;
  const { bore, deck } = sizes;
  const place = (points: readonly Point[]) => points.map((p) => inBank(bank, deck - p.y, p.x));
  const head = place(roundedRectangle(-bore * 0.66, -bore * 0.62, bore * 1.32, bore * 0.62, bore * 0.05));
  const cover = place(roundedRectangle(-bore * 0.52, -bore * 0.92, bore * 1.04, bore * 0.36, bore * 0.14));
  const chamber = place([
    at(-bore * 0.42, 0),
    at(-bore * 0.1, -bore * 0.17),
    at(bore * 0.1, -bore * 0.17),
    at(bore * 0.42, 0),
  ]);
  return [
    polygon(cover, 'visible', { fill: 'metal', part: 'cover' }),
    polygon(head, 'visible', { fill: 'metal', part: 'head' }),
    polygon(chamber, 'thin', { fill: 'void', part: 'chamber' }),
    ...overheadCams(view, bank),
  ];
}

/** How many cams stand over a bank: the sheet does not say, so two for four or more valves over buckets or fingers. */
export function camsPerHead(engine: Engine): number {
  const gear = engine.valveGear;
  if (gear === undefined || gear.kind === 'pushrod') return 0;
  return gear.kind !== 'overhead-rocker' && gear.intakeValves + gear.exhaustValves >= 4 ? 2 : 1;
}
function overheadCams(view: View, bank: number): readonly Shape[] {
  const { bore, deck } = view.sizes;
  const spread = { 0: [], 1: [0], 2: [-0.27, 0.27] }[camsPerHead(view.engine)] ?? [];
  return spread.flatMap((across) => camEnd(inBank(bank, deck + bore * 0.74, bore * across), bore * 0.13, view));
}
/** The end of a camshaft with its key: the key turns once for two turns of the crank. */
function camEnd(centre: Point, radius: number, { crank }: View): readonly Shape[] {
  const phase = crank.poses.get(1)?.phase ?? 0;
  return [
    circle(centre, radius, 'visible', { fill: 'void', part: 'cam' }),
    circle(polar(centre, radius * 0.55, (crank.sense * phase) / 2), radius * 0.2, 'thin', {
      fill: 'mark',
      part: 'cam',
    }),
    ...centreCross(centre, radius * 1.3),
  ];
}
function blockCam(view: View): readonly Shape[] {
  const { sizes, bankAngles, engine } = view;
  if (engine.valveGear?.kind !== 'pushrod') return [];
  return camEnd(blockCamPlace(sizes, bankAngles), sizes.bore * 0.2, view);
}
/** In the vee, below the crank of an opposed engine, beside the cylinders of an inline one: where room is. */
function blockCamPlace(sizes: DrawnSizes, bankAngles: readonly number[]): Point {
  const away = caseRadius(sizes) + sizes.bore * 0.36;
  const [low, high] = [Math.min(...bankAngles), Math.max(...bankAngles)];
  if (bankAngles.length < 2) return inBank(low, sizes.throw + sizes.bore * 0.35, -sizes.bore * 0.86);
  if (high - low > 150) return at(0, away * 0.98);
  const needed = (sizes.bore * 0.61 + sizes.bore * 0.24) / Math.sin((((high - low) / 2) * Math.PI) / 180);
  return polar(CENTRE, Math.min(Math.max(away, needed), sizes.deck), (low + high) / 2);
}

function runningGear(view: View): readonly Shape[] {
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
function hiddenPins({ crank, shown }: View): readonly Pose[] {
  const seen = shown.map((pose) => pose.crankpin);
  return [...crank.poses.values()].filter(
    (pose) => !shown.includes(pose) && !seen.some((pin) => Math.abs(signed(pin - pose.crankpin)) < 1),
  );
}
/** Cylinder numbers of the hidden pins, those in one direction together. */
function pinNumbers(view: View, scale: Scale): readonly Shape[] {
  const together = new Map<number, CylinderNumber[]>();
  for (const pose of hiddenPins(view)) {
    const turn = Math.round(pose.crankpin) % 360;
    together.set(turn, [...(together.get(turn) ?? []), pose.cylinder]);
  }
  const drawn: Box[] = [];
  return [...together].flatMap(([turn, cylinders]) => {
    const number = label(polar(CENTRE, view.sizes.throw, turn), cylinders.join(' '), scale.small);
    const box = shapeBox(number);
    if (drawn.some((other) => overlap(box, other))) return [];
    drawn.push(box);
    return [number];
  });
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

/** The damper is drawn as a ring before the engine, with its notch and a pointer where no cylinder is in the way. */
function damper(view: View, crankAngle: Angle, scale: Scale): readonly Shape[] {
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
function pointerHeading(bankAngles: readonly number[]): number {
  const [low, high] = [Math.min(...bankAngles), Math.max(...bankAngles)];
  if (bankAngles.length < 2) return low + 90;
  return high - low > 150 ? 0 : high + 66;
}

function lettering(view: View, crankAngle: Angle, scale: Scale): readonly Shape[] {
  const { sizes, shown, engine, crank, bankAngles } = view;
  const pointer = pointerHeading(bankAngles);
  const outside = damperRadius(sizes) + scale.px * 15;
  const side = signed(pointer) > 20 ? 'start' : 'middle';
  const tdc = label(
    plus(polar(CENTRE, outside, pointer), at(0, side === 'middle' ? -scale.small * 0.4 : 0)),
    'TDC',
    scale.small,
    { anchor: side },
  );
  const numbers = shown.map((pose) =>
    label(
      inBank(pose.bank, pinAbove(sizes, pose.pastAxis) + sizes.crownHeight + scale.text * 0.75, 0),
      String(pose.cylinder),
      scale.text * 1.15,
      { part: `cylinder ${pose.cylinder}` },
    ),
  );
  const names = engine.layout.banks.map((bank, place) => bankName(view, bank.id, bankAngles[place] ?? 0, scale));
  const below = caseRadius(sizes) + sizes.bore * 0.42 + scale.text * 1.2;
  return [
    tdc,
    ...pinNumbers(view, scale),
    ...numbers,
    ...names,
    label(at(0, below), degreesWord(crankAngle), scale.text),
    label(at(0, below + scale.text * 1.3), firingSentence(crank), scale.text),
  ];
}
function bankName(view: View, id: string, bank: number, scale: Scale): Shape {
  const { engine } = view;
  const cylinders = engine.layout.cylinders.filter((each) => each.bank === id).sort((a, b) => a.place - b.place);
  const numbers = cylinders.map((each) => each.number).join(' ');
  const box = joined(headOutline(view, bank).map(shapeBox));
  const flat = Math.abs(heading(bank).y) < 0.4;
  // Above the head; for a lying bank further in, above its barrel, where the page is wide.
  const inward = flat ? -Math.sign(heading(bank).x) * view.sizes.bore * 0.8 : 0;
  const place = at((box.left + box.right) / 2 + inward, box.top - scale.small * 0.8);
  const text = engine.layout.banks.length > 1 ? `${id}: ${numbers}` : numbers;
  return label(place, text, scale.small, { part: `bank ${id}` });
}

const rounded = (degrees: number): string => String(Math.round(degrees * 10) / 10);
const degreesWord = (crankAngle: Angle): string => `crank ${rounded(within(inDegrees(crankAngle), 720))}\u00b0`;

function describe(view: View, crankAngle: Angle): readonly string[] {
  const { engine, crank, shown, sizes } = view;
  const { layout } = engine;
  const banks = layout.banks.map((bank) => bankWords(bank.id, inDegrees(bank.angle))).join('; ');
  return [
    `Seen from the front at ${degreesWord(crankAngle)} after firing TDC of cylinder 1, turning ${layout.rotation}.`,
    layout.form === 'inline' && layout.banks.length === 1 ? '' : `Banks: ${banks}.`,
    ...shown.map((pose) => pistonWords(sizes, pose)),
    `${capital(firingSentence(crank))}.`,
    `Drawn in section: cylinder ${listed(shown.map((pose) => pose.cylinder))}; of the others only the crankpins.`,
    engine.valveGear === undefined ? 'The valve gear is not stated: no cam is drawn.' : '',
    'Block, head, cover, pan, cam place and pointer place are drawn by assumption.',
    crank.note,
    sizes.note,
  ];
}
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
function bankWords(id: string, angle: number): string {
  if (Math.abs(angle) < 0.05) return `${id} upright`;
  return `${id} ${rounded(Math.abs(angle))}\u00b0 to the ${angle > 0 ? 'right' : 'left'}`;
}
function pistonWords(sizes: DrawnSizes, pose: Pose): string {
  const topAt = sizes.rod + sizes.throw;
  const top = Math.sqrt(topAt ** 2 - sizes.pinOffset ** 2);
  const drop = Math.max(0, top - pinAbove(sizes, pose.pastAxis));
  const where = drop < 0.05 ? 'at the top' : `${rounded(drop)} mm down`;
  const stroke = pose.phase === undefined ? '' : `, ${strokeWord(pose.phase)}`;
  return `Cylinder ${pose.cylinder}: piston ${where}${stroke}.`;
}
function touch({ sizes }: View, pose: Pose, scale: Scale): Touch {
  const name = `cylinder ${pose.cylinder}${pose.phase === undefined ? '' : `, ${strokeWord(pose.phase)}`}`;
  const middle = pinAbove(sizes, pose.pastAxis);
  return { part: `cylinder ${pose.cylinder}`, name, centre: inBank(pose.bank, middle, 0), reach: scale.reach };
}
