import { rangeText } from './range.js';
import { type InputSpec, isQuantity, type QuantityInput } from './spec.js';

/** What an input takes, in words. */
export function expectedText(spec: InputSpec): string {
  const one = expectedOne(spec);
  return spec.list ? `a list, each ${one}` : one;
}

/** What one value of an input is, in words. */
export function expectedOne(spec: InputSpec): string {
  if (isQuantity(spec)) return expectedQuantity(spec);
  switch (spec.kind) {
    case 'count':
      return `a whole number, ${rangeText('count', spec.range, '')}`;
    case 'choice':
      return `one of ${spec.choices.join(', ')}`;
    case 'text':
      return spec.expected;
  }
}

export function expectedQuantity(spec: QuantityInput): string {
  const range = rangeText(spec.kind, spec.range, spec.unit);
  return spec.kind === 'ratio' ? `a plain number, ${range}` : `a value with its unit such as ${spec.unit}, ${range}`;
}
