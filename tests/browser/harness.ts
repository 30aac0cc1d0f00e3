/**
 * What every browser test needs: the built server on a free port with an empty data folder, Chromium, pages of the two
 * sizes that the bench is designed for, and a watch on the console. A message of the content policy is a console error.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const pictures = join(root, 'test-results');
const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export const phone = { width: 360, height: 640 } as const;
/** Longer than the 400 ms in which a second identical action is taken for a bounce of hand or pedal [ms]. */
export const afterBounce = 450;
export const laptop = { width: 1280, height: 720 } as const;
export type Size = { readonly width: number; readonly height: number };

export interface Bench {
  readonly address: string;
  readonly browser: Browser;
  /** A fresh device: own storage, and a page whose console is watched. */
  readonly device: (size?: Size, options?: DeviceOptions) => Promise<Device>;
  readonly stopServer: () => Promise<void>;
  /** Ends it without any warning, as a pulled plug would. */
  readonly killServer: () => Promise<void>;
  readonly startServer: () => Promise<void>;
  readonly close: () => Promise<void>;
}
export interface DeviceOptions {
  /** Name typed into this device beforehand; empty for a device that nobody has used. */
  readonly person?: string;
  readonly stillness?: boolean;
  readonly touch?: boolean;
  /** Another address of the same server, e.g. a name of the workshop's network. */
  readonly address?: string;
  /** Choices of this device, as it keeps them. */
  readonly settings?: Readonly<Record<string, unknown>>;
}
export interface Device {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console errors and page errors so far. */
  readonly complaints: string[];
}

/** Starts a server and a browser; close it in `afterAll`. */
export async function openBench(): Promise<Bench> {
  const folder = mkdtempSync(join(tmpdir(), 'gudgeon-browser-'));
  let server = await startServer(folder, 0);
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: chromiumArguments });
  const devices: Device[] = [];
  return {
    address: server.address,
    browser,
    device: async (size = phone, options = {}) => {
      const made = await openDevice(browser, server.address, size, options);
      devices.push(made);
      return made;
    },
    stopServer: () => stop(server.process),
    killServer: () => stop(server.process, 'SIGKILL'),
    startServer: async () => {
      server = await startServer(folder, Number(new URL(server.address).port));
    },
    close: async () => {
      await browser.close();
      await stop(server.process);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

const chromiumArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // A name as the workshop's own network gives it: not this computer's own, so that its pages are not trusted more than plain http.
  '--host-resolver-rules=MAP workshop.test 127.0.0.1',
];

function chromiumPath(): string {
  const places = [
    process.env.CHROMIUM_PATH,
    '/usr/bin/chromium',
    '/usr/bin/google-chrome',
    '/usr/bin/chromium-browser',
  ];
  const found = places.find((path) => path !== undefined && existsSync(path));
  if (!found) throw new Error('No Chromium found: install it, or name it in CHROMIUM_PATH.');
  return found;
}

interface RunningServer {
  readonly process: ChildProcess;
  readonly address: string;
}
function startServer(folder: string, port: number): Promise<RunningServer> {
  const main = join(root, 'packages/server/dist/main.js');
  if (!existsSync(main) || !existsSync(join(root, 'packages/web/dist-site/index.html')))
    throw new Error('The server and the web pages are not built: run npm run build first.');
  const child = spawn(process.execPath, [main, '--port', String(port)], {
    env: { ...process.env, GUDGEON_DATA: folder },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  return new Promise((done, fail) => {
    let said = '';
    const listen = (piece: Buffer) => {
      said += piece.toString();
      const address = /http:\/\/localhost:\d+/.exec(said)?.[0];
      if (address) done({ process: child, address });
    };
    child.stdout?.on('data', listen);
    child.stderr?.on('data', (piece: Buffer) => {
      said += piece.toString();
    });
    child.once('exit', (code) => fail(new Error(`The server ended with ${code}: ${said}`)));
  });
}

function stop(child: ChildProcess, signal: 'SIGTERM' | 'SIGKILL' = 'SIGTERM'): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((done) => {
    child.once('exit', () => done());
    child.kill(signal);
  });
}

async function openDevice(browser: Browser, address: string, size: Size, options: DeviceOptions): Promise<Device> {
  const context = await browser.newContext({
    viewport: size,
    baseURL: options.address ?? address,
    hasTouch: options.touch ?? false,
    reducedMotion: options.stillness ? 'reduce' : 'no-preference',
  });
  const person = options.person ?? 'Ada';
  if (person !== '') await context.addInitScript((name) => localStorage.setItem('gudgeon.person', name), person);
  if (options.settings !== undefined)
    await context.addInitScript(
      (settings) => localStorage.setItem('gudgeon.settings', settings),
      JSON.stringify(options.settings),
    );
  await context.addInitScript(clockThatRunsAhead);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  return { page, context, complaints };
}

/** Runs in the page: its steady clock can be put forward, so that no test sits out what a hand would wait. */
function clockThatRunsAhead(): void {
  const real = performance.now.bind(performance);
  let ahead = 0;
  performance.now = () => real() + ahead;
  Object.assign(globalThis, {
    runAhead: (milliseconds: number) => {
      ahead += milliseconds;
    },
  });
}

/** Lets the time of a bounce pass on the page's own clock, and what was done before stand on the screen. */
export async function pastBounce(page: Page): Promise<void> {
  await page.evaluate((time) => {
    (globalThis as unknown as { runAhead: (milliseconds: number) => void }).runAhead(time);
    return new Promise<void>((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(drawn))));
  }, afterBounce);
}

/** Saves what the screen looks like to `test-results/`, to be looked at by a person; `npm run pictures` asks for it. */
export async function picture(page: Page, name: string, whole = false): Promise<void> {
  if (process.env.GUDGEON_PICTURES === undefined) return;
  mkdirSync(pictures, { recursive: true });
  await page.screenshot({ path: join(pictures, `${name}.png`), fullPage: whole });
}

/** Every rule of axe, with the 7:1 contrast of WCAG 1.4.6 as well. Returns one line a violation. */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  // The content policy refuses script elements, so the checker comes in by evaluation.
  if (await page.evaluate(() => !('axe' in globalThis))) await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: typeof import('axe-core') }).axe;
    const { violations } = await axe.run(document, {
      resultTypes: ['violations'],
      rules: {
        'color-contrast-enhanced': { enabled: true },
        // Asks 4.5:1 and 3:1 of the same letters of which the rule above asks 7:1 and 4.5:1.
        'color-contrast': { enabled: false },
        'target-size': { enabled: true },
      },
    });
    return violations.flatMap((v) =>
      v.nodes.map((n) => `${v.id}: ${n.target.join(' ')} (${n.failureSummary ?? v.help})`),
    );
  });
}

/** Fails on console errors and content policy messages seen so far. */
export function expectQuiet(device: Device): void {
  expect(device.complaints).toEqual([]);
}

/** No sideways scrolling: everything fits the width. */
export async function expectFits(page: Page): Promise<void> {
  const [wide, shown] = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
  expect(wide).toBeLessThanOrEqual(shown ?? 0);
}

/** Width and height of each bench control on the screen [CSS px]. */
export async function benchControls(
  page: Page,
): Promise<
  readonly { name: string; width: number; height: number; top: number; bottom: number; left: number; right: number }[]
> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-bench-control], .key')].map((element) => {
      const { width, height, top, bottom, left, right } = element.getBoundingClientRect();
      return {
        name: element.dataset.benchControl ?? `key ${element.dataset.key}`,
        width,
        height,
        top,
        bottom,
        left,
        right,
      };
    }),
  );
}
