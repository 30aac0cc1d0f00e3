/** How a valve moves over the cycle: lift, velocity and acceleration, by the crank and by the cam. */
import type { ValveKind } from '../../engine/index.js';
import { answered, type Naming, type Part, together, toldSurely } from './answering.js';
import { type ReadCurves, type ValveCurve, valveCurve } from './lift-motion-curve.js';
import { type Computed, computed, Look, type Values } from './look.js';
import type { Answered, Makeup } from './model.js';
import { VALVE_KINDS } from './sizes-as-figures.js';

export interface MotionOptions {
  /** Read lobes stand in place of the card. */
  readonly read?: ReadCurves;
  /** Crank speed [rad/s]; left out: the highest speed of the makeup. */
  readonly speed?: number;
}
/** Motion of one kind of valve; angles [rad of crank] after its own top of overlap, SI. */
export interface MotionOfKind {
  readonly kind: ValveKind;
  readonly from: ValveCurve['from'];
  readonly angles: Float64Array;
  readonly lifts: Float64Array;
  /** For each radian of crank [m] and its square; a radian of cam is two of crank. */
  readonly slopes: Float64Array;
  readonly bends: Float64Array;
  /** At the speed; absent where none is known. */
  readonly speeds?: Float64Array;
  readonly accelerations?: Float64Array;
}
export interface MotionAnswer extends Answered {
  readonly motions: readonly MotionOfKind[];
  readonly speed?: number;
}

const FOR = 'motion of the valve';
const SOURCES = [
  'cam.lift-from-card',
  'cam.lift-spline',
  'cam.polynomial-lobe',
  'valvetrain.valve-lift',
  'valvetrain.rocker-motion',
];
const NUMBERS: readonly Naming[] = [
  { key: 'valve-lift', name: 'highest valve lift', quantity: 'length' },
  { key: 'peak-velocity', name: 'highest velocity of the valve', quantity: 'speed' },
  { key: 'peak-acceleration', name: 'highest acceleration, opening or closing', quantity: 'acceleration' },
  { key: 'nose-acceleration', name: 'lowest acceleration, over the nose', quantity: 'acceleration' },
  { key: 'peak-slope', name: 'highest lift for each radian of crank', quantity: 'length' },
  { key: 'peak-slope-cam', name: 'highest lift for each radian of cam', quantity: 'length' },
];
const DEGREE = Math.PI / 180;
const WHOLE = 360;
/** Places looked at for a peak, over the stretch in which the valve is off its seat. */
const LOOKS = 180;

/** Lift, velocity and acceleration of both kinds of valve and their peaks, with the doubt of the figures. A lift that was read shows its own scatter in the acceleration. */
export function motionOf(makeup: Makeup, options: MotionOptions = {}): MotionAnswer {
  const speed = options.speed ?? new Look(makeup).read('highest-speed');
  const each = VALVE_KINDS.map((kind) => oneKind(makeup, kind, options, speed));
  return {
    ...together(
      each.map(({ part }) => part),
      SOURCES,
    ),
    motions: each.flatMap(({ motion }) => motion ?? []),
    ...(speed !== undefined && { speed }),
  };
}

/** The motions alone, nothing of peaks or doubt: for figures or a speed that a slider moves. */
export function motionsOf(makeup: Makeup, { read, speed }: MotionOptions): Pick<MotionAnswer, 'motions' | 'speed'> {
  const at = speed ?? new Look(makeup).read('highest-speed');
  const motions = VALVE_KINDS.flatMap((kind) => {
    const curve = valveCurve(new Look(makeup, kind), kind, FOR, read?.[kind]);
    return curve === undefined ? [] : [motionOfCurve(kind, curve, at)];
  });
  return { motions, ...(at !== undefined && { speed: at }) };
}

function oneKind(
  makeup: Makeup,
  kind: ValveKind,
  { read }: MotionOptions,
  speed: number | undefined,
): { readonly part: Part; readonly motion?: MotionOfKind } {
  const found = computed(makeup, kind, (look) => {
    const curve = valveCurve(look, kind, FOR, read?.[kind]);
    return curve === undefined ? {} : peaks(curve, speed);
  });
  const curve = valveCurve(new Look(makeup, kind), kind, FOR, read?.[kind]);
  if (curve === undefined) return { part: { figures: [], computed: [found] } };
  const figures = NUMBERS.flatMap((naming) => {
    const value = found.values.get(naming.key);
    return value === undefined ? [] : [answered(makeup, naming, value, { kind })];
  });
  return {
    part: {
      figures,
      computed: [speed === undefined ? withoutSpeed(found) : found],
      working: figures.map((one) => `${kind}: ${one.name} ${toldSurely(one.quantity, one)}`),
      cautions: cautionsOf(kind, curve),
    },
    motion: motionOfCurve(kind, curve, speed),
  };
}

const withoutSpeed = (found: Computed): Computed => ({
  ...found,
  missing: [
    ...found.missing,
    { key: 'highest-speed', title: 'highest speed', for: 'velocity and acceleration at a speed' },
  ],
});

function peaks(curve: ValveCurve, speed: number | undefined): Values {
  const places = Array.from({ length: LOOKS + 1 }, (_, at) => curve.first + ((curve.last - curve.first) * at) / LOOKS);
  const points = [...places, curve.nose].map(curve.point);
  const most = (of: (at: number) => number) => points.reduce((best, _, at) => Math.max(best, of(at)), 0);
  const slope = most((at) => Math.abs(points[at]!.slope));
  const lift = most((at) => points[at]!.lift);
  const still = { 'valve-lift': lift, 'peak-slope': slope, 'peak-slope-cam': 2 * slope };
  if (speed === undefined) return still;
  const square = speed ** 2;
  return {
    ...still,
    'peak-velocity': slope * speed,
    'peak-acceleration': most((at) => points[at]!.bend) * square,
    'nose-acceleration': -most((at) => -points[at]!.bend) * square,
  };
}

function motionOfCurve(kind: ValveKind, curve: ValveCurve, speed: number | undefined): MotionOfKind {
  const from = curve.whole ? -WHOLE : Math.ceil(curve.first / DEGREE);
  const to = curve.whole ? WHOLE : Math.floor(curve.last / DEGREE);
  const angles = Float64Array.from({ length: Math.max(0, to - from + 1) }, (_, at) => (from + at) * DEGREE);
  const { lifts, slopes, bends } = tableOf(curve, angles);
  return {
    kind,
    from: curve.from,
    angles,
    lifts,
    slopes,
    bends,
    ...(speed !== undefined && {
      speeds: slopes.map((slope) => slope * speed),
      accelerations: bends.map((bend) => bend * speed ** 2),
    }),
  };
}

/** Outside of the lobe the valve stands still: nothing is worked out there. */
function tableOf(curve: ValveCurve, angles: Float64Array): Pick<MotionOfKind, 'lifts' | 'slopes' | 'bends'> {
  const [lifts, slopes, bends] = [angles, angles, angles].map(({ length }) => new Float64Array(length));
  angles.forEach((angle, at) => {
    if (angle < curve.first || angle > curve.last) return;
    const point = curve.point(angle);
    lifts![at] = point.lift;
    slopes![at] = point.slope;
    bends![at] = point.bend;
  });
  return { lifts: lifts!, slopes: slopes!, bends: bends! };
}

function cautionsOf(kind: ValveKind, { from, meets, rocker }: ValveCurve): readonly string[] {
  return [
    ...(from === 'card'
      ? [`${kind}: the lift is a model through the card (${meets}), not a measured lobe`]
      : [`${kind}: errors of the readings are magnified in velocity, and more in acceleration`]),
    ...(rocker === 'ratio' ? [`${kind}: the rocker ratio is taken as constant through the swing`] : []),
  ];
}
