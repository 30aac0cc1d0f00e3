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
  pastBounce,
  phone,
  picture,
} from './harness.js';
import { SLOWER, timeOfStep } from './moving-slider.js';
import { engines, standSheet } from './stand.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

const sizes = [
  ['phone', phone],
  ['laptop', laptop],
] as const;

/** Keys a number into the armed field and records it by Enter, as a person or a gauge that types does. */
async function key(page: Page, number: string): Promise<void> {
  await page.locator('[data-armed]').waitFor();
  await pastBounce(page);
  await page.keyboard.type(number);
  await page.keyboard.press('Enter');
}
const asked = (page: Page, name: string) => page.locator(`[data-asked="${name}"]`).waitFor();

/** Lobe of the invented V8 (lift 7.35 mm, 256° from seat to seat) by the curve of Stoddart's class with exponents 6, 8, 10. */
function lobeLift(fromMiddle: number): number {
  const x = Math.min(1, Math.abs(fromMiddle) / 128);
  return 7.35 * (1 - 2.5 * x ** 2 + 5 * x ** 6 - 5 * x ** 8 + 1.5 * x ** 10);
}
/** The wheel reads 4° at the true top; the intake lobe stands 3.5° later than the 110° of its card. */
const TOP = 4;
const MIDDLE = 113.5;
const PLACES = [-70, -50, -30, -10, 10, 30, 50, 70];

async function keyStop(page: Page): Promise<void> {
  await asked(page, 'first side');
  await key(page, `${TOP - 36}`);
  await asked(page, 'second side');
  await key(page, `${TOP + 36}`);
  await asked(page, 'wheel');
}
async function keyPlace(page: Page, fromMiddle: number, lift = lobeLift(fromMiddle)): Promise<void> {
  await key(page, `${MIDDLE + TOP + fromMiddle}`);
  await asked(page, 'lift');
  await key(page, lift.toFixed(2));
  await asked(page, 'wheel');
}

const subjectOf = (job: string, subject: string) => `${job}/combination/${subject}`;
async function openSubject(page: Page, job: string, subject: string): Promise<void> {
  await page.goto(subjectOf(job, subject));
  await page.locator(`[data-subject="${subject}"]`).waitFor();
}
const answer = (page: Page, of: string) => page.locator(`[data-answer="${of}"]`);
const demonstration = '/engine/invented-demonstration';

/** Stands a V8, reads the cautions and the stop. */
async function beginDegreeing(page: Page): Promise<string> {
  const job = await standSheet(page, engines.v8);
  await page.goto(subjectOf(job, 'degreeing'));
  await page.getByRole('heading', { name: 'Before you begin' }).waitFor();
  await page.keyboard.press('Enter');
  await keyStop(page);
  return job;
}

// Accessibility: WCAG 2.2 as checked by axe-core, with the 7:1 contrast of 1.4.6. Sizes: bench ergonomics, sections 1 and 2.
describe('degreeing a cam', () => {
  it.each(sizes)(
    'begins with the cautions and the stop, then grows the lobe place by place in any order, on a %s',
    async (name, size) => {
      const device = await bench.device(size, { touch: size === phone });
      const { page } = device;
      const job = await standSheet(page, engines.v8);
      await page.goto(subjectOf(job, 'degreeing'));
      await page.getByRole('heading', { name: 'Before you begin' }).waitFor();
      expect(await accessibilityFaults(page)).toEqual([]);
      await page.keyboard.press('Enter');
      await asked(page, 'first side');
      await picture(page, `turning-stop-${name}`);
      expect(await accessibilityFaults(page)).toEqual([]);
      await keyStop(page);
      expect(await page.getByText(/At the true top of cylinder 1 the wheel reads 4°/).count()).toBe(1);
      // From the end of the lobe to its beginning.
      for (const place of [...PLACES].reverse()) await keyPlace(page, place);
      const words = page.locator('[data-lobe-words]');
      await expect
        .poll(() => words.textContent())
        .toMatch(/^8 readings\. Middle 113\.[3-7]° after top ±0\.\d+°, 3\.[3-7]° later/);
      expect(await answer(page, 'later-than-card@1-intake-1').textContent()).toMatch(/3\.[3-7] deg.*OUT/s);
      await picture(page, `turning-grown-${name}`);
      await picture(page, `turning-grown-whole-${name}`, true);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      expectQuiet(device);
    },
    120_000,
  );

  it('has a field and keys of the size of a glove on a phone, and takes a place by taps alone', async () => {
    const device = await bench.device(phone, { touch: true });
    const { page } = device;
    await beginDegreeing(page);
    await page.getByRole('button', { name: 'Number keys' }).tap();
    const controls = await benchControls(page);
    expect(controls.filter(({ name }) => name.startsWith('key')).length).toBeGreaterThanOrEqual(12);
    for (const { name, width, height } of controls) expect(Math.min(width, height), name).toBeGreaterThanOrEqual(96);
    for (const digit of '60') await page.locator(`.key[data-key="${digit}"]`).tap();
    await pastBounce(page);
    await page.getByRole('button', { name: /^Next: lift/ }).tap();
    await asked(page, 'lift');
    expect(await page.locator('.several-keyed').textContent()).toContain('wheel 60 deg');
    await picture(page, 'turning-pad-phone');
    for (const digit of ['3', 'decimal point', '1']) await page.locator(`.key[data-key="${digit}"]`).tap();
    await pastBounce(page);
    await page.getByRole('button', { name: /^Record/ }).tap();
    await expect.poll(() => page.locator('[data-lobe-words]').textContent()).toMatch(/^1 reading\./);
    expectQuiet(device);
  }, 60_000);

  it('takes the lift from an indicator that types and sends no Enter, the wheel by its own Enter', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await beginDegreeing(page);
    await page.getByRole('button', { name: 'Gauge types' }).press('Enter');
    await page.locator('[data-armed]').waitFor();
    await page.keyboard.type('72');
    // Digits of a wheel that is read by eye are not taken by silence.
    await page.waitForTimeout(500);
    expect(await page.locator('[data-armed]').inputValue()).toBe('72');
    await page.keyboard.press('Enter');
    await asked(page, 'lift');
    await pastBounce(page);
    await page.keyboard.type('5.02mm');
    await asked(page, 'wheel');
    await expect.poll(() => page.locator('[data-lobe-words]').textContent()).toMatch(/^1 reading\./);
    expect(await page.locator('.several-said').textContent()).toContain('wheel 72 deg, lift 5.02 mm');
    expectQuiet(device);
  }, 60_000);

  it('asks about a lift that the others do not bear out, names it once kept, and strikes it out by keyboard', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await beginDegreeing(page);
    for (const place of [...PLACES, -60, -20, 20, 60]) await keyPlace(page, place);
    // Half a millimetre too little.
    await key(page, `${MIDDLE + TOP - 40}`);
    await asked(page, 'lift');
    await key(page, (lobeLift(-40) - 0.7).toFixed(2));
    const question = page.getByRole('alertdialog');
    await question.waitFor();
    expect(await question.textContent()).toContain('Not where the other readings of this lobe put it');
    await picture(page, 'turning-question-laptop');
    await page.getByRole('button', { name: /^Keep/ }).press('Enter');
    const wrong = page.locator('li.turning-wrong');
    await wrong.waitFor();
    expect(await wrong.textContent()).toMatch(/Looks wrong: 0\.\d+ mm below the curve of the others/);
    await picture(page, 'turning-wrong-laptop', true);
    await wrong.getByRole('button', { name: /^Strike out/ }).press('Enter');
    await page.getByRole('button', { name: /: misread$/ }).press('Enter');
    await wrong.waitFor({ state: 'detached' });
    await expect.poll(() => page.locator('[data-lobe-words]').textContent()).toMatch(/^12 readings/);
    expectQuiet(device);
  }, 120_000);

  it('lays the keys and teeth at hand side by side with what each does to the valves, and tries one on the scratch copy', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    const job = await beginDegreeing(page);
    for (const place of PLACES) await keyPlace(page, place);
    await page.locator('summary', { hasText: 'Keys, bushings and teeth at hand' }).press('Enter');
    await page.getByLabel('Degrees', { exact: true }).fill('40');
    await page.getByRole('button', { name: 'Add it' }).press('Enter');
    await page.getByText('Degrees: above 0 to 30 is valid.').waitFor();
    await page.getByRole('button', { name: /^Add a usual set/ }).press('Enter');
    await page.getByLabel(/^Teeth of the crank sprocket/).fill('22');
    const ways = page.locator('[data-correction]');
    await expect.poll(() => ways.first().textContent()).toMatch(/^[34] deg crank/);
    const best = await ways.first().textContent();
    expect(best).toMatch(/earlier; leaves it 0\.[3-6]° (later|earlier) than wanted/);
    expect(best).toMatch(/intake room \d\.\d+ mm, at least 2\.000 mm wanted/);
    await ways.first().scrollIntoViewIfNeeded();
    await picture(page, 'turning-ways-laptop');
    expect(await accessibilityFaults(page)).toEqual([]);
    await ways
      .first()
      .getByRole('button', { name: /^Try it/ })
      .press('Enter');
    await page.locator('[data-scratch="1"]').waitFor();
    // What was read stays what it is; the rooms follow.
    expect(await page.locator('[data-lobe-words]').textContent()).toMatch(/3\.[3-7]° later than wanted/);
    await openSubject(page, job, 'valve-room');
    await page.locator('[data-input="cam-advance"][data-origin="scratch"]').waitFor();
    expectQuiet(device);
  }, 120_000);
});

describe('valve room', () => {
  const cam = (page: Page) => page.locator('[data-input="cam-advance"]').getByRole('slider');
  it.each(sizes)(
    'shows both valves through the overlap, and follows the cam by keyboard, on a %s',
    async (name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      const job = await standSheet(page, engines.four);
      await openSubject(page, job, 'valve-room');
      await page.getByText(/From where it stands the cam may be advanced by [\d.]+ deg and retarded by/).waitFor();
      const watched = page.locator('[data-watched="valve-room@intake"]').first();
      const before = await watched.textContent();
      await picture(page, `turning-room-${name}`);
      await cam(page).focus();
      for (let step = 0; step < 8; step += 1) await page.keyboard.press('ArrowRight');
      await expect.poll(() => watched.textContent()).not.toBe(before);
      await page.getByText('intake, cam as it is').first().waitFor({ state: 'attached' });
      // Further than the window: the intake valves come too near.
      await page.keyboard.press('End');
      await expect.poll(() => watched.textContent()).toMatch(/out/i);
      await page.locator('[data-working]').waitFor({ state: 'detached' });
      await picture(page, `turning-room-moved-${name}`, true);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      expectQuiet(device);
    },
  );

  it('says what moves the room, and what the valves of another cam do', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    const job = await standSheet(page, engines.v8);
    await openSubject(page, job, 'valve-room');
    const table = page.locator('.turning-table').first();
    expect(await table.textContent()).toMatch(/gasket 0\.1 mm thicker\s*\+0\.\d+ mm\s*\+0\.\d+ mm/);
    expect(await table.textContent()).toMatch(/lifter bled down/);
    await page.getByLabel('The cam that is moved carries').selectOption('intake');
    await page.getByLabel('Piston of').selectOption('3');
    await page.locator('[data-answer="valve-room-pumped-up@exhaust"]').waitFor();
    expectQuiet(device);
  });

  it('reads the plot by the arrow keys, and hands out its values and its drawing', async () => {
    const device = await bench.device(laptop);
    const { page } = device;
    await openSubject(page, demonstration, 'valve-room');
    const reader = page.getByRole('slider', { name: 'Read along crank after top of overlap' }).first();
    await reader.focus();
    const before = await reader.getAttribute('aria-valuetext');
    await page.keyboard.press('ArrowRight');
    expect(await reader.getAttribute('aria-valuetext')).not.toBe(before);
    for (const button of ['Save the values (CSV)', 'Save the drawing (SVG)']) {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: button }).first().click(),
      ]);
      expect(download.suggestedFilename()).toMatch(/\.(csv|svg)$/);
    }
    expectQuiet(device);
  });

  it.each([
    ['valve-room', engines.v8],
    ['valve-room', engines.four],
    ['motion', engines.v8],
    ['timing', engines.four],
    ['rockers', engines.v8],
  ])('%s of the %s follows a slider at a quarter of the speed of this machine', async (subject, sheet) => {
    const device = await bench.device(phone);
    const { page } = device;
    const job = await standSheet(page, sheet);
    await openSubject(page, job, subject);
    const first = page.locator('input.slider').first();
    await first.waitFor();
    const taken = await timeOfStep(first);
    console.info(`${subject}: ${taken.toFixed(1)} ms for a step of the slider at ${SLOWER}x throttle`);
    expect(taken).toBeLessThan(100);
    expectQuiet(device);
  });
});

describe('motion, timing and rockers', () => {
  it.each(sizes)('draws lift, speed and acceleration at the speed that is chosen, on a %s', async (name, size) => {
    const device = await bench.device(size);
    const { page } = device;
    const job = await standSheet(page, engines.v8);
    await openSubject(page, job, 'motion');
    const speed = page.getByRole('slider', { name: /^Crank speed/ });
    await speed.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('PageUp');
    const chosen = await speed.getAttribute('aria-valuetext');
    await page.getByRole('img', { name: `Valve acceleration at ${chosen}` }).waitFor();
    await page.locator('[data-working]').waitFor({ state: 'detached' });
    await answer(page, 'peak-acceleration@intake').waitFor();
    await picture(page, `turning-motion-${name}`, true);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    expectQuiet(device);
  });

  it.each(sizes)(
    'draws the two turns with events and overlap, and tells them in words, on a %s',
    async (name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      const job = await standSheet(page, engines.four);
      await openSubject(page, job, 'timing');
      const figure = page.getByRole('img', { name: /^Valve timing of/ });
      await figure.waitFor();
      expect(await figure.locator('desc').textContent()).toMatch(/Both are open together for \d/);
      expect(await answer(page, 'overlap').textContent()).toMatch(/28\.0 deg/);
      await picture(page, `turning-timing-${name}`);
      await picture(page, `turning-timing-whole-${name}`, true);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      expectQuiet(device);
    },
  );

  it.each(sizes)(
    'finds the pushrod by trial lengths, keyed one after the other, on a %s',
    async (name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      const job = await standSheet(page, engines.v8);
      await openSubject(page, job, 'rockers');
      await page.getByRole('button', { name: 'Find the pushrod length by trials' }).press('Enter');
      for (const [length, width, place] of [
        ['196.0', '2.4', '-1.0'],
        ['197.0', '1.6', '0.1'],
        ['198.0', '2.0', '1.1'],
      ] as const) {
        await asked(page, 'pushrod length');
        await key(page, length);
        await asked(page, 'width');
        await key(page, width);
        await asked(page, 'place');
        await key(page, place);
      }
      await answer(page, 'pushrod-narrowest@intake').waitFor();
      expect(await answer(page, 'pushrod-centred@intake').textContent()).toMatch(/19[67]\.\d+ mm/);
      await page.getByRole('button', { name: 'Enough trials for now' }).press('Enter');
      await picture(page, `turning-rockers-${name}`, true);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expectFits(page);
      await page.goto(`${job}/record`);
      await page
        .getByText(/Pushrod tried at/)
        .first()
        .waitFor();
      expectQuiet(device);
    },
    60_000,
  );
});

describe('a sheet with gaps', () => {
  it.each([
    ['TM 5-6115-584-34, two-cylinder generator diesel', 'phone', phone],
    ['Service manuals of an overhead-cam V8, 90.2 x 105.8 mm', 'laptop', laptop],
  ] as const)(
    '%s: says what is missing on every subject, on a %s',
    async (sheet, name, size) => {
      const device = await bench.device(size);
      const { page } = device;
      const job = await standSheet(page, sheet);
      for (const subject of ['valve-room', 'motion', 'rockers', 'timing']) {
        await openSubject(page, job, subject);
        await page.locator('[data-missing]').first().waitFor();
        expect(await accessibilityFaults(page), subject).toEqual([]);
        await expectFits(page);
        await picture(page, `turning-missing-${subject}-${name}`, true);
      }
      await page.goto(subjectOf(job, 'degreeing'));
      await page.getByRole('button', { name: 'Read. Begin' }).click();
      await keyStop(page);
      expect(await accessibilityFaults(page)).toEqual([]);
      expectQuiet(device);
    },
    60_000,
  );
});
