/** Plots of what shakes an engine over one turn of its crank. */
import type { ShakingTurn, TurningVector } from '../../../assess/index.js';
import type { DisplaySystem } from '../../../quantity/index.js';
import { axisOver, crankAxis } from '../axis.js';
import type { Curve, Plot } from '../plot.js';
import { degreesOf, readerUnit } from './reader-units.js';

const FULL = 360;
const LINES = { primary: 'dashed', secondary: 'dotted', whole: 'solid' } as const;
const WORDS = {
  force: { id: 'shaking-forces', title: 'Shaking forces over one turn', axis: 'force' },
  torque: { id: 'shaking-couples', title: 'Shaking couples over one turn', axis: 'couple' },
} as const;

/** Size of each force (or couple) over a turn; undefined where there is none of the kind. */
export function shakingPlot(turn: ShakingTurn, quantity: 'force' | 'torque', system: DisplaySystem): Plot | undefined {
  const vectors = turn.vectors.filter((one) => one.quantity === quantity);
  if (vectors.length === 0) return undefined;
  const unit = readerUnit(quantity, system);
  const { id, title, axis } = WORDS[quantity];
  const sizes = vectors.map(({ up, across }) => up.map((value, at) => unit.of(Math.hypot(value, across[at]!))));
  const curve = ({ key, name }: TurningVector, at: number): Curve => ({
    id: key,
    name,
    axis: 'left',
    points: sizes[at]!.map((size, step) => [degreesOf(turn.angles[step]!), size]),
    line: LINES[key.split('-')[0] as keyof typeof LINES],
  });
  return {
    id,
    title,
    description:
      'Crank angle counts from cylinder 1 at its top. The size of each is drawn; its direction is in the round plot.',
    x: crankAxis('crank after the top of cylinder 1', 0, FULL),
    left: axisOver(axis, unit.unit, sizes.flat(), [0]),
    curves: vectors.map(curve),
    limits: [],
    marks: [],
  };
}

/** One force (or couple) as its tip goes round: by rising crank angle, across and up, in the reader's unit. */
export interface RoundPath {
  readonly key: string;
  readonly name: string;
  readonly unit: string;
  readonly points: readonly { readonly angle: number; readonly across: number; readonly up: number }[];
  /** Longest of it: the reach of the drawing. */
  readonly most: number;
}

/** The paths of all tips of one kind, for a drawing in the round. Across counts toward the running sense. */
export function roundPaths(
  { angles, vectors }: ShakingTurn,
  quantity: 'force' | 'torque',
  system: DisplaySystem,
): readonly RoundPath[] {
  const unit = readerUnit(quantity, system);
  return vectors
    .filter((one) => one.quantity === quantity)
    .map(({ key, name, up, across }) => ({
      key,
      name,
      unit: unit.unit,
      points: up.map((value, at) => ({
        angle: degreesOf(angles[at]!),
        across: unit.of(across[at]!),
        up: unit.of(value),
      })),
      most: unit.of(up.reduce((most, value, at) => Math.max(most, Math.hypot(value, across[at]!)), 0)),
    }));
}
