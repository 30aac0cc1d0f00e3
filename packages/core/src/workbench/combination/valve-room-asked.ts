/** What is asked of the room between valves and pistons, and what goes into it. */
import type { ReadCurves } from '../../assess/index.js';
import { type CylinderNumber, type Engine, figureKey, type ValveKind } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import { curvesThroughOverlap, type LiftFrom, NOTHING_READ } from './cam-as-read.js';
import type { InputWish } from './inputs.js';
import type { Tried } from './tried.js';

/** Which valves the cam carries that is moved. */
export type CamCarries = 'both' | ValveKind;
export interface ValveRoomWish {
  /** Of which the piston is taken; the first of the engine where left out. */
  readonly cylinder?: CylinderNumber;
  /** Where the lift comes from; what was read where there is any. */
  readonly from?: LiftFrom;
  readonly carries?: CamCarries;
}
export interface ValveRoomAsked {
  readonly cylinder: CylinderNumber;
  readonly carries: CamCarries;
  readonly read: ReadCurves;
  readonly from: LiftFrom;
  readonly canRead: boolean;
}

/** The wish with everything that was left open decided. */
export function askedOf(bench: Bench, tried: Tried, wish: ValveRoomWish): ValveRoomAsked {
  const { cylinders } = bench.engine.layout;
  const all = curvesThroughOverlap(bench, tried);
  const canRead = all.intake !== undefined || all.exhaust !== undefined;
  const from = canRead && wish.from !== 'card' ? 'read' : 'card';
  return {
    cylinder: cylinders.find(({ number }) => number === wish.cylinder)?.number ?? cylinders[0]!.number,
    carries: wish.carries ?? usualCarries(bench.engine),
    read: from === 'read' ? all : NOTHING_READ,
    from,
    canRead,
  };
}

/** Two camshafts over each head carry one kind of valve each. */
const usualCarries = ({ inspection, heads }: Engine): CamCarries =>
  (inspection?.camshafts ?? 0) >= 2 * Math.max(1, heads.length) ? 'intake' : 'both';

const KINDS = ['intake', 'exhaust'] as const;
const OF_CYLINDER = ['gasket-thickness', 'deck-cut', 'head-cut'] as const;
const OF_KIND = [
  'valve-drop',
  'valve-drop-gasket',
  'valve-recess',
  'pocket-depth',
  'valve-angle',
  'crown',
  'valve-sunk',
  'valve-lash',
  'lobe-lift',
  'lobe-duration',
  'lobe-fullness',
  'rocker-ratio',
  'lifter-preload',
  'lifter-travel',
  'valve-room-least',
] as const;

/** The figures that go in, in the order in which a person would change them. The cam has a slider of its own. */
export const roomInputs = (cylinder: CylinderNumber): readonly InputWish[] => [
  ...OF_CYLINDER.map((key): InputWish => ({ key, at: cylinder })),
  ...OF_KIND.flatMap((key) => KINDS.map((kind) => figureKey(key, kind))),
  'highest-speed',
  'rod-section',
];
