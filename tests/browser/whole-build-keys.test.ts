import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildWhole } from './build/journey.js';
import { keysHand } from './build/keys-hand.js';
import { JOB } from './build/site.js';
import { expectWhole, somePicture, standTheSingle } from './build/whole-build.js';
import { type Bench, expectQuiet, openBench, phone } from './harness.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

describe('a single from bare block to sign-off', () => {
  it('is built by keyboard alone, at the size of a phone', async () => {
    const book = await standTheSingle(bench.address);
    const device = await bench.device(phone);
    const { page } = device;
    await page.clock.install();
    await page.goto(`${JOB}/bench`);
    const begin = { hand: keysHand(page), book, picture: await somePicture(page) };
    const started = performance.now();
    const end = await buildWhole({
      begin,
      between: () => ({
        joint: async () => undefined,
        lines: async () => undefined,
        forward: (time) => page.clock.fastForward(time),
      }),
      interrupt: async () => undefined,
    });
    console.log(`${book.done.length} acts by keys in ${((performance.now() - started) / 1000).toFixed(0)} s`);
    expect(book.done.length).toBeGreaterThan(200);
    await expectWhole(end, bench.address);
    expectQuiet(device);
  }, 600_000);
});
