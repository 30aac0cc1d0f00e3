/** Answers of the combination put together: numbers with verdict and chance, what was missing, what was assumed. */
import { conformance } from '../../calc/metrology/index.js';
import { figureKind, figureParts, type Window } from '../../engine/index.js';
import { displayUnit, formatQuantity, formatUncertain, type QuantityKind } from '../../quantity/index.js';
import { judged } from '../decisions/judged.js';
import type { Computed, Known } from './look.js';
import { figure, type Spot } from './makeup.js';
import type { Answered, AnsweredFigure, GivenFigure, Makeup, MissingFigure } from './model.js';

/** How a result is called, and which figures of the limits it is held against. */
export interface Naming {
  readonly key: string;
  readonly name: string;
  readonly quantity: QuantityKind;
  /** Keys of its ends, e.g. `quench-least`. */
  readonly low?: string;
  readonly high?: string;
}
export type Of = Pick<AnsweredFigure, 'cylinder' | 'bank' | 'kind' | 'valve'>;

/** The wanted window of a result; undefined where nobody wants one. */
export function wanted(makeup: Makeup, { low, high }: Naming, spot?: Spot): AnsweredFigure['limit'] {
  const least = low === undefined ? undefined : figure(makeup, low, spot);
  const most = high === undefined ? undefined : figure(makeup, high, spot);
  if (least === undefined && most === undefined) return undefined;
  const from = [...new Set([least?.from, most?.from].filter((text) => text !== undefined))].join('; ');
  return { ...(least && { low: least.value }), ...(most && { high: most.value }), from };
}

/** A result as an answer, held against what is wanted. Without a doubt there is a number and no verdict on it. */
export function answered(
  makeup: Makeup,
  naming: Naming,
  { value, u }: Known,
  of: Of = {},
  spot?: Spot,
): AnsweredFigure {
  const { key, name, quantity } = naming;
  const limit = wanted(makeup, naming, spot);
  return {
    key,
    name,
    quantity,
    value,
    ...(u !== undefined && { u }),
    ...of,
    ...(limit && { limit, verdict: judged({ value, u }, ends(limit)) }),
    ...(limit && u !== undefined && { inside: conformance(value, u, ends(limit)).inside }),
  };
}
const ends = ({ low, high }: NonNullable<AnsweredFigure['limit']>): Window<number> => ({
  ...(low !== undefined && { low }),
  ...(high !== undefined && { high }),
});

/** What one computation brought, before it is an answer. */
export interface Part {
  readonly figures: readonly AnsweredFigure[];
  readonly computed: readonly Computed[];
  readonly working?: readonly string[];
  readonly cautions?: readonly string[];
}

/** Parts together: each missing figure and each assumption once. */
export function together(parts: readonly Part[], sources: readonly string[]): Answered {
  const all = parts.flatMap(({ computed }) => computed);
  const missing = new Map<string, MissingFigure>();
  for (const one of all.flatMap((each) => each.missing))
    if (!missing.has(`${one.key} ${one.for}`)) missing.set(`${one.key} ${one.for}`, one);
  const used = new Map(all.flatMap((each) => each.used).map((one) => [one.key, one]));
  const unsure = [...used.values()].filter(({ u }) => u === undefined);
  return {
    figures: parts.flatMap(({ figures }) => figures),
    missing: [...missing.values()],
    working: parts.flatMap(({ working }) => working ?? []),
    sources,
    assumed: [...used.values()].filter(({ origin }) => origin === 'assumed').map(assumption),
    cautions: [
      ...new Set(parts.flatMap(({ cautions }) => cautions ?? [])),
      ...(unsure.length === 0
        ? []
        : [`no doubt is stated for ${unsure.map(nameOf).join(', ')}: no verdict rests on it`]),
    ],
  };
}

export const nameOf = ({ key }: Pick<GivenFigure, 'key'>): string => {
  const parts = figureParts(key);
  const title = figureKind(parts.key)?.title ?? parts.key;
  return parts.place === undefined
    ? title
    : `${title} (${/^\d+$/.test(parts.place) ? `cylinder ${parts.place}` : parts.place})`;
};
const assumption = (one: GivenFigure): string => {
  const kind = figureKind(figureParts(one.key).key);
  const value = kind?.choices?.[one.value] ?? (kind === undefined ? '' : told(kind.quantity, one.value));
  return `${nameOf(one)} ${value}: ${one.from}`;
};

const PLACES: Partial<Readonly<Record<QuantityKind, number>>> = {
  length: 3,
  volume: 2,
  ratio: 2,
  angle: 1,
  force: 0,
  mass: 1,
  stiffness: 2,
  torque: 1,
  'angular-speed': 0,
  frequency: 0,
};
const UNITS: Partial<Readonly<Record<QuantityKind, string>>> = { mass: 'g', volume: 'cm3', 'angular-speed': 'rpm' };
const unitOf = (quantity: QuantityKind): string => UNITS[quantity] ?? displayUnit(quantity, 'metric');

/** A value in the shop's metric unit, for lines of working; screens convert the figures themselves. */
export const told = (quantity: QuantityKind, value: number): string =>
  formatQuantity(quantity, value, unitOf(quantity), PLACES[quantity] ?? 3);
/** The same with its expanded uncertainty (k = 2), where it is known. */
export const toldSurely = (quantity: QuantityKind, { value, u }: Pick<Known, 'value' | 'u'>): string =>
  u === undefined
    ? `${told(quantity, value)}, uncertainty not known`
    : formatUncertain(quantity, { value, u }, unitOf(quantity), { places: PLACES[quantity] ?? 3 });
