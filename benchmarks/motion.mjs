/**
 * Piston, lift of both valves and room between valve and piston over 720 degrees at 0.1 degree, against the same
 * arithmetic in C (gcc -O2), in the same run. Prints one line. Needs a built core (`npm run build`) and gcc.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cycleGaps } from '../packages/core/dist/calc/valvetrain/cycle-gaps.js';
import { askTwin, byTurns, mustAgree, need, report, timed } from './twins/compare.mjs';

const NAME = 'motion';
const LIMIT = 2.5;
const RUNS = 200;
const radians = (degrees) => (degrees * Math.PI) / 180;

/** Invented engine. */
const crank = { crankRadius: 0.0442, rodLength: 0.1448, pinOffset: 0.0005 };
const valve = (nose, peakLift, half) => ({
  lobe: { peakLift, halfDuration: radians(half), exponents: [6, 8.5, 11] },
  nose: radians(nose),
  crown: 'parallel-pocket',
  valveAngle: radians(23),
  gapAtTop: 0.0046,
});
const valves = [valve(108, 0.012, 150), valve(-112, 0.0122, 155)];
const angles = { from: radians(-360), step: radians(0.1), count: 7200 };

need(NAME, ['gcc', 'libc6-dev'], 'gcc', '--version');
const folder = mkdtempSync(join(tmpdir(), 'gudgeon-motion-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
const source = join(dirname(fileURLToPath(import.meta.url)), 'twins', 'motion.c');
const program = join(folder, 'motion');
const compiled = spawnSync('gcc', ['-O2', '-o', program, source, '-lm'], { encoding: 'utf8' });
if (compiled.status !== 0) throw new Error(compiled.stderr);

const argv = [
  ...Object.values(crank),
  ...Object.values(angles),
  ...valves.flatMap(({ lobe, nose, valveAngle, gapAtTop }) => [
    ...[lobe.peakLift, lobe.halfDuration, ...lobe.exponents],
    ...[nose, valveAngle, gapAtTop],
  ]),
];
const ask = () => askTwin(program, [RUNS, ...argv].map(String));
const ours = () => cycleGaps(crank, valves, angles).value;

const { gaps } = ours();
const twin = ask();
const total = gaps.reduce((sum, row) => row.reduce((all, gap) => all + gap, sum), 0);
mustAgree(NAME, total, twin.sum, 1e-11);
mustAgree(NAME, Math.min(...gaps.flatMap((row) => [...row])), twin.least, 1e-11);
timed(RUNS, ours); // warm
const times = byTurns(
  () => timed(RUNS, ours),
  () => ask().ms,
);
report(NAME, 'piston, two lifts and two gaps at 7200 angles, same sums', times, 'gcc -O2', LIMIT);
