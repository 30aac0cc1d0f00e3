/** Random engines and every figure of each, for the property tests of this room. */
import fc from 'fast-check';
import type { Engine, ValveGearKind } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import {
  camDial,
  type Figure,
  frontView,
  gasketFigure,
  headFromAbove,
  type MarkState,
  type Marks,
  registerTray,
  stopFigure,
  valveGearSection,
  valveMap,
} from './index.js';
import { inventedEngine, MILD_CAM, type Wish } from './test-engines.suite.js';

export const degrees = (n: number) => ((n * Math.PI) / 180) as Angle;
const STATES: readonly MarkState[] = ['idle', 'lit', 'next', 'done', 'missing', 'wrong', 'doubt'];
const GEARS: readonly ValveGearKind[] = ['pushrod', 'overhead-rocker', 'overhead-finger', 'overhead-bucket'];
/** Intake and exhaust counts of two to five valves a cylinder. */
const VALVES = [
  [1, 1],
  [2, 1],
  [1, 2],
  [2, 2],
  [3, 2],
] as const;

export const anyWish: fc.Arbitrary<Wish> = fc
  .record({
    form: fc.constantFrom('inline', 'vee', 'opposed'),
    cylinders: fc.integer({ min: 1, max: 16 }),
    vee: fc.constantFrom(15, 45, 60, 72, 90, 120),
    gear: fc.constantFrom(...GEARS),
    valves: fc.constantFrom(...VALVES),
    rotation: fc.constantFrom('clockwise', 'anticlockwise'),
    bore: fc.integer({ min: 40, max: 160 }),
    strokeShare: fc.double({ min: 0.6, max: 1.4, noNaN: true }),
    holesWithoutPlaces: fc.boolean(),
    bare: fc.boolean(),
    unknownOrder: fc.boolean(),
  })
  .map(({ valves, strokeShare, unknownOrder, ...rest }) => ({
    ...rest,
    intake: valves[0],
    exhaust: valves[1],
    stroke: rest.bore * strokeShare,
    // A vee or opposed engine has a cylinder on each bank, an inline one no more than eight on its single head.
    cylinders: rest.form === 'inline' ? Math.min(8, rest.cylinders) : Math.max(2, rest.cylinders),
    ...(unknownOrder ? { firingOrder: [] } : {}),
  }));
export const anyCrank = fc.double({ min: -720, max: 1440, noNaN: true }).map(degrees);
export const anyState = fc.constantFrom(...STATES);

/** One state for many keys, spread by position. */
export const spreadMarks = (keys: readonly string[], start: number): Marks =>
  Object.fromEntries(keys.map((key, i) => [key, STATES[(i + start) % STATES.length] ?? 'idle']));

export interface Drawn {
  readonly name: string;
  readonly figure: Figure;
}
export function everyFigure(engine: Engine, crank: Angle, start = 0): readonly Drawn[] {
  const valve = { cylinder: 1, kind: 'exhaust', index: 1 } as const;
  const keys = engine.layout.cylinders.flatMap((each) => [`${each.number}-intake-1`, `${each.number}-exhaust-1`]);
  const marks = spreadMarks(keys, start);
  const numbers = spreadMarks(
    engine.layout.cylinders.map((each) => String(each.number)),
    start,
  );
  return [
    { name: 'front view', figure: frontView(engine, crank) },
    ...engine.heads.flatMap((head) => {
      const holes = engine.joints.find((joint) => joint.head === head.id)?.holes.map((hole) => hole.id) ?? [];
      const openings = spreadMarks(
        head.gasket.openings.map((opening) => opening.id),
        start,
      );
      return [
        { name: 'head', figure: headFromAbove(engine, head.id, spreadMarks(holes, start)) },
        { name: 'gasket', figure: gasketFigure(engine, head.id, openings) },
      ];
    }),
    { name: 'valve gear', figure: valveGearSection(engine, valve, crank, MILD_CAM) },
    { name: 'cam dial', figure: camDial(engine, crank, MILD_CAM, degrees(10), numbers, { cylinder: 1 }) },
    { name: 'stop', figure: stopFigure(engine, { crankAngle: crank, previous: degrees(33) }) },
    { name: 'valve map', figure: valveMap(engine, marks) },
    { name: 'tray', figure: registerTray(engine, 'pushrod', marks) },
  ];
}
export const engineOf = (wish: Wish): Engine => inventedEngine(wish);
