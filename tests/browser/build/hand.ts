/**
 * The hand of a person at the bench, by keyboard or by touch. A journey asks for what is to be done; which keys or taps that takes is the hand's
 * own affair. Neither hand asks the page for anything that a person could not do.
 */
import type { Locator, Page } from 'playwright-core';

export interface Hand {
  readonly name: 'keys' | 'touch';
  readonly page: Page;
  /** Button, link, row that opens. `key`: where the control does not name its key itself. */
  readonly press: (control: Locator, key?: string) => Promise<void>;
  /** Own words into a field. */
  readonly write: (field: Locator, words: string) => Promise<void>;
  /** A figure into the armed field, and Record. */
  readonly figure: (digits: string) => Promise<void>;
  /** Takes a picture where the camera is asked for. */
  readonly photograph: (camera: Locator, picture: Buffer) => Promise<void>;
}

/** Longer than a bounce lasts [ms]. */
const AFTER_BOUNCE = 450;

/** The next press is no bounce. */
export async function noBounce(page: Page): Promise<void> {
  await page.evaluate((time) => {
    (globalThis as unknown as { runAhead: (milliseconds: number) => void }).runAhead(time);
  }, AFTER_BOUNCE);
}

/** The same, and the screen has drawn what was done before. */
export async function settled(page: Page): Promise<void> {
  await noBounce(page);
  await page.evaluate(() => new Promise<void>((drawn) => requestAnimationFrame(() => setTimeout(drawn))));
}

/** What the camera of a phone would hand over. */
export const pictureFile = (buffer: Buffer) => ({ name: 'bench.jpg', mimeType: 'image/jpeg', buffer });

/** The device says that all of it is saved; those words follow a frame behind what was recorded. */
export async function saved({ page }: Pick<Hand, 'page'>): Promise<void> {
  for (let frame = 0; frame < 2; frame++) await settled(page);
  await page.locator('[data-copies="saved"]').waitFor();
}
