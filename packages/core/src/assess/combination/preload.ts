/** Preload of hydraulic lifters: plunger travel from turns, turns for what is asked, and what a gap with the lifter bled down says. */
import { gapOfTravel, lashPerTurn, plungerTravel, travelOfGap, turnsForTravel } from '../../calc/valvetrain/index.js';
import type { Engine, ValveKind } from '../../engine/index.js';
import type { Angle, Length, Ratio } from '../../quantity/index.js';
import { answered, type Naming, type Part, together, toldSurely } from './answering.js';
import { computed, type Look, type Values } from './look.js';
import type { Answered, Makeup } from './model.js';
import { adjusterAt, preloadRead } from './preload-read.js';
import { VALVE_KINDS } from './sizes-as-figures.js';

const SOURCES = [
  'valvetrain.preload-from-turns',
  'valvetrain.turns-from-preload',
  'valvetrain.collapsed-lifter',
  'valvetrain.pushrod-step',
  'valvetrain.lash-per-turn',
];
const LIMITS = { low: 'lifter-preload-least', high: 'lifter-preload-most' } as const;
const FOR = 'lifter preload';
const NUMBERS: readonly Naming[] = [
  { key: 'preload-travel', name: 'plunger travel by the turns', quantity: 'length', ...LIMITS },
  { key: 'turns-needed', name: 'turns past zero lash for the preload', quantity: 'angle' },
  { key: 'travel-left', name: 'plunger travel left, by the gap bled down', quantity: 'length' },
  { key: 'gap-left', name: 'gap at the valve with the lifter bled down', quantity: 'length' },
  { key: 'lash-per-turn', name: 'lash at the valve for each turn', quantity: 'length' },
];
/** Travel by the turns that were given, turns for the preload that is wanted, and what is left of the plunger's travel, for intake and exhaust. */
export function preloadOf(makeup: Makeup): Answered {
  return together(
    VALVE_KINDS.map((kind) => oneKind(makeup, kind)),
    SOURCES,
  );
}

function oneKind(makeup: Makeup, kind: ValveKind): Part {
  const found = computed(makeup, kind, (look) => numbers(look, makeup.engine));
  const figures = NUMBERS.flatMap((naming) => {
    const value = found.values.get(naming.key);
    return value === undefined ? [] : [answered(makeup, naming, value, { kind }, kind)];
  });
  return {
    figures,
    computed: [found],
    working: figures.map((one) => `${kind}: ${one.name} ${toldSurely(one.quantity, one)}`),
  };
}

function numbers(look: Look, engine: Engine): Values {
  const ratio = look.need('rocker-ratio', FOR);
  const adjuster = adjusterAt(engine, ratio);
  const perTurn = adjuster === undefined ? {} : { 'lash-per-turn': lashPerTurn(adjuster) };
  if (engine.valveGear?.adjustment !== 'hydraulic' || ratio === undefined) return perTurn;
  const turns = look.read('preload-turns');
  const preload = look.read('lifter-preload');
  if (turns === undefined && preload === undefined) look.lack('lifter-preload', FOR);
  if (adjuster === undefined && turns !== undefined) look.lack('adjuster-pitch', 'plunger travel from turns');
  return {
    ...perTurn,
    'preload-travel': adjuster && turns !== undefined ? plungerTravel(adjuster, turns as Angle) : undefined,
    'turns-needed': adjuster && preload !== undefined ? turnsForTravel(adjuster, preload as Length) : undefined,
    ...left(look, ratio as Ratio, preloadRead(look)),
  };
}

function left(look: Look, ratio: Ratio, preload: number | undefined): Values {
  const gap = look.read('lifter-collapsed-gap');
  const travel = look.read('lifter-travel');
  const byGap = gap === undefined ? undefined : travelOfGap(gap as Length, ratio);
  const rest = travel === undefined || preload === undefined ? undefined : travel - preload;
  return {
    'travel-left': byGap,
    'gap-left': gap === undefined && rest !== undefined ? gapOfTravel(rest as Length, ratio) : undefined,
  };
}
