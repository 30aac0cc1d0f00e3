/**
 * Keys, and nothing else. A control is reached by the key that stands on it; where that key belongs to what has the focus, or none stands there, by
 * Tab and Enter.
 */
import type { Locator, Page } from 'playwright-core';
import { type Hand, pictureFile, settled } from './hand.js';

const NAMED: Readonly<Record<string, string>> = {
  Space: ' ',
  Esc: 'Escape',
  'Page Down': 'PageDown',
  '→': 'ArrowRight',
  '←': 'ArrowLeft',
};
/** A person would not go on pressing for ever. */
const MOST_TABS = 400;

export function keysHand(page: Page): Hand {
  const press: Hand['press'] = async (control, known) => {
    await control.waitFor();
    await settled(page);
    const key = await freeKey(page, control, known);
    if (key !== undefined) return page.keyboard.press(key);
    await walkTo(page, control);
    await page.keyboard.press('Enter');
  };
  return {
    name: 'keys',
    page,
    press,
    write: async (field, words) => {
      await field.waitFor();
      await settled(page);
      await walkTo(page, field);
      await page.keyboard.type(words);
    },
    figure: async (digits) => {
      await page.waitForFunction(() => document.activeElement?.matches('.entry [data-armed]'));
      await settled(page);
      await page.keyboard.type(digits);
      await page.keyboard.press('Enter');
    },
    photograph: async (camera, picture) => {
      const opened = page.waitForEvent('filechooser');
      await press(camera);
      await (await opened).setFiles(pictureFile(picture));
    },
  };
}

/** A key that stands on the control and that what has the focus does not take for itself. */
async function freeKey(page: Page, control: Locator, known?: string): Promise<string | undefined> {
  const words =
    known ?? (await control.evaluate((element) => element.querySelector('.act-key-name')?.textContent ?? ''));
  if (words === '') return undefined;
  const keys = words.split(' or ').map((word) => NAMED[word] ?? (word.length === 1 ? word.toLowerCase() : word));
  const at = await page.evaluate(() => {
    const focused = document.activeElement;
    if (focused?.matches('input, textarea, select')) return 'field';
    return focused?.matches('button, a[href], summary') ? 'button' : 'nothing';
  });
  if (at === 'field') return undefined;
  return keys.find((key) => at === 'nothing' || (key !== 'Enter' && key !== ' '));
}

/** Tab by Tab, forwards or back, whichever is nearer, until the control has the focus. */
async function walkTo(page: Page, control: Locator): Promise<void> {
  const target = await control.elementHandle();
  if (target === null) throw new Error('There is nothing to walk to.');
  const reached = () => page.evaluate((wanted) => document.activeElement === wanted, target);
  for (let tabs = 0; tabs < MOST_TABS; ) {
    const way = await page.evaluate((wanted) => {
      const stops = [
        ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary, [tabindex]'),
      ];
      const open = stops.filter((one) => one.tabIndex >= 0 && one.checkVisibility() && !one.matches(':disabled'));
      const from = open.indexOf(document.activeElement as HTMLElement);
      const to = open.indexOf(wanted as HTMLElement);
      // Nobody has the focus: the browser begins where it had it last, or at the top.
      return from < 0 ? 1 : to - from;
    }, target);
    if (way === 0 && (await reached())) return;
    const steps = way === 0 ? 1 : Math.abs(way);
    for (let step = 0; step < steps; step++) await page.keyboard.press(way < 0 ? 'Shift+Tab' : 'Tab');
    tabs += steps;
    if (await reached()) return;
  }
  const words = await control.evaluate((element) => element.outerHTML.slice(0, 200));
  throw new Error(`Tab does not reach ${words}`);
}
