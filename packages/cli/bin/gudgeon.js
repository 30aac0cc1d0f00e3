#!/usr/bin/env node
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const built = new URL('../dist/index.js', import.meta.url);

if (!existsSync(built)) {
  const build = fileURLToPath(new URL('../../../scripts/build.mjs', import.meta.url));
  // Standard output belongs to the command, so the build may speak on standard error only.
  const { status } = spawnSync(process.execPath, [build, '--quiet'], { stdio: ['ignore', 2, 2] });
  if (status !== 0 || !existsSync(built)) {
    console.error('gudgeon: the build did not finish; run "npm run build" in the project folder to see why');
    process.exit(1);
  }
}

// A reader that stops early, such as "| head", is no fault.
process.stdout.on('error', (error) => process.exit(error.code === 'EPIPE' ? 0 : 1));

const { nodeIo, run } = await import(built.href);
process.exitCode = await run(process.argv.slice(2), nodeIo());
