import type { StoredEnvelope } from '@gudgeon/core/record';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sendEntries } from '../send.js';
import { accessibilityFaults, type Bench, expectFits, expectQuiet, openBench, pastBounce, phone } from './harness.js';
import { singleAtCrankshaft } from './single.js';

let bench: Bench;
const engine = '/engine/job';

/** The small engine, at the first act of its crankshaft. */
beforeAll(async () => {
  const person = singleAtCrankshaft();
  bench = await openBench();
  await sendEntries(bench.address, person.entries);
});
afterAll(() => bench.close());

/** What the page's ears and mouth do; a machine of a test has neither. */
interface Talk {
  /** What is heard next: words, or why nothing was. */
  heard: { readonly words: string } | { readonly error: string };
  said: string[];
}
declare global {
  interface Window {
    talk: Talk;
  }
}

/** Speech as the Web Speech API has it (W3C draft), played by the test: what is said is kept, what is heard is told beforehand. */
function standIn(): void {
  window.talk = { heard: { error: 'no-speech' }, said: [] };
  class Ears {
    onresult?: (event: unknown) => void;
    onerror?: (event: unknown) => void;
    onend?: () => void;
    start() {
      setTimeout(() => {
        const { heard } = window.talk;
        if ('words' in heard) this.onresult?.({ results: [[{ transcript: heard.words }]] });
        else this.onerror?.({ error: heard.error });
        this.onend?.();
      });
    }
    abort() {
      this.onend?.();
    }
  }
  Object.assign(window, { SpeechRecognition: Ears });
  Object.defineProperty(window, 'speechSynthesis', {
    value: { cancel: () => {}, speak: ({ text }: { readonly text: string }) => window.talk.said.push(text) },
  });
}

async function talkingPhone(speech: boolean) {
  const device = await bench.device(phone, { touch: true, settings: { speech } });
  await device.context.addInitScript(standIn);
  return device;
}
const hears = (page: Page, heard: Talk['heard']) =>
  page.evaluate((next) => {
    window.talk.heard = next;
  }, heard);
const said = (page: Page) => page.evaluate(() => window.talk.said);
/** The compression test, its cautions read. */
async function openTests(page: Page): Promise<void> {
  await page.goto(`${engine}/tests`);
  await page.getByRole('button', { name: 'Read. Begin' }).tap();
  await page.locator('[data-armed]').waitFor();
}
async function recorded(kind: string): Promise<readonly StoredEnvelope['data'][]> {
  const answer = await fetch(`${bench.address}/api/jobs/job/entries`);
  const { entries } = (await answer.json()) as { entries: readonly StoredEnvelope[] };
  return entries.filter((entry) => entry.kind === kind).map(({ data }) => data);
}

describe('speech at the bench', () => {
  it('says in words why nothing was heard, and the figure can be keyed as before', async () => {
    const { page } = await talkingPhone(true);
    await openTests(page);
    const sayIt = page.getByRole('button', { name: 'Say the figure' });
    await hears(page, { error: 'not-allowed' });
    await sayIt.tap();
    await page.getByText('This browser may not use the microphone. Key it instead.').waitFor();
    await page.keyboard.type('9');
    expect(await page.locator('[data-armed]').inputValue()).toBe('9');
  });

  it('reads each act of the work out as it appears, with the answer that was taken, and again on R', async () => {
    const { page } = await talkingPhone(true);
    await page.goto(`${engine}/bench`);
    await page.getByRole('button', { name: 'Read. Begin' }).tap();
    await page.locator('[data-return="stood"]').waitFor();
    await page.keyboard.press('PageDown');
    await pastBounce(page);
    await page.locator('[data-act="saddles-wiped"]').waitFor();
    const first = (await said(page)).at(-1);
    expect(first).toMatch(/saddle/i);
    await page.keyboard.press('r');
    expect(await said(page)).toEqual([...(await said(page)).slice(0, -1), first]);
    await hears(page, { words: 'dry, no lint' });
    await page.keyboard.press('w');
    await page.getByRole('button', { name: 'Say it' }).tap();
    await page.getByRole('button', { name: 'Good: dry, no lint' }).tap();
    await page.locator('[data-act^="main-shell-in"]').waitFor();
    expect((await said(page)).at(-1)).toMatch(/shell/i);
  });

  it('is silent and has no ears where the person does not want it', async () => {
    const { page } = await talkingPhone(false);
    await openTests(page);
    expect(await page.getByRole('button', { name: 'Say the figure' }).count()).toBe(0);
    expect(await said(page)).toEqual([]);
  });

  it('fills a figure in that was said digit by digit, asks when it is no figure, and records nothing before Enter', async () => {
    const device = await talkingPhone(true);
    const { page } = device;
    await openTests(page);
    const field = page.locator('[data-armed]');
    const sayIt = page.getByRole('button', { name: 'Say the figure' });
    await hears(page, { words: 'fifteen' });
    await sayIt.tap();
    await page.getByText(/fifteen/).waitFor();
    expect(await field.inputValue()).toBe('');
    await hears(page, { words: 'one zero point four' });
    await sayIt.tap();
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('[data-armed]')?.value === '10.4');
    expect(await recorded('compression-read')).toEqual([]);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    await page.keyboard.press('Enter');
    await pastBounce(page);
    await page.getByText('All entries saved').waitFor();
    expect(await recorded('compression-read')).toHaveLength(1);
    expectQuiet(device);
  });
});
