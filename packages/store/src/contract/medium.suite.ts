import type { Store } from '../index.js';

/** Something that a store can be opened on, closed, and opened again. */
export interface Medium {
  open(clock: () => string): Promise<Store>;
  clear(): Promise<void>;
}
