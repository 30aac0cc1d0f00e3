/**
 * The combination of parts: every figure that the sheet, the worksheets or the person gives, and what follows from them together.
 * A what-if is a set of changed figures on a scratch copy; nothing enters the log before the person decides.
 */
import type { BankId, CylinderNumber, Engine, ValveKind } from '../../engine/index.js';
import type { QuantityKind } from '../../quantity/index.js';
import type { VerdictWord } from '../model.js';

export type { FigureGroup, FigureKindOf } from '../../engine/index.js';

/** Where a figure comes from, best first: what was measured outranks what was printed, a scratch figure outranks both. */
export type Origin = 'scratch' | 'stated' | 'measured' | 'sheet' | 'assumed';
export interface GivenFigure {
  /** `chamber-volume@3`, `spring-rate@intake`, `stroke`. */
  readonly key: string;
  /** SI. */
  readonly value: number;
  /** Standard uncertainty where known. */
  readonly u?: number;
  readonly origin: Origin;
  /** Manual and page, worksheet and place, "common practice, no source". */
  readonly from: string;
}
/** All figures at hand. A lookup for one cylinder or valve kind falls back on the figure of the whole engine. */
export interface Makeup {
  readonly engine: Engine;
  readonly figures: ReadonlyMap<string, GivenFigure>;
}
export interface MissingFigure {
  readonly key: string;
  readonly title: string;
  /** What cannot be computed without it. */
  readonly for: string;
}
/** One answered number of a subject. */
export interface AnsweredFigure {
  readonly key: string;
  readonly name: string;
  readonly quantity: QuantityKind;
  readonly value: number;
  readonly u?: number;
  readonly cylinder?: CylinderNumber;
  readonly bank?: BankId;
  readonly kind?: ValveKind;
  /** One valve, as `valveKey` writes it. */
  readonly valve?: string;
  readonly verdict?: VerdictWord;
  /** The limit that it is held against, with origin. */
  readonly limit?: { readonly low?: number; readonly high?: number; readonly from: string };
  /** Chance that the true figure keeps the limit, 0 to 1, where u is known. */
  readonly inside?: number;
}
/** What a subject answers: the numbers that could be computed, and what was missing for the rest. */
export interface Answered {
  readonly figures: readonly AnsweredFigure[];
  readonly missing: readonly MissingFigure[];
  readonly working: readonly string[];
  readonly sources: readonly string[];
  readonly assumed: readonly string[];
  readonly cautions: readonly string[];
}
