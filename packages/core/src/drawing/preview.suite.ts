/** What `scripts/preview-figures.mjs` draws. */
import type { Angle } from '../quantity/index.js';
import { type Figure, figureToSvg, frontView, PRINT } from './index.js';
import { INVENTED_ENGINES, inventedEngine } from './test-engines.suite.js';

const deg = (n: number) => ((n * Math.PI) / 180) as Angle;
type Draw = (width: number) => string;

export function previewFigures(): readonly (readonly [string, Draw])[] {
  return Object.entries(INVENTED_ENGINES).flatMap(([name, wish]) => {
    const engine = inventedEngine(wish);
    const figure = (kind: string, draw: (shownWidth: number) => Figure): readonly [string, Draw] => [
      `${kind}-${name}`,
      (width) => figureToSvg(draw(Math.min(width, 640)), { width }),
    ];
    return [
      figure('front', (shownWidth) => frontView(engine, deg(60), { shownWidth })),
      [`print-front-${name}`, (width) => figureToSvg(frontView(engine, deg(0)), { width, theme: PRINT })] as const,
    ];
  });
}
