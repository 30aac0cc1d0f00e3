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
import type { Figure, Shape } from './figure.js';
import { bucketGear } from './gear-bucket.js';
import { fingerGear } from './gear-finger.js';
import { overheadRockerGear, pushrodGear } from './gear-rocker.js';
import type { Drawn, Setting } from './gear-setting.js';
import { at, inDegrees, within } from './geometry.js';
import { baseRadius } from './lobe.js';
import type { Shown } from './options.js';
import { label } from './shapes.js';
import { scaleFor } from './sheet-scale.js';
import { valveMotion } from './valve-motion.js';

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

const MECHANISMS: Readonly<Record<ValveGearKind, (setting: Setting) => Drawn>> = {
  pushrod: pushrodGear,
  'overhead-rocker': overheadRockerGear,
  'overhead-finger': fingerGear,
  'overhead-bucket': bucketGear,
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

function describe(
  engine: Engine,
  valve: ValveId,
  kind: ValveGearKind,
  { motion, adjuster }: Setting,
  crankAngle: Angle,
  words: string,
  gearUnknown: boolean,
): readonly string[] {
  const ratioStated = kind === 'overhead-bucket' || engine.valveGear?.ratio !== undefined;
  const liftStated = ratioStated && engine.cam?.lobeLift?.[valve.kind] !== undefined;
  const open = liftStated ? `open by about ${motion.valveLift.toFixed(1)} mm, lash not counted` : 'off its seat';
  const valveWords = motion.valveLift < 0.005 ? 'on its seat' : open;
  return [
    `Section through the gear of ${valveName(engine, valve)}: ${KIND_WORDS[kind]}.`,
    gearUnknown ? 'The valve gear is not stated: a bucket is drawn.' : '',
    `At crank ${Math.round(within(inDegrees(crankAngle), 720) * 10) / 10}\u00b0: ${words}, the valve ${valveWords}.`,
    adjuster === 'none' ? '' : `Adjusted by the ${ADJUSTER_WORDS[adjuster]}.`,
    ...motion.notes,
    'Lengths of rod and stem are schematic.',
  ];
}
