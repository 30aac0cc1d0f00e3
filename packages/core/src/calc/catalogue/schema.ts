/** JSON Schema (draft 2020-12) of what a calculation takes, from its declaration. */
import { unitsOf } from '../../quantity/index.js';
import type { Calculation } from './calculation.js';
import { expectedText } from './expected.js';
import { LONGEST_LIST } from './read-inputs.js';
import { type InputSpec, isQuantity, type Range } from './spec.js';

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
export type JsonObject = { readonly [key: string]: Json };

export function inputSchema(calc: Calculation): JsonObject {
  const inputs = Object.entries(calc.inputs);
  const required = inputs.filter(([, spec]) => !leavable(spec)).map(([name]) => name);
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `gudgeon:calc/${calc.id}`,
    title: calc.title,
    description: calc.summary,
    type: 'object',
    properties: Object.fromEntries(inputs.map(([name, spec]) => [name, propertyOf(spec)])),
    required,
    additionalProperties: false,
  };
}

/** Whether an input may be left out. */
export const leavable = (spec: InputSpec): boolean =>
  spec.optional === true || (spec.kind !== 'text' && spec.default !== undefined);

function propertyOf(spec: InputSpec): JsonObject {
  const description = `${spec.meaning} (${spec.symbol}): ${expectedText(spec)}`;
  const one = valueSchema(spec);
  return spec.list
    ? { description, type: 'array', items: one, minItems: 1, maxItems: LONGEST_LIST }
    : { description, ...one };
}

function valueSchema(spec: InputSpec): JsonObject {
  if (isQuantity(spec)) return quantitySchema(spec.kind);
  switch (spec.kind) {
    case 'count':
      return {
        anyOf: [
          { type: 'integer', ...numericLimits(spec.range) },
          { type: 'string', pattern: '^\\s*[+-]?[0-9]+\\s*$' },
        ],
      };
    case 'choice':
      return { enum: [...spec.choices] };
    case 'text':
      return { type: ['string', 'number'], minLength: 1 };
  }
}

function quantitySchema(kind: Parameters<typeof unitsOf>[0]): JsonObject {
  const pair: JsonObject = {
    type: 'object',
    properties: {
      value: { type: ['number', 'string'] },
      unit: { type: 'string', examples: unitsOf(kind).map((unit) => unit.name) },
      plusMinus: { type: 'number', minimum: 0, description: 'standard uncertainty in the same unit' },
    },
    required: kind === 'ratio' ? ['value'] : ['value', 'unit'],
    additionalProperties: false,
  };
  const text: JsonObject = { type: 'string', minLength: 1, maxLength: 64 };
  return { anyOf: kind === 'ratio' ? [text, { type: 'number' }, pair] : [text, pair] };
}

const numericLimits = (range: Range): JsonObject => ({
  ...(range.from !== undefined && { minimum: range.from }),
  ...(range.to !== undefined && { maximum: range.to }),
  ...(range.above !== undefined && { exclusiveMinimum: range.above }),
  ...(range.below !== undefined && { exclusiveMaximum: range.below }),
});
