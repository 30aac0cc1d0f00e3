import {
  describeFault,
  done,
  findUnit,
  formatQuantity,
  fromUnit,
  type Outcome,
  parseQuantity,
  parseWindow,
  type QuantityKind,
  type QuantityOf,
  type TypedWindow,
} from '../../quantity/index.js';
import type { From, SheetCaution, SheetSource, Stated, Window } from '../model.js';
import { MOST_FAULTS } from './bounds.js';
import { type Path, pathText, type SheetDocument } from './document.js';
import { oneLine, type SheetFault } from './fault.js';
import { readFrom, UNSTATED, VALID_BEGINNINGS } from './from.js';
import { readSelection } from './selection.js';

export type RawText = string | number;
export type RawFigure =
  | RawText
  | { readonly value: RawText; readonly from?: string | undefined; readonly note?: string | undefined };
export interface WindowFigure<Q> {
  readonly text: string;
  readonly window: Window<Q>;
  readonly from: From;
}
/** A printed window as read, with the fewest decimals of its print: what comparisons allow for. */
export interface ReadWindow<Q> {
  readonly text: string;
  readonly window: Window<Q>;
  readonly unit: string;
  /** One unit in the last printed place, in SI. */
  readonly step: number;
}

/**
 * Reads the texts of one sheet. Faults and cautions are noted with their place as they are met, so that a person sees
 * all of them at once; a value that cannot be read is undefined and its fault is noted.
 */
export class SheetReader {
  readonly faults: SheetFault[] = [];
  readonly cautions: SheetCaution[] = [];
  readonly #document: SheetDocument;
  readonly #sources: Readonly<Record<string, SheetSource>>;
  readonly #default: From;

  constructor(
    document: SheetDocument,
    sources: Readonly<Record<string, SheetSource>>,
    defaultFrom: string | undefined,
  ) {
    this.#document = document;
    this.#sources = sources;
    this.#default = UNSTATED;
    this.#default = this.from(defaultFrom, ['defaultFrom']);
  }

  fault(code: string, path: Path, what: string): void {
    if (this.faults.length >= MOST_FAULTS) return;
    const where = pathText(path);
    this.faults.push({ code, message: oneLine(`${where}: ${what}`), path: where, ...this.#document.positionOf(path) });
  }

  caution(code: string, path: Path, what: string): void {
    if (this.cautions.length >= 5 * MOST_FAULTS) return;
    const where = pathText(path);
    const line = this.#document.positionOf(path)?.line;
    this.cautions.push({
      code,
      message: oneLine(`${where}: ${what}`),
      path: where,
      ...(line === undefined ? {} : { line }),
    });
  }

  /** The first text given names the origin; with none, the sheet's default. */
  from(text: string | undefined, path: Path, fallback: From = this.#default): From {
    if (text === undefined) return fallback;
    const read = readFrom(text, this.#sources);
    if (read !== undefined) return read;
    const keys = Object.keys(this.#sources).slice(0, 8);
    const orKey = keys.length === 0 ? '' : `, or with a key of sources (${keys.join(', ')})`;
    this.fault(
      'unknown-origin',
      path,
      `"${text.slice(0, 60)}" does not say how far to trust the figure; begin with ${VALID_BEGINNINGS}${orKey}`,
    );
    return fallback;
  }

  /** One printed size. A printed window is kept as such, with its middle as the value. */
  stated<K extends QuantityKind>(
    kind: K,
    raw: RawFigure | undefined,
    path: Path,
    origin?: From,
  ): Stated<QuantityOf<K>> | undefined {
    if (raw === undefined) return undefined;
    const figure = typeof raw === 'object' ? raw : { value: raw };
    const inner = typeof raw === 'object' ? [...path, 'value'] : path;
    const from = this.from(figure.from, [...path, 'from'], origin);
    const read = this.window(kind, figure.value, inner);
    if (read === undefined) return undefined;
    const { low, high } = read.window;
    if (low === undefined || high === undefined) {
      this.fault(
        'one-sided',
        inner,
        `"${read.text}" is open at one end; one size, or a window with both ends, is needed`,
      );
      return undefined;
    }
    const value = (low === high ? low : (low + high) / 2) as QuantityOf<K>;
    return {
      text: read.text,
      value,
      ...(low === high ? {} : { window: read.window }),
      from,
      ...(figure.note === undefined ? {} : { note: figure.note }),
    };
  }

  /** A printed window that carries its origin. */
  windowFigure<K extends QuantityKind>(
    kind: K,
    raw: RawFigure | undefined,
    path: Path,
  ): WindowFigure<QuantityOf<K>> | undefined {
    if (raw === undefined) return undefined;
    const figure = typeof raw === 'object' ? raw : { value: raw };
    const from = this.from(figure.from, [...path, 'from']);
    const read = this.window(kind, figure.value, typeof raw === 'object' ? [...path, 'value'] : path);
    return read === undefined ? undefined : { text: read.text, window: read.window, from };
  }

  /** One value in SI, without its text. */
  value<K extends QuantityKind>(kind: K, raw: RawText | undefined, path: Path): QuantityOf<K> | undefined {
    return this.stated(kind, raw, path)?.value;
  }

  /** A value or window as printed. What stands in brackets after it is the same figure in another unit, and is compared. */
  window<K extends QuantityKind>(kind: K, raw: RawText, path: Path): ReadWindow<QuantityOf<K>> | undefined {
    const text = this.#textOf(kind, raw, path);
    if (text === undefined) return undefined;
    const pair = /^(.*?\S)\s*\(([^()]*)\)\s*$/.exec(text);
    const main = this.#parse(kind, pair?.[1] ?? text, path);
    if (main === undefined) return undefined;
    if (pair?.[2] !== undefined) this.#compare(kind, main, pair[2], path);
    return {
      text,
      window: {
        ...(main.low === undefined ? {} : { low: main.low }),
        ...(main.high === undefined ? {} : { high: main.high }),
      },
      unit: main.unit,
      step: step(kind, main),
    };
  }

  selection(raw: string | number | readonly (string | number)[], path: Path): readonly string[] | undefined {
    const read = readSelection(raw);
    if (read.ok) return read.value;
    this.fault(
      'not-a-selection',
      path,
      `"${read.fault.piece.slice(0, 40)}" is not a list of ids; write 1-10, A-H or 1-8, 11`,
    );
    return undefined;
  }

  #textOf(kind: QuantityKind, raw: RawText, path: Path): string | undefined {
    if (typeof raw === 'string') return raw.trim();
    const written = this.#document.writtenAt(path) ?? String(raw);
    if (kind === 'ratio') return written;
    const units = kind === 'angle' ? 'deg' : kind === 'torque' ? 'N·m' : kind === 'length' ? 'mm' : '';
    const example = units === '' ? '' : `, for example "${written} ${units}"`;
    this.fault('bare-number', path, `${written} has no unit; write the ${kind} with its unit${example}`);
    return undefined;
  }

  #parse<K extends QuantityKind>(kind: K, text: string, path: Path): TypedWindow<QuantityOf<K>> | undefined {
    const read = parseWindow(kind, text);
    if (read.ok) return read.value as TypedWindow<QuantityOf<K>>;
    const one = parseQuantity(kind, text);
    if (one.ok) return { ...one.value, low: one.value.value, high: one.value.value } as TypedWindow<QuantityOf<K>>;
    this.fault(read.fault.code, path, describeFault(read.fault));
    return undefined;
  }

  #compare<K extends QuantityKind>(kind: K, main: TypedWindow<QuantityOf<K>>, bracket: string, path: Path): void {
    const other = asOpenAs(main, parseWindow(kind, bracket));
    if (!other.ok) {
      this.fault('bracket', path, `brackets hold the same figure in another unit, but ${describeFault(other.fault)}`);
      return;
    }
    const allowed = Math.max(0.51 * step(kind, main), coarseness(bracket) * step(kind, other.value));
    const differ = (a: number | undefined, b: number | undefined) =>
      (a === undefined) !== (b === undefined) || (a !== undefined && b !== undefined && Math.abs(a - b) > allowed);
    if (!differ(main.low, other.value.low) && !differ(main.high, other.value.high)) return;
    const slip = [0.1, 10].find((factor) => moves(main, other.value, allowed, factor));
    const hint = slip === undefined ? '' : `; ${slip < 1 ? 'a tenth' : 'ten times'} of the second would agree`;
    const text = `${main.text.trim()} and (${bracket.trim()}) are not the same figure${hint}`;
    const kept = 'one of the two may be misprinted; the first is used as it stands';
    this.caution('units-disagree', path, `${text}; ${kept}; it is ${converted(kind, main, other.value)}`);
  }
}

/** Ends that disagree would agree if the decimal point of the second figure stood one place off. */
function moves(main: TypedWindow, other: TypedWindow, allowed: number, factor: number): boolean {
  const ends = (['low', 'high'] as const).filter((end) => main[end] !== undefined && other[end] !== undefined);
  const near = (end: 'low' | 'high', by: number) =>
    Math.abs(main[end]! - other[end]! * by) <= allowed * Math.max(1, by);
  return ends.every((end) => near(end, 1) || near(end, factor)) && ends.some((end) => !near(end, 1));
}

/** The first figure in the unit and the places of the second. */
function converted(kind: QuantityKind, main: TypedWindow, other: TypedWindow): string {
  const text = (value: number | undefined) =>
    value === undefined ? undefined : formatQuantity(kind, value, other.unit, other.places + 1);
  const [low, high] = [text(main.low), text(main.high)];
  if (low === undefined || high === undefined) return `${high ?? low}`;
  return low === high ? low : `${low} to ${high}`;
}

/** A single figure in brackets after a limit is the same limit: "<= 1.0 kgf/cm2 (14 psi)". */
function asOpenAs<W extends TypedWindow, F>(main: TypedWindow, bracket: Outcome<W, F>): Outcome<W, F> {
  if (!bracket.ok || bracket.value.low !== bracket.value.high) return bracket;
  const { low, high, ...rest } = bracket.value;
  return done({ ...rest, ...(main.low !== undefined && { low }), ...(main.high !== undefined && { high }) } as W);
}

/** One unit in the last place of a printed figure, in SI. */
function step(kind: QuantityKind, typed: { readonly unit: string; readonly places: number }): number {
  const unit = findUnit(kind, typed.unit);
  if (unit === undefined) return 0;
  return Math.abs(fromUnit(kind, 10 ** -typed.places, typed.unit) - fromUnit(kind, 0, typed.unit));
}

/** Steps by which a converted figure may be off: one where it was cut, five where it was rounded to tens (330 N·m as 240 lb-ft). */
function coarseness(bracket: string): number {
  return /(^|\D)[1-9]\d+0(\s|[^\d.,]|$)/.test(bracket) ? 5.1 : 1.01;
}
