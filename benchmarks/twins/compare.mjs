/** What the benchmarks against a twin in another language share: finding the twin, timing, and the line that is printed. */
import { spawnSync } from 'node:child_process';
import { loadavg } from 'node:os';

/** Exit code of a benchmark whose twin cannot be had here. */
export const BASELINE_MISSING = 3;
const ROUNDS = 5;

const works = (command, ...args) => spawnSync(command, args, { stdio: 'ignore' }).status === 0;
const middle = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];

/** Makes sure that a command runs; installs Debian packages for it where we are root and may. Ends the process otherwise. */
export function need(name, packages, command, ...args) {
  if (works(command, ...args)) return;
  if (process.getuid?.() === 0 && works('apt-get', '--version')) {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const install = ['install', '-y', '--no-install-recommends', '-o', 'DPkg::Lock::Timeout=300', ...packages];
    const installed = () => spawnSync('apt-get', install, { stdio: 'ignore', env }).status === 0;
    if (!installed() && spawnSync('apt-get', ['update'], { stdio: 'ignore', env }).status === 0) installed();
    if (works(command, ...args)) return;
  }
  console.log(`${name}: baseline missing, not measured; it needs ${packages.join(' and ')} (apt-get install as root)`);
  process.exit(BASELINE_MISSING);
}

/** Runs a twin and reads the line of JSON that it prints. */
export function askTwin(command, args, given) {
  const run = spawnSync(command, args, { input: given === undefined ? '' : JSON.stringify(given), encoding: 'utf8' });
  if (run.status !== 0) throw new Error(`${command} failed: ${run.error ?? (run.stderr || run.signal)}`);
  return JSON.parse(run.stdout);
}

/** Median time of `runs` calls in milliseconds. */
export function timed(runs, work) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return middle(times);
}

/** Times both by turns, so that a busy moment of the machine hits both, and answers the medians over the rounds. */
export function byTurns(ours, twin) {
  const rounds = Array.from({ length: ROUNDS }, () => ({ ours: ours(), twin: twin() }));
  return { ours: middle(rounds.map((one) => one.ours)), twin: middle(rounds.map((one) => one.twin)) };
}

/** Ends with exit code 1 when both do not find the same. */
export function mustAgree(name, ours, twin, relative) {
  if (Math.abs(ours - twin) <= relative * Math.abs(twin)) return;
  console.error(`${name}: ${ours} here and ${twin} in the twin are not the same`);
  process.exit(1);
}

/** One line: both times, the ratio and its limit. Sets exit code 1 when the limit is passed. */
export function report(name, what, { ours, twin }, twinName, limit) {
  const ratio = ours / twin;
  const load = loadavg()[0].toFixed(1);
  const verdict = ratio <= limit ? 'kept' : 'PASSED';
  console.log(
    `${name}: ours ${ours.toFixed(3)} ms, ${twinName} ${twin.toFixed(3)} ms, ratio ${ratio.toFixed(2)}, limit ${limit.toFixed(2)} ${verdict}; ${what}; load ${load}`,
  );
  if (ratio > limit) process.exitCode = 1;
}
