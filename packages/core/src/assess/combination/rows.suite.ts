/** Reference rows of cases/*.json asked of the combination instead of the catalogue: what the tests of the rows share. */
import { expect } from 'vitest';
import type { Text } from '../../calc/catalogue/calculation.js';
import { isQuantity } from '../../calc/catalogue/spec.js';
import { readExpected } from '../../calc/expected.suite.js';
import { findCalculation, type OutputResult } from '../../calc/index.js';
import type { Engine } from '../../engine/index.js';
import { engineOf } from '../../engine/load/try-sheets.suite.js';
import { parseQuantity, type QuantityKind, toUnit } from '../../quantity/index.js';
import { makeupOf } from './makeup.js';
import type { Answered, AnsweredFigure, GivenFigure, Makeup } from './model.js';

export interface Row {
  readonly case: string;
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, Text>>;
  readonly expected?: Readonly<Record<string, Text>>;
  readonly tolerance?: Readonly<Record<string, string>>;
  readonly refused?: string;
  readonly from: string;
}
export const rowsOf = (file: { readonly cases: unknown }): readonly Row[] => file.cases as readonly Row[];

/** SI value of a text of a quantity. */
export function si(kind: QuantityKind, text: string | number): number {
  const read = parseQuantity(kind, String(text));
  if (!read.ok) throw new Error(`no ${kind}: ${text}`);
  return read.value.value;
}

/** An input of a row in SI; undefined where the row does not give it. Choices and counts are not quantities. */
export function input(row: Row, name: string): number | undefined {
  const spec = findCalculation(row.calculation)?.inputs[name];
  const text = row.inputs[name];
  if (spec === undefined || text === undefined) return undefined;
  if (!isQuantity(spec) || Array.isArray(text)) throw new Error(`${row.case}: ${name} is no single quantity`);
  return si(spec.kind, text as string);
}
export function inputs(row: Row, name: string): readonly number[] {
  const spec = findCalculation(row.calculation)?.inputs[name];
  const text = row.inputs[name];
  if (spec === undefined || text === undefined || !isQuantity(spec)) return [];
  return [text].flat().map((one) => si(spec.kind, one as string));
}

/** Checks what the combination answers against one printed figure of the row. */
export function check(row: Row, name: string, found: number | undefined): void {
  const calc = findCalculation(row.calculation)!;
  const spec = calc.outputs[name]!;
  const text = row.expected?.[name];
  if (text === undefined || !isQuantity(spec)) throw new Error(`${row.case} has no ${name}`);
  expect(found, `${name} of ${row.case}`).toBeDefined();
  const result = { value: toUnit(spec.kind, found!, spec.unit) } as unknown as OutputResult;
  readExpected(calc, name, text, row.tolerance?.[name]).check(result, name);
}

export const exact = (key: string, value: number | undefined): readonly GivenFigure[] =>
  value === undefined ? [] : [{ key, value, u: 0, origin: 'stated', from: 'reference row' }];

/** Makeup of an engine from figures that are exactly so. */
export const makeupWith = (engine: Engine, figures: Readonly<Record<string, number | undefined>>): Makeup =>
  makeupOf(
    engine,
    undefined,
    Object.entries(figures).flatMap(([key, value]) => exact(key, value)),
  );

export function answerIn(
  answered: Answered,
  key: string,
  of: Partial<AnsweredFigure> = {},
): AnsweredFigure | undefined {
  return answered.figures.find(
    (one) =>
      one.key === key && Object.entries(of).every(([name, value]) => one[name as keyof AnsweredFigure] === value),
  );
}
export const valueIn = (answered: Answered, key: string, of: Partial<AnsweredFigure> = {}): number | undefined =>
  answerIn(answered, key, of)?.value;

const BARE = (cylinders: number, more: string) => `gudgeon: 1
name: Bare
layout:
  form: inline
  cylinders: [${Array.from({ length: cylinders }, (_, at) => at + 1).join(', ')}]
  firingOrder: ${cylinders === 4 ? '1-3-4-2' : Array.from({ length: cylinders }, (_, at) => at + 1).join('-')}
${more}`;
/** An inline engine of which nothing but its layout is known, and what the sheet adds. */
export const bareEngine = (cylinders = 4, more = ''): Engine => engineOf(BARE(cylinders, more));

/** A right-angled vee of eight, with shared pins. */
export const bareVee = (more = ''): Engine =>
  engineOf(`gudgeon: 1
name: Bare vee
layout:
  form: vee
  banks: { left: 45 deg, right: -45 deg }
  cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] }
  crankpins:
    - { cylinders: [1, 2], at: 0 deg }
    - { cylinders: [3, 4], at: 90 deg }
    - { cylinders: [5, 6], at: 270 deg }
    - { cylinders: [7, 8], at: 180 deg }
  firingOrder: 1-5-7-2-6-8-4-3
${more}`);
