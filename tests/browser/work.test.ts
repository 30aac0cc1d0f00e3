import type { StoredEnvelope } from '@gudgeon/core/record';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sendEntries } from '../send.js';
import {
  accessibilityFaults,
  type Bench,
  benchControls,
  type Device,
  expectFits,
  expectQuiet,
  laptop,
  openBench,
  pastBounce,
  phone,
  picture,
} from './harness.js';
import { singleAtCrankshaft } from './single.js';

let bench: Bench;
let onPhone: Device;
const engine = '/engine/job';

/** A book of the small engine that begins at the crankshaft: one act done and held for critical, and a card left. */
beforeAll(async () => {
  const person = singleAtCrankshaft();
  person.wish({ kind: 'make-critical', act: 'saddles-wiped', why: 'grit was found there before' });
  person.felt('saddles-wiped', 'dry, no lint');
  const card = { halfDone: '', loose: 'cap of main 2', missing: '', uncovered: 'the journals', doubt: '' };
  person.wish({ kind: 'leave', ...card });
  bench = await openBench();
  await sendEntries(bench.address, person.entries);
  onPhone = await bench.device(phone, { touch: true });
});
afterAll(() => bench.close());

const act = (page: Page, id: string) => page.locator(`[data-act="${id}"]`).waitFor();
/** A pedal, or the key of the usual answer; the next press is no bounce. */
async function press(page: Page, key: string): Promise<void> {
  await page.keyboard.press(key);
  await pastBounce(page);
}
async function recorded(kind: string): Promise<readonly StoredEnvelope['data'][]> {
  const answer = await fetch(`${bench.address}/api/jobs/job/entries`);
  const { entries } = (await answer.json()) as { entries: readonly StoredEnvelope[] };
  return entries.filter((entry) => entry.kind === kind).map(({ data }) => data);
}

// The order on return: bench ergonomics section 7, going back three steps (maintenance handbook, as quoted there). Sizes: its section 1.
describe('the whole work at the bench', () => {
  it('opens, weeks later, with the card that was left, what is to be touched, and what standing does', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/bench`);
    await page.locator('[data-return="card"]').waitFor();
    await page.getByText('cap of main 2').waitFor();
    await picture(page, 'work-return-card-phone');
    await press(page, 'Enter');
    await page.locator('[data-verify="saddles-wiped"]').getByText('dry, no lint', { exact: false }).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    // A reload on the way asks all of it again: nothing was recorded yet.
    await page.reload();
    for (const kind of ['card', 'verify', 'stood']) {
      await page.locator(`[data-return="${kind}"]`).waitFor();
      await press(page, 'PageDown');
    }
    await act(page, 'main-shell-in@main-1');
    await page.getByText('All entries saved').waitFor();
    expect(await recorded('work-resumed')).toEqual([{ why: 'opened-again', verified: ['saddles-wiped'] }]);
  });

  it('is done by keyboard alone, words of the place before one press away', async () => {
    const { page } = onPhone;
    await page.keyboard.press('w');
    await page.keyboard.type('snug, back dry');
    await press(page, 'Enter');
    await act(page, 'main-shell-in@main-2');
    await page.getByRole('button', { name: 'Good: snug, back dry' }).waitFor();
    await press(page, ' ');
    await act(page, 'seal-half-in');
    // Nothing was said of such an act before, so a press alone records nothing.
    await press(page, 'Enter');
    await page.getByText('Say what you felt or saw: pick words').waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('3');
    await press(page, 'Enter');
    await act(page, 'crank-laid-in');
    await page.keyboard.press('n');
    await page.getByLabel('What is not good?').waitFor();
    await page.keyboard.type('grit under main 1');
    await press(page, 'Enter');
    await page.getByText('NOT GOOD YET').waitFor();
    await page.keyboard.press('1');
    await press(page, 'Enter');
    await act(page, 'main-cap-on@main-1');
    await page.getByText('All entries saved').waitFor();
    const done = (await recorded('work-act-done')) as readonly {
      act: string;
      answer: { words: string; result: string };
    }[];
    expect(done.slice(1).map((one) => [one.act, one.answer.words, one.answer.result])).toEqual([
      ['main-shell-in@main-1', 'snug, back dry', 'good'],
      ['main-shell-in@main-2', 'snug, back dry', 'good'],
      ['seal-half-in', 'seated all round', 'good'],
      ['crank-laid-in', 'grit under main 1', 'bad'],
      ['crank-laid-in', 'clean, nothing found', 'good'],
    ]);
  });

  it('is done by touch alone, leads to the screen that answers an act, and back', async () => {
    const { page } = onPhone;
    const good = page.locator('[data-bench-control="record"]');
    for (const [id, words] of [
      ['main-cap-on@main-1', 'seated all round'],
      ['main-cap-on@main-2', ''],
      ['thrust-lined-up', 'as the sheet says'],
    ] as const) {
      await act(page, id);
      if (words !== '') await page.getByRole('button', { name: words }).tap();
      await good.tap();
      await pastBounce(page);
    }
    await act(page, 'mains-tightened@mains');
    const controls = await benchControls(page);
    expect(controls.filter(({ width, height }) => width < 126 || height < 126)).toEqual([]);
    await picture(page, 'work-act-phone');
    await page.getByRole('button', { name: 'Go round the fasteners' }).tap();
    await page.waitForURL(/\/tighten\/mains$/);
    await page.getByRole('link', { name: 'Back to the work' }).tap();
    await act(page, 'mains-tightened@mains');
    expect(await page.getByRole('link', { name: 'Back to the work' }).count()).toBe(0);
    expectQuiet(onPhone);
  });

  it('refuses a second look alone by the same method, and takes it by another as what it is', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/work`);
    await page.getByRole('link', { name: /Look →/ }).waitFor();
    await picture(page, 'work-now-phone');
    await page.getByRole('link', { name: /Look →/ }).tap();
    await page.locator('[data-look="saddles-wiped"]').waitFor();
    await page.getByLabel('Who looks').fill('Ada');
    await page.getByLabel('What was seen').fill('dry, no lint');
    await page.getByRole('button', { name: 'Another way' }).tap();
    await page.getByLabel('Another way').fill('by hand');
    const good = page.locator('[data-bench-control="record"]');
    await good.tap();
    await page.getByRole('alert').filter({ hasText: 'by hand' }).waitFor();
    expect(await recorded('second-look')).toEqual([]);
    await page.getByRole('button', { name: 'with lamp and mirror' }).tap();
    await pastBounce(page);
    await good.tap();
    await page.locator('[data-look]').waitFor({ state: 'detached' });
    await page.goto(`${engine}/work/crankshaft`);
    const row = page.locator('details[data-act="saddles-wiped"]');
    await row.locator('summary').first().tap();
    await row.getByText('Looked at again alone').waitFor();
  });

  it('shows what a finding opens again before it is recorded, and why it is open afterwards', async () => {
    const { page } = onPhone;
    await page.goto(`${engine}/work`);
    await page.getByText('Something changed').tap();
    await page.getByLabel('What was found, or done').selectOption('crank-cut');
    const told = page.locator('[data-reopens]');
    await told.waitFor();
    expect(Number(await told.getAttribute('data-reopens'))).toBeGreaterThan(2);
    await page.getByLabel('Reason').fill('polished after a scratch');
    await page.getByRole('button', { name: 'Record that it changed' }).tap();
    await page.getByRole('heading', { name: /^Open again \(\d+\)/ }).waitFor();
    await page.getByText('polished after a scratch').first().waitFor();
  });

  it.each([
    ['phone', phone],
    ['laptop', laptop],
  ])('is sound on a %s: work, operation, bench, registers', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    for (const [place, ready] of [
      ['work', '#now'],
      ['work/crankshaft', '#many'],
      ['bench', '[data-return]'],
      ['registers', '#photos'],
    ] as const) {
      await page.goto(`${engine}/${place}`);
      const begin = page.getByRole('button', { name: 'Read. Begin' });
      await page.locator(ready).or(begin).waitFor();
      if (await begin.isVisible()) await begin.click();
      await page.locator(ready).waitFor();
      expect(await accessibilityFaults(page), place).toEqual([]);
      await expectFits(page);
      await picture(page, `work-${place.replace('/', '-')}-${name}`, true);
    }
    expectQuiet(device);
  });
});
