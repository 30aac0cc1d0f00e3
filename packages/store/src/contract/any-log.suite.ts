/** Promises that must hold for any log, tried on logs drawn at random. */
import type { Envelope } from '@gudgeon/core/record';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Store } from '../index.js';
import { linked, receiveClock } from './made-entries.suite.js';
import type { Medium } from './medium.suite.js';

const anyLog = fc
  .array(
    fc.record({
      job: fc.constantFrom('v8', 'twin', 'six'),
      device: fc.constantFrom('bench', 'phone'),
      data: fc.jsonValue(),
    }),
    {
      minLength: 1,
      maxLength: 25,
    },
  )
  .map(linked);
/** Where to cut a log into batches, as fractions of its length. */
const anyCuts = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 5 });

function batches(log: readonly Envelope[], cuts: readonly number[]): Envelope[][] {
  const places = [0, ...cuts.map((cut) => Math.floor(cut * log.length)).sort((a, b) => a - b), log.length];
  return places.slice(1).map((end, index) => log.slice(places[index], end));
}

export function anyProperties(freshMedium: () => Promise<Medium>): void {
  async function withStore(work: (store: Store, medium: Medium) => Promise<void>): Promise<void> {
    const medium = await freshMedium();
    const store = await medium.open(receiveClock());
    try {
      await work(store, medium);
    } finally {
      await store.close();
      await medium.clear();
    }
  }

  it('holds any log in the order it came, however it was cut into batches and however often it was sent', async () => {
    const property = fc.asyncProperty(anyLog, anyCuts, async (log, cuts) => {
      await withStore(async (store) => {
        for (const batch of batches(log, cuts)) {
          expect((await store.append(batch)).ok).toBe(true);
          expect((await store.append(batch)).ok).toBe(true);
        }
        await expectLog(store, log);
      });
    });
    await fc.assert(property, { numRuns: 25 });
  });

  it('gives any log back the same after reopening', async () => {
    const property = fc.asyncProperty(anyLog, async (log) => {
      await withStore(async (store, medium) => {
        await store.append(log);
        await store.close();
        const again = await medium.open(receiveClock());
        await expectLog(again, log);
        await again.close();
      });
    });
    await fc.assert(property, { numRuns: 15 });
  });

  it('is left as it was by any batch in which one entry lost its place', async () => {
    const property = fc.asyncProperty(anyLog, fc.nat(), fc.nat(), async (log, split, hurt) => {
      const held = log.slice(0, split % log.length);
      const sent = log.slice(held.length);
      const broken = sent.map((entry, index) =>
        index === hurt % sent.length ? { ...entry, counter: entry.counter + 1 } : entry,
      );
      await withStore(async (store) => {
        await store.append(held);
        expect((await store.append(broken)).ok).toBe(false);
        await expectLog(store, held);
      });
    });
    await fc.assert(property, { numRuns: 25 });
  });
}

async function expectLog(store: Store, log: readonly Envelope[]): Promise<void> {
  const jobs = [...new Set(log.map((entry) => entry.job))];
  expect((await store.jobs()).map((summary) => summary.job)).toEqual(jobs);
  for (const job of jobs) {
    const entries = await store.entries(job);
    const wanted = log.map((entry, index) => ({ entry, sequence: index + 1 })).filter(({ entry }) => entry.job === job);
    expect(entries.map(({ receivedAt, ...entry }) => entry)).toEqual(
      wanted.map(({ entry, sequence }) => ({ ...(JSON.parse(JSON.stringify(entry)) as Envelope), sequence })),
    );
  }
}
