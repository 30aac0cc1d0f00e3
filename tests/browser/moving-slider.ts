/** How long a page takes to follow a slider on a device slower than this one. */
import type { Locator } from 'playwright-core';

/** A phone is about four times slower than the machine that runs this. */
export const SLOWER = 4;
/** Moves a slider a step at a time and tells how much of the page's own time a step takes, in the middle of many [ms]. */
export async function timeOfStep(slider: Locator): Promise<number> {
  const page = slider.page();
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const middle = await slider.evaluate(async (element: HTMLInputElement) => {
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
    const times: number[] = [];
    const [from, step] = [Number(element.value), Number(element.step)];
    for (let move = 1; move <= 30; move++) {
      await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
      const began = performance.now();
      set?.call(element, String(from + (move % 15) * step));
      element.dispatchEvent(new Event('input', { bubbles: true }));
      times.push(performance.now() - began);
    }
    return times.sort((a, b) => a - b)[15] ?? 0;
  });
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return middle;
}
