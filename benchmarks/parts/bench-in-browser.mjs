/** The built server with an empty log, a record of readings in it, and Chromium looking at it as a phone. */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { NO_PREVIOUS, sealEntry } from '../../packages/core/dist/record/index.js';
import { findChromium } from '../../scripts/parts/chromium.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const PHONE = { width: 360, height: 640 };
const MOST_AT_ONCE = 500;
const QUIET = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'];

/** A server on a free port; its data folder goes with it. */
export async function startServer() {
  const folder = mkdtempSync(join(tmpdir(), 'gudgeon-benchmark-'));
  const main = join(root, 'packages', 'server', 'dist', 'main.js');
  const child = spawn(process.execPath, [main, '--port', '0'], {
    env: { ...process.env, GUDGEON_DATA: folder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await new Promise((done, fail) => {
    let said = '';
    child.stdout.on('data', (piece) => {
      said += piece;
      const found = /http:\/\/localhost:\d+/.exec(said)?.[0];
      if (found) done(found);
    });
    child.once('exit', (code) => fail(new Error(`the server ended with ${code}: ${said}`)));
  });
  const close = () =>
    new Promise((done) => {
      child.once('exit', () => {
        rmSync(folder, { recursive: true, force: true });
        done();
      });
      child.kill('SIGTERM');
    });
  return { address, close };
}

/** Puts a job with these facts on the server, sealed one after the other; answers its name. */
export async function writeJob(address, facts) {
  const job = 'invented-benchmark';
  let previous = NO_PREVIOUS;
  const entries = facts.map(({ kind, data }, at) => {
    const count = at + 1;
    const sealed = sealEntry(
      {
        id: `01900000-0000-7000-8000-${String(count).padStart(12, '0')}`,
        job,
        device: 'invented-bench',
        counter: count,
        at: '2026-03-01T10:00:00+01:00',
        person: 'a fitter',
        kind,
        version: 1,
        data,
      },
      previous,
    );
    previous = sealed.hash;
    return sealed;
  });
  for (let from = 0; from < entries.length; from += MOST_AT_ONCE) {
    const answer = await fetch(`${address}/api/jobs/${job}/entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ entries: entries.slice(from, from + MOST_AT_ONCE) }),
    });
    if (!answer.ok) throw new Error(`the server did not take the readings: ${await answer.text()}`);
  }
  return job;
}

/** Chromium with one page in the size of a phone; undefined where there is no Chromium. */
export async function openPhone(address) {
  const executablePath = findChromium();
  if (executablePath === undefined) return undefined;
  const browser = await chromium.launch({ executablePath, args: QUIET });
  const context = await browser.newContext({ viewport: PHONE, baseURL: address });
  await context.addInitScript(() => localStorage.setItem('gudgeon.person', 'a fitter'));
  const page = await context.newPage();
  return { browser, page, devtools: await context.newCDPSession(page) };
}
