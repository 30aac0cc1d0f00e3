/** Inputs and refusals that the entries on measured lobes and lift curves share. */
import { type Angle, degrees, formatQuantity, mm, type Outcome, rpm } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import type { NotReached } from '../crossings.js';
import type { TableFault } from '../lift-table.js';
import { describeTableFault } from '../table-words.js';

export const wheel = { kind: 'angle', unit: 'deg', range: { from: degrees(-720), to: degrees(1080) } } as const;
export const lift = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(100) } } as const;
export const shownAngle = { kind: 'angle', unit: 'deg', places: 2 } as const;
export const shownLift = { kind: 'length', unit: 'mm', places: 3 } as const;
/** Velocity and acceleration of the lift; absent where no crank speed is given. */
export const shownMotion = {
  velocity: {
    kind: 'speed',
    symbol: 'v',
    meaning: 'lift velocity at the speed',
    unit: 'm/s',
    places: 4,
    list: true,
    optional: true,
  },
  acceleration: {
    kind: 'acceleration',
    symbol: 'a',
    meaning: 'lift acceleration at the speed',
    unit: 'm/s2',
    places: 1,
    list: true,
    optional: true,
  },
} as const;

export const angles = {
  ...wheel,
  symbol: 'θ',
  meaning:
    'wheel readings in crank degrees after top dead centre (before: negative), counted on without a jump; any order',
  list: true,
} as const;

export const lifts = {
  kind: 'length',
  unit: 'mm',
  range: { from: mm(-1), to: mm(100) },
  symbol: 'h',
  meaning: 'indicator reading of lift at each of the angles, 0 on the base circle',
  list: true,
} as const;

const stop = { ...wheel, optional: true } as const;
export const stops = {
  stopBefore: {
    ...stop,
    symbol: 's₁',
    meaning: 'wheel reading against a positive stop before top dead centre, negative; left out when the wheel is set',
  },
  stopAfter: { ...stop, symbol: 's₂', meaning: 'wheel reading against the same stop after top dead centre' },
} as const;

export const crankSpeed = {
  kind: 'angular-speed',
  symbol: 'n',
  meaning: 'crank speed, constant',
  unit: 'rpm',
  range: { above: 0, to: rpm(30_000) },
  optional: true,
} as const;

/** What the wheel reads at true top dead centre: half the sum of both stop readings, 0 when none were taken. */
export function wheelTop(v: { stopBefore: Angle | undefined; stopAfter: Angle | undefined }): Angle | undefined {
  const { stopBefore, stopAfter } = v;
  if (stopBefore === undefined && stopAfter === undefined) return 0 as Angle;
  return stopBefore === undefined || stopAfter === undefined ? undefined : (((stopBefore + stopAfter) / 2) as Angle);
}
export const oneStop = (): Outcome<never, Conflict> =>
  conflict(['stopBefore', 'stopAfter'], 'both stop readings are needed, or none');

export const tableFault = (fault: TableFault): Outcome<never, Conflict> =>
  conflict(['angles', 'lifts'], describeTableFault(fault));

export function notReached(fault: NotReached, names: readonly string[]): Outcome<never, Conflict> {
  const shown = formatQuantity('length', fault.lift, 'mm', 3);
  return fault.where === 'peak'
    ? conflict(names, `no reading is above ${shown}`)
    : conflict(names, `the readings of the ${fault.where} flank do not go down to ${shown}`);
}
