/**
 * Draws every figure for a spread of invented engines and for the sheets into a folder, as SVG and as PNG at phone and laptop width, to be
 * looked at. Usage: node scripts/preview-figures.mjs [folder] [part of a name]
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { createServer } from 'vite';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const [folder = '/tmp/figures', wanted = ''] = process.argv.slice(2);
const WIDTHS = [360, 1000];

const vite = await createServer({
  root,
  configFile: false,
  server: { middlewareMode: true, watch: null, hmr: false, ws: false },
  appType: 'custom',
  logLevel: 'error',
  optimizeDeps: { noDiscovery: true },
});
const { previewFigures } = await vite.ssrLoadModule('/packages/core/src/drawing/preview.suite.ts');
const { loadSheet } = await vite.ssrLoadModule('/packages/core/src/engine/load/index.ts');
mkdirSync(folder, { recursive: true });
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
});
const page = await browser.newPage();
const sheet = [];
const engines = sheetEngines();
for (const [name, draw] of previewFigures(engines)) {
  if (!name.includes(wanted)) continue;
  for (const width of WIDTHS) {
    const svg = draw(width);
    writeFileSync(join(folder, `${name}.svg`), svg);
    await page.setViewportSize({ width, height: 400 });
    await page.setContent(`<body style="margin:0">${svg}</body>`);
    await page.screenshot({ path: join(folder, `${name}-${width}.png`), fullPage: true });
  }
  sheet.push(`<figure style="margin:0">${draw(360)}<figcaption>${name}</figcaption></figure>`);
}
await page.setViewportSize({ width: 1500, height: 400 });
await page.setContent(`<body style="margin:4px;display:flex;flex-wrap:wrap;gap:6px">${sheet.join('')}</body>`);
await page.screenshot({ path: join(folder, 'all.png'), fullPage: true });
await browser.close();
await vite.close();
/** Engines of all sheets in the repository; a sheet with faults is named and left out. */
function sheetEngines() {
  const files = readdirSync(join(root, 'sheets'), { recursive: true }).filter((name) => name.endsWith('.yaml'));
  const loaded = files.map((name) => [
    basename(name, '.yaml'),
    loadSheet(readFileSync(join(root, 'sheets', name), 'utf8')),
  ]);
  for (const [name, outcome] of loaded) if (!outcome.ok) console.error(`left out: ${name}`);
  return Object.fromEntries(loaded.flatMap(([name, outcome]) => (outcome.ok ? [[name, outcome.value]] : [])));
}
console.log(`${sheet.length} figures in ${folder}`);
