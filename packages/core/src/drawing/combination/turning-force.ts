/** A shaking force or couple in the round: the way of its tip over one turn of the crank. */
import { formatNumber } from '../../quantity/index.js';
import { compose } from '../compose.js';
import type { Figure, LineRole, Point, Shape } from '../figure.js';
import { at } from '../geometry.js';
import type { Shown } from '../options.js';
import type { RoundPath } from '../plots/index.js';
import { circle, label, line, polyline } from '../shapes.js';
import { type Scale, scaleFor } from '../sheet-scale.js';

export interface TurningShown {
  readonly title: string;
  readonly paths: readonly RoundPath[];
}
const RADIUS = 130;
const CENTRE = at(0, 0);
/** As in the plots over the crank. */
const ROLES: Readonly<Record<string, LineRole>> = { primary: 'hidden', secondary: 'thin', whole: 'visible' };
const roleOf = ({ key }: RoundPath): LineRole => ROLES[key.split('-')[0]!] ?? 'centre';
/** A path shorter than this share of the longest is a point. */
const SMALL = 1e-3;

/** Up on the page is up in the engine, to the right is toward the running sense; rings at half and at the whole of the longest. */
export function turningForce({ title, paths }: TurningShown, options: Shown = {}): Figure {
  const scale = scaleFor(2 * RADIUS, options);
  const most = Math.max(...paths.map((path) => path.most), 0);
  const unit = paths[0]?.unit ?? '';
  const drawn = most > 0 ? paths.filter((path) => path.most > SMALL * most) : [];
  return compose({
    title,
    description: words(paths, most),
    shapes: [
      ...rings(most, unit, scale),
      ...drawn.map((path) => tipPath(path, most)),
      ...drawn.flatMap((path, n) => keyOf(path, n, scale)),
    ],
    margin: scale.margin,
    leastWidth: 2 * RADIUS + 2 * scale.margin,
  });
}

function tipPath(path: RoundPath, most: number): Shape {
  const spot = ({ across, up }: RoundPath['points'][number]): Point =>
    at((across / most) * RADIUS, (-up / most) * RADIUS);
  return polyline(path.points.map(spot), roleOf(path), { part: path.key });
}

function rings(most: number, unit: string, scale: Scale): readonly Shape[] {
  const whole = most === 0 ? 'balanced' : `${formatNumber(most, most < 10 ? 1 : 0)} ${unit}`;
  return [
    circle(CENTRE, RADIUS, 'dimension'),
    circle(CENTRE, RADIUS / 2, 'dimension'),
    line(at(-RADIUS, 0), at(RADIUS, 0), 'centre'),
    line(at(0, -RADIUS), at(0, RADIUS), 'centre'),
    label(at(0, -RADIUS - scale.text * 0.8), `up, ${whole}`, scale.text),
  ];
}

/** Which line is which, under the drawing. */
function keyOf(path: RoundPath, row: number, scale: Scale): readonly Shape[] {
  const { key, name } = path;
  const down = RADIUS + scale.text * (1.4 + 1.5 * row);
  return [
    line(at(-RADIUS, down), at(-RADIUS + 40, down), roleOf(path), { part: key }),
    label(at(-RADIUS + 46, down), name, scale.small, { anchor: 'start', part: key }),
  ];
}

function words(paths: readonly RoundPath[], most: number): readonly string[] {
  if (most === 0) return ['Nothing of this shakes: it is balanced by the layout.'];
  return paths.map(
    (path) =>
      `${path.name}: ${path.most > SMALL * most ? `${formatNumber(path.most, path.most < 10 ? 1 : 0)} ${path.unit} at most` : 'balanced'}.`,
  );
}
