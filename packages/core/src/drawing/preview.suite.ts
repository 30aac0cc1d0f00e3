/** What `scripts/preview-figures.mjs` draws. */
import { type Engine, valveKey, valvesOf } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import { spreadMarks } from './figures.suite.js';
import {
  camDial,
  type Figure,
  figureToSvg,
  frontView,
  gasketFigure,
  headFromAbove,
  PRINT,
  registerTray,
  stopFigure,
  valveGearSection,
  valveMap,
} from './index.js';
import { measuringFigure } from './measuring/index.js';
import { FIGURE_KINDS, placeOf } from './measuring/places.suite.js';
import { INVENTED_ENGINES, inventedEngine, MILD_CAM } from './test-engines.suite.js';

const deg = (n: number) => ((n * Math.PI) / 180) as Angle;
type Draw = (width: number) => string;

/** @param sheets engines of sheets, by name, beside the invented ones. */
export function previewFigures(sheets: Readonly<Record<string, Engine>> = {}): readonly (readonly [string, Draw])[] {
  const invented = Object.entries(INVENTED_ENGINES).map(([name, wish]) => [name, inventedEngine(wish)] as const);
  const measuring = FIGURE_KINDS.map((kind): readonly [string, Draw] => [
    `measuring-${kind}`,
    (width) => figureToSvg(measuringFigure(placeOf(kind), { shownWidth: Math.min(width, 640) }), { width }),
  ]);
  const ofEngines = [...invented, ...Object.entries(sheets)].flatMap(([name, engine]) => {
    const holes = spreadMarks(engine.joints[0]?.holes.map((hole) => hole.id) ?? [], 0);
    const valves = spreadMarks(valvesOf(engine).map(valveKey), 1);
    const openings = spreadMarks(engine.heads[0]?.gasket.openings.map((opening) => opening.id) ?? [], 2);
    const figure = (kind: string, draw: (shownWidth: number) => Figure): readonly [string, Draw] => [
      `${kind}-${name}`,
      (width) => figureToSvg(draw(Math.min(width, 640)), { width }),
    ];
    const head = engine.heads[0]?.id;
    const events = engine.cam?.basis === 'seat' ? engine.cam.events : MILD_CAM;
    return [
      ...(head === undefined
        ? []
        : [
            figure('head', (shownWidth) => headFromAbove(engine, head, holes, { shownWidth })),
            figure('headtall', (shownWidth) => headFromAbove(engine, head, holes, { shownWidth, front: 'top' })),
            figure('gasket', (shownWidth) => gasketFigure(engine, head, openings, { shownWidth })),
            figure('gaskettall', (shownWidth) => gasketFigure(engine, head, openings, { shownWidth, front: 'top' })),
          ]),
      ...[0, 250, 430, 500].map((crank) =>
        figure(`gear${crank}`, (shownWidth) =>
          valveGearSection(
            engine,
            { cylinder: 1, kind: crank === 250 ? 'exhaust' : 'intake', index: 1 },
            deg(crank),
            events,
            { shownWidth },
          ),
        ),
      ),
      figure('dial', (shownWidth) => camDial(engine, deg(45), events, deg(15), {}, { shownWidth })),
      figure('dialone', (shownWidth) =>
        camDial(engine, deg(90), events, deg(15), { 1: 'lit', 2: 'done', 3: 'next' }, { shownWidth, cylinder: 1 }),
      ),
      figure('map', (shownWidth) => valveMap(engine, valves, { shownWidth })),
      figure('lifters', (shownWidth) => registerTray(engine, 'lifter', valves, { shownWidth })),
      figure('pushrods', (shownWidth) => registerTray(engine, 'pushrod', valves, { shownWidth })),
      figure('rockers', (shownWidth) => registerTray(engine, 'rocker', valves, { shownWidth })),
      figure('stop', (shownWidth) => stopFigure(engine, { crankAngle: deg(450), previous: deg(360) }, { shownWidth })),
      figure('stopfirst', (shownWidth) => stopFigure(engine, { crankAngle: deg(0) }, { shownWidth })),
      figure('front', (shownWidth) => frontView(engine, deg(60), { shownWidth })),
      [
        `print-front-${name}`,
        (width: number) => figureToSvg(frontView(engine, deg(0)), { width, theme: PRINT }),
      ] as const,
    ];
  });
  return [...measuring, ...ofEngines];
}
