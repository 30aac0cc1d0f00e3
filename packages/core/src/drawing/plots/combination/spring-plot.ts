/** Plot of the load that a spring has against the load that its lobe needs. */
import type { SpringCurve } from '../../../assess/index.js';
import type { DisplaySystem } from '../../../quantity/index.js';
import { axisOver, crankAxis } from '../axis.js';
import type { Curve, Plot } from '../plot.js';
import { degreesOf, readerUnit, rpmText } from './reader-units.js';

const QUARTER = 90;
const LINES = ['dashed', 'chain', 'dotted'] as const;

/** Spring load, the load needed at each speed and the valve lift, over the crank. */
export function springPlot(curve: SpringCurve, system: DisplaySystem): Plot {
  const force = readerUnit('force', system);
  const length = readerUnit('length', system);
  const angles = curve.angles.map(degreesOf);
  const over = (values: readonly number[], unit: typeof force): Curve['points'] =>
    values.map((value, at) => [angles[at]!, unit.of(value)]);
  const [first = 0, last = 0] = [angles[0], angles.at(-1)];
  const modelled = curve.from === 'modelled';
  const all = [...curve.loads, ...curve.needed.flatMap(({ loads }) => loads)].map(force.of);
  return {
    id: `spring-${curve.kind}`,
    title: `Spring load and load needed, ${curve.kind}`,
    description: describe(curve),
    x: crankAxis(
      modelled ? 'crank from the nose of the lobe' : 'crank',
      Math.floor(first / QUARTER) * QUARTER,
      Math.ceil(last / QUARTER) * QUARTER,
    ),
    left: axisOver('load', force.unit, all, [0]),
    right: axisOver('valve lift', length.unit, curve.lifts.map(length.of), [0]),
    curves: [
      { id: 'spring', name: 'spring', axis: 'left', points: over(curve.loads, force), line: 'solid' },
      ...curve.needed.map(
        ({ speed, loads }, at): Curve => ({
          id: `needed-${at + 1}`,
          name: `needed at ${rpmText(speed)}`,
          axis: 'left',
          points: over(loads, force),
          line: LINES[at % LINES.length]!,
        }),
      ),
      {
        id: 'lift',
        name: 'valve lift',
        axis: 'right',
        points: over(curve.lifts, length),
        line: 'dotted',
        symbol: 'circle',
      },
    ],
    limits: [],
    marks: modelled ? [{ id: 'nose', name: 'nose', x: 0, axis: 'left' }] : [],
  };
}

function describe({ kind, from, needed, loads, parts }: SpringCurve): string {
  const short = needed.flatMap(({ speed, loads: asked }) =>
    asked.some((load, at) => load > loads[at]!) ? [rpmText(speed)] : [],
  );
  const holds =
    short.length === 0
      ? 'The spring holds the gear on the lobe at every speed shown.'
      : `The spring is too weak at ${short.join(' and ')}.`;
  const leaves = parts === undefined ? '' : ` The gear would leave the lobe at ${rpmText(parts)}.`;
  return `${kind} valve, lobe ${from === 'measured' ? 'as measured' : 'modelled from the card'}. ${holds}${leaves}`;
}
