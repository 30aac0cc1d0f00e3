import type { WorkActView, WorkWish } from '@gudgeon/core/workbench';
import type { Action } from '../../keys/index.js';
import type { WorkDesk } from '../work/use-work.js';

export type GivenAnswer = Extract<WorkWish, { readonly kind: 'done' }>['answer'];

/** What a step of one kind of answer needs. */
export interface StepProps {
  readonly act: WorkActView;
  readonly desk: WorkDesk;
  /** Words that the same act was answered with at other places, newest first. */
  readonly earlier: readonly string[];
  /** `spoken` is read back; `raw` is what was keyed. */
  readonly give: (answer: GivenAnswer, method: string, spoken: string, raw?: string) => void;
}

/** Keys of the usual answer: a foot pedal types one of these. */
export const PEDAL_KEYS = ['Enter', ' ', 'PageDown'] as const;

/**
 * The usual answer of a step. It has one name on every step, so that a bounce of the pedal that lands on the next act is taken for what it is.
 */
export const usual = (label: string, run: () => void): Action => ({
  name: 'record',
  label,
  keys: PEDAL_KEYS,
  available: true,
  run,
});
