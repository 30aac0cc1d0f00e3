import { pinHeight } from '../calc/crank/index.js';
import {
  bankAngleInRunningSense,
  type CylinderNumber,
  type Engine,
  firingDeadCentres,
  type Layout,
  throwAngles,
} from '../engine/index.js';
import type { Angle, Length } from '../quantity/index.js';
import { inDegrees, within } from './geometry.js';
import type { DrawnSizes } from './sizes.js';

/** Where one cylinder stands at a crank angle. Page directions in degrees clockwise from straight up. */
export interface Pose {
  readonly cylinder: CylinderNumber;
  readonly bank: number;
  readonly crankpin: number;
  /** Crankpin past the cylinder's axis in the running sense, degrees. */
  readonly pastAxis: number;
  /** Crank degrees after the cylinder's own firing top dead centre, 0 to 720; absent where no order is stated. */
  readonly phase?: number;
}
export interface CrankPose {
  readonly poses: ReadonlyMap<CylinderNumber, Pose>;
  /** 1 when the crank turns clockwise seen from the front, -1 otherwise. */
  readonly sense: 1 | -1;
  readonly note: string;
}

/** Throws of a crank of which nothing is stated: spread evenly over the turn, so that all can be seen. */
function evenThrows(layout: Layout): ReadonlyMap<CylinderNumber, Angle> {
  const step = (2 * Math.PI) / Math.max(1, layout.cylinders.length);
  return new Map(layout.cylinders.map((cylinder, place) => [cylinder.number, (place * step) as Angle]));
}

/** Directions of banks and crankpins. Cylinder 1 is at firing top dead centre at crank angle 0. */
export function crankPose(engine: Engine, crankAngle: Angle): CrankPose {
  const { layout } = engine;
  const sense = layout.rotation === 'clockwise' ? 1 : -1;
  const throws = throwAngles(layout);
  const centres = firingDeadCentres(layout);
  const directions = throws.ok ? throws.value : evenThrows(layout);
  const crank = inDegrees(crankAngle);
  const runningBank = (id: string) => {
    const bank = layout.banks.find((each) => each.id === id);
    return bank === undefined ? 0 : inDegrees(bankAngleInRunningSense(layout, bank));
  };
  const first = layout.cylinders.find((each) => each.number === 1) ?? layout.cylinders[0];
  const reference = first === undefined ? 0 : runningBank(first.bank);
  const poses = layout.cylinders.map((cylinder): [CylinderNumber, Pose] => {
    const bank = runningBank(cylinder.bank);
    const crankpin = reference + crank + inDegrees(directions.get(cylinder.number) ?? 0);
    const fires = centres.ok ? centres.value.get(cylinder.number) : undefined;
    const pose = {
      cylinder: cylinder.number,
      bank: bank * sense,
      crankpin: within(crankpin * sense),
      pastAxis: within(crankpin - bank),
    };
    return [cylinder.number, fires === undefined ? pose : { ...pose, phase: within(crank - inDegrees(fires), 720) }];
  });
  const note = throws.ok ? '' : 'The firing order is not stated: the throws are drawn evenly spread.';
  return { poses: new Map(poses), sense, note };
}

/** Piston pin above the crank centre in mm. `drawnSizes` never gives a rod that is too short for its crank. */
export function pinAbove(sizes: DrawnSizes, pastAxisDegrees: number): number {
  const metres = (millimetres: number) => (millimetres / 1000) as Length;
  const train = {
    crankRadius: metres(sizes.throw),
    rodLength: metres(sizes.rod),
    pinOffset: metres(sizes.pinOffset),
  };
  const height = pinHeight(train, ((pastAxisDegrees * Math.PI) / 180) as Angle);
  if (!height.ok) throw new Error('a crank was drawn with a rod that cannot turn');
  return height.value * 1000;
}

/** The stroke that a cylinder is in. */
export function strokeWord(phase: number): string {
  const words = ['power stroke', 'exhaust stroke', 'intake stroke', 'compression stroke'];
  return words[Math.floor(within(phase, 720) / 180)] ?? '';
}
