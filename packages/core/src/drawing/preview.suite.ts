/** What `scripts/preview-figures.mjs` draws. */
import type { Angle } from '../quantity/index.js';
import { type Figure, figureToSvg, frontView, gasketFigure, headFromAbove, type Marks, PRINT } from './index.js';
import { INVENTED_ENGINES, inventedEngine } from './test-engines.suite.js';

const deg = (n: number) => ((n * Math.PI) / 180) as Angle;
const HOLES: Marks = { 1: 'done', 2: 'lit', 3: 'next', 4: 'missing', 5: 'wrong', 6: 'doubt' };
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
      figure('front', (shownWidth) => frontView(engine, deg(60), { shownWidth })),
      [`print-front-${name}`, (width) => figureToSvg(frontView(engine, deg(0)), { width, theme: PRINT })] as const,
    ];
  });
}
