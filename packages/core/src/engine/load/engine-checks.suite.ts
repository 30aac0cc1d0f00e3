/** How a row of cases/engine-checks is proved: the kinds of proof, and the reading of a row's figures. */
import { expect } from 'vitest';
import { fromUnit, parseQuantity } from '../../quantity/index.js';
import type { BuiltLimit } from './build/limits.js';
import type { Range } from './checks/ranges.js';

export type Pair = readonly [string, string];
export type Proof =
  | {
      readonly by: 'fit';
      readonly gap: string;
      readonly scope?: string;
      readonly grade?: string;
      readonly found: Pair;
      readonly verdict: string;
      readonly slip?: { readonly low: number; readonly high: number };
    }
  | {
      readonly by: 'calculation';
      readonly calculation: string;
      readonly inputs: Readonly<Record<string, unknown>>;
      readonly expected: Readonly<Record<string, string | readonly string[]>>;
    }
  | { readonly by: 'left over'; readonly whole: string; readonly taken: readonly string[]; readonly found: Pair }
  | { readonly by: 'caution'; readonly at: string; readonly code: string; readonly says: string }
  | { readonly by: 'no caution'; readonly at: string }
  | {
      readonly by: 'step';
      readonly row: string;
      readonly scope: string;
      readonly wanted: Pair;
      readonly lowAgrees: boolean;
      readonly highAgrees: boolean;
    }
  | { readonly by: 'valve sets'; readonly case: string; readonly order: readonly number[] }
  | {
      readonly by: 'sheet';
      readonly train: Readonly<Record<string, string>>;
      readonly code: string;
      readonly says: string;
    }
  | { readonly by: 'loss'; readonly row: string; readonly share: number }
  | { readonly by: 'lift'; readonly installed: string; readonly open: string; readonly pressed: string }
  | { readonly by: 'lash'; readonly valve: 'intake' | 'exhaust'; readonly closes: string }
  | { readonly by: 'twice'; readonly row: string; readonly scope?: string; readonly sources: readonly string[] };

export interface CheckRow {
  readonly what: string;
  readonly source: string;
  readonly verdict: string;
  readonly proved: readonly Proof[];
}

export const nameOf = ({ limit }: BuiltLimit) => `${limit.part}, ${limit.what}`;

/** Within half of the last printed digit. */
export function expectLength(found: number, text: string): void {
  const read = parseQuantity('length', text);
  if (!read.ok) throw new Error(`cannot read "${text}"`);
  const digit = fromUnit('length', 10 ** -read.value.places, read.value.unit);
  expect(Math.abs(found - read.value.value), `${found} m against ${text}`).toBeLessThanOrEqual(0.5001 * digit);
}
export function expectRange(found: Range, [low, high]: Pair): void {
  expectLength(found.low, low);
  expectLength(found.high, high);
}
