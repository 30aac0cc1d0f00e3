/** Inputs and steps that the entries on valve-to-piston room share. */
import { type Angle, degrees, done, type Length, mm, type Outcome } from '../../../quantity/index.js';
import { curveThrough, describeTableFault, type LiftTable, type TableFault } from '../../cam/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import { type Lowest, lowest } from '../../numeric/index.js';
import { CROWNS, type GapCurve, type GapPlace, gapCurve, roomPerTravel } from '../piston-gap.js';

const size = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(10_000) } } as const;

export const crankInputs = {
  stroke: { ...size, symbol: 'S', meaning: 'printed stroke: twice the crank throw' },
  rodLength: { ...size, symbol: 'l', meaning: 'connecting rod, centre to centre' },
  pinOffset: {
    kind: 'length',
    symbol: 'e',
    meaning: 'piston pin to cylinder axis, positive toward the side the crankpin moves to after top dead centre',
    unit: 'mm',
    range: { from: mm(-500), to: mm(500) },
    default: 0,
  },
} as const;

export const crown = {
  kind: 'choice',
  symbol: 'crown',
  meaning:
    'parallel-pocket: the pocket floor lies parallel to the valve head; flat-crown: the valve edge meets a crown square to the bore',
  choices: CROWNS,
  default: 'parallel-pocket',
} as const;

export const valveAngle = {
  kind: 'angle',
  symbol: 'γ',
  meaning: 'angle between valve stem and bore',
  unit: 'deg',
  range: { from: 0, to: degrees(80) },
} as const;

export const gap = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(200) } } as const;
export const shownGap = { kind: 'length', unit: 'mm', places: 3 } as const;
export const advanceRange = { from: degrees(-60), to: degrees(60) } as const;

export const lashMore = {
  kind: 'length',
  symbol: 'Δg',
  meaning: 'lash at the valve larger than when the lifts were taken: takes lift away; negative: smaller',
  unit: 'mm',
  range: { from: mm(-5), to: mm(5) },
  default: 0,
} as const;

export const headHigher = {
  kind: 'length',
  symbol: 'Δh',
  meaning:
    'head higher over the block than when the gap was taken, along the bore: thicker gasket positive, a cut negative',
  unit: 'mm',
  range: { from: mm(-20), to: mm(20) },
  default: 0,
} as const;

const angle = { kind: 'angle', unit: 'deg', range: { from: degrees(-720), to: degrees(720) }, list: true } as const;
export const curveInputs = {
  angles: {
    ...angle,
    symbol: 'θ',
    meaning: 'crank degrees after the top dead centre between exhaust and intake (before: negative), in any order',
  },
  lifts: {
    kind: 'length',
    symbol: 'h',
    meaning: 'net lift of the valve at each angle, along its stem, 0 when closed',
    unit: 'mm',
    range: { from: mm(-1), to: mm(100) },
    list: true,
  },
} as const;

export const curveFault = (
  fault: TableFault,
  names: readonly [string, string] = ['angles', 'lifts'],
): Outcome<never, Conflict> => conflict(names, describeTableFault(fault));

/** Sizes from which the room of one valve follows. */
export interface RoomSizes {
  readonly stroke: Length;
  readonly rodLength: Length;
  readonly pinOffset: Length;
  readonly valveAngle: Angle;
  readonly crown: GapPlace['crown'];
  readonly gapAtTop: Length;
  readonly headHigher: Length;
}

export function placeOf(v: RoomSizes): GapPlace {
  return {
    crank: { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: v.pinOffset },
    valveAngle: v.valveAngle,
    crown: v.crown,
    gapAtTop: (v.gapAtTop + v.headHigher * roomPerTravel(v.crown, v.valveAngle)) as Length,
  };
}

/** Room over crank angle of one valve, or the refusal of a crank that cannot turn. */
export function roomCurve(v: RoomSizes, liftAt: (angle: number) => number): Outcome<GapCurve, Conflict> {
  const found = gapCurve(placeOf(v), liftAt);
  if (found.ok) return found;
  return conflict(['stroke', 'rodLength', 'pinOffset'], 'the crank could not turn', {
    input: 'rodLength',
    above: found.fault.needed,
  });
}

/** Lift curve of readings with some lash more or less: a valve that the lobe no longer reaches stays closed. */
export function netCurve(table: LiftTable, lash: Length): (angle: number) => number {
  const curve = curveThrough(table, 'spline');
  return (at) => Math.max(0, curve(at) - lash);
}

/** Reading angles with a place halfway between each two, dense enough to find the lowest. */
export function looksOf(angles: readonly number[]): readonly number[] {
  return angles.flatMap((one, at) => (at === 0 ? [one] : [(angles[at - 1]! + one) / 2, one]));
}

/** Least room of a valve with the cam advanced by a crank angle. */
export type LeastRoom = (advance: number) => Lowest;

/** Least room over the readings by cam advance: each lift comes earlier by that crank angle. */
export function leastRoom(v: RoomSizes, table: LiftTable, lash: Length): Outcome<LeastRoom, Conflict> {
  const curve = netCurve(table, lash);
  const looks = looksOf(table.angles);
  const closed = roomCurve(v, () => 0);
  if (!closed.ok) return closed;
  return done((advance) =>
    lowest(
      (angle) => closed.value(angle) - curve(angle + advance),
      looks.map((one) => one - advance),
    ),
  );
}

/** Rounding must not turn a room that just meets its limit into one that does not. */
const ROUNDING = 1e-12;
export const verdictOf = (spare: Length): 'in' | 'out' => (spare >= -ROUNDING ? 'in' : 'out');
