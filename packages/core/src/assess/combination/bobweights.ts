/** Bobweight of every crankpin of a vee, with the share of each part. */
import { bobweight, type RodSide } from '../../calc/balance/index.js';
import type { CylinderNumber, Engine } from '../../engine/index.js';
import type { Mass, Ratio } from '../../quantity/index.js';
import { crankpinsOf } from '../features/journals.js';
import { answered, type Naming, type Part, told, toldSurely } from './answering.js';
import { MAYBE, RECIPROCATING, reciprocatingOf } from './crank-throws.js';
import { computed, type Known, type Look, type Values } from './look.js';
import type { AnsweredFigure, Makeup } from './model.js';

export interface PinPart {
  /** Key of the figure: `piston-mass`. */
  readonly part: string;
  /** What of it counts in the bobweight [kg]. */
  readonly mass: number;
  /** Of the whole bobweight. */
  readonly share: number;
}
export interface PinStack {
  readonly pin: number;
  readonly cylinders: readonly CylinderNumber[];
  readonly bobweight: number;
  readonly u?: number;
  readonly parts: readonly PinPart[];
}

const BOBWEIGHT = 'bobweight';
const ROTATING = 'rod-big-end-mass';
const SHELLS = 'rod-shell-mass';
const OIL = 'oil-mass';

/** One stack for each crankpin; an engine that is no vee is balanced without bobweights and has none. */
export function bobweightPart(makeup: Makeup): { readonly part: Part; readonly pins: readonly PinStack[] } {
  const pins = makeup.engine.layout.form === 'vee' ? crankpinsOf(makeup.engine) : [];
  const each = pins.map(({ number, cylinders }) => {
    const found = computed(makeup, undefined, (look) => pinNumbers(look, cylinders));
    const whole = found.values.get(BOBWEIGHT);
    return { number, cylinders, found, whole };
  });
  const stacks = each.flatMap(({ number, cylinders, found, whole }) =>
    whole === undefined ? [] : [stackOf(number, cylinders, whole, found.values)],
  );
  return {
    pins: stacks,
    part: {
      figures: each.flatMap(({ number, whole }) => (whole === undefined ? [] : [answerOf(makeup, number, whole)])),
      computed: each.map(({ found }) => found),
      working: stacks.map(workingOf),
      cautions: pins.some(({ cylinders }) => cylinders.length !== 2)
        ? ['a splayed or single-rod pin: its factor is the maker’s, no general one holds']
        : [],
    },
  };
}

function answerOf(makeup: Makeup, number: number, known: Known): AnsweredFigure {
  const naming: Naming = { key: `bobweight-${number}`, name: `bobweight of crankpin ${number}`, quantity: 'mass' };
  return answered(makeup, naming, known);
}

/** Bobweight and what each part brings to it; the factor counts for what reciprocates only. */
function pinNumbers(look: Look, cylinders: readonly CylinderNumber[]): Values {
  const factor = look.need('balance-factor', BOBWEIGHT);
  const oil = look.read(OIL);
  if (oil === undefined) look.lack(OIL, 'bobweight: no oil is counted');
  const rods = cylinders.map((cylinder) => rodOf(look, cylinder));
  if (factor === undefined || rods.some((rod) => rod === undefined)) return {};
  const whole = bobweight(rods as readonly RodSide[], (oil ?? 0) as Mass, factor as Ratio);
  const sum = (key: string) => cylinders.reduce((all, cylinder) => all + (look.read(key, cylinder) ?? 0), 0);
  return {
    [BOBWEIGHT]: whole,
    [OIL]: oil,
    ...Object.fromEntries([ROTATING, SHELLS].map((key) => [key, sum(key)])),
    ...Object.fromEntries([...RECIPROCATING, MAYBE].map((key) => [key, factor * sum(key)])),
  };
}

function rodOf(look: Look, cylinder: CylinderNumber): RodSide | undefined {
  const bigEnd = look.need(ROTATING, BOBWEIGHT, cylinder);
  const shells = look.need(SHELLS, BOBWEIGHT, cylinder);
  const reciprocating = reciprocatingOf(look, cylinder, BOBWEIGHT);
  if (bigEnd === undefined || shells === undefined || reciprocating === undefined) return undefined;
  return { rotating: (bigEnd + shells) as Mass, reciprocating: reciprocating as Mass };
}

function stackOf(
  pin: number,
  cylinders: readonly CylinderNumber[],
  { value, u }: Known,
  values: ReadonlyMap<string, Known>,
): PinStack {
  const parts = [...values].flatMap(([part, { value: mass }]) =>
    part === BOBWEIGHT || mass === 0 ? [] : [{ part, mass, share: mass / value }],
  );
  return { pin, cylinders, bobweight: value, ...(u !== undefined && { u }), parts };
}

const workingOf = ({ pin, parts, bobweight: whole, u }: PinStack): string =>
  `crankpin ${pin}: ${parts.map(({ part, mass }) => `${part.replace('-mass', '').replaceAll('-', ' ')} ${told('mass', mass)}`).join(' + ')} = ${toldSurely('mass', { value: whole, ...(u !== undefined && { u }) })}`;

/** Cylinders of the engine by their number. */
export const cylinderNumbersOf = ({ layout }: Engine): readonly CylinderNumber[] =>
  layout.cylinders.map(({ number }) => number).sort((a, b) => a - b);
