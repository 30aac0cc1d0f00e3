/** Plots of a rocker over its valve: where it bears on the stem, and its true ratio, through the lift. */
import type { ContactPath } from '../../../assess/index.js';
import type { DisplaySystem } from '../../../quantity/index.js';
import { axisOver } from '../axis.js';
import type { Axis, Curve, Plot, PlotMark } from '../plot.js';
import { readerUnit } from './reader-units.js';

/** Rounding of the closed valve [m]. */
const DUST = 1e-12;

/** Place of contact on the stem [m] and true ratio over valve lift [m], in the units of `system`. Assumes a path of one lift or more. */
export function contactPlots(path: ContactPath, system: DisplaySystem): readonly Plot[] {
  const length = readerUnit('length', system);
  const lifts = path.valveLifts.map((lift) => length.of(Math.abs(lift) < DUST ? 0 : lift));
  const x = axisOver('valve lift', length.unit, lifts, [0]);
  const contacts = path.contacts.map(length.of);
  const farthest = contacts.indexOf(Math.max(...contacts));
  return [
    plotOf(`contact-${path.kind}`, `Where the ${path.kind} rocker bears on the stem`, {
      x,
      left: axisOver('outward from where it bears closed', length.unit, contacts, [0]),
      curve: { id: 'contact', name: 'contact', points: pairs(lifts, contacts) },
      marks: [
        { id: 'farthest', name: 'farthest out', x: lifts[farthest] ?? 0, y: contacts[farthest] ?? 0, axis: 'left' },
      ],
    }),
    plotOf(`ratio-${path.kind}`, `True ratio of the ${path.kind} rocker`, {
      x,
      left: axisOver('valve lift over lobe lift', '', path.ratios),
      curve: { id: 'ratio', name: 'ratio', points: pairs(lifts, path.ratios) },
      marks: [],
    }),
  ];
}
const pairs = (xs: readonly number[], ys: readonly number[]): Curve['points'] => xs.map((x, at) => [x, ys[at]!]);

interface Parts {
  readonly x: Axis;
  readonly left: Axis;
  readonly curve: Pick<Curve, 'id' | 'name' | 'points'>;
  readonly marks: readonly PlotMark[];
}
const plotOf = (id: string, title: string, { x, left, curve, marks }: Parts): Plot => ({
  id,
  title,
  description: `${title}, from the closed valve to full lift.`,
  x,
  left,
  curves: [{ ...curve, axis: 'left', line: 'solid', symbol: 'circle' }],
  limits: [],
  marks,
});
