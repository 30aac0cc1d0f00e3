/** Weighs what a browser must fetch before the first page works: the entry script and what it imports at once. */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { inRoot } from './root.mjs';

/** The promise made to people with a slow link, in bytes after gzip. */
export const FIRST_SCRIPT_LIMIT = 150_000;

export function weighFirstScript() {
  const site = (path) => inRoot('packages', 'web', 'dist-site', path.replace(/^\//, ''));
  const page = readFileSync(site('index.html'), 'utf8');
  const tags = page.match(/<(?:script|link)\b[^>]*>/g) ?? [];
  const wanted = tags.filter((tag) => tag.startsWith('<script') || /rel="modulepreload"/.test(tag));
  const files = wanted.flatMap((tag) => tag.match(/(?:src|href)="([^"]+\.js)"/)?.[1] ?? []);
  if (files.length === 0) throw new Error('the built page names no script: its weight cannot be told');
  const bytes = files.reduce((sum, file) => sum + gzipSync(readFileSync(site(file)), { level: 9 }).length, 0);
  return { files, bytes };
}
