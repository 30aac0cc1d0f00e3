/** Parts tagged and put back, valves set and read again after two turns. */
import { pressed, type Site, toTheStep } from './site.js';

const LASH = '0.20';

/** Each part as it came out, kind after kind. */
export async function tagParts(site: Site): Promise<void> {
  const { page } = site.hand;
  await toTheStep(site, '[data-place], .finished');
  while ((await page.locator('.finished a[data-bench-control="on"]').count()) === 0) {
    const control =
      (await page.locator('.finished').count()) > 0
        ? '.finished [data-bench-control="on"]'
        : '[data-bench-control="used"]';
    await pressed(site, control, '[data-place], .finished');
  }
}

/** All of one kind go back to their own places; the kinds after it have their own time. */
export async function fitParts(site: Site): Promise<void> {
  const { page } = site.hand;
  await toTheStep(site, '[data-place], .finished');
  while ((await page.locator('.finished').count()) === 0)
    await pressed(site, '[data-bench-control="own"]', '[data-place], .finished');
}

/** The crank is brought to the stop, and each valve of it is set; `until` ends the phase. */
export async function setValves(site: Site): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  await toTheStep(site, '[data-phase="set"], [data-valve]');
  for (;;) {
    const arrived = page.locator('[data-phase="set"] [data-bench-control="arrived"]');
    const ask = page.locator('[data-bench-control="key-gap"]');
    const over = page.locator('[data-phase="look-again"]');
    await arrived.or(ask).or(over).first().waitFor();
    if (await over.isVisible()) return;
    if (await arrived.isVisible()) {
      await pressed(site, '[data-bench-control="arrived"]', '[data-phase]');
      continue;
    }
    const valve = await page.locator('[data-valve]').getAttribute('data-valve');
    await hand.press(ask);
    await page.locator('.entry [data-armed]').waitFor();
    await hand.figure(LASH);
    await page.waitForFunction(
      (was) => document.querySelector<HTMLElement>('[data-valve]')?.dataset.valve !== was,
      valve,
    );
  }
}

export async function readValvesAgain(site: Site): Promise<void> {
  const { page } = site.hand;
  await toTheStep(site, '[data-phase="look-again"], [data-valve], .finished');
  while ((await page.locator('.finished').count()) === 0) {
    const arrived = (await page.locator('[data-bench-control="arrived"]').count()) > 0;
    if (arrived) await pressed(site, '[data-bench-control="arrived"]', '[data-phase]');
    else await pressed(site, '[data-bench-control="good"]', '[data-valve], .finished');
  }
}
