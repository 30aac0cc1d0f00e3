/** A calculation described as plain data: for the docs page, the list of the command line and the screen's help. */
import { describeSource, sourceOf } from '../../sources/index.js';
import type { Calculation, Example } from './calculation.js';
import { expectedText } from './expected.js';
import { inputSchema, type JsonObject, leavable } from './schema.js';

export interface CalculationPage {
  readonly id: string;
  readonly subject: string;
  readonly title: string;
  readonly summary: string;
  readonly formula: string;
  readonly inputs: readonly {
    readonly name: string;
    readonly kind: string;
    readonly symbol: string;
    readonly meaning: string;
    readonly list: boolean;
    readonly required: boolean;
    readonly takes: string;
  }[];
  readonly outputs: readonly {
    readonly name: string;
    readonly kind: string;
    readonly symbol: string;
    readonly meaning: string;
    readonly list: boolean;
    readonly unit: string;
  }[];
  readonly assumptions: readonly string[];
  readonly sources: readonly string[];
  readonly example: Example;
  readonly schema: JsonObject;
}

export function pageOf(calc: Calculation): CalculationPage {
  const { id, subject, title, summary, formula, assumptions, example } = calc;
  return {
    id,
    subject,
    title,
    summary,
    formula,
    inputs: Object.entries(calc.inputs).map(([name, spec]) => ({
      name,
      kind: spec.kind,
      symbol: spec.symbol,
      meaning: spec.meaning,
      list: spec.list === true,
      required: !leavable(spec),
      takes: expectedText(spec),
    })),
    outputs: Object.entries(calc.outputs).map(([name, spec]) => ({
      name,
      kind: spec.kind,
      symbol: spec.symbol,
      meaning: spec.meaning,
      list: spec.list === true,
      unit: 'unit' in spec ? spec.unit : '',
    })),
    assumptions,
    sources: calc.sources.map((key) => describeSource(sourceOf(key))),
    example,
    schema: inputSchema(calc),
  };
}
