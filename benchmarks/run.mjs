/**
 * Builds what the benchmarks import and runs every benchmark of this folder, one after the other. Each prints one line;
 * those with a twin in another language come in a table after it. Exit code 1 when one failed or passed its limit, 3 when
 * one could not be measured because its baseline is missing.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { BASELINE_MISSING } from './twins/compare.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..');

/** Runs a program with our own Node and answers whether it went well. */
function run(...argv) {
  return spawnSync(process.execPath, argv, { cwd: root, stdio: 'inherit' }).status === 0;
}

const compiler = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
if (!existsSync(compiler)) {
  console.error('benchmarks: the compiler is not installed; run npm ci first');
  process.exit(1);
}
if (!run(compiler, '-b', 'packages/core', 'packages/store', 'packages/report')) {
  console.error('benchmarks: the packages do not compile');
  process.exit(1);
}

const wanted = process.argv.slice(2);
const files = readdirSync(here)
  .filter((name) => name.endsWith('.mjs') && name !== 'run.mjs')
  .filter((name) => wanted.length === 0 || wanted.includes(name.slice(0, -'.mjs'.length)))
  .sort();
if (files.length === 0) {
  console.error('benchmarks: no benchmark of that name');
  process.exit(1);
}
/** Runs one benchmark, prints what it prints, and answers its exit code and lines. */
function measure(name) {
  const run = spawnSync(process.execPath, [join(here, name)], {
    cwd: root,
    encoding: 'utf8',
    stdio: ['inherit', 'pipe', 'inherit'],
  });
  process.stdout.write(run.stdout);
  return { name: name.slice(0, -'.mjs'.length), code: run.status, text: run.stdout };
}

/** The row of a benchmark that has a twin; undefined for one that only tells a time. */
function rowOf({ text }) {
  const found = /^(\S+): ours ([\d.]+) ms, (.+?) ([\d.]+) ms, ratio ([\d.]+), limit ([\d.]+) (\w+)/m.exec(text);
  return found ? found.slice(1) : undefined;
}

const measured = files.map(measure);
const titles = ['benchmark', 'ours ms', 'twin', 'twin ms', 'ratio', 'limit', 'verdict'];
const table = [titles, ...measured.map(rowOf).filter((row) => row !== undefined)];
const widths = titles.map((_, column) => Math.max(...table.map((row) => row[column].length)));
if (table.length > 1) {
  console.log('');
  for (const row of table)
    console.log(
      row
        .map((cell, column) => cell.padEnd(widths[column]))
        .join('  ')
        .trimEnd(),
    );
}
const missing = measured.filter(({ code }) => code === BASELINE_MISSING);
const failed = measured.filter(({ code }) => code !== 0 && code !== BASELINE_MISSING);
for (const { name } of missing) console.error(`benchmarks: ${name} was not measured, its baseline is missing`);
for (const { name } of failed) console.error(`benchmarks: ${name} failed`);
process.exit(failed.length > 0 ? 1 : missing.length > 0 ? BASELINE_MISSING : 0);
