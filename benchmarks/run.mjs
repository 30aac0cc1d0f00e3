/** Builds what the benchmarks import and runs every benchmark of this folder, one after the other. Each prints one line. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

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
const failed = files.filter((name) => !run(join(here, name)));
for (const name of failed) console.error(`benchmarks: ${name} failed`);
process.exit(failed.length > 0 ? 1 : 0);
