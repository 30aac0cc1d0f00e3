/** A size put together: value, doubt, and what a person sees when the number is opened. */
import type { Measured, Size } from '../model.js';
import { Blend, type Cause, type ErrorSource } from './causes.js';
import type { Corrected } from './corrected.js';
import type { PlannedFigure, PlannedSize, PlannedWay } from './planned.js';
import { readingLine, sure, unitOf } from './words.js';

/** A figure with the readings that form it. */
export interface ReadFigure {
  readonly planned: PlannedFigure;
  readonly readings: readonly Corrected[];
  readonly value: number;
  /** Change of the figure for one unit of each reading. */
  readonly by: readonly number[];
}
/** A size with the figures that form it. */
export interface Formation {
  readonly planned: PlannedSize;
  readonly way: PlannedWay;
  readonly figures: readonly ReadFigure[];
  readonly value: number;
  /** Change of the size for one unit of each figure. */
  readonly by: readonly number[];
}

/** One for all sizes, begun anew for each: thousands of them are blended with every reading. */
const BLEND = new Blend();
function blended(figures: readonly ReadFigure[], by: readonly number[]): Blend {
  const blend = BLEND.begin();
  for (let f = 0; f < figures.length; f += 1) {
    const { readings, by: own } = figures[f]!;
    for (let r = 0; r < readings.length; r += 1) blend.add(by[f]! * own[r]!, readings[r]!);
  }
  return blend;
}

/** A value that is held against limits; the one reading that it is, where it is one of several. */
export interface Judged {
  readonly value: number;
  readonly u: number;
  readonly reading?: ErrorSource;
}
/** Its doubt is worked out when it is judged: of two ends one decides. */
class EndOfSize implements Judged {
  readonly value: number;
  readonly reading: ErrorSource;
  readonly #of: Corrected;

  constructor(reading: Corrected) {
    this.value = reading.value;
    this.reading = reading.own;
    this.#of = reading;
  }
  get u(): number {
    const blend = BLEND.begin();
    blend.add(1, this.#of);
    return blend.doubt();
  }
}
function extreme(readings: readonly Corrected[], sense: 1 | -1): Corrected {
  let best = readings[0]!;
  for (const one of readings) if (sense * one.value > sense * best.value) best = one;
  return best;
}

/**
 * Value and doubt are there at once; the lines that only an opened number shows are made when it is opened, because an assessment of a
 * whole engine is made anew with every reading.
 */
export class FormedSize implements Size {
  readonly key: string;
  readonly value: number;
  readonly u: number;
  readonly #formation: Formation;

  constructor(formation: Formation) {
    this.#formation = formation;
    this.key = formation.planned.key;
    this.value = formation.value;
    this.u = blended(formation.figures, formation.by).doubt();
  }
  get property(): string {
    return this.#formation.planned.property;
  }
  get place(): string {
    return this.#formation.planned.place.id;
  }
  get title(): string {
    return this.#formation.planned.title;
  }
  get measured(): Measured {
    return this.#formation.planned.measured;
  }
  get sources(): readonly string[] {
    return this.#formation.way.sources;
  }
  /** What is judged: the size, or the smallest and the largest reading of it. */
  get judged(): readonly Judged[] {
    const { way, figures, value } = this.#formation;
    if (way.ends !== true) return [{ value, u: this.u }];
    const readings = figures[0]!.readings;
    return [new EndOfSize(extreme(readings, -1)), new EndOfSize(extreme(readings, 1))];
  }
  get #causes(): readonly Cause[] {
    return blended(this.#formation.figures, this.#formation.by).causes();
  }
  get parts(): Size['parts'] {
    return this.#causes.map(({ source, sensitivity }) => ({
      key: source.key,
      name: source.name,
      sensitivity,
      u: source.u,
    }));
  }
  get working(): readonly string[] {
    return workingOf(this.#formation, this.u);
  }
  get cautions(): readonly string[] {
    return cautionsOf(this.#formation, this.#causes);
  }
}

const readingsOf = ({ figures }: Formation): readonly Corrected[] => figures.flatMap(({ readings }) => readings);

function workingOf(formation: Formation, u: number): readonly string[] {
  const { planned, way, figures, value } = formation;
  const { measured, title, place } = planned;
  const unit = unitOf(measured, readingsOf(formation));
  const alone = figures.length === 1;
  const lines = figures.flatMap((figure) => {
    const read = figure.readings.map((one) => readingLine(measured, one, unit));
    const { name, words } = figure.planned;
    if (alone || (words === '' && figure.readings.length === 1)) return read;
    const doubt = blended([figure], [1]).doubt();
    return [...read, `${name}, ${words}: ${sure(measured, figure.value, doubt, unit)}`];
  });
  const result = `${title}, ${place.name}${way.formula === '' ? '' : ` = ${way.formula}`}: ${sure(measured, value, u, unit)} (k = 2)`;
  return way.ends === true ? [...lines, result, ENDS] : [...lines, result];
}
const ENDS = 'the smallest and the largest reading are held against the limits, not their mean';

const NO_TEMPERATURE = 'no temperature noted: not corrected to 20 °C';
/** Share of the variance from which the setting of a gauge is worth a caution. */
const MOST_OF_IT = 0.5;

function cautionsOf(formation: Formation, causes: readonly Cause[]): readonly string[] {
  const told = new Set(readingsOf(formation).flatMap(({ cautions }) => cautions));
  for (const { planned, readings } of formation.figures) {
    const taken = readings.flatMap((one) => one.taken);
    if (planned.place.kind.measured === 'length' && taken.some(isUnnoted)) told.add(NO_TEMPERATURE);
    if (planned.place.assumed !== undefined && !taken.every(isUnnoted)) told.add(planned.place.assumed);
  }
  const { cautions, negative } = formation.way;
  for (const caution of cautions) told.add(caution);
  if (negative !== undefined && formation.value < 0) told.add(negative);
  const whole = causes.reduce((sum, { source, sensitivity }) => sum + (source.u * sensitivity) ** 2, 0);
  for (const { source, sensitivity } of causes)
    if (source.key.startsWith('gauge/') && (source.u * sensitivity) ** 2 > MOST_OF_IT * whole)
      told.add(`${source.name} makes most of the doubt: check it against a standard`);
  return [...told];
}
const isUnnoted = ({ temperature }: Corrected['taken'][number]): boolean => temperature === undefined;
