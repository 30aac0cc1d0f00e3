import {
  type AdjusterPlace,
  type CamEvents,
  type Engine,
  type ValveGearKind,
  type ValveId,
  valveName,
} from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import { compose } from './compose.js';
import { boundsOf } from './extent.js';
import type { Figure, Point, Shape } from './figure.js';
import { at, hull, inDegrees, plus, polar, times, within } from './geometry.js';
import { baseRadius, lobeOutline } from './lobe.js';
import type { Shown } from './options.js';
import { centreCross, circle, label, line, polygon, rectangle, turnArrow } from './shapes.js';
import { scaleFor } from './sheet-scale.js';
import { type ValveMotion, valveMotion } from './valve-motion.js';
import { lifter, nut, shortenedRod, VALVE_LENGTH, valveAssembly } from './valve-parts.js';

/** What each mechanism hands over for lettering: its shapes and where its parts stand. */
interface Drawn {
  readonly shapes: readonly Shape[];
  readonly names: readonly { readonly text: string; readonly at: Point; readonly anchor: 'start' | 'middle' | 'end' }[];
}
interface Setting {
  readonly motion: ValveMotion;
  readonly roller: number;
  readonly base: number;
  /** Running sense of the cam on the page. */
  readonly sense: 1 | -1;
  readonly adjuster: AdjusterPlace;
  readonly valve: ValveId;
  readonly headDiameter: number;
}
const KIND_WORDS: Readonly<Record<ValveGearKind, string>> = {
  pushrod: 'cam in the block, lifter, pushrod and rocker',
  'overhead-rocker': 'cam in the head and rocker',
  'overhead-finger': 'cam in the head over a finger',
  'overhead-bucket': 'cam in the head over a bucket',
};
const ADJUSTER_WORDS: Readonly<Record<AdjusterPlace, string>> = {
  'stud-nut': 'nut on the rocker stud',
  'pushrod-end-screw': 'screw at the pushrod end of the rocker',
  'valve-end-screw': 'screw at the valve end of the rocker',
  'shim-over-bucket': 'shim over the bucket',
  'shim-under-bucket': 'shim under the bucket',
  'finger-pivot': 'pivot of the finger',
  none: '',
};

/**
 * The gear of one valve in section, with cam, follower and valve where they stand at a crank angle [rad, from firing TDC of
 * cylinder 1]. `events` are seat events; without them, and without a lobe lift in the sheet, a usual cam is drawn and said.
 * Rod and stem lengths are schematic.
 */
export function valveGearSection(
  engine: Engine,
  valve: ValveId,
  crankAngle: Angle,
  events?: CamEvents,
  options: Shown = {},
): Figure {
  const gear = engine.valveGear;
  const kind = gear?.kind ?? 'overhead-bucket';
  const motion = valveMotion(engine, kind, valve, crankAngle, events);
  const roller = kind !== 'overhead-bucket' && gear?.follower === 'roller' ? 8.5 : 0;
  const setting: Setting = {
    motion,
    roller,
    base: baseRadius(motion.lobe),
    sense: engine.layout.rotation === 'clockwise' ? 1 : -1,
    adjuster: gear?.adjuster.place ?? 'none',
    valve,
    headDiameter: headDiameter(engine, valve),
  };
  const drawn = MECHANISMS[kind](setting);
  const frame = reachOfMotion(kind, setting);
  const rough = boundsOf(frame, [], 0);
  const leastWidth = rough.height * 0.72;
  const scale = scaleFor(Math.max(rough.width, leastWidth), options, 70);
  const words = [motion.state, events === undefined || motion.phase === undefined ? '(assumed)' : ''].join(' ').trim();
  const middle = rough.left + rough.width / 2;
  const lowest = Math.max(rough.top + rough.height, ...drawn.names.map((name) => name.at.y + scale.small * 0.6));
  const under = lowest + scale.text * 0.9;
  return compose({
    title: `Valve gear, ${valveName(engine, valve)}`,
    description: describe(engine, valve, kind, setting, crankAngle, words, gear === undefined),
    shapes: [
      ...drawn.shapes,
      ...drawn.names.map((name) => label(name.at, name.text, scale.small, { anchor: name.anchor })),
      label(at(middle, under), valveName(engine, valve), scale.text),
      label(at(middle, under + scale.text * 1.35), words, scale.text, { part: 'state' }),
    ],
    frame,
    margin: scale.margin,
    leastWidth,
  });
}
function headDiameter(engine: Engine, valve: ValveId): number {
  const found = engine.heads
    .flatMap((head) => head.valves)
    .find((each) => each.cylinder === valve.cylinder && each.kind === valve.kind && each.index === valve.index);
  const stated = found?.diameter === undefined ? 0 : found.diameter * 1000;
  return Math.min(56, Math.max(22, stated > 0 ? stated : 38));
}

/** The gear shut and at full lift, and the whole sweep of the nose: the page holds all of it, so that it stands still. */
function reachOfMotion(kind: ValveGearKind, setting: Setting): readonly Shape[] {
  const { motion } = setting;
  const ends = [
    { ...motion, pastNose: 180, lobeLift: 0, valveLift: 0 },
    { ...motion, pastNose: 0, lobeLift: motion.lobe.lift, valveLift: motion.fullLift },
    { ...motion, pastNose: 90, lobeLift: 0, valveLift: 0 },
    { ...motion, pastNose: -90, lobeLift: 0, valveLift: 0 },
  ];
  return ends.flatMap((end) => MECHANISMS[kind]({ ...setting, motion: end }).shapes);
}
/** A cam whose follower lies in the direction `toFollower` (page heading). */
function cam(centre: Point, toFollower: number, { motion, base, roller, sense }: Setting): readonly Shape[] {
  const nose = toFollower + sense * motion.pastNose;
  const look = { fill: 'metal', part: 'cam' } as const;
  const shaft = base * 0.42;
  return [
    polygon(lobeOutline(motion.lobe, base, centre, nose, roller), 'visible', look),
    circle(centre, shaft, 'thin', { part: 'cam' }),
    line(polar(centre, shaft, nose), polar(centre, base + motion.lobe.lift * 0.8, nose), 'centre'),
    ...centreCross(centre, shaft * 1.5),
    ...turnArrow(centre, base * 0.72, toFollower + 180 - sense * 40, toFollower + 180 + sense * 40, base * 0.26, {
      part: 'cam',
    }),
  ];
}
/** The rocker about its pivot; `down` is how far its valve end has gone. */
function rocker(
  pivot: Point,
  near: number,
  far: number,
  down: number,
): { readonly shapes: readonly Shape[]; readonly nearEnd: Point; readonly farEnd: Point } {
  const lean = Math.asin(Math.max(-0.6, Math.min(0.6, down / far)));
  const along = at(Math.cos(lean), Math.sin(lean));
  const nearEnd = plus(pivot, times(along, -near));
  const farEnd = plus(pivot, times(along, far));
  const body = (end: Point, radius: number): Shape =>
    polygon(hull(pivot, 9, end, radius), 'visible', { fill: 'metal', part: 'rocker' });
  return {
    shapes: [body(nearEnd, 5.5), body(farEnd, 5), circle(pivot, 5, 'visible', { fill: 'void', part: 'rocker pivot' })],
    nearEnd,
    farEnd,
  };
}
const TIP = 5;
const NEAR_ARM = 27;

/** Rocker, valve and adjuster, for both gears that have a rocker above its follower. */
function rockerAndValve(setting: Setting, pivot: Point): Drawn & { readonly nearEnd: Point } {
  const { motion, adjuster, valve } = setting;
  const far = NEAR_ARM * Math.min(2.2, Math.max(0.8, motion.ratio));
  const arm = rocker(pivot, NEAR_ARM, far, motion.valveLift - motion.fullLift / 2);
  const shutTip = pivot.y - motion.fullLift / 2 + TIP;
  const x = pivot.x + far;
  const assembly = valveAssembly({
    x,
    shutTip,
    lift: motion.valveLift,
    headDiameter: setting.headDiameter,
    kind: valve.kind,
  });
  const screws: Partial<Record<AdjusterPlace, Point>> = {
    'stud-nut': plus(pivot, at(0, -13)),
    'pushrod-end-screw': plus(arm.nearEnd, at(0, -7)),
    'valve-end-screw': plus(arm.farEnd, at(0, -7)),
  };
  const screw = screws[adjuster];
  return {
    shapes: [...assembly, ...arm.shapes, ...(screw === undefined ? [] : nut(screw, 'adjuster'))],
    nearEnd: arm.nearEnd,
    names: [
      ...(screw === undefined ? [] : [{ text: 'adjust here', at: plus(screw, at(0, -18)), anchor: 'middle' as const }]),
      { text: 'rocker', at: plus(pivot, at(0, 17)), anchor: 'middle' },
      { text: 'valve', at: at(x + 6, shutTip + VALVE_LENGTH + motion.fullLift + 9), anchor: 'start' },
      { text: 'spring', at: at(x + 20, shutTip + 26), anchor: 'start' },
    ],
  };
}
function pushrodGear(setting: Setting): Drawn {
  const { motion, base, roller } = setting;
  const contact = -(base + motion.lobeLift);
  const tappet = lifter(0, contact, roller);
  const restCup = tappet.cup.y + motion.lobeLift;
  const pivot = at(NEAR_ARM, restCup - 96 - motion.fullLift / motion.ratio / 2);
  const top = rockerAndValve(setting, pivot);
  return {
    shapes: [
      ...cam(at(0, 0), 0, setting),
      ...tappet.shapes,
      ...shortenedRod(plus(tappet.cup, at(0, -1)), plus(top.nearEnd, at(0, 4)), 3.6, 'pushrod'),
      ...top.shapes,
    ],
    names: [
      ...top.names,
      { text: 'cam', at: at(-base - motion.lobe.lift - 4, 4), anchor: 'end' },
      { text: 'lifter', at: at(-14, contact - 26), anchor: 'end' },
      { text: 'pushrod', at: at(-8, restCup - 40), anchor: 'end' },
    ],
  };
}
function overheadRockerGear(setting: Setting): Drawn {
  const { motion, base, roller } = setting;
  const pad = roller > 0 ? roller : TIP;
  const pivot = at(NEAR_ARM, -(base + pad) - motion.lobe.lift / 2);
  const top = rockerAndValve(setting, pivot);
  const wheel = roller > 0 ? [circle(top.nearEnd, roller, 'visible', { fill: 'void', part: 'roller' })] : [];
  return {
    // The rounded end of the rocker touches the lobe as a roller of its radius would.
    shapes: [...top.shapes, ...wheel, ...cam(at(0, 0), 0, { ...setting, roller: pad })],
    names: [...top.names, { text: 'cam', at: at(-base - motion.lobe.lift - 4, 4), anchor: 'end' }],
  };
}
function fingerGear(setting: Setting): Drawn {
  const { motion, base, roller, adjuster, valve } = setting;
  const arm = 46;
  const pad = roller > 0 ? roller : 11;
  const share = 1 / Math.min(2.4, Math.max(1.15, motion.ratio));
  const pivot = at(-arm, 0);
  const lean = Math.asin((motion.valveLift - motion.fullLift / 2) / arm);
  const on = (part: number, lift: number) => plus(pivot, at(arm * part * Math.cos(lift), arm * part * Math.sin(lift)));
  const rest = Math.asin(-motion.fullLift / 2 / arm);
  const contact = on(share, lean);
  const camCentre = plus(on(share, rest), at(0, -(base + pad)));
  const tip = on(1, lean);
  const assembly = valveAssembly({
    x: 0,
    shutTip: on(1, rest).y + TIP,
    lift: motion.valveLift,
    headDiameter: setting.headDiameter,
    kind: valve.kind,
  });
  const lit = adjuster === 'finger-pivot' ? ({ state: 'lit' } as const) : {};
  const post = polygon(rectangle(-arm - 6, 4, 12, 40), 'visible', { fill: 'metal', part: 'finger pivot', ...lit });
  return {
    shapes: [
      ...assembly,
      post,
      polygon(hull(pivot, 7.5, tip, TIP), 'visible', { fill: 'metal', part: 'finger' }),
      circle(pivot, 4, 'visible', { fill: 'void', part: 'finger pivot', ...lit }),
      circle(contact, pad, 'visible', { fill: roller > 0 ? 'void' : 'metal', part: roller > 0 ? 'roller' : 'pad' }),
      ...cam(camCentre, 180, { ...setting, roller: pad }),
    ],
    names: [
      { text: 'cam', at: plus(camCentre, at(base + motion.lobe.lift + 4, 0)), anchor: 'start' },
      { text: adjuster === 'finger-pivot' ? 'adjust here' : 'pivot', at: plus(pivot, at(-4, -14)), anchor: 'middle' },
      { text: 'finger', at: plus(tip, at(10, -6)), anchor: 'start' },
      { text: 'spring', at: at(18, 32), anchor: 'start' },
      { text: 'valve', at: at(6, on(1, rest).y + TIP + VALVE_LENGTH + motion.fullLift + 9), anchor: 'start' },
    ],
  };
}
function bucketGear(setting: Setting): Drawn {
  const { motion, base, adjuster, valve } = setting;
  const top = base + motion.lobeLift;
  const over = adjuster === 'shim-over-bucket' ? 3 : 0;
  const under = adjuster === 'shim-under-bucket' ? 3 : 0;
  const crown = 4;
  const half = 17;
  const shutTip = base + over + crown + under;
  const assembly = valveAssembly({
    x: 0,
    shutTip,
    lift: motion.valveLift,
    headDiameter: setting.headDiameter,
    kind: valve.kind,
  });
  const bucketTop = top + over;
  const bucket = [
    at(-half, bucketTop),
    at(half, bucketTop),
    at(half, bucketTop + 26),
    at(half - 3, bucketTop + 26),
    at(half - 3, bucketTop + crown),
    at(3 - half, bucketTop + crown),
    at(3 - half, bucketTop + 26),
    at(-half, bucketTop + 26),
  ];
  const shim = (y: number, width: number): Shape =>
    polygon(rectangle(-width, y, width * 2, 3), 'visible', { fill: 'gasket', part: 'shim', state: 'lit' });
  const shimAt = over > 0 ? top + 1.5 : bucketTop + crown + 1.5;
  return {
    shapes: [
      ...assembly,
      polygon(bucket, 'visible', { fill: 'metal', part: 'bucket' }),
      ...(over > 0 ? [shim(top, 14)] : []),
      ...(under > 0 ? [shim(bucketTop + crown, 5)] : []),
      ...cam(at(0, 0), 180, setting),
    ],
    names: [
      { text: 'cam', at: at(base + motion.lobe.lift + 4, 0), anchor: 'start' },
      ...(over + under > 0 ? [{ text: 'shim', at: at(-half - 4, shimAt), anchor: 'end' as const }] : []),
      { text: 'bucket', at: at(half + 4, bucketTop + 14), anchor: 'start' },
      { text: 'spring', at: at(half + 4, shutTip + 38), anchor: 'start' },
      { text: 'valve', at: at(6, shutTip + VALVE_LENGTH + motion.fullLift + 9), anchor: 'start' },
    ],
  };
}
const MECHANISMS: Readonly<Record<ValveGearKind, (setting: Setting) => Drawn>> = {
  pushrod: pushrodGear,
  'overhead-rocker': overheadRockerGear,
  'overhead-finger': fingerGear,
  'overhead-bucket': bucketGear,
};

function describe(
  engine: Engine,
  valve: ValveId,
  kind: ValveGearKind,
  { motion, adjuster }: Setting,
  crankAngle: Angle,
  words: string,
  gearUnknown: boolean,
): readonly string[] {
  const liftStated = engine.cam?.lobeLift?.[valve.kind] !== undefined;
  const lift =
    motion.valveLift < 0.005 ? 'shut' : liftStated ? `open by about ${motion.valveLift.toFixed(1)} mm` : 'off its seat';
  return [
    `Section through the gear of ${valveName(engine, valve)}: ${KIND_WORDS[kind]}.`,
    gearUnknown ? 'The valve gear is not stated: a bucket is drawn.' : '',
    `At crank ${Math.round(within(inDegrees(crankAngle), 720) * 10) / 10}\u00b0 the valve is ${words} and ${lift}.`,
    adjuster === 'none' ? '' : `Adjusted by the ${ADJUSTER_WORDS[adjuster]}.`,
    ...motion.notes,
    'Lengths of rod and stem are schematic.',
  ];
}
