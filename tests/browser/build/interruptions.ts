/** What comes between two acts: the page is opened anew, the plug of the server is pulled, another person goes on with another device. */
import type { Page } from 'playwright-core';
import type { Bench, Device } from '../harness.js';
import { saved } from './hand.js';
import type { Interruption } from './journey.js';
import { JOB, type Site } from './site.js';
import { touchHand } from './touch-hand.js';

/** Of ten acts, one is followed by another device and one by the end of the server; the others by a reload. */
const ROUND = 10;
const OTHER_DEVICE = 4;
const PLUG_PULLED = 9;
/** A device that lies aside shows nothing of the work. */
const ASIDE = '/device';
/** What the page then shows is waited for by itself. */
const COMMITTED = { waitUntil: 'commit' } as const;

export function interruptions(bench: Bench, devices: readonly [Device, Device]): Interruption {
  const other = ({ hand: { page } }: Site): Page => {
    const [one, two] = devices;
    return page === one.page ? two.page : one.page;
  };
  let clocked = false;
  return async (site, round) => {
    const { page } = site.hand;
    // A clock that can be put forward costs every page some time, and only the run-in needs it.
    if (!clocked && site.book.done.includes('started')) {
      for (const device of devices) await device.page.clock.install();
      clocked = true;
    }
    switch (round % ROUND) {
      case OTHER_DEVICE: {
        // Nobody else can know of it before the device has said that it is saved.
        await saved(site.hand);
        const next = other(site);
        await page.goto(ASIDE, COMMITTED);
        await next.goto(`${JOB}/bench`, COMMITTED);
        return { ...site, hand: touchHand(next) };
      }
      case PLUG_PULLED:
        await bench.killServer();
        await bench.startServer();
        await site.book.expectKept();
        await page.reload(COMMITTED);
        return site;
      default:
        await page.reload(COMMITTED);
        return site;
    }
  };
}
