/**
 * 64 pistons to 64 bores with the least total deviation, against scipy's assignment on a table that is ready made, in the
 * same run. Prints one line. Needs a built core (`npm run build`) and Debian's python3-scipy.
 */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { partsToPlaces } from '../packages/core/dist/calc/selection/index.js';
import { askTwin, byTurns, mustAgree, need, report, timed } from './twins/compare.mjs';

const NAME = 'selection';
const LIMIT = 1;
const RUNS = 300;
const PARTS = 64;

/** Invented sizes in metres, whole micrometres, the same on every run. */
let word = 1;
const spread = (micrometres) => {
  word = (Math.imul(word, 1664525) + 1013904223) >>> 0;
  return Math.floor((word / 2 ** 32) * micrometres) / 1e6;
};
const places = Array.from({ length: PARTS }, () => 0.08 + spread(30));
const parts = Array.from({ length: PARTS }, () => 0.07996 + spread(30));
const target = 0.00004;
const ours = () => partsToPlaces({ places, parts, target, window: {}, goal: 'least-total' }).value;

need(NAME, ['python3-scipy', 'python3-numpy'], 'python3', '-c', 'import scipy.optimize');
const script = join(dirname(fileURLToPath(import.meta.url)), 'twins', 'assignment.py');
const ask = () => askTwin('python3', [script], { runs: RUNS, places, parts, target });

mustAgree(NAME, ours().total, ask().total, 1e-9);
timed(10 * RUNS, ours); // warm
const times = byTurns(
  () => timed(RUNS, ours),
  () => ask().ms,
);
report(NAME, `${PARTS} parts to ${PARTS} places, same least total`, times, 'scipy', LIMIT);
