/** Wraps a store so that whoever waits for a job hears of new entries at once. */
import { EventEmitter } from 'node:events';
import type { Envelope } from '@gudgeon/core/record';
import type { AppendResult, Store } from '@gudgeon/store';

export interface Announcements {
  /** Calls back whenever the job got new entries; answers how to stop. */
  listen(job: string, heard: () => void): () => void;
}

export function announcing(store: Store): { readonly store: Store; readonly announcements: Announcements } {
  const bell = new EventEmitter();
  bell.setMaxListeners(0);
  const append = async (batch: readonly Envelope[]): Promise<AppendResult> => {
    const result = await store.append(batch);
    if (result.ok) for (const job of new Set(batch.map((entry) => entry.job))) bell.emit(`job ${job}`);
    return result;
  };
  const listen = (job: string, heard: () => void) => {
    bell.on(`job ${job}`, heard);
    return () => void bell.off(`job ${job}`, heard);
  };
  return { store: { ...store, append }, announcements: { listen } };
}
