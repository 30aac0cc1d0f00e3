/** Where the person stands: a hand at a device, the book that the work goes into, and what the screen shows now. */
import type { Book } from './book.js';
import type { Hand } from './hand.js';

export const JOB = '/engine/job';

export interface Site {
  readonly hand: Hand;
  readonly book: Book;
  readonly picture: Buffer;
}

/** What the screen asks for. */
export interface Shown {
  readonly kind: 'begin' | 'return' | 'look' | 'act' | 'nothing';
  /** Act, or page of the return, that it is about. */
  readonly about: string;
}

/** Waits until the bench shows something other than before. */
export async function shownNow({ hand: { page } }: Site, before?: Shown): Promise<Shown> {
  const found = await page.waitForFunction((was) => {
    const of = (selector: string) => document.querySelector<HTMLElement>(selector)?.dataset;
    const back = of('[data-return]');
    const shown = document.querySelector('[aria-labelledby="before"]')
      ? { kind: 'begin', about: '' }
      : back
        ? { kind: 'return', about: of('[data-verify]')?.verify ?? of('[data-begun]')?.begun ?? back.return ?? '' }
        : of('[data-look]')
          ? { kind: 'look', about: of('[data-look]')?.look ?? '' }
          : of('section[data-act]')
            ? { kind: 'act', about: of('section[data-act]')?.act ?? '' }
            : of('[data-nothing]')
              ? { kind: 'nothing', about: '' }
              : undefined;
    return shown && (shown.kind !== was?.kind || shown.about !== was.about) ? shown : undefined;
  }, before);
  return (await found.jsonValue()) as Shown;
}

/** Cautions are read before the first step of a piece of work, and what was left half done is touched again. */
export async function toTheStep({ hand }: Site, step: string): Promise<void> {
  const { page } = hand;
  const cautions = page.locator('[aria-labelledby="before"] [data-bench-control="begin"]');
  const back = page.locator('[data-bench-control="carry-on"]');
  const ready = page.locator(step);
  for (;;) {
    await cautions.or(back).or(ready).first().waitFor();
    if (await cautions.isVisible()) {
      await hand.press(cautions);
      await cautions.waitFor({ state: 'detached' });
    } else if (await back.isVisible()) await touchAgain(hand);
    else return;
  }
}

/** "You were here" of a joint or of the valves: each of the last steps is touched, one by one. */
async function touchAgain(hand: Hand): Promise<void> {
  const { page } = hand;
  for (const step of await page.locator('[data-bench-control^="seen"]').all()) await hand.press(step);
  await hand.press(page.locator('[data-bench-control="carry-on"]'));
  await page.locator('[data-bench-control="carry-on"]').waitFor({ state: 'detached' });
}

/** Presses, and waits until what is told by `of` has changed. */
export async function pressed(site: Site, control: string, of: string, key?: string): Promise<void> {
  const { hand } = site;
  const before = await told(site, of);
  await hand.press(hand.page.locator(control).first(), key);
  await changed(site, of, before);
}
export const told = ({ hand }: Site, of: string): Promise<string> =>
  hand.page.evaluate((selector) => document.querySelector(selector)?.outerHTML ?? '', of);
export async function changed({ hand }: Site, of: string, before: string): Promise<void> {
  await hand.page.waitForFunction(
    ([selector, was]) => (document.querySelector(selector ?? '')?.outerHTML ?? '') !== was,
    [of, before],
  );
}

/** The end of a piece of work leads back to the bench that it was left for; before its end the strip at the top does. */
export async function backToTheWork({ hand }: Site): Promise<void> {
  const { page } = hand;
  const end = page.locator('.finished a[data-bench-control="on"]');
  if (await end.isVisible()) await hand.press(end, 'Enter');
  else await hand.press(page.locator('.back-strip'));
  await page.waitForURL(/\/bench(\/|$)/);
}
