/**
 * 10,000 draws of a stack of 20 parts through the catalogue, against numpy in the same run. The time here takes in
 * reading the texts, the derivatives and the working. Prints one line. Needs a built core and Debian's python3-numpy.
 */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { answer, defineCalculation, runDeclared } from '../packages/core/dist/calc/catalogue/index.js';
import { askTwin, byTurns, mustAgree, need, report, timed } from './twins/compare.mjs';

const NAME = 'monte-carlo';
const LIMIT = 3;
const RUNS = 20;
const PARTS = 20;
const TRIALS = 10_000;

const length = { kind: 'length', unit: 'mm' };
const stack = defineCalculation({
  id: 'benchmark.stack',
  subject: 'benchmark',
  title: 'Stack of parts',
  summary: 'Sum of sizes.',
  inputs: { sizes: { ...length, symbol: 'x', meaning: 'sizes', range: { from: 0, to: 1 }, list: true } },
  outputs: { sum: { ...length, symbol: 'Σx', meaning: 'their sum', places: 4 } },
  formula: 'Σx',
  assumptions: ['Sizes are independent.'],
  sources: ['derived-here'],
  example: { inputs: {}, outputs: {}, from: 'benchmark' },
  compute: ({ sizes }) => answer({ sum: sizes.reduce((sum, one) => sum + one, 0) }),
});

/** Invented stack: 10 to 29 mm, doubts of 3 to 22 micrometres. */
const sizes = Array.from({ length: PARTS }, (_, part) => 10 + part);
const doubts = sizes.map((_, part) => (3 + part) / 1000);
const inputs = { sizes: sizes.map((size, part) => `${size} ±${doubts[part]} mm`) };
const ours = () => runDeclared(stack, inputs, { uncertainty: { trials: TRIALS, seed: 7 } }).value.outputs.sum;

need(NAME, ['python3-numpy'], 'python3', '-c', 'import numpy');
const script = join(dirname(fileURLToPath(import.meta.url)), 'twins', 'monte_carlo.py');
const ask = () => askTwin('python3', [script], { runs: RUNS, trials: TRIALS, sizes, doubts, seed: 7 });

const found = ours().uncertainty;
const twin = ask();
const root = Math.hypot(...doubts);
mustAgree(NAME, found.standard, root, 1e-9);
mustAgree(NAME, found.monteCarlo.standard, root, 0.03);
mustAgree(NAME, twin.standard, root, 0.03);
mustAgree(NAME, found.monteCarlo.mean, twin.mean, 1e-5);
timed(RUNS, ours); // warm
const times = byTurns(
  () => timed(RUNS, ours),
  () => ask().ms,
);
report(NAME, `${TRIALS} draws of ${PARTS} parts with mean, spread and 95 % ends`, times, 'numpy', LIMIT);
