/**
 * Stamps: small files that say for what state a slow step was last done. They live inside `node_modules`, so that they
 * go away with it. Only Node's own modules are used, because nothing is installed yet when setup runs.
 */
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, relative } from 'node:path';
import { inRoot, root } from './root.mjs';

const stampFile = (name) => inRoot('node_modules', '.gudgeon', name);

export function isStamped(name, state) {
  try {
    return readFileSync(stampFile(name), 'utf8') === state;
  } catch {
    return false;
  }
}

export function stamp(name, state) {
  mkdirSync(dirname(stampFile(name)), { recursive: true });
  writeFileSync(stampFile(name), state);
}

/** What the installed packages depend on. */
export function installState() {
  const lock = readFileSync(inRoot('package-lock.json'));
  return digest([
    ['lock', lock],
    ['node', `${process.version} ${process.platform} ${process.arch}`],
  ]);
}

/** What the built output depends on: every source file of every package, and the settings of the compiler. */
export function sourceState() {
  const files = ['packages', 'tsconfig.base.json', 'tsconfig.json', 'package-lock.json'].flatMap(filesUnder);
  return digest(files.map((file) => [relative(root, file), readFileSync(file)]));
}

const BUILT = new Set(['node_modules', 'dist', 'dist-site']);

function filesUnder(path) {
  return walk(inRoot(path)).sort();
}

function walk(path) {
  let entries;
  try {
    entries = readdirSync(path, { withFileTypes: true });
  } catch (error) {
    if (error.code === 'ENOTDIR') return [path];
    throw error;
  }
  return entries
    .filter((entry) => !BUILT.has(entry.name))
    .flatMap((entry) => (entry.isDirectory() ? walk(`${path}/${entry.name}`) : [`${path}/${entry.name}`]));
}

function digest(parts) {
  const hash = createHash('sha256');
  for (const [name, content] of parts) hash.update(`${name}\0${content.length}\0`).update(content);
  return hash.digest('hex');
}
