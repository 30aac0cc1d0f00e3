/**
 * Sliders of the combination moved a step at a time on a phone's screen: the work of the browser's main thread from the key to the
 * frame that shows what follows from it, for a device of a fourth of this processor's speed. Against a slider that only writes its own
 * number, moved on the same page in the same run, which is what the browser costs by itself. Processor time at full speed, times four,
 * so that other programs on a busy machine do not count. Prints a line for each screen and the screen that takes longest against its
 * bare slider. Fails when the middle step of a screen does not fit into a frame of 60 a second, or when the ratio passes its limit.
 * Needs everything built (`npm run build`) and Chromium.
 */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openPhone, startServer, writeJob } from './parts/bench-in-browser.mjs';
import { markKeys, traced, workUntilFrame } from './parts/main-thread.mjs';
import { BASELINE_MISSING, report } from './twins/compare.mjs';

const NAME = 'slider';
const LIMIT = 4;
const FRAME = 1000 / 60;
const SLOWER = 4;
/** The first steps warm the page up. */
const [WARM, STEPS] = [15, 45];
/** As a hand holds a key, and then longer than any frame but shorter than a hand that rests [ms]. */
const HELD = 30;
const APART = 40;

const DEMONSTRATION = 'invented-demonstration';
/** Screen, the slider that is moved on it, and the engine: the demonstration with its readings, else one that stands as its sheet says. */
const MOVED = [
  ['compression', '[data-input="chamber-volume"] input', DEMONSTRATION],
  ['valve-room', '[aria-label="Move the cam"] input', 'quernside'],
  ['valve-room', '[data-input="gasket-thickness"] input', 'quernside'],
  ['motion', '.turning-slider input', 'quernside'],
  ['motion', '[data-input="rocker-ratio@intake"] input', 'quernside'],
  ['springs', '[data-input="highest-speed"] input', DEMONSTRATION],
  ['rockers', '[data-input="valve-arm@intake"] input', 'quernside'],
  ['timing', '[data-input="cam-advance"] input', 'quernside'],
  ['balance', '[data-input="balance-factor"] input', DEMONSTRATION],
  ['balance', '[data-input="highest-speed"] input', DEMONSTRATION],
];

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
if (!existsSync(join(root, 'packages', 'web', 'dist-site', 'index.html'))) {
  console.error(`${NAME}: the web page is not built; run npm run build first`);
  process.exit(1);
}
const text = readFileSync(join(root, 'sheets', 'quernside-51-v8.yaml'), 'utf8');
const server = await startServer();
const quernside = await writeJob(server.address, [
  { kind: 'sheet-adopted', data: { name: 'Quernside 51, pushrod V8', text, reason: 'benchmark' } },
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
  const asked = process.argv[2];
  const all = [];
  for (const [subject, slider, engine] of MOVED.filter(([name]) => asked === undefined || asked === name)) {
    const job = engine === DEMONSTRATION ? engine : quernside;
    await page.goto(`/engine/${job}/combination/${subject}`);
    all.push({ subject, ...(await moved(page, devtools, slider)) });
    const { ours, high, twin, name } = all.at(-1);
    const verdict = ours <= FRAME ? 'kept' : 'PASSED';
    console.log(
      `${NAME}, ${subject}: ${name}, a step in ${ours.toFixed(1)} ms at a quarter of the speed, 95th percentile ${high.toFixed(1)} ms, bare ${twin.toFixed(1)} ms, frame ${FRAME.toFixed(1)} ms ${verdict}`,
    );
  }
  const longest = all.reduce((worst, one) => (one.ours > worst.ours ? one : worst));
  const words = `${all.length} sliders, ${STEPS - WARM} steps each, the longest on ${longest.subject}`;
  report(NAME, words, longest, 'a slider that writes its own number', LIMIT);
  const late = all.filter(({ ours }) => ours > FRAME);
  if (late.length === 0) return;
  console.error(`${NAME}: a step does not fit into one frame: ${late.map(({ subject }) => subject).join(', ')}`);
  process.exitCode = 1;
}

/** Steps of the slider of a screen and of one that only writes its own number, in milliseconds of a device so much slower. */
async function moved(page, devtools, slider) {
  const own = page.locator(slider).first();
  await own.waitFor();
  await page.waitForTimeout(1000);
  const name = await own.evaluate((element) => element.labels?.[0]?.textContent ?? 'slider');
  const ours = await steps(page, devtools, own);
  await page.evaluate(addBareSlider);
  const twin = await steps(page, devtools, page.locator('#bare-slider'));
  return { name, ours: SLOWER * at(ours, 0.5), high: SLOWER * at(ours, 0.95), twin: SLOWER * at(twin, 0.5) };
}

async function steps(page, devtools, slider) {
  await slider.focus();
  const events = await traced(devtools, async () => {
    for (let step = 0; step < STEPS; step++) {
      // To and fro, so that no slider reaches its end.
      await page.keyboard.press(step % 30 < 15 ? 'ArrowRight' : 'ArrowLeft', { delay: HELD });
      await page.waitForTimeout(APART);
    }
  });
  return workUntilFrame(events, 'digit keyed').slice(WARM);
}

/** Runs in the page. */
function addBareSlider() {
  const slider = document.createElement('input');
  Object.assign(slider, { id: 'bare-slider', type: 'range', min: '0', max: '1000', value: '500' });
  const told = document.createElement('output');
  slider.addEventListener('input', () => {
    told.textContent = slider.value;
  });
  document.body.append(slider, told);
}

/** Value below which that share of all lies. */
function at(values, share) {
  return values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))];
}
