/** What `scripts/preview-figures.mjs` draws. */
import type { Angle } from '../quantity/index.js';
import {
  camDial,
  type Figure,
  figureToSvg,
  frontView,
  gasketFigure,
  headFromAbove,
  type Marks,
  PRINT,
  registerTray,
  stopFigure,
  valveGearSection,
  valveMap,
} from './index.js';
import { INVENTED_ENGINES, inventedEngine, MILD_CAM } from './test-engines.suite.js';

const deg = (n: number) => ((n * Math.PI) / 180) as Angle;
const HOLES: Marks = { 1: 'done', 2: 'lit', 3: 'next', 4: 'missing', 5: 'wrong', 6: 'doubt' };
const VALVES: Marks = {
  '1-intake-1': 'done',
  '1-exhaust-1': 'lit',
  '2-intake-1': 'next',
  '2-exhaust-1': 'wrong',
  '3-intake-1': 'missing',
  '3-exhaust-1': 'doubt',
};
const OPENINGS: Marks = {
  W1: 'done',
  W2: 'lit',
  'bolt 2': 'next',
  'bore 2': 'lit',
  W3: 'wrong',
  O1: 'done',
  D1: 'missing',
};
type Draw = (width: number) => string;

export function previewFigures(): readonly (readonly [string, Draw])[] {
  return Object.entries(INVENTED_ENGINES).flatMap(([name, wish]) => {
    const engine = inventedEngine(wish);
    const figure = (kind: string, draw: (shownWidth: number) => Figure): readonly [string, Draw] => [
      `${kind}-${name}`,
      (width) => figureToSvg(draw(Math.min(width, 640)), { width }),
    ];
    const head = engine.heads[engine.heads.length - 1]?.id ?? '';
    return [
      figure('head', (shownWidth) => headFromAbove(engine, head, HOLES, { shownWidth })),
      figure('headtall', (shownWidth) => headFromAbove(engine, head, HOLES, { shownWidth, front: 'top' })),
      figure('gasket', (shownWidth) => gasketFigure(engine, head, OPENINGS, { shownWidth })),
      figure('gaskettall', (shownWidth) => gasketFigure(engine, head, OPENINGS, { shownWidth, front: 'top' })),
      ...[0, 250, 430, 500].map((crank) =>
        figure(`gear${crank}`, (shownWidth) =>
          valveGearSection(
            engine,
            { cylinder: 1, kind: crank === 250 ? 'exhaust' : 'intake', index: 1 },
            deg(crank),
            MILD_CAM,
            { shownWidth },
          ),
        ),
      ),
      figure('dial', (shownWidth) => camDial(engine, deg(45), MILD_CAM, deg(15), {}, { shownWidth })),
      figure('dialone', (shownWidth) =>
        camDial(engine, deg(90), MILD_CAM, deg(15), { 1: 'lit', 2: 'done', 3: 'next' }, { shownWidth, cylinder: 1 }),
      ),
      figure('map', (shownWidth) => valveMap(engine, VALVES, { shownWidth })),
      figure('lifters', (shownWidth) => registerTray(engine, 'lifter', VALVES, { shownWidth })),
      figure('pushrods', (shownWidth) => registerTray(engine, 'pushrod', VALVES, { shownWidth })),
      figure('rockers', (shownWidth) => registerTray(engine, 'rocker', VALVES, { shownWidth })),
      figure('stop', (shownWidth) => stopFigure(engine, { crankAngle: deg(450), previous: deg(360) }, { shownWidth })),
      figure('stopfirst', (shownWidth) => stopFigure(engine, { crankAngle: deg(0) }, { shownWidth })),
      figure('front', (shownWidth) => frontView(engine, deg(60), { shownWidth })),
      [`print-front-${name}`, (width) => figureToSvg(frontView(engine, deg(0)), { width, theme: PRINT })] as const,
    ];
  });
}
