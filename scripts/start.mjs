/** Builds what changed and runs the server until Ctrl-C. Words after `npm start --` go to the server, e.g. `--port 5000`. */
import { pathToFileURL } from 'node:url';
import { inRoot } from './parts/root.mjs';
import { run } from './parts/run.mjs';

const build = await run(process.execPath, [inRoot('scripts', 'build.mjs'), '--quiet']);
if (build.code !== 0) process.exit(build.code);

// In this process, so that Ctrl-C and any other signal reach the server itself.
await import(pathToFileURL(inRoot('packages', 'server', 'dist', 'main.js')).href);
