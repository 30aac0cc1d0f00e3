/** Runs another program and waits for it. */
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { root } from './root.mjs';

/** Answers `{ code, output }`; `output` is empty unless `quiet` asked to collect it instead of showing it. */
export function run(command, args, { quiet = false, env = process.env } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, env, stdio: quiet ? ['ignore', 'pipe', 'pipe'] : 'inherit' });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8');
      stream?.on('data', (text) => {
        output += text;
      });
    }
    child.once('error', (error) => resolve({ code: 1, output: `${output}${error.message}\n` }));
    child.once('close', (code) => resolve({ code: code ?? 1, output }));
  });
}

/** Runs a program of an installed package by its file, which works the same on every platform. */
export function runPackaged(packageName, binary, args, options) {
  const require = createRequire(import.meta.url);
  const manifestPath = findManifest(require, packageName);
  const { bin } = require(manifestPath);
  const file = typeof bin === 'string' ? bin : bin[binary];
  const path = manifestPath.replace(/package\.json$/, file.replace(/^\.\//, ''));
  return run(process.execPath, [path, ...args], options);
}

function findManifest(require, packageName) {
  const folder = require.resolve.paths(packageName).find((path) => {
    try {
      return require(`${path}/${packageName}/package.json`) !== undefined;
    } catch {
      return false;
    }
  });
  if (folder === undefined) throw new Error(`${packageName} is not installed: run npm ci`);
  return `${folder}/${packageName}/package.json`;
}
