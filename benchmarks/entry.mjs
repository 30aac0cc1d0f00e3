/**
 * One reading keyed on a phone's screen with the readings of a whole V8 beside it: the work of the browser's main thread from Enter to
 * the frame that shows it stored and judged, for a device of a fourth of this processor's speed. Against the same for one digit keyed
 * into the same field in the same run, which is what the browser and the screen cost by themselves. Processor time at full speed, times
 * four; what it takes under the throttle of the developer tools, which a busy machine makes slower than it was told, is printed beside.
 * Prints one line. Fails when the middle entry does not fit into a frame of 60 a second, or when the ratio passes its limit. Needs
 * everything built (`npm run build`) and Chromium.
 */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inspectionPlan } from '../packages/core/dist/assess/index.js';
import { loadSheet } from '../packages/core/dist/engine/load/index.js';
import { openPhone, startServer, writeJob } from './parts/bench-in-browser.mjs';
import { markKeys, traced, workUntilFrame } from './parts/main-thread.mjs';
import { BASELINE_MISSING, report } from './twins/compare.mjs';

const NAME = 'entry';
const LIMIT = 2.5;
const FRAME = 1000 / 60;
const SLOWER = 4;
/** The longest sheet is keyed at full speed, one of six readings a place throttled. The first readings warm the page up. */
const KEYED = ['cylinder-bore', 'valve-guide'];
const WARM = 12;
/** As a hand holds a key, and then longer than any frame and than the sending after it, so that each key is seen alone [ms]. */
const HELD = 50;
const APART = 30;

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
if (!existsSync(join(root, 'packages', 'web', 'dist-site', 'index.html'))) {
  console.error(`${NAME}: the web page is not built; run npm run build first`);
  process.exit(1);
}
const text = readFileSync(join(root, 'sheets', 'quernside-51-v8.yaml'), 'utf8');
const slots = slotsOf(inspectionPlan(loadSheet(text).value));
const keyed = slots.filter(({ feature }) => KEYED.includes(feature));
const before = slots.filter(({ feature }) => !KEYED.includes(feature));

const server = await startServer();
const job = await writeJob(server.address, [
  { kind: 'sheet-adopted', data: { name: 'Quernside 51, pushrod V8', text, reason: 'benchmark' } },
  ...before.map(({ slot, value, unit, si, shown }) => ({
    kind: 'measured',
    data: { slot, occasion: 1, reading: { text: `${shown} ${unit}`, value, unit: si }, repeat: false, source: 'keyed' },
  })),
]);
const phone = await openPhone(server.address);
if (phone === undefined) {
  console.log(`${NAME}: not measured; it needs Chromium`);
  await server.close();
  process.exit(BASELINE_MISSING);
}
try {
  await measure(phone);
} finally {
  await phone.browser.close();
  await server.close();
}

async function measure({ page, devtools }) {
  await page.addInitScript(markKeys);
  const [bores, guides] = KEYED;
  const free = await onSheet(page, devtools, guides, 1);
  const slow = await onSheet(page, devtools, bores, SLOWER);
  const [entry, digit] = [SLOWER * at(free.entries, 0.5), SLOWER * at(free.digits, 0.5)];
  const words = [
    `${free.entries.length} readings keyed beside ${before.length}, ${SLOWER} times slower`,
    `95th percentile ${(SLOWER * at(free.entries, 0.95)).toFixed(1)} ms, a frame is ${FRAME.toFixed(1)} ms`,
    `throttled by the developer tools ${at(slow.entries, 0.5).toFixed(1)} ms, a digit ${at(slow.digits, 0.5).toFixed(1)} ms`,
  ];
  report(NAME, words.join('; '), { ours: entry, twin: digit }, 'a digit in the same field', LIMIT);
  if (entry <= FRAME) return;
  console.error(`${NAME}: an entry does not fit into one frame`);
  process.exitCode = 1;
}

/** Keys a whole sheet and answers the work of each entry and of each digit, without those that warm the page up. */
async function onSheet(page, devtools, feature, rate) {
  const sheet = keyed.filter((one) => one.feature === feature);
  await page.goto(`/engine/${job}/measure/${feature}`);
  await page.locator('[data-slot], .act').first().waitFor();
  if ((await page.locator('[data-slot]').count()) === 0) await page.keyboard.press('Enter');
  await page.locator(`[data-slot="${sheet[0].slot}"]`).waitFor();
  await page.waitForTimeout(1000);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate });
  const events = await traced(devtools, async () => {
    for (const { slot, shown } of sheet) {
      await page.locator(`[data-slot="${slot}"]`).waitFor();
      for (const digit of shown) {
        await page.keyboard.press(digit, { delay: HELD });
        await page.waitForTimeout(APART);
      }
      await page.keyboard.press('Enter', { delay: HELD });
      await page.waitForTimeout(2 * APART);
    }
  });
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await page.getByText('All entries saved').waitFor();
  return {
    entries: workUntilFrame(events, 'entry keyed').slice(WARM),
    digits: workUntilFrame(events, 'digit keyed').slice(WARM * sheet[0].shown.length),
  };
}

/** Value below which that share of all lies. */
function at(values, share) {
  return values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))];
}

/** Every slot with the size that the sheet expects there, as it is keyed in metric units. */
function slotsOf(plan) {
  const ways = {
    length: { unit: 'mm', si: 'm', size: 1e-3, places: 3 },
    volume: { unit: 'cm3', si: 'm3', size: 1e-6, places: 1 },
    mass: { unit: 'g', si: 'kg', size: 1e-3, places: 1 },
    force: { unit: 'N', si: 'N', size: 1, places: 0 },
    angle: { unit: 'deg', si: 'rad', size: Math.PI / 180, places: 1 },
  };
  return plan.features.flatMap(({ kind, places }) =>
    places.flatMap(({ id, stations, expected }) =>
      stations.map((station) => {
        const { unit, si, size, places: decimals } = ways[kind.measured];
        const shown = (expected.nominal / size).toFixed(decimals);
        const slot = `${kind.id}/${id}/${station.id}`;
        return { feature: kind.id, slot, shown, value: Number(shown) * size, unit, si };
      }),
    ),
  );
}
