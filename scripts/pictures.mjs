/** Has the browser tests make their pictures, in `test-results/`, and copies those that README shows to docs/pictures. */
import { copyFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { inRoot } from './parts/root.mjs';
import { runPackaged } from './parts/run.mjs';

const env = { ...process.env, GUDGEON_PICTURES: 'yes' };
const { code } = await runPackaged('vitest', 'vitest', ['run', '--project', 'browser'], { env });
if (code !== 0) process.exit(code);

const wanted = [...readFileSync(inRoot('README.md'), 'utf8').matchAll(/docs\/pictures\/([\w-]+\.png)/g)].map(
  ([, name]) => name,
);
mkdirSync(inRoot('docs', 'pictures'), { recursive: true });
const missing = wanted.filter((name) => !existsSync(inRoot('test-results', name)));
for (const name of wanted.filter((one) => !missing.includes(one)))
  copyFileSync(inRoot('test-results', name), inRoot('docs', 'pictures', name));
if (missing.length > 0) console.error(`pictures: not made by the browser tests: ${missing.join(', ')}`);
console.log(`pictures: ${wanted.length - missing.length} of ${wanted.length} copied to docs/pictures`);
process.exit(missing.length > 0 ? 1 : 0);
