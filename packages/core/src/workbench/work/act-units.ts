/** Units that a figure of an act may carry. */
import type { Asked, WorkAct } from '../../plan/index.js';
import type { QuantityKind } from '../../quantity/index.js';
import type { ShownIn } from '../measure-views.js';

type Units = Readonly<Record<ShownIn['length'], readonly string[]>>;
const alike = (...units: readonly string[]): Units => ({ mm: units, in: units });

/** What is asked for as a kind of quantity; a count carries no unit. */
export const KIND_ASKED: Readonly<Record<Exclude<Asked, 'count'>, QuantityKind>> = {
  length: 'length',
  angle: 'angle',
  torque: 'torque',
  pressure: 'pressure',
  mass: 'mass',
  force: 'force',
  volume: 'volume',
  ratio: 'ratio',
  time: 'time',
  speed: 'angular-speed',
  temperature: 'temperature',
};

/** The usual unit of each system first: common practice, no source. Volumes asked for are those of oil and coolant. */
const UNITS: Readonly<Record<Asked, Units>> = {
  length: { mm: ['mm', 'in'], in: ['in', 'thou', 'mm'] },
  angle: alike('deg'),
  torque: { mm: ['N·m', 'lbf·ft', 'lbf·in'], in: ['lbf·ft', 'lbf·in', 'N·m'] },
  pressure: { mm: ['bar', 'kPa', 'psi'], in: ['psi', 'kPa', 'bar'] },
  mass: { mm: ['g', 'kg'], in: ['g', 'oz', 'lb', 'kg'] },
  force: { mm: ['N', 'lbf'], in: ['lbf', 'N'] },
  volume: { mm: ['L', 'cm3'], in: ['US qt', 'L', 'cm3'] },
  ratio: alike(':1', '%'),
  time: alike('min', 's'),
  speed: alike('rpm'),
  temperature: { mm: ['°C', '°F'], in: ['°F', '°C'] },
  count: alike(),
};
/** What is told otherwise than its kind usually is: a loss in percent, cranking in seconds. */
const OTHERWISE: Readonly<Record<string, readonly string[]>> = { 'leakage-read': ['%'], started: ['s', 'min'] };

/** Units that the figure of an act may carry, the usual one of this device first; none where no figure is asked for. */
export function unitsOfAct({ asked, rule }: WorkAct, { length }: ShownIn): readonly string[] {
  if (asked === undefined) return [];
  return OTHERWISE[rule] ?? UNITS[asked][length];
}
