/** Oil at the valves, the first start, the run-in by the clock, compression and leakage. */
import { pressed, type Site, toTheStep } from './site.js';

export async function seeOil(site: Site): Promise<void> {
  const { page } = site.hand;
  await toTheStep(site, '.oil-places');
  while ((await page.locator('.finished').count()) === 0)
    await pressed(site, '[data-seen="false"][aria-current="step"]', '.oil-places', 'Enter');
}

/** Each line is called and answered; then it cranks, fires, and shows pressure in time. */
export async function startIt(site: Site): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  await toTheStep(site, '[data-line], [data-go], [data-try], [data-bench-control="to-list"]');
  while ((await page.locator('[data-line]').count()) > 0)
    await pressed(site, '[data-bench-control="answered"]', '[data-line]');
  for (const [phase, control] of [
    ['clear', 'crank'],
    ['cranking', 'runs'],
    ['dry', 'shows'],
  ] as const)
    await hand.press(page.locator(`[data-go="${phase}"] [data-bench-control="${control}"]`));
  await page.locator('[data-go="pressure"]').waitFor();
  await hand.figure('2.4');
  await page.locator('[data-try="in"]').waitFor();
}

/** Line after line by the clock, which is put forward: nobody sits out half an hour. `between` each two lines. */
export async function runIn(
  site: Site,
  forward: (time: string) => Promise<void>,
  between: () => Promise<void>,
): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  await toTheStep(site, '[data-clock]');
  await hand.press(page.locator('[data-bench-control="begin"]'));
  await page.locator('[data-clock="running"][data-step="1"]').waitFor();
  await between();
  await forward('20:01');
  await page.locator('[data-call]').waitFor();
  await hand.press(page.locator('[data-bench-control="begin"]'));
  await page.locator('[data-clock="running"][data-step="2"]').waitFor();
  await forward('10:01');
  await hand.press(page.locator('[data-bench-control="stop"]').first());
  await hand.press(page.locator('[data-bench-control="stop over"]'));
  await page.locator('.finished').waitFor();
}

export async function readCompression(site: Site): Promise<void> {
  await toTheStep(site, '.test-next, .finished');
  while ((await site.hand.page.locator('.finished').count()) === 0) {
    await site.hand.figure('10.2');
    await site.hand.page.locator('.finished, .test-next').first().waitFor();
  }
}

export async function readLeakage(site: Site): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  await toTheStep(site, '.test-name');
  await hand.press(page.getByRole('button', { name: 'Leakage', exact: true }));
  await page.getByText('Pressure of the supply').waitFor();
  await hand.figure('6.9');
  await page.getByText('holds', { exact: false }).first().waitFor();
  await hand.figure('6.3');
  await hand.press(page.locator('[data-bench-control="heard crankcase"]'));
  await page.locator('.finished').waitFor();
}
