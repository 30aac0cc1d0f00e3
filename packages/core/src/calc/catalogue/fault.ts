import type { QuantityFault, QuantityKind } from '../../quantity/index.js';
import type { Range } from './spec.js';

/** Where a fault is: the input by name, and the place in a list, from 1. */
interface Place {
  readonly input: string;
  readonly at?: number;
}

/** Why a calculation was refused, as data. `describeCalcFault` makes the sentence. */
export type CalcFault =
  | { readonly code: 'unknown-calculation'; readonly id: string; readonly near: readonly string[] }
  | { readonly code: 'inputs-not-named' }
  | { readonly code: 'unknown-input'; readonly input: string; readonly known: readonly string[] }
  | { readonly code: 'missing-input'; readonly input: string; readonly expected: string }
  | (Place & { readonly code: 'unreadable'; readonly given: string; readonly fault: QuantityFault })
  | (Place & { readonly code: 'wrong-shape'; readonly given: string; readonly expected: string })
  | (Place & { readonly code: 'not-a-choice'; readonly given: string; readonly choices: readonly string[] })
  | (Place & {
      readonly code: 'out-of-range';
      readonly given: string;
      readonly range: Range;
      readonly kind: QuantityKind | 'count';
      readonly unit: string;
    })
  | { readonly code: 'empty-list'; readonly input: string; readonly expected: string }
  | { readonly code: 'list-too-long'; readonly input: string; readonly length: number; readonly limit: number }
  | {
      readonly code: 'conflict';
      readonly given: Readonly<Record<string, string>>;
      readonly because: string;
      readonly must?: {
        readonly input: string;
        readonly range: Range;
        readonly kind: QuantityKind | 'count';
        readonly unit: string;
      };
    }
  /** The arithmetic has no finite answer for these inputs, though each is in range. */
  | { readonly code: 'no-answer'; readonly output: string };
