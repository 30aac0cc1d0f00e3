/**
 * Builds everything when a source changed since the last build, and weighs the first script of the web page.
 * `--quiet` says nothing but what went wrong, and takes a heavy page as a warning: nobody is kept from work by it.
 */
import { existsSync } from 'node:fs';
import { FIRST_SCRIPT_LIMIT, weighFirstScript } from './parts/first-script.mjs';
import { inRoot } from './parts/root.mjs';
import { runPackaged } from './parts/run.mjs';
import { isStamped, sourceState, stamp } from './parts/stamps.mjs';

// A test that builds hands its own environment down, and the page would get the slow React of developers.
process.env.NODE_ENV = 'production';
const quiet = process.argv.includes('--quiet');
const OUTPUTS = ['core', 'store', 'report', 'server', 'cli'].map((name) => `packages/${name}/dist`);

const state = sourceState();
const outputsThere = [...OUTPUTS, 'packages/web/dist-site/index.html'].every((path) => existsSync(inRoot(path)));
if (!outputsThere || !isStamped('build', state)) await build();
weigh();

async function build() {
  await step('types and packages', 'typescript', 'tsc', ['-b']);
  await step('web page', 'vite', 'vite', ['build', inRoot('packages', 'web'), '--logLevel', 'warn']);
  stamp('build', state);
}

async function step(name, packageName, binary, args) {
  const started = Date.now();
  const { code, output } = await runPackaged(packageName, binary, args, { quiet: true });
  if (code !== 0) {
    console.error(`${output.trimEnd()}\nbuild: ${name} failed`);
    process.exit(1);
  }
  if (!quiet) console.log(`build: ${name} in ${((Date.now() - started) / 1000).toFixed(1)} s`);
}

function weigh() {
  const { bytes } = weighFirstScript();
  const words = `build: the first script weighs ${(bytes / 1000).toFixed(1)} kB compressed (limit ${FIRST_SCRIPT_LIMIT / 1000} kB)`;
  if (bytes <= FIRST_SCRIPT_LIMIT) {
    if (!quiet) console.log(words);
    return;
  }
  console.error(`${words}: too heavy`);
  if (!quiet) process.exit(1);
}
