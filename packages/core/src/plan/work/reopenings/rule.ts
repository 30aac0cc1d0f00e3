import type { PlaceKind } from '../model.js';

/** An act by its rule, or the worksheets of these features. */
export type Root = string | { readonly worksheets: readonly string[] };
export interface ReopeningRule {
  readonly id: string;
  readonly title: string;
  readonly because: string;
  /** What has to be named: which head, cylinder, main, valve. */
  readonly at: Exclude<PlaceKind, 'joint' | 'worksheet' | 'run-in' | 'camshaft'>;
  readonly roots: readonly Root[];
}

/** A rule in one line of words, and its roots. */
export const rule = (
  id: string,
  at: ReopeningRule['at'],
  title: string,
  because: string,
  ...roots: readonly Root[]
): ReopeningRule => ({ id, at, title, because, roots });
/** The worksheets of these features. */
export const sheets = (...worksheets: readonly string[]): Root => ({ worksheets });
