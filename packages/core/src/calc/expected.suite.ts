/** For tests: what an example or a reference row expects of an output, and how near the answer must be. */
import { expect } from 'vitest';
import { fromUnit, parseQuantity } from '../quantity/index.js';
import type { Text } from './catalogue/calculation.js';
import { isQuantity } from './catalogue/spec.js';
import type { Calculation, OutputResult } from './index.js';

export interface Expected {
  check(result: OutputResult | undefined, where: string): void;
}

/** Half of the last printed digit, with room for the rounding of a printed 5. */
const HALF_DIGIT = 0.5001;

export function readExpected(calc: Calculation, name: string, text: Text, tolerance?: string): Expected {
  const spec = calc.outputs[name];
  if (!spec) throw new Error(`${calc.id} has no output ${name}`);
  const wanted = Array.isArray(text) ? text : [text];
  return {
    check(result, where) {
      if (!result) throw new Error(`${where}: not answered`);
      const values = Array.isArray(result.value) ? result.value : [result.value];
      expect(values.length, where).toBe(wanted.length);
      wanted.forEach((one: string | number, at: number) => {
        const found = values[at];
        if (!isQuantity(spec)) expect(found, where).toBe(one);
        else checkQuantity(spec.kind, fromUnit(spec.kind, Number(found), spec.unit), String(one), tolerance, where);
      });
    },
  };
}

function checkQuantity(
  kind: Parameters<typeof parseQuantity>[0],
  found: number,
  text: string,
  tolerance: string | undefined,
  where: string,
): void {
  const printed = parseQuantity(kind, text);
  if (!printed.ok) throw new Error(`${where}: cannot read "${text}"`);
  const { value, unit, places } = printed.value;
  const size = fromUnit(kind, 1, unit) - fromUnit(kind, 0, unit);
  const allowed = tolerance === undefined ? HALF_DIGIT * size * 10 ** -places : allowance(kind, tolerance, where);
  const text2 = `${where}: ${found / size} ${unit} against ${text} within ${allowed / size}`;
  expect(Math.abs(found - value) <= allowed, text2).toBe(true);
}

function allowance(kind: Parameters<typeof parseQuantity>[0], tolerance: string, where: string): number {
  const read = parseQuantity(kind, tolerance);
  if (!read.ok) throw new Error(`${where}: cannot read the tolerance "${tolerance}"`);
  return read.value.value;
}
