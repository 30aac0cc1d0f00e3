/** What the page and the worker of the finder say to each other. */
import type { Chances, FinderAnswer, FinderInput, FinderProgress } from '@gudgeon/core/assess/finder';

export type ToFinder =
  | { readonly kind: 'search'; readonly input: FinderInput }
  /** Stop where it is; what was found so far is sent. */
  | { readonly kind: 'cancel' }
  | { readonly kind: 'chances'; readonly id: string; readonly picked: readonly number[] };

export type FromFinder =
  | { readonly kind: 'progress'; readonly progress: FinderProgress }
  | { readonly kind: 'answer'; readonly answer: FinderAnswer; readonly whole: boolean }
  | { readonly kind: 'refused'; readonly words: string }
  | { readonly kind: 'chances'; readonly id: string; readonly chances: Chances };
