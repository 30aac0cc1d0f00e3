import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { interruptions } from './build/interruptions.js';
import { buildWhole } from './build/journey.js';
import { JOB } from './build/site.js';
import { touchHand } from './build/touch-hand.js';
import { expectWhole, somePicture, standTheSingle } from './build/whole-build.js';
import { type Bench, openBench, phone } from './harness.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

// Going back three steps after an interruption: maintenance handbook, as the project's bench ergonomics section 7 quotes it.
describe('a single from bare block to sign-off, interrupted after every act', () => {
  it('is built by touch alone: by whoever comes back, at whatever device, with the last three acts touched again', async () => {
    const book = await standTheSingle(bench.address);
    const ada = await bench.device(phone, { touch: true });
    const ben = await bench.device(phone, { touch: true, person: 'Ben' });
    await ada.page.goto(`${JOB}/bench`);
    const started = performance.now();
    const end = await buildWhole({
      begin: { hand: touchHand(ada.page), book, picture: await somePicture(ada.page) },
      between: ({ hand: { page } }) => ({
        // In the midst of a joint and of the run-in as well.
        joint: async (acts) => {
          if (acts === 3) await page.reload();
        },
        lines: async () => void (await page.reload()),
        forward: async (time) => {
          for (const device of [ada, ben]) await device.page.clock.fastForward(time);
        },
      }),
      interrupt: interruptions(bench, [ada, ben]),
    });
    console.log(`${book.done.length} acts by touch in ${((performance.now() - started) / 1000).toFixed(0)} s`);
    expect(book.done.length).toBeGreaterThan(200);
    expect(new Set(book.entries.map(({ person }) => person))).toEqual(new Set(['Ada', 'Ben']));
    await expectWhole(end, bench.address);
    // What a browser says of a server whose plug was pulled is no complaint.
    const complaints = [ada, ben].flatMap((device) => device.complaints);
    expect(complaints.filter((line) => !line.startsWith('Failed to load resource: net::ERR_'))).toEqual([]);
  }, 900_000);
});
