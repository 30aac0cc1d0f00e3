import type { Shape } from '@gudgeon/core/drawing';

const r = (n: number) => String(Math.round(n * 1000) / 1000);

/** SVG path of an arc; angles in degrees from +x toward +y, which on the screen is clockwise. A full turn is cut in two. */
export function arcPath(arc: Shape & { kind: 'arc' }): string {
  const { centre, radius, startDegrees, endDegrees } = arc;
  const at = (degrees: number) => {
    const a = (degrees * Math.PI) / 180;
    return `${r(centre.x + radius * Math.cos(a))} ${r(centre.y + radius * Math.sin(a))}`;
  };
  const sweep = endDegrees - startDegrees;
  const sense = sweep >= 0 ? 1 : 0;
  const half = startDegrees + sweep / 2;
  const big = Math.abs(sweep) / 2 > 180 ? 1 : 0;
  const step = (to: number) => `A${r(radius)} ${r(radius)} 0 ${big} ${sense} ${at(to)}`;
  return `M${at(startDegrees)}${step(half)}${step(endDegrees)}`;
}

export const pointsText = (points: readonly { x: number; y: number }[]): string =>
  points.map((p) => `${r(p.x)},${r(p.y)}`).join(' ');
