import type { WorkAct } from '../../plan/index.js';

/** An act that is finished, the entry that finished it, and what to say of it. */
export interface FinishedElsewhere {
  readonly act: WorkAct;
  readonly entry: string;
  readonly words: string;
  readonly result: 'good' | 'bad';
}
