/** Fasteners by hole, the walk round a joint, the checks of a gasket. */
import { pressed, type Site, toTheStep } from './site.js';

/** Each hole gets what the sheet asks for: used where it may be, else new. Ends with the joint ready to be tightened. */
export async function placeFasteners(site: Site): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  await toTheStep(site, '[data-bench-control="laid-out"], [data-hole], .finished');
  const laidOut = page.locator('[data-bench-control="laid-out"]');
  if (await laidOut.isVisible()) await hand.press(laidOut);
  await page.locator('[data-hole], .finished').first().waitFor();
  while ((await page.locator('.finished').count()) === 0) {
    const used = page.locator('[data-hole] [data-bench-control="used"]');
    const control = (await used.count()) > 0 ? 'used' : 'new';
    await pressed(site, `[data-hole] [data-bench-control="${control}"]`, '[data-hole]');
  }
}

/** Goes round the joint until every stage is recorded. `between` is told how many acts were done on the way. */
export async function goRound(site: Site, between: (acts: number) => Promise<void>): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  const step = 'section.step[data-hole], .finished, [data-bench-control="place"]';
  for (let acts = 0; ; ) {
    await toTheStep(site, step);
    if (await page.locator('.finished').isVisible()) return;
    const place = page.locator('[data-bench-control="place"]');
    if (await place.isVisible()) {
      await hand.press(place);
      await page.waitForURL(/\/fasteners\//);
      await placeFasteners(site);
      await hand.press(page.locator('.finished [data-bench-control="on"]'), 'Enter');
      await page.waitForURL(/\/tighten\//);
      continue;
    }
    await pressed(site, '.answers [data-bench-control]', 'section.step');
    acts += 1;
    await between(acts);
  }
}

/** Every opening of the gasket is held up and found good. */
export async function checkGasket(site: Site): Promise<void> {
  const { page } = site.hand;
  await toTheStep(site, '[data-bench-control="good"], .finished');
  while ((await page.locator('.finished').count()) === 0)
    await pressed(site, '[data-bench-control="good"]', '.step-title');
}
