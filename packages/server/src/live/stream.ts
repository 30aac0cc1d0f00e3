/**
 * One live connection. It always sends "the entries after the last one sent", so a missed announcement, an entry written
 * by another program and a client that comes back after a pause are all the same case.
 */
import { once } from 'node:events';
import type { ServerResponse } from 'node:http';
import type { Store } from '@gudgeon/store';

export interface LiveStream {
  /** Sends what is new; safe to call at any time. */
  pump(): Promise<void>;
}

export function liveStream(store: Store, job: string, after: number, out: ServerResponse): LiveStream {
  let sent = after;
  let again = false;
  let running = false;
  const sendNew = async () => {
    for (const entry of await store.entries(job, sent)) {
      if (out.destroyed || out.writableEnded) return;
      const flowing = out.write(`id: ${entry.sequence}\ndata: ${JSON.stringify(entry)}\n\n`);
      sent = entry.sequence;
      if (!flowing) await Promise.race([once(out, 'drain'), once(out, 'close')]);
    }
  };
  const pump = async () => {
    again = true;
    if (running) return;
    running = true;
    try {
      while (again) {
        again = false;
        await sendNew();
      }
    } finally {
      running = false;
    }
  };
  return { pump };
}
