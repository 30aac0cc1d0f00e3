/** Looks figures up for a computation, notes which it used and which were lacking, and carries their doubt into the results. */
import { type Propagated, propagateBy } from '../../calc/numeric/index.js';
import { figureKind } from '../../engine/index.js';
import { figure, type Spot } from './makeup.js';
import type { GivenFigure, Makeup, MissingFigure } from './model.js';

interface Moved {
  readonly key: string;
  readonly to: number;
}

export class Look {
  readonly makeup: Makeup;
  readonly used: Map<string, GivenFigure>;
  readonly missing: Map<string, MissingFigure>;
  readonly #spot: Spot | undefined;
  readonly #moved: Moved | undefined;

  constructor(makeup: Makeup, spot?: Spot, moved?: Moved, notes?: Pick<Look, 'used' | 'missing'>) {
    this.makeup = makeup;
    this.#spot = spot;
    this.#moved = moved;
    this.used = notes?.used ?? new Map();
    this.missing = notes?.missing ?? new Map();
  }

  /** A look for another spot that notes into the same lists. */
  at(spot: Spot): Look {
    return new Look(this.makeup, spot, this.#moved, this);
  }

  /** The figure if there is one. */
  read(key: string, spot: Spot | undefined = this.#spot): number | undefined {
    const found = figure(this.makeup, key, spot);
    if (found === undefined) return undefined;
    this.used.set(found.key, found);
    return this.#moved?.key === found.key ? this.#moved.to : found.value;
  }

  /** The figure, noted as missing where there is none. */
  need(key: string, lacking: string, spot: Spot | undefined = this.#spot): number | undefined {
    const value = this.read(key, spot);
    if (value === undefined) this.lack(key, lacking);
    return value;
  }

  lack(key: string, lacking: string): void {
    this.missing.set(key, { key, title: figureKind(key)?.title ?? key, for: lacking });
  }

  /** A change that is still to be made: where none is planned there is none. */
  planned(key: string, spot: Spot | undefined = this.#spot): number {
    return this.read(key, spot) ?? 0;
  }
}

/** Results by name; what could not be computed is left out. */
export type Values = Readonly<Record<string, number | undefined>>;

/** A result with its standard uncertainty; `u` absent: some figure that it follows states none. */
export interface Known {
  readonly value: number;
  readonly u?: number;
  /** Change of the result for one standard uncertainty of each figure, by key. */
  readonly effects: ReadonlyMap<string, number>;
}
export interface Computed {
  readonly values: ReadonlyMap<string, Known>;
  readonly used: readonly GivenFigure[];
  readonly missing: readonly MissingFigure[];
}

function numbersOf(values: Values): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const name in values) {
    const value = values[name];
    if (value !== undefined && Number.isFinite(value)) numbers.set(name, value);
  }
  return numbers;
}

/**
 * Results of a computation on the figures of a makeup, each with the doubt that follows from theirs by derivatives (`propagateBy`).
 * Figures are taken as independent of each other. `compute` may be asked with a figure moved a little; it must not remember.
 */
export function computed(makeup: Makeup, spot: Spot | undefined, compute: (look: Look) => Values): Computed {
  const look = new Look(makeup, spot);
  const centre = numbersOf(compute(look));
  const used = [...look.used.values()];
  const doubtful = used.filter(({ u }) => u !== 0).map(({ key, value, u }) => ({ name: key, value, standard: u }));
  const doubts = propagateBy(
    ({ name }, to) => numbersOf(compute(new Look(makeup, spot, { key: name, to }))),
    centre,
    doubtful,
  );
  const values = new Map([...centre].map(([name, value]) => [name, knownOf(value, doubts.get(name))]));
  return { values, used, missing: [...look.missing.values()] };
}

function knownOf(value: number, doubt: Propagated | undefined): Known {
  if (doubt === undefined) return { value, effects: new Map() };
  return {
    value,
    u: doubt.standard,
    effects: new Map(doubt.contributions.map(({ input, effect }) => [input, effect])),
  };
}

/** One result less another, with the doubts that both share taken once. */
export function difference(one: Known, other: Known): Known {
  const value = one.value - other.value;
  const keys = new Set([...one.effects.keys(), ...other.effects.keys()]);
  const effects = new Map([...keys].map((key) => [key, (one.effects.get(key) ?? 0) - (other.effects.get(key) ?? 0)]));
  if (one.u === undefined || other.u === undefined) return { value, effects };
  return { value, u: Math.hypot(...effects.values()), effects };
}

/** Results of one kind added up, with the doubts that they share taken once. */
export function sumOf(all: readonly Known[]): Known {
  const effects = new Map<string, number>();
  for (const one of all) for (const [key, effect] of one.effects) effects.set(key, (effects.get(key) ?? 0) + effect);
  const value = all.reduce((sum, one) => sum + one.value, 0);
  if (all.some(({ u }) => u === undefined)) return { value, effects };
  return { value, u: Math.hypot(...effects.values()), effects };
}
