import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  accessibilityFaults,
  type Bench,
  benchControls,
  expectFits,
  expectQuiet,
  laptop,
  openBench,
  phone,
  picture,
} from './harness.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());
const engine = '/engine/invented-demonstration';
const sizes = [
  ['phone', phone],
  ['laptop', laptop],
] as const;

/** Tab until the element that is wanted has the focus. */
async function tabTo(page: Page, wanted: RegExp): Promise<void> {
  for (let i = 0; i < 80; i += 1) {
    await page.keyboard.press('Tab');
    if (wanted.test((await page.evaluate(() => document.activeElement?.textContent)) ?? '')) return;
  }
  throw new Error(`no control ${wanted} by keyboard`);
}

// Accessibility: WCAG 2.2 as checked by axe-core, with the 7:1 contrast of 1.4.6. Unlike actions 82 px apart: MIL-STD-1472E.
describe('a decision', () => {
  it.each(sizes)(
    'shows its alternatives side by side with figures, verdict and what speaks against, on a %s',
    async (name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      await page.goto(`${engine}/fit/bore-oversize/all`);
      const cards = page.locator('[data-alternative]');
      await cards.first().waitFor();
      expect(await cards.count()).toBeGreaterThan(2);
      expect(await cards.first().textContent()).toMatch(
        /recommended[\s\S]*decided[\s\S]*IN[\s\S]*Left at the worst bore/i,
      );
      const blocked = page.locator('[data-possible="false"]');
      expect(await blocked.first().textContent()).toMatch(/Cannot be taken[\s\S]*past its limit/);
      expect(await blocked.getByRole('button').count()).toBe(0);
      const boxes = await Promise.all([cards.nth(0).boundingBox(), cards.nth(1).boundingBox()]);
      if (size === laptop) expect(boxes[0]?.y).toBe(boxes[1]?.y);
      else expect(boxes[0]?.x).toBe(boxes[1]?.x);
      await picture(page, `decision-${name}`, true);
      await page.getByText('Working and sources').click();
      await page.getByText(/Clean-up allowance 0.100 mm/).waitFor();
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      expectQuiet(device);
    },
  );

  it('stands level on a laptop: one figure of all alternatives on one line of sight', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(`${engine}/fit/bore-oversize/all`);
    await page.locator('[data-alternative]').first().waitFor();
    const tops = await page
      .locator('[data-alternative]')
      .evaluateAll((cards) =>
        cards.map((card) =>
          [...card.querySelectorAll('.fit-figure')].map((e) => Math.round(e.getBoundingClientRect().top)),
        ),
      );
    for (const card of tops) expect(card).toEqual(tops[0]);
  });

  it('is taken by keyboard alone, with a reason, and stands in the record with the figures that were seen', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await page.goto(`${engine}/fit/crank-undersize/rod`);
    await page.getByRole('heading', { name: 'Side by side' }).waitFor();
    await tabTo(page, /^Go on with this/);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Decide', exact: true }).waitFor();
    await tabTo(page, /^Record this decision/);
    await page.keyboard.press('Enter');
    await page.getByText('Say why; the reason stands in the record.').waitFor();
    await page.getByLabel('Reason', { exact: true }).focus();
    await page.keyboard.type('pins are round and straight');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /^Decided: / }).waitFor();
    await page.getByText('Reason: pins are round and straight').waitFor();
    await page.goto(`${engine}/record`);
    const row = page.getByRole('row', { name: /Decided: crank undersize, rod/ });
    expect(await row.textContent()).toMatch(/pins are round and straight/);
    expect(await row.textContent()).toMatch(/crankpin diameter/);
    expectQuiet(device);
  });

  it('is taken by touch alone; the step that records is apart from the alternatives, and the way back 82 px from it', async () => {
    const device = await bench.device(phone, { touch: true });
    const { page } = device;
    await page.goto(`${engine}/fit/thrust-washers/crankshaft`);
    await page
      .getByRole('button', { name: /^Go on with this/ })
      .first()
      .tap();
    expect(await page.locator('[data-alternative]').count()).toBe(0);
    const [record] = (await benchControls(page)).filter(({ name }) => name === 'Record this decision');
    const back = await page.getByRole('button', { name: /Back to the alternatives/ }).boundingBox();
    expect((back?.y ?? 0) - (record?.bottom ?? 0)).toBeGreaterThanOrEqual(82);
    expect(record?.height).toBeGreaterThanOrEqual(126);
    expect(await accessibilityFaults(page)).toEqual([]);
    await picture(page, 'decide-phone', true);
    await expectFits(page);
    await page.getByRole('button', { name: 'as recommended' }).tap();
    await page.getByRole('button', { name: 'Record this decision' }).tap();
    await page.getByText('Reason: as recommended').waitFor();
    expectQuiet(device);
  });

  it('goes back to the alternatives with Escape, and nothing is recorded', async () => {
    const { page } = await bench.device(laptop);
    await page.goto(`${engine}/fit/head-cut/left`);
    await page
      .getByRole('button', { name: /^Go on with this/ })
      .first()
      .click();
    await page.getByRole('heading', { name: 'Decide', exact: true }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('heading', { name: 'Side by side' }).waitFor();
    expect(await page.getByRole('heading', { name: /^Decided:/ }).count()).toBe(0);
  });

  it('says when what is computed differs from when it was decided, and leaves the decision as it was taken', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await page.goto(`${engine}/measure/cylinder-bore?slot=cylinder-bore%2F7%2Ftop-thrust`);
    // The reading is struck out in the record: without it the bore of cylinder 7 has no size.
    await page.goto(`${engine}/record`);
    await page.getByRole('button', { name: /^Strike out: bore of cylinder 7, top, .*thrust/ }).click();
    await page.getByRole('button', { name: 'wrong figure' }).click();
    await page.getByRole('button', { name: 'Strike it out' }).click();
    await page.goto(`${engine}/fit/bore-oversize/all`);
    const note = page.getByRole('note', { name: 'Differs from when it was decided' });
    await note.getByText(/It cannot be computed now: .*cylinder 7/).waitFor();
    await page.getByRole('heading', { name: 'Decided: Bore all to +0.250 mm' }).waitFor();
    await picture(page, 'decision-differs-laptop');
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.goto(`${engine}/fit`);
    await page.getByRole('heading', { name: 'Differs from when it was decided (1)' }).waitFor();
    expectQuiet(device);
  });

  it('says plainly where this engine asks for no such decision', async () => {
    const { page } = await bench.device(phone);
    await page.goto(`${engine}/fit/liner-shims/all`);
    await page.getByRole('heading', { name: /asks for no decision called “liner-shims”/ }).waitFor();
    await page.getByRole('link', { name: 'All sizes and decisions' }).click();
    await page.getByRole('heading', { name: 'Sizes and clearances' }).waitFor();
  });
});
