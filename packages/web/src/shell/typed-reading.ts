import { parseQuantity } from '@gudgeon/core/quantity';
import type { Reading } from '@gudgeon/core/record';

/** What was keyed, how it is shown, and how the log keeps it. */
export interface TypedReading {
  readonly raw: string;
  readonly text: string;
  readonly reading: Reading;
}

/** A keyed length as the log keeps it; undefined where the core cannot read it. */
export function lengthTyped(raw: string, shown: string, unit: string): TypedReading | undefined {
  const text = `${shown} ${unit}`;
  const parsed = parseQuantity('length', text);
  return parsed.ok ? { raw, text, reading: { text, value: parsed.value.value, unit: 'm' } } : undefined;
}
