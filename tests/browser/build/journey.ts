/** A whole engine from bare block to sign-off, as a person goes through it: what the bench shows is done, until nothing is left. */
import { expect } from 'vitest';
import { picture } from '../harness.js';
import { type Between, doAct } from './act.js';
import { lookAgain } from './at-the-bench.js';
import { saved } from './hand.js';
import { type Shown, type Site, shownNow } from './site.js';

/** What comes between two acts; tells where the work goes on, or nothing where the person stayed. */
export type Interruption = (site: Site, round: number) => Promise<Site | undefined>;
const ACTS_BACK = 3;
const MOST_ROUNDS = 600;
/** One act of so many is kept as a picture, where pictures are asked for. */
const PICTURED = 20;

export interface Journey {
  readonly begin: Site;
  readonly between: (site: Site) => Between;
  readonly interrupt: Interruption;
}

export async function buildWhole({ begin, between, interrupt }: Journey): Promise<Site> {
  let site = begin;
  let shown = await arrive(site, false);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = site.book.done.length;
    const did = await doNext(site, shown, between(site));
    const elsewhere = await interrupt(site, round);
    site = elsewhere ?? site;
    shown = await arrive(site, elsewhere !== undefined);
    if (round % PICTURED === 0) await picture(site.hand.page, `whole-build-${site.hand.name}-${round}`);
    // Nothing that the screen took may be missing.
    if (did !== undefined) expect(site.book.done.slice(before)).toContain(did);
    if (site.book.standing.signedOff) return site;
  }
  throw new Error('The build does not come to an end.');
}

/** Reads cautions and touches what was done last, until the bench shows something to do; then the record is read. */
async function arrive(site: Site, interrupted: boolean): Promise<Shown> {
  const { hand, book } = site;
  const { page } = hand;
  const touched: string[] = [];
  let shown = await shownNow(site);
  while (shown.kind === 'begin' || shown.kind === 'return') {
    const control =
      shown.kind === 'begin'
        ? '[aria-labelledby="before"] [data-bench-control="begin"]'
        : '[data-bench-control="record"]';
    if ((await page.locator('[data-verify]').count()) > 0) touched.push(shown.about);
    await hand.press(page.locator(control));
    shown = await shownNow(site, shown);
  }
  await saved(hand);
  await book.read();
  // Who only looks a second time does not go on with the work, and is asked after it.
  const asked = interrupted && shown.kind !== 'look' && !book.standing.signedOff;
  if (asked || touched.length > 0) expect(touched).toEqual(book.done.slice(-ACTS_BACK));
  return shown;
}

/** Looks owed come first, then what is back from elsewhere, then the act that the bench offers. Returns the act that was done. */
async function doNext(site: Site, shown: Shown, between: Between): Promise<string | undefined> {
  const { book, hand } = site;
  const { page } = hand;
  const { looksOwed, away } = book.standing;
  const [owed] = looksOwed;
  if (owed !== undefined) {
    if (shown.kind !== 'look') {
      await hand.press(page.getByRole('link', { name: /^Second looks owed/ }));
      await hand.press(page.getByRole('link', { name: /Look →/ }).first());
    }
    const look = await shownNow(site, shown.kind === 'look' ? undefined : shown);
    await lookAgain(site);
    await shownNow(site, look);
    return undefined;
  }
  const [back] = [...away.parts, ...away.shop];
  let act = shown;
  if (back !== undefined && shown.about !== back.act.id) {
    await hand.press(page.getByRole('link', { name: 'The whole work' }).first());
    await hand.press(page.getByRole('link', { name: /It is back →/ }).first());
    await page.waitForURL(/\/bench\//);
    act = await shownNow(site, shown);
  }
  const did = await doAct(site, act, between);
  await shownNow(site, act);
  return did;
}
