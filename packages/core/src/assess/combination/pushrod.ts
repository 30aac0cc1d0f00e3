/** Pushrod length: from the checking length with what changed since, and from trials of the wear mark. */
import { centredLength, lengthChange, narrowestLength, neededLength } from '../../calc/valvetrain/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import { answered, type Naming, type Part, together, told, toldSurely } from './answering.js';
import { computed, type Look, type Values } from './look.js';
import type { Answered, AnsweredFigure, Makeup } from './model.js';
import { preloadNeeded } from './preload-read.js';
import { VALVE_KINDS } from './sizes-as-figures.js';

/** A length that was tried, the width of the mark that it left, and how far the mark's middle lies from the middle of the stem. */
export interface PushrodTrial {
  readonly length: number;
  readonly width: number;
  readonly offset?: number;
}
/** Lengths that can be bought [m]. */
export interface PushrodOptions {
  readonly offered?: readonly number[];
  readonly trials?: Partial<Readonly<Record<ValveKind, readonly PushrodTrial[]>>>;
}
const SOURCES = ['valvetrain.pushrod-length', 'valvetrain.pushrod-trials'];
const FOR = 'pushrod length';
const NUMBERS: readonly Naming[] = [
  { key: 'pushrod-needed', name: 'pushrod length needed', quantity: 'length' },
  { key: 'pushrod-change', name: 'longer than at the check', quantity: 'length' },
];
const NARROWEST: Naming = { key: 'pushrod-narrowest', name: 'length with the narrowest mark', quantity: 'length' };
const CENTRED: Naming = { key: 'pushrod-centred', name: 'length with the mark in the middle', quantity: 'length' };
const CHOSEN: Naming = { key: 'pushrod-chosen', name: 'nearest length offered', quantity: 'length' };
const PRELOAD: Naming = {
  key: 'pushrod-preload',
  name: 'preload with that length',
  quantity: 'length',
  low: 'lifter-preload-least',
  high: 'lifter-preload-most',
};
const LASH: Naming = { key: 'pushrod-lash', name: 'lash with that length, before adjusting', quantity: 'length' };

/** Length that lash or preload asks for after cuts, gasket and base circle, the nearest that is offered, and what the trials of the mark say. */
export function pushrodOf(makeup: Makeup, { offered = [], trials = {} }: PushrodOptions = {}): Answered {
  const { valveGear } = makeup.engine;
  if (valveGear !== undefined && valveGear.kind !== 'pushrod') return together([], SOURCES);
  const parts = VALVE_KINDS.flatMap((kind) => [
    byCheck(makeup, kind, offered),
    ...(trials[kind] === undefined ? [] : [byTrials(kind, trials[kind])]),
  ]);
  return together(parts, SOURCES);
}

function needed(look: Look, { engine }: Makeup): Values {
  const ratio = look.need('rocker-ratio', FOR);
  const zeroLash = look.need('pushrod-zero-lash', FOR);
  const change = ratio === undefined ? undefined : lengthChange(changes(look), ratio as Ratio);
  const hydraulic = engine.valveGear?.adjustment === 'hydraulic';
  const preload = hydraulic ? preloadNeeded(look, FOR) : 0;
  const lash = hydraulic ? 0 : look.need('valve-lash', FOR);
  if (change === undefined || zeroLash === undefined) return { 'pushrod-change': change };
  const now = zeroLash + change;
  const atRest = { preload: preload as Length, lash: lash as Length };
  return {
    'pushrod-change': change,
    now,
    ...(preload !== undefined &&
      lash !== undefined && { 'pushrod-needed': neededLength(now as Length, atRest, ratio as Ratio) }),
  };
}

/** Head lower by the cuts that are still to be made, higher by a thicker gasket than the one at the check. */
function changes(look: Look) {
  const taken = look.read('pushrod-gasket');
  const gasket =
    taken === undefined ? undefined : look.at(1).need('gasket-thickness', `${FOR} with the gasket that is fitted`);
  const thicker = taken === undefined || gasket === undefined ? 0 : gasket - taken;
  const cuts = look.at(1).planned('deck-cut') + look.at(1).planned('head-cut');
  return {
    headHigher: (thicker - cuts) as Length,
    baseCircleSmaller: look.planned('base-circle-smaller') as Length,
    tipHigher: look.planned('tip-higher') as Length,
    pivotHigher: look.planned('pivot-higher') as Length,
  };
}

function byCheck(makeup: Makeup, kind: ValveKind, offered: readonly number[]): Part {
  const found = computed(makeup, kind, (look) => needed(look, makeup));
  const own = NUMBERS.flatMap((naming) => {
    const value = found.values.get(naming.key);
    return value === undefined ? [] : [answered(makeup, naming, value, { kind })];
  });
  const [length, now] = ['pushrod-needed', 'now'].map((key) => found.values.get(key));
  const chosen =
    length &&
    offered.reduce<number | undefined>(
      (best, one) => (best !== undefined && Math.abs(best - length.value) <= Math.abs(one - length.value) ? best : one),
      undefined,
    );
  const bought =
    chosen === undefined || now === undefined
      ? []
      : chosenFigures(makeup, kind, chosen, { ...now, value: chosen - now.value });
  const figures = [...own, ...bought];
  return {
    figures,
    computed: [found],
    working: figures.map((one) => `${kind}: ${one.name} ${toldSurely('length', one)}`),
  };
}

/** `over`: how much longer the chosen one is than at zero lash. */
function chosenFigures(
  makeup: Makeup,
  kind: ValveKind,
  chosen: number,
  over: Parameters<typeof answered>[2],
): readonly AnsweredFigure[] {
  const length = answered(makeup, CHOSEN, { value: chosen, u: 0, effects: new Map() }, { kind });
  if (makeup.engine.valveGear?.adjustment === 'hydraulic')
    return [length, answered(makeup, PRELOAD, over, { kind }, kind)];
  const ratio = makeup.figures.get(`rocker-ratio@${kind}`)?.value ?? makeup.figures.get('rocker-ratio')?.value;
  if (ratio === undefined) return [length];
  const u = over.u === undefined ? {} : { u: over.u * ratio };
  return [length, answered(makeup, LASH, { value: -over.value * ratio, ...u, effects: new Map() }, { kind })];
}

function byTrials(kind: ValveKind, trials: readonly PushrodTrial[]): Part {
  const sorted = [...trials].sort((a, b) => a.length - b.length);
  const lengths = sorted.map(({ length }) => length as Length);
  const twice = lengths.some((one, at) => at > 0 && one === lengths[at - 1]);
  if (twice)
    return { figures: [], computed: [], cautions: [`${kind}: a pushrod length was tried twice; give each once`] };
  const narrowest = narrowestLength(
    lengths,
    sorted.map(({ width }) => width as Length),
  );
  const placed = sorted.filter(({ offset }) => offset !== undefined);
  const centred =
    placed.length < 2
      ? undefined
      : centredLength(
          placed.map(({ length }) => length as Length),
          placed.map(({ offset }) => offset as Length),
        );
  const figureOf = ({ key, name, quantity }: Naming, value: number | undefined): readonly AnsweredFigure[] =>
    value === undefined ? [] : [{ key, name, quantity, value, kind }];
  return {
    figures: [...figureOf(NARROWEST, narrowest), ...figureOf(CENTRED, centred)],
    computed: [],
    working: sorted.map(
      ({ length, width, offset }) =>
        `${kind}: ${told('length', length)} leaves a mark ${told('length', width)} wide${offset === undefined ? '' : `, ${told('length', offset)} from the middle`}`,
    ),
    cautions: adviceOf(kind, sorted, narrowest, centred),
  };
}

function adviceOf(
  kind: ValveKind,
  sorted: readonly PushrodTrial[],
  narrowest: number | undefined,
  centred: number | undefined,
): readonly string[] {
  const best = sorted.reduce((found, { width }, at) => (width < sorted[found]!.width ? at : found), 0);
  const way = best === 0 ? 'shorter' : 'longer';
  const open = narrowest === undefined && sorted.length > 0;
  const outside = centred !== undefined && (centred < sorted[0]!.length || centred > sorted.at(-1)!.length);
  return [
    ...(open && sorted.length < 3 ? [`${kind}: at least three lengths are needed to find the narrowest mark`] : []),
    ...(open && sorted.length >= 3 ? [`${kind}: try a ${way} one: the mark still narrows`] : []),
    ...(outside ? [`${kind}: the length with the mark in the middle lies beyond those tried`] : []),
  ];
}
