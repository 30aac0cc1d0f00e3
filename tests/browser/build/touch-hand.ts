/** Taps, and nothing else: a tap lands only where the control is in sight and nothing lies over it. */
import type { Page } from 'playwright-core';
import { type Hand, noBounce, pictureFile } from './hand.js';

export function touchHand(page: Page): Hand {
  const press: Hand['press'] = async (control) => {
    await control.waitFor();
    // A tap waits by itself until the control stands still.
    await noBounce(page);
    await control.tap();
  };
  return {
    name: 'touch',
    page,
    press,
    write: async (field, words) => {
      await press(field);
      await page.keyboard.insertText(words);
    },
    figure: async (digits) => {
      for (const digit of digits) await page.locator(`[data-key="${digit === '.' ? 'decimal point' : digit}"]`).tap();
      await press(page.locator('.entry [data-bench-control="record"]'));
    },
    photograph: async (camera, picture) => {
      const opened = page.waitForEvent('filechooser');
      await press(camera);
      await (await opened).setFiles(pictureFile(picture));
    },
  };
}
